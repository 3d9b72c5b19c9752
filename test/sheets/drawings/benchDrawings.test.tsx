import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cureClocks } from "../../../src/mechanics/cure/clocks.ts";
import { ordinaryFront } from "../../../src/mechanics/cure/front.ts";
import { exact } from "../../../src/mechanics/quantity/quantity.ts";
import { degC, mm, percent } from "../../../src/mechanics/quantity/unit.ts";
import { CureClock } from "../../../src/sheets/drawings/cure/CureClock.tsx";
import { LevelGauge } from "../../../src/sheets/drawings/level/LevelGauge.tsx";
import { LimitFan } from "../../../src/sheets/drawings/limit/LimitFan.tsx";
import { standaloneSvg } from "../../../src/sheets/drawings/standalone.ts";
import { expectCommitted } from "./committedDrawing.ts";
import { expectInside } from "./drawnPoints.ts";

const clock = (width_mm: number, t_degC: number, humidity: number) => {
  const air = { T: exact("T", t_degC, degC), RH: exact("RH", humidity, percent) };
  const joint = { width: exact("w", width_mm, mm), open: "one edge", air, front: ordinaryFront, label: null } as const;
  return <CureClock clocks={cureClocks(joint)} caption="Sealed joint" splashText="1 h 30 min" throughText="54 h" />;
};
const sightings = [
  { at_km: 0, below_mm: 0 },
  { at_km: 1500, below_mm: 2 },
  { at_km: 3000, below_mm: 3 },
  { at_km: 5000, below_mm: 6 },
];

describe("pinned", () => {
  test("cure-clock.svg", () => expectCommitted("cure-clock.svg", standaloneSvg(clock(3, 12, 65))));
  test("level-gauge.svg", () => {
    expectCommitted("level-gauge.svg", standaloneSvg(<LevelGauge level_mm={-8} lowest_mm={-5} perHeight_ml_mm={22} />));
  });
  test("limit-fan.svg", () => {
    const reached = { likely_km: 8600, earliest_km: 6800, latest_km: 12_600 };
    expectCommitted("limit-fan.svg", standaloneSvg(<LimitFan sightings={sightings} limit_mm={10} reached={reached} />));
  });
});

describe("laws", () => {
  test("nothing lies outside the sheet", () => {
    const width = fc.double({ min: 0.5, max: 12, noNaN: true });
    fc.assert(
      fc.property(width, fc.integer({ min: 3, max: 35 }), fc.integer({ min: 25, max: 90 }), (w, t, rh) =>
        expectInside(standaloneSvg(clock(w, t, rh))),
      ),
      { numRuns: 100 },
    );
    fc.assert(
      fc.property(fc.integer({ min: -40, max: 2 }), fc.integer({ min: -15, max: -1 }), (level, lowest) =>
        expectInside(standaloneSvg(<LevelGauge level_mm={level} lowest_mm={lowest} perHeight_ml_mm={20} />)),
      ),
      { numRuns: 100 },
    );
  });

  test("a level that does not tell is drawn without a fan", () => {
    const svg = standaloneSvg(<LimitFan sightings={sightings} limit_mm={10} reached={null} />);
    expect(svg).toContain("not enough data");
    expect(svg).not.toContain('class="hatch"');
  });
});
