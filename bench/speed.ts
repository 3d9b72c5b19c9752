import { torqueWindow } from "../src/mechanics/joint/window.ts";
import { checkRuns } from "./checkRuns.ts";
import { weighingOf } from "./givenPort.ts";
import { drawnWindow } from "./monteCarlo.ts";
import { timed } from "./timed.ts";

/** How long the window of one closure takes, and plain drawing beside it. */
export type Speed = {
  readonly name: string;
  readonly median_ms: number;
  readonly least_ms: number;
  readonly drawing_ms: number;
};

const rounds = 200;

/** Every check run's window, warmed up, beside 100 000 drawn joints. */
export function windowSpeed(): readonly Speed[] {
  const weighings = checkRuns.map(({ name, given }) => ({ name, weighing: weighingOf(given) }));
  for (let i = 0; i < 30; i++) for (const { weighing } of weighings) torqueWindow(weighing);
  return weighings.map(({ name, weighing }) => {
    const times = Array.from({ length: rounds }, () => timed(() => torqueWindow(weighing))).sort((a, b) => a - b);
    return {
      name,
      median_ms: times[rounds / 2] as number,
      least_ms: times[0] as number,
      drawing_ms: timed(() => drawnWindow(weighing, 100_000, 1)),
    };
  });
}
