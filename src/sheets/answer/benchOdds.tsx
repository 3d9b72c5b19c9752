import { render } from "preact-render-to-string";
import { oddsAt } from "../../mechanics/joint/window.ts";
import { numberAtStart } from "../../mechanics/quantity/numberText.ts";
import { valueIn } from "../../mechanics/quantity/quantity.ts";
import { quantityFromText } from "../../mechanics/quantity/quantityText.ts";
import { Nm, onScale } from "../../mechanics/quantity/unit.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import { OddsPicture } from "../drawings/OddsPicture.tsx";
import { pullFigure } from "../words/figures.ts";
import { leastOf } from "../words/windowWords.ts";

/** The torque at which somebody asks for the odds, as it was typed; null for the one that lies nearest. */
export type TriedTorque = string | null;

export type BenchOdds = {
  /** The torque they are for, N·m, as it is read off a wrench. */
  readonly at: string;
  readonly picture: string;
};

/** A hundred joints like the one as found at one torque; null where it is refused, or the torque does not read. */
export function benchOdds(weighed: Weighed, tried: TriedTorque): BenchOdds | null {
  const { window } = weighed.asFound;
  if (!window) return null;
  const torque_Nm = tried === null ? nearestTorque(weighed) : torqueOf(tried);
  if (torque_Nm === null) return null;
  const at = pullFigure(torque_Nm);
  const [strips, closes] = [oddsAt(window.strips, torque_Nm), oddsAt(window.closes, torque_Nm)];
  return { at, picture: render(<OddsPicture torqueText={`${at} N·m`} strips={strips} closes={closes} />) };
}

/** What would be pulled without us, the book's figure; else what is advised; else what the seal needs. */
function nearestTorque({ asFound, portCase }: Weighed): number | null {
  const [book] = portCase.bookFigures;
  if (book) return valueIn(Nm, book.torque);
  if (asFound.advice?.type === "pull") return asFound.advice.torque_Nm;
  return asFound.window && Math.ceil(leastOf(asFound.window));
}

function torqueOf(text: string): number | null {
  const bare = numberAtStart(text);
  const read = quantityFromText(bare.ok && bare.rest === "" ? `${text} N·m` : text, Nm.kind);
  if (!read.ok || read.written.value <= 0) return null;
  return onScale(read.written.value * read.written.unit.inSI, Nm);
}
