import { describe, expect, test } from "vitest";
import { checkRuns } from "../../../bench/checkRuns.ts";
import { weighingOf } from "../../../bench/givenPort.ts";
import { drawnWindow, quantileDrawn, shareBelow } from "../../../bench/monteCarlo.ts";
import { oddsAt, torqueAt, torqueWindow } from "../../../src/mechanics/joint/window.ts";

/** Within a share of the printed figure, or half of its last digit where that is more. */
function near(actual: number, printed: string, share: number): void {
  const lastDigit = 0.5 * 10 ** -(printed.split(".")[1]?.length ?? 0);
  const tolerance = Math.max(share * Number(printed), 1.001 * lastDigit);
  expect(Math.abs(actual - Number(printed)), `${actual} against ${printed}`).toBeLessThanOrEqual(tolerance);
}

describe.each(checkRuns)("$name", ({ given, strips, odds, closes, thirdRule }) => {
  const weighing = weighingOf(given);
  const window = torqueWindow(weighing);

  test("strips where the check runs say", () => {
    near(torqueAt(window.strips, 0.01), strips[0], 0.01);
    near(torqueAt(window.strips, 0.05), strips[1], 0.01);
    near(torqueAt(window.strips, 0.5), strips[2], 0.01);
    for (const [torque_Nm, probability] of odds)
      near(oddsAt(window.strips, torque_Nm), probability, Number(probability) < 1e-3 ? 0.1 : 0.03);
  });

  test("closes where the check runs say", () => {
    near(torqueAt(window.closes, 0.5), closes[0], 0.01);
    near(window.need_Nm, closes[1], 0.01);
  });

  test("strips by the third rule where the check runs say", () => near(window.cautiousRule_Nm, thirdRule, 0.01));

  test("agrees with plain drawing of the same formulas", () => {
    const count = 200_000;
    const drawn = drawnWindow(weighing, count, 20261125);
    for (const p of [0.01, 0.05, 0.5]) {
      // Five standard errors of the drawn share, at the torque that the window gives for it.
      const share = shareBelow(drawn.strips, torqueAt(window.strips, p));
      expect(Math.abs(share - p)).toBeLessThan(5 * Math.sqrt((p * (1 - p)) / count));
    }
    expect(quantileDrawn(drawn.closes, 0.95) / window.need_Nm).toBeCloseTo(1, 2);
  });
});
