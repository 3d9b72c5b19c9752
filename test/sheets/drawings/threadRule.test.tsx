import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { labelBox, overlap } from "../../../src/sheets/drawings/lettering.ts";
import { ThreadRule } from "../../../src/sheets/drawings/rule/ThreadRule.tsx";
import {
  type RuledThreads,
  type RuleRow,
  threadRuleLayout,
} from "../../../src/sheets/drawings/rule/threadRuleLayout.ts";
import { standaloneSvg } from "../../../src/sheets/drawings/standalone.ts";
import { expectCommitted } from "./committedDrawing.ts";
import { expectInside } from "./drawnPoints.ts";

const metric = { designation: "M22x1.5", family: "metric", P_mm: 1.5, crest: 8 } as const;
const inch = { designation: "7/8-14 UNF", family: "unified", P_mm: 25.4 / 14, crest: 8 } as const;
const fine = { designation: "7/8-20 UNEF", family: "unified", P_mm: 1.27, crest: 8 } as const;
const pipe = { P_mm: 25.4 / 14, crest: 10 } as const;

const read: RuledThreads = { threads: [metric, inch], gaps: 8, read: { at_mm: 12.1, within_mm: 0.6 } };
const crestsCounted: RuledThreads = {
  threads: [{ ...metric, crest: 7 }, fine],
  gaps: 8,
  read: { at_mm: 10.5, within_mm: 0.6 },
};
const pipes: RuledThreads = {
  threads: [
    { ...pipe, designation: "G 1/2", family: "G" },
    { ...pipe, designation: "1/2-14 NPT", family: "NPT" },
    { ...pipe, designation: "R 1/2", family: "R" },
  ],
  gaps: 10,
  read: { at_mm: 18.2, within_mm: 0.6 },
};
const notCounted: RuledThreads = {
  threads: [1.5, 2, 2.5].map((P_mm) => ({ designation: `M20x${P_mm}`, family: "metric", P_mm, crest: 10 })),
  gaps: 10,
  read: null,
};

describe("pinned", () => {
  test.each([
    ["thread-rule.svg", read],
    ["thread-rule-crests.svg", crestsCounted],
    ["thread-rule-pipes.svg", pipes],
    ["thread-rule-not-counted.svg", notCounted],
  ] as const)("%s", (name, ruled) => {
    expectCommitted(name, standaloneSvg(<ThreadRule {...ruled} />));
  });
});

const ruled = fc.integer({ min: 1, max: 60 }).chain((gaps) =>
  fc.record({
    gaps: fc.constant(gaps),
    threads: fc.array(
      fc.record({
        designation: fc.constantFrom("M22x1.5", "1 13/16-12 UN", "1 1/4-11.5 NPT"),
        family: fc.constantFrom("metric", "unified", "G", "R", "NPT"),
        P_mm: fc.double({ min: 0.75, max: 6, noNaN: true }),
        crest: fc.integer({ min: Math.max(1, gaps - 1), max: gaps }),
      }),
      { minLength: 2, maxLength: 3 },
    ),
    read: fc.option(
      fc.record({
        at_mm: fc.double({ min: 1, max: 120, noNaN: true }),
        within_mm: fc.constantFrom(0.6, 1),
      }),
    ),
  }),
);

/** The lowest point of the marked ridge: its crest, on the rule. */
const tip = ({ ridge }: RuleRow): number => {
  const low = Math.max(...ridge.map(([, y]) => y));
  const crest = ridge.filter(([, y]) => y > low - 1e-6).map(([x]) => x);
  return (Math.min(...crest) + Math.max(...crest)) / 2;
};

describe("laws", () => {
  test("nothing lies outside the sheet", () => {
    fc.assert(
      fc.property(ruled, (it) => expectInside(standaloneSvg(<ThreadRule {...it} />))),
      { numRuns: 100 },
    );
  });

  test("no lettering stands on other lettering", () => {
    fc.assert(
      fc.property(ruled, (it) => {
        const boxes = threadRuleLayout(it).labels.map(labelBox);
        boxes.forEach((a, i) => {
          expect(boxes.slice(i + 1).filter((b) => overlap(a, b))).toEqual([]);
        });
      }),
      { numRuns: 100 },
    );
  });

  test("all threads share one scale: marked crests stand apart as their lengths do", () => {
    fc.assert(
      fc.property(ruled, (it) => {
        const { rows } = threadRuleLayout(it);
        const [first, second] = it.threads;
        const [a, b] = rows;
        if (!first || !second || !a || !b) throw new Error("two threads are drawn");
        // The rule's marks are half a millimetre, a millimetre or five apart.
        const zero = a.marks[0]?.[0]?.[0] ?? Number.NaN;
        const perMm = (tip(a) - zero) / (first.crest * first.P_mm);
        expect((tip(b) - zero) / (second.crest * second.P_mm)).toBeCloseTo(perMm, 6);
        if (it.read) expect(((a.reading[0]?.[0] ?? 0) - zero) / it.read.at_mm).toBeCloseTo(perMm, 6);
        const apart = ((a.marks[1]?.[0]?.[0] ?? 0) - zero) / perMm;
        expect([0.5, 1, 5].some((step) => Math.abs(step - apart) < 1e-6)).toBe(true);
      }),
    );
  });
});

test("a reading is a window of its width in the rule, and none is drawn where nobody counted", () => {
  const [row] = threadRuleLayout(read).rows;
  const xs = (row?.band ?? []).map(([x]) => x);
  const zero = row?.marks[0]?.[0]?.[0] ?? Number.NaN;
  const perMm = (tip(row as RuleRow) - zero) / 12;
  expect((Math.max(...xs) - Math.min(...xs)) / perMm).toBeCloseTo(1.2, 9);
  expect(threadRuleLayout(notCounted).rows.every(({ band, reading }) => band.length + reading.length === 0)).toBe(true);
});

test("what a screen reader says names every candidate and where its crest would lie", () => {
  const svg = standaloneSvg(<ThreadRule {...read} />);
  expect(svg).toContain("M22x1.5: crest 8 at 12.0 mm; 7/8-14 UNF: crest 8 at 14.5 mm");
});
