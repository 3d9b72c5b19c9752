import fc from "fast-check";
import { expect, test } from "vitest";
import type { WindowDocument } from "../../../src/sheets/answer/answerDocument.ts";
import { type Changes, documentOf } from "../../mechanics/remedies/changedCase.ts";

// Factors by definition: 25.4 mm to the inch; lbf = 4.4482216152605 N, ft = 304.8 mm; kgf = 9.80665 N.
const perMillimetre = { mm: 1, cm: 0.1, m: 1e-3, in: 1 / 25.4, µm: 1e3 } as const;
const perNewtonMetre = {
  N·m: 1,
  N·cm: 100,
  lbf·ft: 1 / (4.4482216152605 * 0.3048),
  lbf·in: 12 / (4.4482216152605 * 0.3048),
  kgf·m: 1 / 9.80665,
  kgf·cm: 100 / 9.80665,
} as const;

type Written = { readonly length: (mm: number) => string; readonly torque: (Nm: number) => string };

const inUnits = (length: keyof typeof perMillimetre, torque: keyof typeof perNewtonMetre): Written => ({
  length: (mm) => `${mm * perMillimetre[length]} ${length}`,
  torque: (Nm) => `${Number((Nm * perNewtonMetre[torque]).toPrecision(15))} ${torque}`,
});

type Port = {
  readonly turns: number;
  readonly outside: number;
  readonly thickness: number;
  readonly underHead: number;
};

const written = ({ turns, outside, thickness, underHead }: Port, { length, torque }: Written): Changes => ({
  case: { threadDepth: length(16), thinnestWall: length(7), roomBehind: length(11) },
  plug: { underHead: length(underHead), headDiameter: length(27), chamfer: length(1) },
  seal: { outside: length(outside), inside: length(20.4), thickness: length(thickness) },
  left: { turns: String(turns), goodFrom: length(2), goodTo: length(16) },
  bookFigures: [{ torque: torque(46), source: "sheet" }],
  wrenches: [{ name: "W", least: torque(5), most: torque(25), step: torque(1) }],
  asked: { pressure: "none" },
});

const ports = fc.record({
  turns: fc.integer({ min: 20, max: 70 }).map((it) => it / 10),
  outside: fc.integer({ min: 230, max: 300 }).map((it) => it / 10),
  thickness: fc.integer({ min: 5, max: 25 }).map((it) => it / 10),
  underHead: fc.integer({ min: 110, max: 200 }).map((it) => it / 10),
});

const figures = ({ need_Nm, limit_Nm, advice_Nm, medianStrip_Nm, cautiousRule_Nm, strips, closes }: WindowDocument) => [
  need_Nm,
  limit_Nm,
  advice_Nm ?? -1,
  medianStrip_Nm,
  cautiousRule_Nm,
  ...[...strips, ...closes].map(({ probability }) => probability),
];

test("the answer does not depend on the units typed", () => {
  const units = [
    fc.constantFrom("mm", "cm", "m", "in", "µm"),
    fc.constantFrom("N·m", "N·cm", "lbf·ft", "lbf·in", "kgf·m", "kgf·cm"),
  ] as const;
  fc.assert(
    fc.property(ports, ...units, (port, length, torque) => {
      const metric = documentOf(written(port, inUnits("mm", "N·m")));
      const other = documentOf(written(port, inUnits(length, torque)));
      const closures = [metric.asFound, ...metric.remedies];
      [other.asFound, ...other.remedies].forEach((closure, i) => {
        const { window, refused } = closures[i] ?? {};
        expect(closure.refused).toEqual(refused);
        expect(closure.window === null).toBe(window === null);
        if (!closure.window || !window) return;
        figures(closure.window).forEach((figure, j) => {
          const same = figures(window)[j] ?? Number.NaN;
          expect(Math.abs(figure - same)).toBeLessThanOrEqual(1e-6 * Math.abs(same) + 1e-12);
        });
      });
    }),
    {
      numRuns: 60,
      // A longer plug on a thicker ring that reaches just as deep: the sum of lengths differs in its last digit by the unit.
      examples: [[{ turns: 2, outside: 23, thickness: 2.5, underHead: 17.5 }, "µm", "N·m"]],
    },
  );
});

test("fractions of an inch are read as what they are: 1/2 in is 12.7 mm", () => {
  const limit = (underHead: string) => documentOf({ plug: { underHead } }).remedies[1]?.window?.limit_Nm;
  expect(limit("1/2 in")).toBe(limit("12.7 mm"));
  expect(limit("1/2 in")).toBeGreaterThan(0);
});

test("a decimal comma is a decimal point", () => {
  expect(documentOf({ left: { turns: "3,5" } }).asFound).toEqual(documentOf({ left: { turns: "3.5" } }).asFound);
  expect(documentOf({ left: { turns: "3 1/2" } }).asFound).toEqual(documentOf({ left: { turns: "3.5" } }).asFound);
});
