import type { ThreadEvidence } from "../../mechanics/threads/namingEvidence.ts";
import {
  boreRead,
  gapsRead,
  hexagonsRead,
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
    ...each(options.bore, (it) => boreRead(length("--bore", "D_1", "18.4 mm", it))),
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

function outsideDiameter(text: string, worn: string | true | undefined): ThreadEvidence {
  const most = typeof worn === "string" ? positiveOption("--worn", "w", "length", "0.1 mm", worn) : ordinaryWear;
  return outsideRead(length("--outside", "d", "19.9 mm", text), worn !== undefined, most);
}

const length = (option: string, symbol: string, example: string, text: string) => ({
  length: positiveOption(option, symbol, "length", example, text),
  id: option,
});

/** "8 in 12.1 mm", "eight gaps in 12.1 mm": gaps from crest to crest along a rule. */
function gapsOnRule(text: string): ThreadEvidence {
  const example = "8 in 12.1 mm";
  const [said, along] = inTwo("--gaps", text, example);
  const count = countFromText(said.replace(/\s*gaps?$/i, ""));
  if (count === null || !Number.isInteger(count) || count < 1 || count > MOST_COUNTED)
    throw mistaken("--gaps", text, `1 to ${MOST_COUNTED} whole gaps, as "${example}"`);
  return gapsRead(count, length("--gaps", "L", example, along));
}

/** "5 turns in 7.6 mm", "two and a half turns in 3.8 mm". */
function travelInTurns(text: string): ThreadEvidence {
  const example = "5 turns in 7.6 mm";
  const [said, along] = inTwo("--travel", text, example);
  const turns = countFromText(said.replace(/\s*turns?$/i, ""));
  if (turns === null || turns <= 0 || turns > MOST_COUNTED)
    throw mistaken("--travel", text, `up to ${MOST_COUNTED} turns, as "${example}"`);
  return travelRead(turns, length("--travel", "L", example, along));
}

/** "0.6 mm in 10 mm": how much the diameter grows over a length. */
function taperOver(text: string): ThreadEvidence {
  const example = "0.6 mm in 10 mm";
  const [change, over] = inTwo("--taper", text, example);
  const grown = { length: quantityOption("--taper", "dd", "length", example, change), id: "--taper" };
  return taperRead(grown, length("--taper", "l", example, over));
}

/** "1.5 mm", "18/in", "not 1.25 mm": a leaf of the gauge that seats without light, or does not. */
function pitchGauge(text: string): ThreadEvidence {
  const [, not, leaf = ""] = /^\s*(not\s+)?(.*?)\s*$/i.exec(text) ?? [];
  const perInch = threadsPerInchFromText(leaf);
  if (!/^\d/.test(leaf) || (!perInch && /(?:\/|per\s|to the\s)\s*(?:in|inch|″|")$/i.test(leaf)))
    throw mistaken("--gauge", text, '"1.5 mm" or "18/in" for a leaf that seats, "not 1.25 mm" for one that does not');
  return leafRead(perInch ?? positiveOption("--gauge", "P", "length", "1.5 mm", leaf), not === undefined);
}

/** Across the flats of this plug and of its sister. */
function hexagons(plug: string | undefined, sister: string | undefined): ThreadEvidence {
  if (plug === undefined) throw mistaken("--hexagon", null, "with --sister: across the flats of this plug");
  if (sister === undefined)
    throw mistaken("--sister", null, "with --hexagon: across the flats of the plug in the sound port");
  return hexagonsRead(length("--hexagon", "s", "24 mm", plug), length("--sister", "s", "24 mm", sister));
}

/** What stands before and after the "in" that is no inch. @throws InputMistake if it is not two. */
function inTwo(option: string, text: string, example: string): readonly [string, string] {
  const [before, after, more] = text.split(/\s+in\s+/i).map((it) => it.trim());
  if (!before || !after || more !== undefined) throw mistaken(option, text, `"${example}"`);
  return [before, after];
}
