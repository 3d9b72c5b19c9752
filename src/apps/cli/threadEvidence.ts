import { normal } from "../../mechanics/quantity/distribution.ts";
import { exact, type Quantity, reading, valueIn } from "../../mechanics/quantity/quantity.ts";
import { quantityFromText } from "../../mechanics/quantity/quantityText.ts";
import { inches, mm } from "../../mechanics/quantity/unit.ts";
import { knownDesignation } from "../../mechanics/threads/namingCandidates.ts";
import {
  GREATEST_WEAR_mm,
  readingUncertainty_mm,
  type ThreadEvidence,
} from "../../mechanics/threads/namingEvidence.ts";
import { mistaken } from "./mistake.ts";
import { positiveOption, quantityOption } from "./options.ts";

/** What was measured of an unknown thread, as options. */
export type ThreadOptions = {
  readonly outside?: string;
  readonly worn?: boolean;
  readonly gaps?: string;
  readonly gauge?: readonly string[];
  readonly bore?: string;
  readonly travel?: string;
  readonly taper?: string;
  readonly meshes?: string;
  readonly hexagon?: string;
  readonly sister?: string;
};

/** The evidence that the options give. @throws InputMistake if one cannot be read, or there is none. */
export function threadEvidence(options: ThreadOptions): readonly [ThreadEvidence, ...ThreadEvidence[]] {
  const { outside, gaps, gauge = [], bore, travel, taper, meshes, hexagon } = options;
  const [first, ...more] = [
    ...(outside ? [outsideDiameter(outside, options.worn ?? false)] : []),
    ...(gaps ? [gapsOnRule(gaps)] : []),
    ...gauge.map(pitchGauge),
    ...(bore ? [boreAtMouth(bore)] : []),
    ...(travel ? [travelInTurns(travel)] : []),
    ...(taper ? [taperOver(taper)] : []),
    ...(meshes ? [meshFelt(meshes)] : []),
    ...(hexagon ? [hexagons(hexagon, options.sister)] : []),
  ];
  if (!first)
    throw mistaken(
      "--outside",
      "nothing",
      "at least one of --outside, --gaps, --gauge, --bore, --travel, --taper, --meshes",
    );
  return [first, ...more];
}

const wearUpTo = exact("w", GREATEST_WEAR_mm, mm, "the most that crests are taken to be worn (judgement)");

function measured(name: string, symbol: string, example: string, text: string, u_mm: number): Quantity {
  const { value } = positiveOption(name, symbol, "length", example, text);
  return reading(symbol, normal(value / mm.inSI, u_mm), mm, name, "read");
}

function outsideDiameter(text: string, worn: boolean): ThreadEvidence {
  const u = readingUncertainty_mm[worn ? "caliper, worn or dirty" : "caliper, clean"];
  return { type: "outside diameter", diameter: measured("--outside", "d", "19.9 mm", text, u), wearUpTo };
}

const boreAtMouth = (text: string): ThreadEvidence => ({
  type: "bore",
  diameter: measured("--bore", "D_1", "18.4 mm", text, readingUncertainty_mm["inside jaws, bore"]),
  wearUpTo,
});

/** "8 in 12.1 mm": gaps from crest to crest along a rule. */
function gapsOnRule(text: string): ThreadEvidence {
  const [count = "", length = ""] = inTwo("--gaps", text, "8 in 12.1 mm");
  const gaps = counted("--gaps", count, text);
  return {
    type: "gaps",
    count: gaps,
    length: measured("--gaps", "l", "12.1 mm", length, readingUncertainty_mm["rule, any length"]),
  };
}

/** "5 turns in 7.6 mm". */
function travelInTurns(text: string): ThreadEvidence {
  const [count = "", length = ""] = inTwo("--travel", text, "5 turns in 7.6 mm");
  return {
    type: "travel",
    turns: counted("--travel", count.replace(/\s*turns?$/, ""), text),
    length: measured("--travel", "l", "7.6 mm", length, readingUncertainty_mm["depth rod, travel"]),
  };
}

/** "0.0 mm in 10 mm": how much the diameter grows over a length. */
function taperOver(text: string): ThreadEvidence {
  const [change = "", over = ""] = inTwo("--taper", text, "0.0 mm in 10 mm");
  const read = quantityOption("--taper", "dd", "length", "0.6 mm", change);
  const u = Math.SQRT2 * readingUncertainty_mm["caliper, clean"];
  return {
    type: "taper",
    change: reading("dd", normal(valueIn(mm, read), u), mm, "--taper", "two diameters by caliper"),
    over: measured("--taper", "l", "10 mm", over, readingUncertainty_mm["rule, any length"]),
  };
}

/** "1.5 mm", "18/in", or "not 1.25 mm": a leaf of the gauge that seats without light, or does not. */
function pitchGauge(text: string): ThreadEvidence {
  const [, not, leaf = ""] = /^\s*(not\s+)?(.+)$/i.exec(text) ?? [];
  const perInch = /^(\d+(?:[.,]\d+)?)\s*\/\s*(?:in|inch|")$/i.exec(leaf.trim());
  const pitch = perInch
    ? exact("P", 1 / Number((perInch[1] ?? "").replace(",", ".")), inches, "leaf")
    : positiveOption("--gauge", "P", "length", "1.5 mm", leaf);
  return { type: "pitch gauge", leaf: pitch, seats: not === undefined };
}

const numberWords = ["none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

/** "two turns, then tight", "4 turns, free in M22x1.5". */
function meshFelt(text: string): ThreadEvidence {
  const accepted = '"two turns, then tight", or "4 turns, free in M22x1.5"';
  const [, count = "", , felt = "", known] =
    /^\s*(\S+(?:\s+\d+\/\d+)?)\s+turns?(,?\s*(?:then)?)\s*(tight|free)(?:\s+in\s+(.+))?\s*$/i.exec(text) ?? [];
  const word = numberWords.indexOf(count.toLowerCase());
  const read = word >= 0 ? null : quantityFromText(count, "turns");
  if (felt === "" || (read && !read.ok)) throw mistaken("--meshes", text, accepted);
  const turns = word >= 0 ? word : read?.ok ? read.written.value : 0;
  const designation = known ? knownDesignation(known.trim()) : null;
  if (known && !designation) throw mistaken("--meshes", text, `a thread that is known here, as M22x1.5; ${accepted}`);
  return { type: "mesh", unknown: "plug", known: designation, turns, felt: felt.toLowerCase() as "tight" | "free" };
}

function hexagons(text: string, sister: string | undefined): ThreadEvidence {
  if (!sister) throw mistaken("--hexagon", text, "--sister with it: across the flats of the plug in the sound port");
  const flats = (name: string, it: string): Quantity =>
    measured(name, "s", "24 mm", it, readingUncertainty_mm["caliper, clean"]);
  return { type: "hexagon", plug: flats("--hexagon", text), sister: flats("--sister", sister) };
}

function inTwo(option: string, text: string, example: string): readonly string[] {
  const parts = text.split(/\s+in\s+/i);
  if (parts.length !== 2) throw mistaken(option, text, `"${example}"`);
  return parts.map((it) => it.trim());
}

function counted(option: string, text: string, given: string): number {
  const count = /^\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  if (!(count >= 1)) throw mistaken(option, given, 'a count of at least 1, as "8 in 12.1 mm"');
  return count;
}
