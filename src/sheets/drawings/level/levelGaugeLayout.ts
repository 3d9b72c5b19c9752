import type { XY } from "../hatch.ts";
import { inWhole, type Label, textWidth } from "../lettering.ts";

/** A level against the lower lip of its hole (negative below it), the lowest allowed, and what a millimetre holds. */
export type GaugedLevel = {
  readonly level_mm: number;
  readonly lowest_mm: number;
  readonly perHeight_ml_mm: number;
};

export type LevelGaugeLayout = {
  readonly width: number;
  readonly height: number;
  readonly letter: number;
  readonly sentence: string;
  readonly wall: readonly XY[];
  readonly oil: readonly XY[];
  readonly band: readonly XY[];
  readonly hole: { readonly x: number; readonly y: number; readonly radius: number };
  readonly lipY: number;
  readonly lowestY: number;
  readonly levelY: number;
  /** From the names of the marks to the right wall. */
  readonly marks: { readonly left: number; readonly right: number };
  readonly rule: {
    readonly body: readonly XY[];
    readonly hook: readonly XY[];
    readonly ticks: readonly (readonly XY[])[];
  };
  /** The millilitres to the next mark, as a dimension; null where the oil stands on it. */
  readonly toNext: { readonly x: number; readonly from: number; readonly to: number } | null;
  readonly labels: readonly Label[];
};

/** Where everything of a level gauge stands, in the units of its sheet. */
export function levelGaugeLayout({ level_mm, lowest_mm, perHeight_ml_mm }: GaugedLevel): LevelGaugeLayout {
  const deepest = Math.min(level_mm, lowest_mm) - 4;
  const scale = Math.min(9, 190 / Math.max(12, -deepest), (2 * radius + 10) / Math.max(1, level_mm));
  const at = (mm: number): number => lipY - mm * scale;
  const bottom = at(deepest);
  const [levelY, lowestY] = [at(level_mm), at(lowest_mm)];
  const height = bottom + 5.4 * letter;
  const down = `${inWhole(Math.abs(level_mm))} mm ${level_mm <= 0 ? "below" : "above"} the lip`;
  const toLip = `about ${volume(level_mm * perHeight_ml_mm)} ml ${level_mm <= 0 ? "short" : "over"}`;
  // The next mark upwards, or the lip itself where the oil is over it.
  const next_mm = level_mm < lowest_mm ? lowest_mm : 0;
  const gap = Math.abs(next_mm - level_mm);
  const next = `${volume(gap * perHeight_ml_mm)} ml`;
  const nextY = (levelY + at(next_mm)) / 2;
  return {
    width,
    height,
    letter,
    sentence: `Oil ${down}, ${toLip}.`,
    wall: rectangle(tank.left, tank.right, top, bottom),
    oil: rectangle(tank.left, tank.right, levelY, bottom),
    band: rectangle(tank.left, tank.right, lipY, lowestY),
    hole: { x: middle, y: lipY - radius, radius },
    lipY,
    lowestY,
    levelY,
    marks: { left: tank.left - 12, right: tank.right },
    rule: hookRule(at, deepest, scale),
    toNext: gap * scale < 2 ? null : { x: tank.right + 12, from: levelY, to: at(next_mm) },
    labels: [
      label(down, edge, 1.5 * letter, 1.15, true),
      ...names(lipY, lowestY, levelY),
      ...ruleFigures(at, deepest, scale),
      ...(gap * scale < 2 ? [] : [label(next, tank.right + 20, nextY + 0.35 * letter)]),
      label(toLip, edge, height - 2.6 * letter, 1.6, true),
      label(`A millimetre holds ${volume(perHeight_ml_mm)} ml.`, edge, height - 0.9 * letter),
    ],
  };
}

const width = 360;
const letter = 15;
const edge = 14;
const radius = 34;
const top = 3.2 * letter;
const tank = { left: 88, right: width - edge - 20 - textWidth("1000 ml", letter) };
const middle = tank.left + 0.36 * (tank.right - tank.left);
/** The lower lip stands at 0 mm. */
const lipY = top + 2 * radius + 0.6 * letter;
/** The rule carries its strokes at the left and its figures at the right. */
const rule = { left: middle - 20, right: middle + 20, stroke: 7, fifth: 15 };

/** A rule that hangs over the lip by its hook: a stroke for each millimetre, a longer one for each fifth. */
function hookRule(at: (mm: number) => number, deepest: number, scale: number): LevelGaugeLayout["rule"] {
  const end = at(deepest) - 0.5 * scale;
  return {
    body: rectangle(rule.left, rule.right, lipY, end),
    hook: [
      [rule.right, lipY],
      [rule.right, lipY - 7],
      [rule.left - 7, lipY - 7],
      [rule.left - 7, lipY - 1],
    ],
    ticks: millimetres(deepest).map((mm) => [
      [rule.left, at(mm)],
      [rule.left + (mm % 5 === 0 ? rule.fifth : rule.stroke), at(mm)],
    ]),
  };
}

const ruleFigures = (at: (mm: number) => number, deepest: number, scale: number): readonly Label[] =>
  millimetres(deepest)
    .filter((mm) => mm % (scale * 5 > letter ? 5 : 10) === 0 && at(mm) + letter < at(deepest))
    .map((mm) => label(inWhole(-mm), rule.left + rule.fifth + 3, at(mm) + 0.28 * letter, 0.8));

const millimetres = (deepest: number): readonly number[] =>
  Array.from({ length: Math.max(0, Math.ceil(-deepest) - 1) }, (_, i) => -(i + 1));

/** Names at the left, pushed down where two marks lie close. */
function names(lip: number, lowest: number, level: number): readonly Label[] {
  let above = Number.NEGATIVE_INFINITY;
  return [
    { text: "lip", y: lip },
    { text: "lowest", y: lowest },
    { text: "oil", y: level },
  ]
    .toSorted((a, b) => a.y - b.y)
    .map(({ text, y }) => {
      above = Math.max(y + 0.35 * letter, above + 1.15 * letter);
      return label(text, edge, above, 1, text === "oil");
    });
}

const label = (text: string, x: number, y: number, size = 1, bold = false): Label => ({
  text,
  x,
  y,
  size: size * letter,
  anchor: "start",
  bold,
});

/** Two digits are what a hook and a syringe earn. */
const volume = (ml: number): string => inWhole(Number(Math.abs(ml).toPrecision(2)));

const rectangle = (x1: number, x2: number, y1: number, y2: number): readonly XY[] => [
  [x1, y1],
  [x2, y1],
  [x2, y2],
  [x1, y2],
];
