import { normal } from "../quantity/distribution.ts";
import { exact, type Quantity, reading, valueIn } from "../quantity/quantity.ts";
import { inches, mm } from "../quantity/unit.ts";
import { GREATEST_WEAR_mm, readingUncertainty_mm, type ThreadEvidence } from "./namingEvidence.ts";

/** A length as it was measured, known as well as its instrument reads at the lift. */
type Measured = { readonly length: Quantity; readonly id: string };

/** Over the middle threads of the plug by caliper; worn or dirty crests are read less well, and are worn by `wearUpTo` at most. */
export const outsideRead = (it: Measured, worn: boolean, wearUpTo: Quantity): ThreadEvidence => ({
  type: "outside diameter",
  diameter: known("d", it, worn ? "caliper, worn or dirty" : "caliper, clean"),
  wearUpTo,
});

/** The mouth of the hole by inside jaws. */
export const boreRead = (it: Measured): ThreadEvidence => ({
  type: "bore",
  diameter: known("D_1", it, "inside jaws, bore"),
  wearUpTo: ordinaryWear,
});

/** Gaps from crest to crest along a rule. */
export const gapsRead = (count: number, it: Measured): Extract<ThreadEvidence, { type: "gaps" }> => ({
  type: "gaps",
  count,
  length: known("L", it, "rule, any length"),
});

/** Turns and how far they travel. */
export const travelRead = (turns: number, it: Measured): ThreadEvidence => ({
  type: "travel",
  turns,
  length: known("L", it, "depth rod, travel"),
});

/** More gaps or turns than any plug has. */
export const MOST_COUNTED = 60;

/** How much the diameter grows over a length: two diameters by caliper, each with its own error. */
export const taperRead = (change: Measured, over: Measured): ThreadEvidence => ({
  type: "taper",
  change: reading(
    "dd",
    normal(valueIn(mm, change.length), Math.SQRT2 * readingUncertainty_mm["caliper, clean"]),
    mm,
    change.id,
    "two diameters by caliper",
  ),
  over: known("l", over, "rule, any length"),
});

/** How much the hole narrows over a depth: two readings of inside jaws, each with its own error. */
export const holeTaperRead = (change: Measured, over: Measured): ThreadEvidence => ({
  type: "hole taper",
  change: reading(
    "dD",
    normal(valueIn(mm, change.length), Math.SQRT2 * readingUncertainty_mm["inside jaws, bore"]),
    mm,
    change.id,
    "two readings of inside jaws",
  ),
  over: known("l", over, "rule, any length"),
});

/** A leaf of the pitch gauge that seats without light, or does not. */
export const leafRead = (leaf: Quantity, seats: boolean): ThreadEvidence => ({ type: "pitch gauge", leaf, seats });

/** Across the flats of this plug and of its sister in the sound port. */
export const hexagonsRead = (plug: Measured, sister: Measured): ThreadEvidence => ({
  type: "hexagon",
  plug: known("s", plug, "caliper, clean"),
  sister: known("s", sister, "caliper, clean"),
});

/** The pitch P of a leaf that is named by its threads per inch, as "18/in"; null where `text` names none. */
export function threadsPerInchFromText(text: string): Quantity | null {
  const [, count] = /^(\d+(?:[.,]\d+)?)\s*(?:\/|per\s|to the\s)\s*(?:in|inch|″|")$/i.exec(text.trim()) ?? [];
  const perInch = Number(count?.replace(",", "."));
  return perInch > 0 ? exact("P", 1 / perInch, inches, "leaf") : null;
}

/** What crests are worn by at most where nobody said. */
export const ordinaryWear = exact("w", GREATEST_WEAR_mm, mm, "the most that crests are taken to be worn (judgement)");

const known = (symbol: string, { length, id }: Measured, how: keyof typeof readingUncertainty_mm): Quantity =>
  reading(symbol, normal(valueIn(mm, length), readingUncertainty_mm[how]), mm, id, "read");
