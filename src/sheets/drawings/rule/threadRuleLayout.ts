import type { CandidateThread } from "../../../mechanics/threads/namingCandidates.ts";
import { ridgeOutline } from "../../../mechanics/threads/ridgeOutline.ts";
import { brokenEdge, type XY } from "../hatch.ts";
import { inTenths, type Label, textWidth } from "../lettering.ts";

/** Threads laid along a steel rule, 0 on a crest. */
export type RuledThreads = {
  readonly threads: readonly RuledThread[];
  readonly gaps: number;
  /** Where the last crest was read on the rule, and how far off that may be; null where nobody counted. */
  readonly read: { readonly at_mm: number; readonly within_mm: number } | null;
};

type RuledThread = {
  readonly designation: string;
  readonly family: CandidateThread["family"];
  readonly P_mm: number;
  /** The crest that the reading would be: one fewer than the gaps where crests may have been counted. */
  readonly crest: number;
};

export type ThreadRuleLayout = {
  readonly width: number;
  readonly height: number;
  readonly letter: number;
  readonly rows: readonly RuleRow[];
  readonly labels: readonly Label[];
};

export type RuleRow = {
  /** Closed outline of the plug, its crests down on the rule. */
  readonly plug: readonly XY[];
  /** The ridge whose crest is in question. */
  readonly ridge: readonly XY[];
  readonly rule: readonly XY[];
  /** Its long edges; it runs on beyond the sheet. */
  readonly ruleEdges: readonly (readonly XY[])[];
  readonly marks: readonly (readonly XY[])[];
  /** What was read: a band on the rule, and its middle; empty where nothing was. */
  readonly band: readonly XY[];
  readonly reading: readonly XY[];
};

/** Where everything stands, in the units of the sheet. All threads on one scale, true in both directions. */
export function threadRuleLayout({ threads, gaps, read }: RuledThreads): ThreadRuleLayout {
  const widest = Math.max(...threads.map(({ P_mm }) => P_mm));
  const longest = Math.max(read ? read.at_mm + read.within_mm : 0, ...threads.map(({ P_mm }) => gaps * P_mm));
  const room = width - 2 * edge;
  const scale = Math.min(largest, (room - 2 * beyond) / longest, room / (longest + widest));
  const zero = edge + Math.max(beyond, (widest / 2) * scale);
  const at = (x_mm: number): number => zero + x_mm * scale;
  const deepest = Math.max(...threads.map((it) => depth(it) * scale));
  const rowHeight = labelRoom + body + deepest + ruleHeight + below;
  const rows = threads.map((thread, i) => {
    const ruleY = headRoom + i * rowHeight + labelRoom + body + deepest;
    return { thread, ruleY, row: rowAt(thread, gaps, read, at, scale, ruleY, ruleY - deepest - body) };
  });
  const height = headRoom + threads.length * rowHeight + footRoom - below;
  const last = rows.at(-1)?.ruleY ?? headRoom;
  return {
    width,
    height,
    letter,
    rows: rows.map(({ row }) => row),
    labels: [
      ...headLabels(threads, gaps, read),
      ...rows.flatMap(({ thread, ruleY }, i) => [
        ...rowLabels(thread, i === 0, ruleY - deepest - body),
        ...crestNumbers(thread, gaps, at, scale, ruleY - depth(thread) * scale),
      ]),
      ...ruleNumbers(at, scale, last + ruleHeight),
    ],
  };
}

const width = 360;
const letter = 15;
const edge = 12;
const small = 0.74 * letter;
const headRoom = 2.1 * letter;
const labelRoom = 1.75 * letter;
/** Metal of the plug that is drawn above its thread; the crests' numbers stand in it. */
const body = 1.25 * letter;
/** Room left of crest 0 and right of the last; a plug fills at least half of it. */
const beyond = 1.2 * letter;
/** Units to the millimetre at most: a few gaps leave the rest of the rule free. */
const largest = 1.7 * letter;
const ruleHeight = 1.05 * letter;
const below = 0.55 * letter;
const footRoom = 1.9 * letter;

type At = (x_mm: number) => number;

const depth = ({ family, P_mm }: RuledThread): number =>
  P_mm * Math.max(...ridgeOutline(family).map(({ down }) => down));

function rowAt(
  thread: RuledThread,
  gaps: number,
  read: RuledThreads["read"],
  at: At,
  scale: number,
  ruleY: number,
  top: number,
): RuleRow {
  const { family, P_mm, crest } = thread;
  const turn = ridgeOutline(family);
  const more = Math.max(0, Math.ceil((0.5 * beyond) / (P_mm * scale) - 0.5));
  const ridges = Array.from({ length: gaps + 2 + 2 * more }, (_, i) => i - 1 - more).flatMap((i) =>
    turn.map(({ along, down }): XY => [at((i + along) * P_mm), ruleY - down * P_mm * scale]),
  );
  const [from, to] = [at(-(more + 0.5) * P_mm), at((gaps + more + 0.5) * P_mm)];
  const crests = ridges.filter(([x]) => x >= from - 1e-9 && x <= to + 1e-9);
  const [first, last] = [crests[0] ?? [from, ruleY], crests.at(-1) ?? [to, ruleY]];
  const [before, after] = [at((crest - 0.5) * P_mm), at((crest + 0.5) * P_mm)];
  const bottom = ruleY + ruleHeight;
  const box = (a: number, b: number): readonly XY[] => [
    [a, ruleY],
    [b, ruleY],
    [b, bottom],
    [a, bottom],
  ];
  return {
    plug: [
      ...crests,
      ...brokenEdge([last[0], last[1]], [last[0], top], swing),
      ...brokenEdge([first[0], top], [first[0], first[1]], swing),
    ],
    ridge: crests.filter(([x]) => x >= before - 1e-9 && x <= after + 1e-9),
    rule: box(0, width),
    ruleEdges: [ruleY, bottom].map((y) => [
      [0, y],
      [width, y],
    ]),
    marks: marksOn(at, scale, ruleY),
    band: read ? box(at(read.at_mm - read.within_mm), at(read.at_mm + read.within_mm)) : [],
    reading: read
      ? [
          [at(read.at_mm), ruleY],
          [at(read.at_mm), bottom],
        ]
      : [],
  };
}

const swing = 0.22 * letter;

/** Half millimetres, millimetres and every fifth, as far apart as they can be told. */
function marksOn(at: At, scale: number, ruleY: number): readonly (readonly XY[])[] {
  const step = scale >= 7 ? 0.5 : scale >= 3 ? 1 : 5;
  const count = Math.floor((width - at(0)) / (step * scale));
  return Array.from({ length: count + 1 }, (_, i) => {
    const x_mm = i * step;
    const long = x_mm % 5 === 0 ? 0.8 : x_mm % 1 === 0 ? 0.55 : 0.32;
    return [
      [at(x_mm), ruleY],
      [at(x_mm), ruleY + long * ruleHeight],
    ];
  });
}

function headLabels(threads: readonly RuledThread[], gaps: number, read: RuledThreads["read"]): readonly Label[] {
  const crestsCounted = threads[0] !== undefined && threads[0].crest < gaps;
  const text = read
    ? `${gaps} ${gaps === 1 ? "gap" : "gaps"} read at ${inTenths(read.at_mm)}${crestsCounted ? " mm: crests counted?" : ` ± ${inTenths(read.within_mm)} mm`}`
    : `Where crest ${gaps} would lie on the rule`;
  return [label(text, edge, 1.4 * letter, "start", 1.1 * letter, true)];
}

function rowLabels({ designation, P_mm, crest }: RuledThread, bold: boolean, top: number): readonly Label[] {
  const y = top - 0.45 * letter;
  return [
    label(designation, edge, y, "start", letter, bold),
    label(`crest ${crest} at ${inTenths(crest * P_mm)} mm`, width - edge, y, "end", letter, bold),
  ];
}

/** Crests numbered from 0, so that gaps are counted and not crests: as many as there is room for, and the last. */
function crestNumbers(
  { P_mm, crest }: RuledThread,
  gaps: number,
  at: At,
  scale: number,
  rootY: number,
): readonly Label[] {
  const room = textWidth(String(gaps), small, true) + 0.25 * small;
  const step = [1, 2, 5, 10, 20, 50].find((it) => it * P_mm * scale >= room) ?? gaps;
  const numbers = Array.from({ length: gaps + 1 }, (_, i) => i).filter(
    (i) => i === gaps || i === crest || (i % step === 0 && clear(i, crest) && clear(i, gaps)),
  );
  function clear(i: number, other: number): boolean {
    return i === other || Math.abs(other - i) * P_mm * scale >= room;
  }
  return numbers
    .filter((i) => i === crest || clear(i, crest))
    .map((i) => label(String(i), at(i * P_mm), rootY - 0.28 * letter, "middle", small, i === 0 || i === crest));
}

/** Numbers under the last rule, the unit beside the first. */
function ruleNumbers(at: At, scale: number, bottom: number): readonly Label[] {
  const y = bottom + 1.15 * letter;
  const step = [1, 5, 10, 20, 50].find((it) => it * scale >= 3.6 * letter) ?? 100;
  const numbers = Array.from({ length: Math.floor((width - at(0)) / (step * scale)) + 1 }, (_, i) =>
    label(String(i * step), at(i * step), y, "middle"),
  );
  return [
    ...numbers.filter(({ text, x }) => x + textWidth(text, letter) / 2 <= width),
    label("mm", at(0) + 0.6 * letter, y, "start", 0.85 * letter),
  ];
}

const label = (text: string, x: number, y: number, anchor: Label["anchor"], size = letter, bold = false): Label => ({
  text,
  x,
  y,
  size,
  anchor,
  bold,
});
