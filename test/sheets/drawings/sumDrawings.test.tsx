import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { MarginDays } from "../../../src/sheets/drawings/MarginDays.tsx";
import { standaloneSvg } from "../../../src/sheets/drawings/standalone.ts";
import { expectCommitted } from "./committedDrawing.ts";
import { expectInside } from "./drawnPoints.ts";

const days = (low_d: number | null, high_d: number | null) => ({ low_d, high_d });
describe("pinned", () => {
  test.each([
    ["margin-days.svg", <MarginDays counted={days(3.5, 8.7)} parked={days(1.7, 21.6)} driven={days(0.9, 10.8)} />],
    ["margin-days-open.svg", <MarginDays counted={days(40, 90)} parked={days(7, null)} driven={days(3.5, null)} />],
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
});
