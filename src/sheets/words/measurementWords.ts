import type { StrengthShare, StrengthTerm } from "../../mechanics/joint/strengthShares.ts";
import type { MeasureFirst } from "../../mechanics/remedies/measureFirst.ts";
import type { Measurement } from "../../mechanics/remedies/nextMeasurement.ts";
import { limitFigure } from "./figures.ts";
import { lowered } from "./firstLetter.ts";
import { remedyNames } from "./remedyWords.ts";

/** What a better reading would do, and whether it is worth the walk. */
export function measurementSentence(it: Measurement): string {
  const { limitNow_Nm, limitThen_Nm } = it;
  const [now, after] = [limitFigure(limitNow_Nm), limitFigure(limitThen_Nm)];
  const opens = it.opens ? " and opens the window" : "";
  if (it.worthIt && it.best && limitsOf(it.best)[0] !== limitsOf(it.best)[1] && now === after)
    return bestSentence(it, it.best);
  const small =
    now === after ? `hardly moves the limit of ${now} N·m` : `hardly moves the limit (${now} to ${after} N·m)`;
  if (!it.worthIt) return `${measured(it)}: ${small}, not worth a walk.`;
  if (now === after) return `${measured(it)}: keeps the limit at ${now} N·m${opens}.`;
  const moves = limitThen_Nm > limitNow_Nm ? "rise" : "fall";
  return `${measured(it)}: the limit would ${moves} from ${now} to ${after} N·m${opens}.`;
}

const limitsOf = ({ limitNow_Nm, limitThen_Nm }: Pick<Measurement, "limitNow_Nm" | "limitThen_Nm">) =>
  [limitFigure(limitNow_Nm), limitFigure(limitThen_Nm)] as const;

/** What it does to the remedy that would be done, where the joint as it is hardly moves. */
function bestSentence(it: Measurement, best: NonNullable<Measurement["best"]>): string {
  const [now, after] = limitsOf(best);
  return `${measured(it)}: with ${lowered(remedyNames[best.id])} the limit would go from ${now} to ${after} N·m.`;
}

/** What cannot be judged before a length is measured. */
export function measureFirstSentence({ reading, decides }: MeasureFirst): string {
  const [first, ...others] = decides;
  const names = [first, ...(others.length > 1 ? [] : others)].flatMap((id) => (id ? [lowered(remedyNames[id])] : []));
  const more = others.length > 1 ? ` and ${others.length} other ways` : "";
  return `${lengthMeasured[reading]}: ${names.join(" and ")}${more} cannot be judged without it.`;
}

const lengthMeasured: Readonly<Record<MeasureFirst["reading"], string>> = {
  "case.threadDepth": "Hook the depth of the hole",
  "case.thinnestWall": "Measure from the edge of the hole to the outside, thinnest side",
  "case.roomBehind": "Push a blunt wire in for the room behind, and turn the shaft once",
  "plug.underHead": "Measure the plug from under its head to its tip",
};

/** The first of the measurements that is worth it with its share of the spread, or that none is. */
export function nextSentence(measurements: readonly Measurement[]): string | null {
  if (measurements.length === 0) return null;
  const worth = measurements.find((it) => it.worthIt);
  return worth
    ? `${measurementSentence(worth)} ${shareSentence(worth)}`
    : "Nothing here is worth measuring again: no reading would move the limit by a tenth.";
}

/** Where the spread of the strip torque comes from: "model 44 %, turns 30 %, strength 12 %". */
export const sharesText = (shares: readonly StrengthShare[]): string =>
  shares
    .filter(({ share }) => share >= 0.02)
    .map(({ term, share }) => `${termNames[term]} ${Math.round(100 * share)} %`)
    .join(", ");

/** "The count makes 44 % of the spread." */
const shareSentence = ({ reading, share }: Measurement): string =>
  `${readingMakes[reading]} ${Math.round(100 * share)} % of the spread.`;

const readingMakes: Readonly<Record<Measurement["reading"], string>> = {
  "left.turns": "The count makes",
  "left.height": "The height of the thread makes",
  "case.material": "The alloy makes",
};

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
