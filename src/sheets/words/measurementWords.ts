import type { StrengthShare, StrengthTerm } from "../../mechanics/joint/strengthShares.ts";
import type { Measurement } from "../../mechanics/remedies/nextMeasurement.ts";
import { limitFigure } from "./figures.ts";

/** What a better reading would do, and whether it is worth the walk. */
export function measurementSentence(it: Measurement): string {
  const { limitNow_Nm, limitThen_Nm } = it;
  const [now, after] = [limitFigure(limitNow_Nm), limitFigure(limitThen_Nm)];
  const opens = it.opens ? " and opens the window" : "";
  const small =
    now === after ? `hardly moves the limit of ${now} N·m` : `hardly moves the limit (${now} to ${after} N·m)`;
  if (!it.worthIt) return `${measured(it)}: ${small}, not worth a walk.`;
  if (now === after) return `${measured(it)}: keeps the limit at ${now} N·m${opens}.`;
  const moves = limitThen_Nm > limitNow_Nm ? "rise" : "fall";
  return `${measured(it)}: the limit would ${moves} from ${now} to ${after} N·m${opens}.`;
}

/** The first of the measurements that is worth it, or that none is. */
export function nextSentence(measurements: readonly Measurement[]): string | null {
  if (measurements.length === 0) return null;
  const worth = measurements.find((it) => it.worthIt);
  return worth
    ? measurementSentence(worth)
    : "Nothing here is worth measuring again: no reading would move the limit by a tenth.";
}

/** Where the spread of the strip torque comes from: "model 44 %, turns 30 %, strength 12 %". */
export const sharesText = (shares: readonly StrengthShare[]): string =>
  shares
    .filter(({ share }) => share >= 0.02)
    .map(({ term, share }) => `${termNames[term]} ${Math.round(100 * share)} %`)
    .join(", ");

function measured({ reading, how }: Measurement): string {
  switch (reading) {
    case "left.turns":
      return `Count the turns again ${how}`;
    case "left.height":
      return "Measure the bore with a caliper for the thread height";
    case "case.material":
      return "Know which alloy it is";
    default:
      return reading satisfies never;
  }
}

const termNames: Readonly<Record<StrengthTerm, string>> = {
  strength: "strength of the casting",
  "shear ratio": "shear ratio",
  model: "model against castings",
  turns: "turns",
  height: "thread height",
  area: "tolerance of the thread",
  friction: "friction",
  wrench: "wrench",
};
