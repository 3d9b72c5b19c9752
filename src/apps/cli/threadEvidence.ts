import type { ThreadEvidence } from "../../mechanics/threads/namingEvidence.ts";
import {
  boreRead,
  gapsRead,
  hexagonsRead,
  holeTaperRead,
  leafRead,
  MOST_COUNTED,
  ordinaryWear,
  outsideRead,
  taperRead,
  threadsPerInchFromText,
  travelRead,
} from "../../mechanics/threads/namingReadings.ts";
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
  readonly narrows?: string;
  readonly meshes?: string;
  readonly hexagon?: string;
  readonly sister?: string;
};

/** What a measurement is called where it was given: "outside" is "--outside", or "thread.outside" in a case. */
type FieldOf = (measurement: keyof ThreadOptions) => string;

const asOption: FieldOf = (measurement) => `--${measurement}`;

/** The evidence that the options give. @throws InputMistake if one cannot be read, or none speaks of the thread. */
export function threadEvidence(
  options: ThreadOptions,
  field = asOption,
): readonly [ThreadEvidence, ...ThreadEvidence[]] {
  const { outside, worn, gauge = [], hexagon, sister } = options;
  if (worn !== undefined && outside === undefined)
    throw mistaken(
      field("worn"),
      worn === true ? null : worn,
      `${field("outside")} with it: worn where that was measured`,
    );
  const [first, ...more] = [
    ...each(outside, (it) => outsideDiameter(it, worn, field)),
    ...each(options.gaps, (it) => gapsOnRule(it, field)),
    ...gauge.map((it) => pitchGauge(it, field)),
    ...each(options.bore, (it) => boreRead(length(field("bore"), "D_1", "18.4 mm", it))),
    ...each(options.travel, (it) => travelInTurns(it, field)),
    ...each(options.taper, (it) => taperRead(...changeOver("taper", it, field))),
    ...each(options.narrows, (it) => holeTaperRead(...changeOver("narrows", it, field))),
    ...each(options.meshes, (it) => meshFelt(it, field("meshes"))),
  ];
  const flats = each(hexagon ?? sister, () => hexagons(hexagon, sister, field));
  if (!first)
    throw mistaken(
      field("outside"),
      null,
      `it, ${others.map(field).join(", ")} or ${field("meshes")}, or more of them`,
    );
  return [first, ...more, ...flats];
}

const others = ["gaps", "gauge", "bore", "travel", "taper", "narrows"] as const;

const each = <A, B>(given: A | undefined, read: (it: A) => B): readonly B[] =>
  given === undefined ? [] : [read(given)];

function outsideDiameter(text: string, worn: string | true | undefined, field: FieldOf): ThreadEvidence {
  const most = typeof worn === "string" ? positiveOption(field("worn"), "w", "length", "0.1 mm", worn) : ordinaryWear;
  return outsideRead(length(field("outside"), "d", "19.9 mm", text), worn !== undefined, most);
}

const length = (option: string, symbol: string, example: string, text: string) => ({
  length: positiveOption(option, symbol, "length", example, text),
  id: option,
});

/** "8 in 12.1 mm", "eight gaps in 12.1 mm": gaps from crest to crest along a rule. */
function gapsOnRule(text: string, field: FieldOf): ThreadEvidence {
  const example = "8 in 12.1 mm";
  const [said, along] = inTwo(field("gaps"), text, example);
  const count = countFromText(said.replace(/\s*gaps?$/i, ""));
  if (count === null || !Number.isInteger(count) || count < 1 || count > MOST_COUNTED)
    throw mistaken(field("gaps"), text, `1 to ${MOST_COUNTED} whole gaps, as "${example}"`);
  return gapsRead(count, length(field("gaps"), "L", example, along));
}

/** "5 turns in 7.6 mm", "two and a half turns in 3.8 mm". */
function travelInTurns(text: string, field: FieldOf): ThreadEvidence {
  const example = "5 turns in 7.6 mm";
  const [said, along] = inTwo(field("travel"), text, example);
  const turns = countFromText(said.replace(/\s*turns?$/i, ""));
  if (turns === null || turns <= 0 || turns > MOST_COUNTED)
    throw mistaken(field("travel"), text, `up to ${MOST_COUNTED} turns, as "${example}"`);
  return travelRead(turns, length(field("travel"), "L", example, along));
}

/** "0.6 mm in 10 mm": how much the diameter of the plug grows over a length, or that of the hole falls over a depth. */
function changeOver(name: "taper" | "narrows", text: string, field: FieldOf) {
  const example = "0.6 mm in 10 mm";
  const [change, over] = inTwo(field(name), text, example);
  const changed = { length: quantityOption(field(name), "dd", "length", example, change), id: field(name) };
  return [changed, length(field(name), "l", example, over)] as const;
}

/** "1.5 mm", "18/in", "not 1.25 mm": a leaf of the gauge that seats without light, or does not. */
function pitchGauge(text: string, field: FieldOf): ThreadEvidence {
  const [, not, leaf = ""] = /^\s*(not\s+)?(.*?)\s*$/i.exec(text) ?? [];
  const perInch = threadsPerInchFromText(leaf);
  if (!/^\d/.test(leaf) || (!perInch && /(?:\/|per\s|to the\s)\s*(?:in|inch|″|")$/i.test(leaf)))
    throw mistaken(
      field("gauge"),
      text,
      '"1.5 mm" or "18/in" for a leaf that seats, "not 1.25 mm" for one that does not',
    );
  return leafRead(perInch ?? positiveOption(field("gauge"), "P", "length", "1.5 mm", leaf), not === undefined);
}

/** Across the flats of this plug and of its sister. */
function hexagons(plug: string | undefined, sister: string | undefined, field: FieldOf): ThreadEvidence {
  if (plug === undefined)
    throw mistaken(field("hexagon"), null, `with ${field("sister")}: across the flats of this plug`);
  if (sister === undefined)
    throw mistaken(field("sister"), null, `with ${field("hexagon")}: across the flats of the plug in the sound port`);
  return hexagonsRead(length(field("hexagon"), "s", "24 mm", plug), length(field("sister"), "s", "24 mm", sister));
}

/** What stands before and after the "in" that is no inch. @throws InputMistake if it is not two. */
function inTwo(option: string, text: string, example: string): readonly [string, string] {
  const [before, after, more] = text.split(/\s+in\s+/i).map((it) => it.trim());
  if (!before || !after || more !== undefined) throw mistaken(option, text, `"${example}"`);
  return [before, after];
}
