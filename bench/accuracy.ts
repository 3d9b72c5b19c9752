import { oddsAt, torqueAt, torqueWindow } from "../src/mechanics/joint/window.ts";
import { checkRuns } from "./checkRuns.ts";
import { weighingOf } from "./givenPort.ts";
import { drawnWindow, quantileDrawn, shareBelow } from "./monteCarlo.ts";

/** One figure of the window beside the same figure drawn, and the relative difference that the method allows. */
export type Accuracy = {
  readonly name: string;
  readonly figure: string;
  readonly window: number;
  readonly drawn: number;
  readonly standardError: number;
  readonly allowed: number;
};

/** Need, limit and odds of every check run against `count` draws. Odds that fewer than 20 draws show are left out. */
export function windowAccuracy(count: number): readonly Accuracy[] {
  return checkRuns.flatMap(({ name, given, odds }) => {
    const weighing = weighingOf(given);
    const window = torqueWindow(weighing);
    const { strips, closes } = drawnWindow(weighing, count, 1947);
    const torques = [
      row("1 % strip at, N·m", torqueAt(window.strips, 0.01), strips, 0.01, 0.005),
      row("half strip at, N·m", torqueAt(window.strips, 0.5), strips, 0.5, 0.005),
      row("95 % close at, N·m", window.need_Nm, closes, 0.95, 0.005),
    ];
    const shares = odds.flatMap(([torque_Nm]) => {
      const drawn = shareBelow(strips, torque_Nm);
      if (drawn * count < 20) return [];
      const standardError = Math.sqrt((drawn * (1 - drawn)) / count);
      const allowed = drawn >= 0.01 ? 0.01 : drawn >= 1e-3 ? 0.03 : 0.1;
      return [
        {
          name,
          figure: `P(strip) at ${torque_Nm} N·m`,
          window: oddsAt(window.strips, torque_Nm),
          drawn,
          standardError,
          allowed,
        },
      ];
    });
    return [...torques, ...shares];

    function row(figure: string, value: number, sorted: Float64Array, p: number, allowed: number): Accuracy {
      const s = Math.sqrt((p * (1 - p)) / count);
      const standardError = (quantileDrawn(sorted, p + s) - quantileDrawn(sorted, p - s)) / 2;
      return { name, figure, window: value, drawn: quantileDrawn(sorted, p), standardError, allowed };
    }
  });
}
