import type { BookVerdict } from "../../mechanics/joint/bookFigures.ts";
import type { TurnsRemark } from "../../mechanics/joint/carryingTurns.ts";
import { oddsAt, type TorqueWindow, torqueAt } from "../../mechanics/joint/window.ts";
import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { Nm } from "../../mechanics/quantity/unit.ts";
import { estimate } from "../../mechanics/quantity/working.ts";
import { limitFigure, needFigure, torqueFigure, torqueText } from "./figures.ts";
import { oddsText } from "./oddsWords.ts";
import { leastOf } from "./windowWords.ts";

/** Why: the odds in words, the third rule, and what the book figures would do. */
export function windowReasons(window: TorqueWindow, books_Nm: readonly number[]): readonly string[] {
  const { medianStrip_Nm, need_Nm, floor_Nm, cautiousRule_Nm, strips, open, narrow } = window;
  const reasons = [
    torqueAt(strips, 0.01) < 0.05
      ? `More than 1 in 100 such joints strips at any pull; half of them at ${torqueText(medianStrip_Nm)}.`
      : `1 in 100 such joints would strip at ${limitFigure(torqueAt(strips, 0.01))}, half of them at ${torqueText(medianStrip_Nm)}.`,
    `The seal closes 19 times in 20 at ${needFigure(need_Nm)} N·m.`,
  ];
  if (floor_Nm !== null && floor_Nm > need_Nm)
    reasons.push(`Below ${torqueText(floor_Nm)} vibration may walk it loose.`);
  if (!open)
    reasons.push(
      "More torque opens no window: another seal, a longer plug, a new thread in the hole or a better count may.",
    );
  if (narrow) reasons.push("The window is narrow: count again, or change the seal, the plug or the hole.");
  for (const book_Nm of books_Nm) {
    const odds = oddsText(oddsAt(strips, book_Nm));
    reasons.push(
      odds === "rare"
        ? `Stripping at the book's ${torqueFigure(book_Nm)} would be rare.`
        : `The book's ${torqueFigure(book_Nm)} would strip ${odds}.`,
    );
  }
  reasons.push(`By the third rule of NASA RP-1228 it strips at ${limitFigure(cautiousRule_Nm)} N·m.`);
  return reasons;
}

/** Where the book's figure for a healthy port lies outside the window, or is meant for another seal; null where neither. */
export function bookRemark(torque_Nm: number, window: TorqueWindow | null, meantFor: string | null): string | null {
  const book = `The book's ${torqueFigure(torque_Nm)} N·m`;
  if (window && torque_Nm > window.limit_Nm)
    return `${book} is over the careful limit of ${limitFigure(window.limit_Nm)}: is it for this thread and this seal?`;
  if (window && torque_Nm < leastOf(window))
    return `${book} is under the ${needFigure(leastOf(window))} that this closure needs: is it for this thread and this seal?`;
  return meantFor === null ? null : `${book} stands beside another seal (${meantFor}): ask for the figure of this one.`;
}

/** What the figures of the workshop's book are to each other. */
export function bookSentence(verdict: BookVerdict): string | null {
  switch (verdict.type) {
    case "one figure":
      return null;
    case "same for the wrench":
      return `The book's figures are the same for your wrench: between them lies ${torqueText(verdict.between_Nm)}.`;
    case "same in another unit":
      return `The book's figures are one figure in two units (${verdict.unit} and N·m): ${figure(verdict)}.`;
    case "different joints":
      return `The book's figures belong to different joints; for this seal and surface it says ${figure(verdict)}.`;
    case "unresolved":
      return verdict.lower
        ? `The book's figures disagree and nothing says why: in a light alloy the lower that still reaches the seal's need, ${figure(verdict)}.`
        : `The book's figures disagree and nothing says why: ask for the seal and the surface of each; ${figure(verdict)} is the higher.`;
    default:
      return verdict satisfies never;
  }
}

const figure = ({ figure }: Extract<BookVerdict, { figure: unknown }>): string =>
  `${torqueText(valueIn(Nm, figure.torque))} (${figure.source})`;

export const turnsRemarkSentences: Readonly<Record<Exclude<TurnsRemark, "under the chamfer">, string>> = {
  "thread ahead not measured":
    "The turns gained hold only while thread is left ahead; nobody has measured where it ends.",
  "thread ends here": "Going deeper gains no more: the thread ends there.",
  "count and lengths disagree":
    "The count and the measured ends of the thread disagree: count again. The fewer turns are taken.",
};

/** Turns that are not counted under the chamfer of an O-ring: how deep it is, and how that is known. */
export function underChamfer(measured: Quantity | null): string {
  const how = measured?.origin.type === "reading" ? ` (${measured.origin.evidence})` : "";
  const depth = measured
    ? `Its depth as measured: ${estimate(measured)}${how}.`
    : "Its depth was not measured: 1.1 to 1.45 times the ring's cord is taken.";
  return `Turns under the O-ring's chamfer are not counted. ${depth}`;
}
