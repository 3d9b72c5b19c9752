import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { DoubleScale } from "../../../src/sheets/drawings/DoubleScale.tsx";
import { MarginDays } from "../../../src/sheets/drawings/MarginDays.tsx";
import { standaloneSvg } from "../../../src/sheets/drawings/standalone.ts";
import { expectCommitted } from "./committedDrawing.ts";
import { expectInside } from "./drawnPoints.ts";

const days = (low_d: number | null, high_d: number | null) => ({ low_d, high_d });
const scale = (value: number, upper: string, lower: string, perUpper: number, offset: number) => (
  <DoubleScale
    upper={{ symbol: upper, figure: String(value) }}
    lower={{ symbol: lower, figure: (value * perUpper + offset).toFixed(1) }}
    value={value}
    perUpper={perUpper}
    offset={offset}
  />
);

describe("pinned", () => {
  test.each([
    ["margin-days.svg", <MarginDays counted={days(3.5, 8.7)} parked={days(1.7, 21.6)} driven={days(0.9, 10.8)} />],
    ["margin-days-open.svg", <MarginDays counted={days(40, 90)} parked={days(7, null)} driven={days(3.5, null)} />],
    ["double-scale.svg", scale(46, "N·m", "lbf·ft", 0.73756, 0)],
    ["double-scale-cold.svg", scale(-12, "°C", "°F", 1.8, 32)],
  ])("%s", (name, drawing) => expectCommitted(name, standaloneSvg(drawing)));
});

describe("laws", () => {
  test("days never leave their sheet", () => {
    const length = fc.double({ min: 0.01, max: 400, noNaN: true });
    fc.assert(
      fc.property(length, length, length, fc.boolean(), (low, more, far, goesOn) => {
        const parked = days(low, goesOn ? null : low + more + far);
        const driven = days(low / 2, goesOn ? null : (low + more + far) / 2);
        expectInside(standaloneSvg(<MarginDays counted={days(low, low + more)} parked={parked} driven={driven} />));
      }),
      { numRuns: 100 },
    );
  });

  test("two scales never leave their sheet, and say both figures", () => {
    const value = fc.double({ min: -5000, max: 5000, noNaN: true }).filter((it) => Math.abs(it) > 1e-3);
    fc.assert(
      fc.property(value, fc.double({ min: 0.001, max: 1000, noNaN: true }), (at, perUpper) => {
        const svg = standaloneSvg(scale(Number(at.toPrecision(4)), "N·m", "lbf·ft", perUpper, 0));
        expectInside(svg);
        expect(svg.match(/lbf·ft/g)?.length).toBe(2);
      }),
      { numRuns: 100 },
    );
  });
});
