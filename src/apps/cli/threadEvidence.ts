import { normal } from "../../mechanics/quantity/distribution.ts";
import { exact, type Quantity, reading, valueIn } from "../../mechanics/quantity/quantity.ts";
import { inches, mm } from "../../mechanics/quantity/unit.ts";
import {
  GREATEST_WEAR_mm,
  readingUncertainty_mm,
  type ThreadEvidence,
} from "../../mechanics/threads/namingEvidence.ts";
import { countFromText } from "./counts.ts";
import { meshFelt } from "./meshFelt.ts";
import { mistaken } from "./mistake.ts";
import { positiveOption, quantityOption } from "./options.ts";

/** What was measured of an unknown thread, as options. `worn` is true where it was given without a figure. */
export type ThreadOptions = {
  readonly outside?: string;
  readonly worn?: string | true;
  readonly gaps?: string;
  readonly gauge?: readonly string[];
  readonly bore?: string;
  readonly travel?: string;
  readonly taper?: string;
  readonly meshes?: string;
  readonly hexagon?: string;
  readonly sister?: string;
};

/** The evidence that the options give. @throws InputMistake if one cannot be read, or none speaks of the thread. */
export function threadEvidence(options: ThreadOptions): readonly [ThreadEvidence, ...ThreadEvidence[]] {
  const { outside, worn, gauge = [], hexagon, sister } = options;
  if (worn !== undefined && outside === undefined)
    throw mistaken("--worn", worn === true ? null : worn, "--outside with it: worn where that was measured");
  const [first, ...more] = [
    ...each(outside, (it) => outsideDiameter(it, worn)),
    ...each(options.gaps, gapsOnRule),
    ...gauge.map(pitchGauge),
    ...each(options.bore, boreAtMouth),
    ...each(options.travel, travelInTurns),
    ...each(options.taper, taperOver),
    ...each(options.meshes, meshFelt),
  ];
  const flats = each(hexagon ?? sister, () => hexagons(hexagon, sister));
  if (!first)
    throw mistaken("--outside", null, "it, --gaps, --gauge, --bore, --travel, --taper or --meshes, or more of them");
  return [first, ...more, ...flats];
}

const each = <A, B>(given: A | undefined, read: (it: A) => B): readonly B[] =>
  given === undefined ? [] : [read(given)];

/** A length that was read with a standard uncertainty of `u_mm`. */
function measured(option: string, symbol: string, example: string, text: string, u_mm: number): Quantity {
  const { value } = positiveOption(option, symbol, "length", example, text);
  return reading(symbol, normal(value / mm.inSI, u_mm), mm, option, "read");
}

const ordinaryWear = exact("w", GREATEST_WEAR_mm, mm, "the most that crests are taken to be worn (judgement)");

function outsideDiameter(text: string, worn: string | true | undefined): ThreadEvidence {
  const how = worn === undefined ? "caliper, clean" : "caliper, worn or dirty";
  return {
    type: "outside diameter",
    diameter: measured("--outside", "d", "19.9 mm", text, readingUncertainty_mm[how]),
    wearUpTo: typeof worn === "string" ? positiveOption("--worn", "w", "length", "0.1 mm", worn) : ordinaryWear,
  };
}

const boreAtMouth = (text: string): ThreadEvidence => ({
  type: "bore",
  diameter: measured("--bore", "D_1", "18.4 mm", text, readingUncertainty_mm["inside jaws, bore"]),
  wearUpTo: ordinaryWear,
});

/** "8 in 12.1 mm", "eight gaps in 12.1 mm": gaps from crest to crest along a rule. */
function gapsOnRule(text: string): ThreadEvidence {
  const example = "8 in 12.1 mm";
  const [said, length] = inTwo("--gaps", text, example);
  const count = countFromText(said.replace(/\s*gaps?$/i, ""));
  if (count === null || !Number.isInteger(count) || count < 1 || count > MOST_COUNTED)
    throw mistaken("--gaps", text, `1 to ${MOST_COUNTED} whole gaps, as "${example}"`);
  return {
    type: "gaps",
    count,
    length: measured("--gaps", "L", example, length, readingUncertainty_mm["rule, any length"]),
  };
}

/** "5 turns in 7.6 mm", "two and a half turns in 3.8 mm". */
function travelInTurns(text: string): ThreadEvidence {
  const example = "5 turns in 7.6 mm";
  const [said, length] = inTwo("--travel", text, example);
  const turns = countFromText(said.replace(/\s*turns?$/i, ""));
  if (turns === null || turns <= 0 || turns > MOST_COUNTED)
    throw mistaken("--travel", text, `up to ${MOST_COUNTED} turns, as "${example}"`);
  return {
    type: "travel",
    turns,
    length: measured("--travel", "L", example, length, readingUncertainty_mm["depth rod, travel"]),
  };
}

/** More than any plug has. */
const MOST_COUNTED = 60;

/** "0.6 mm in 10 mm": how much the diameter grows over a length. */
function taperOver(text: string): ThreadEvidence {
  const example = "0.6 mm in 10 mm";
  const [change, over] = inTwo("--taper", text, example);
  const read = quantityOption("--taper", "dd", "length", example, change);
  const u_mm = Math.SQRT2 * readingUncertainty_mm["caliper, clean"];
  return {
    type: "taper",
    change: reading("dd", normal(valueIn(mm, read), u_mm), mm, "--taper", "two diameters by caliper"),
    over: measured("--taper", "l", example, over, readingUncertainty_mm["rule, any length"]),
  };
}

/** "1.5 mm", "18/in", "not 1.25 mm": a leaf of the gauge that seats without light, or does not. */
function pitchGauge(text: string): ThreadEvidence {
  const [, not, leaf = ""] = /^\s*(not\s+)?(.*?)\s*$/i.exec(text) ?? [];
  const perInch = /^(\d+(?:[.,]\d+)?)\s*(?:\/|per\s|to the\s)\s*(?:in|inch|″|")$/i.exec(leaf)?.[1]?.replace(",", ".");
  if (!/^\d/.test(leaf) || (perInch !== undefined && Number(perInch) === 0))
    throw mistaken("--gauge", text, '"1.5 mm" or "18/in" for a leaf that seats, "not 1.25 mm" for one that does not');
  const pitch =
    perInch === undefined
      ? positiveOption("--gauge", "P", "length", "1.5 mm", leaf)
      : exact("P", 1 / Number(perInch), inches, "leaf");
  return { type: "pitch gauge", leaf: pitch, seats: not === undefined };
}

/** Across the flats of this plug and of its sister. */
function hexagons(plug: string | undefined, sister: string | undefined): ThreadEvidence {
  if (plug === undefined) throw mistaken("--hexagon", null, "with --sister: across the flats of this plug");
  if (sister === undefined)
    throw mistaken("--sister", null, "with --hexagon: across the flats of the plug in the sound port");
  const flats = (option: string, text: string): Quantity =>
    measured(option, "s", "24 mm", text, readingUncertainty_mm["caliper, clean"]);
  return { type: "hexagon", plug: flats("--hexagon", plug), sister: flats("--sister", sister) };
}

/** What stands before and after the "in" that is no inch. @throws InputMistake if it is not two. */
function inTwo(option: string, text: string, example: string): readonly [string, string] {
  const [before, after, more] = text.split(/\s+in\s+/i).map((it) => it.trim());
  if (!before || !after || more !== undefined) throw mistaken(option, text, `"${example}"`);
  return [before, after];
}
