import type { RemedyId } from "../../mechanics/remedies/method.ts";
import type { BreakEven, Objection, Ranked } from "../../mechanics/remedies/ranking.ts";
import type { Chips, Failure, Undo } from "../../mechanics/tables/methodEstimates.ts";
import { lowered } from "./firstLetter.ts";
import { remedyNames } from "./remedyWords.ts";

/** What the owner is told, in one sentence without a word of the trade. */
export const ownerSentences: Readonly<Record<RemedyId, string>> = {
  "ordinary reseal": "Normal service.",
  "new plug": "The bolt was worn, the housing is fine.",
  "lower torque": "The thread is hurt; it holds as long as nobody tightens it harder than its tag says.",
  "first thread cleaned": "We straighten the first thread.",
  "longer plug": "A longer bolt bites in fresh metal. Keep this bolt.",
  "longer plug, bonded seal": "A longer bolt bites in fresh metal. Keep this bolt.",
  "other seal: aluminium": "Another sealing ring.",
  "other seal: copper": "Another sealing ring.",
  "other seal: fibre": "A softer seal that needs less force.",
  "other seal: crush ring": "A softer seal that needs less force.",
  "other seal: bonded seal": "A softer seal that needs less force.",
  "other seal: O-ring": "A softer seal that needs less force.",
  "sealant, no washer":
    "It keeps the oil in. It is not a new thread. Only to be opened by someone who has read its tag.",
  "self-cutting plug": "It gets you home. It is not a repair.",
  "next size": "Next size up. The bolt is now bigger; that is noted.",
  "next size, other thread": "Next size up, of another kind. The bolt is now bigger; that is noted.",
  "wire coil": "A thread of steel in your housing, made to be opened often.",
  "solid bushing": "A sleeve of steel in your housing: stronger than new.",
  "bonded bush": "A sleeve made for your part.",
  "cast thread": "It gets you through the season.",
  "expanding bung": "Not to be worked until it is out.",
  "closed for good": "This opening is retired; the tag says where the new one is.",
  "welded and re-cut": "The housing is rebuilt there.",
  "adaptor plate": "A plate with a new opening, bolted on beside the damage.",
  "stud and nut": "A stud saves the casting next time.",
  "new part": "A clean end to it.",
  "left and watched": "It loses a little. We look again on the day we name.",
};

/** What the owner calls a method. */
export const ownerNames: Readonly<Record<RemedyId, string>> = {
  "ordinary reseal": "Normal service",
  "new plug": "A new bolt",
  "lower torque": "Keep it, tightened gently",
  "first thread cleaned": "Straighten the first thread",
  "longer plug": "A longer bolt",
  "longer plug, bonded seal": "A longer bolt and a softer seal",
  "other seal: aluminium": "Another sealing ring",
  "other seal: copper": "Another sealing ring",
  "other seal: fibre": "A softer seal",
  "other seal: crush ring": "A softer seal",
  "other seal: bonded seal": "A softer seal",
  "other seal: O-ring": "A softer seal",
  "sealant, no washer": "Seal what is left",
  "self-cutting plug": "A bolt to get home on",
  "next size": "A bigger bolt",
  "next size, other thread": "A bigger bolt of another kind",
  "wire coil": "A new steel thread, the same bolt",
  "solid bushing": "A steel sleeve, the same bolt",
  "bonded bush": "A sleeve made for it",
  "cast thread": "A filler for the season",
  "expanding bung": "A stopper while it waits",
  "closed for good": "Close it and use another opening",
  "welded and re-cut": "Rebuild the housing there",
  "adaptor plate": "A plate with a new opening",
  "stud and nut": "A stud instead of the bolt",
  "new part": "A new part",
  "left and watched": "Leave it and look again",
};

/** How a method is undone. */
export const undoWords: Readonly<Record<Undo, string>> = {
  unscrewed: "unscrewed",
  "scraper and solvent": "with a scraper and solvent",
  "only by the next larger method": "not: the next step is a larger one",
  "coil wound out": "the coil is wound out",
  "drilled out": "drilled out",
  "cut out": "cut out",
  unbolted: "unbolted",
};

/** What a method leaves of chips. */
export const chipsWords: Readonly<Record<Chips, string>> = {
  none: "no chips",
  trace: "a trace of chips",
  "inside, little": "some chips inside",
  "inside, loose": "loose chips inside",
  "off the unit": "chips, away from the unit",
};

/** How a method fails: the words are its own. */
export const failureWord = (failure: Failure): string => failure;

/** Why an offer stands behind others. */
export const objectionWords: Readonly<Record<Objection, string>> = {
  "over the ceiling": "over the price ceiling",
  "not today": "not ready today",
  "opens badly again": "opens badly again",
};

/** "60 more than a longer plug; a comeback costs about 190: worth it if it avoids more than 1 comeback in 3; it avoids about 1 in 4." */
export function breakEvenSentence({ against, extra, comeback, share, avoids }: BreakEven): string {
  const than = `${moneyFigure(extra)} more than ${lowered(remedyNames[against])}`;
  const costs = `a comeback costs about ${moneyFigure(comeback)}`;
  if (share >= 1) return `${than}; ${costs}: by money alone it is not worth it.`;
  return `${than}; ${costs}: worth it if it avoids more than ${comebacks(share)}; ${avoidsText(avoids)}.`;
}

/** A price in round figures: to 5 below 100, to 10 above. */
const moneyFigure = (amount: number): string => {
  const step = amount < 100 ? 5 : 10;
  return amount === 0 ? "0" : String(Math.max(step, step * Math.round(amount / step)));
};

/** "80 to 110". */
export const priceText = ({ price }: Ranked): string => {
  const [low, high] = [moneyFigure(price.low), moneyFigure(price.high)];
  return low === high ? `about ${low}` : `${low} to ${high}`;
};

/** "about 1 in 4 come back within a year (estimate)". */
export function comesBackText({ comesBack }: Ranked): string {
  if (!comesBack) return "";
  const chance =
    comesBack.likely < 0.0095 ? "fewer than 1 in 100" : `about 1 in ${Math.max(1, Math.round(1 / comesBack.likely))}`;
  const basis =
    comesBack.basis === "estimate"
      ? "estimate"
      : `${comesBack.basis === "own record" ? "our own" : "estimate and our own"} ${comesBack.cases}: ${comesBack.cameBack} came back`;
  return `${chance} back within a year (${basis})`;
}

/** What it avoids by the estimates or the own record. */
const avoidsText = (avoids: number): string =>
  avoids < 0.005 ? "as far as we know it avoids none" : `as far as we know it avoids about 1 in ${inOne(avoids)}`;

/** "1 comeback in 3"; from a half on "7 comebacks in 10", for nobody counts in one and a third. */
const comebacks = (share: number): string =>
  share < 0.5 ? `1 comeback in ${inOne(share)}` : `${Math.min(9, Math.round(10 * share))} comebacks in 10`;

const inOne = (share: number): string => {
  const n = 1 / share;
  return n < 3 ? String(Math.round(10 * n) / 10) : String(Math.round(n));
};
