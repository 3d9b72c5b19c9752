import { valueIn } from "../../mechanics/quantity/quantity.ts";
import { mm } from "../../mechanics/quantity/unit.ts";
import type { Need, NeedOf } from "../../mechanics/remedies/fitNeed.ts";
import type { Stands, WhyNot } from "../../mechanics/remedies/repair.ts";
import type { RepairCheck } from "../../mechanics/remedies/repairCheck.ts";
import type { Condition } from "../../mechanics/tables/portCells.ts";
import { lengthText, turnsWord } from "./figures.ts";
import { capital } from "./firstLetter.ts";

/** How a method stands, in a few words. */
export const standsWords: Readonly<Record<Stands, string>> = {
  fits: "fits",
  doubtful: "doubtful",
  "measure first": "measure first",
  "window empty": "opens no window",
  "does not fit": "does not fit",
  "does not apply": "does not apply",
  refused: "refused",
};

/** Why a method does not apply. */
export const whyNotSentences: Readonly<Record<WhyNot, string>> = {
  "not for this port": "It does nothing for this kind of port.",
  "the hole is hurt, not the plug": "The hole is hurt, not the plug: a new plug alone changes nothing.",
  "more than the first thread is hurt": "More than the first thread is hurt: cleaning brings none of it back.",
  "nothing is left to clean": "Nothing is left to clean.",
  "only thin steel pans": "It cuts crooked and cracks castings: thin steel pans only, to get home.",
  "no larger size": "There is no larger plug thread.",
  "no coil of this size": "Coils are not sold for this size.",
  "no table of its coil holes":
    "Coils for pipe threads are sold, but the hole they want stands in their maker's table only: no fit sums here.",
  "taper thread": "A taper thread wants its own reamer, tap and gauge: no fit sums for it here.",
  "closed by a taper plug":
    "An R plug closes it by its flanks: no fit sums for that here. For a plug on a ring, with a flat face for it, weigh it as a G thread.",
  "no bush of this size": "There is no bush so large.",
  "the thread slides over": "A plug that slides over is not left in.",
};

/** What has to hold where a method suits a port only so. */
export const conditionSentences: Readonly<Record<Condition, string>> = {
  "book figure only": "The maker's part and the book figure, nothing less.",
  "greased, first thread only": "Greased flutes, the first thread only: nothing may fall inside.",
  "count again": "Count again: every healthy turn must be back.",
  "rated for the pressure": "Every part rated for the working pressure, by the maker's procedure.",
  "rated and cap tested": "Rated for the coolant, and tested cold at the cap's pressure.",
  "pressure and vacuum test": "A passed pressure and vacuum test before it goes back to the water.",
  "drained and cured, three turns": "Drained, cured through, and at least three turns counted.",
  "dry joint": "The joint dry until it has cured.",
  "joint above the oil": "The joint above the oil.",
  lockwire: "Lockwire through the head.",
  "sealed outside": "Sealant on the outside of the coil: oil creeps along its windings.",
  "maker's procedure": "Only by the maker's procedure.",
  "get home only": "To get home, and no farther.",
  "cool and dry": "Bone-dry when it is cast, and never hotter than the resin's rating.",
  "not running": "Locked against running until it is out.",
  "yard only": "In the yard only.",
  "standing only": "Standing only.",
  "ashore only": "Ashore only.",
  "other opening proven": "Another way to fill and to check the level, proven before this one is closed.",
  "part off the machine": "With the part off the machine and clean.",
  specialist: "By a specialist.",
  "specialist where it is magnesium": "Off the machine; where it may be magnesium, by a specialist only.",
  "compound rated for the heat": "A bonding compound rated above the heat of the case.",
  "sound flat and holes around": "A sound flat and three or four sound holes around.",
  "weep only, above the level": "A weep only, above the level, and the owner decides.",
};

/** One thing to look at, with the figures of the fit. */
export function repairCheckSentence(check: RepairCheck): string {
  switch (check.type) {
    case "condition":
      return conditionSentences[check.condition];
    case "eyes, gear and cylinder covered":
      return "Eyes covered, no air line; gears and cylinders covered, fuel and vapour away.";
    case "straight access":
      return "Straight access for drill and tap, and a square to hold them by: look before you begin.";
    case "magnesium question":
      return "Is it magnesium? Chips and dust of it burn, and no water goes on them: test the alloy first.";
    case "is magnesium":
      return "It is magnesium: chips and dust burn. Sharp tools, slow, no sparks, dry sand at hand, never water; welded by a specialist only.";
    case "welds badly":
      return "Pressure die-castings weld badly, for the gas in their pores: a specialist, or not at all.";
    case "clean with the right thread":
      return "A restorer of the right pitch from the good end, not a cutting tap; greased, swarf held out.";
    case "count again":
      return "Count the turns again and weigh again.";
    case "drill":
      return `Drill ${lengthText(check.drill_mm)}: ${Math.round(check.percentOfThread)} % of thread.`;
    case "clears the torn thread":
      return clearsSentence(check);
    case "or another next size":
      return `Or ${check.thread}, ${check.own ? "of the torn thread's own standard, so that the next hand finds what he expects" : "a metric plug"}: drill ${lengthText(check.drill_mm)}, ${Math.round(check.percentOfThread)} % of thread. ${clearsSentence(check)} ${needSentence(check.wall)}`;
    case "tap forms":
      return check.fits.length === 0
        ? `No tap runs out behind: a bottoming tap wants ${lengthText(check.most_mm[0] ?? 0)}.`
        : `The room behind takes ${anyTap(check.fits)}; ${overruns(check.most_mm)}.`;
    case "tap forms not known":
      return `Nobody has measured the room behind; ${overruns(check.most_mm)}. Taken as blind until then.`;
    case "depth stop":
      return `Thread full to ${lengthText(check.full_mm)}: stop with the tip of a bottoming tap ${lengthText(check.depth_mm)} below the face, ${turnsWord(check.turns)} of the tap.`;
    case "crooked":
      return `By hand it leaves the axis by ${check.from_mm.toFixed(1)} to ${check.to_mm.toFixed(1)} mm over that length: check with a square every turn.`;
    case "chips":
      return chipsSentence(check);
    case "new plug":
      return check.underHead_mm === null
        ? `A new plug, ${check.thread}, of the same reach.`
        : `A new plug, ${check.thread}, ${lengthText(check.underHead_mm)} under the head. Mark it: the old size no longer fits.`;
    case "coil":
      return `A coil of ${check.diameters} ${check.diameters === 1 ? "diameter" : "diameters"}, ${lengthText(check.length_mm)}; wound in about ${lengthText(check.installed_mm)}. The tang out, and count it.`;
    case "set down":
      return `Its first turn ${check.from_mm.toFixed(1)} to ${check.to_mm.toFixed(1)} mm below the face.`;
    case "bush":
      return `Bush ${check.outer}${check.inner ? ` outside, ${check.inner} inside` : ""}, wall ${lengthText(check.wall_mm)}: down on its shoulder and locked.`;
    case "maker's torque only":
      return "Pulled to the maker's figure for the plug; none of ours.";
    case "weigh again once repaired":
      return "Refused as found, so no torque stands here: weigh the port again once it is repaired.";
    default:
      return check satisfies never;
  }
}

const clearsSentence = ({ thread, clears }: Extract<RepairCheck, { readonly clears: unknown }>): string =>
  ({
    surely: `${thread} takes the torn thread away whole.`,
    just: `${thread} only just clears the torn thread: measure the bore before you drill.`,
    not: `${thread} would bite in the old crests.`,
  })[clears];

const overruns = ([bottoming = 0, plug = 0, taper = 0]: readonly number[]): string =>
  `a bottoming tap runs out ${lengthText(bottoming)}, a plug tap ${lengthText(plug)}, a taper tap ${lengthText(taper)}`;

const anyTap = (forms: readonly string[]): string => `a ${forms.join(" or ")} tap`;

function chipsSentence({ from_cm3, to_cm3, to_g, magnetic, mayBurn }: Extract<RepairCheck, { type: "chips" }>): string {
  const amount = `Chips: ${from_cm3.toFixed(1)} to ${to_cm3.toFixed(1)} cm³ of metal, up to ${Math.ceil(to_g)} g`;
  const caught = magnetic
    ? "a magnet finds them"
    : "no magnet finds them: grease in the flutes, back out every half turn, flush through a cloth";
  return `${amount}; ${caught}${mayBurn ? ". They may burn: no water, no sparks" : ""}.`;
}

const needWords: Readonly<Record<NeedOf, string>> = {
  depth: "depth of thread",
  "wall left": "wall left",
  "wall left by the quarter rule": "wall left, against a quarter of the new thread",
  "wall left by the trade's rule": "wall left, against three eighths of the new thread",
  "room behind for the tap": "room behind for a bottoming tap",
  "room in front for the tap": "room in front for tap and wrench",
  "wall of the bush": "wall of the bush",
  "turns of a healthy port": "length of thread, against four fifths of a healthy port",
};

/** "wall left 6 mm, wants 2.5 mm". */
export function needSentence({ what, state, has, least }: Need): string {
  const wanted = lengthText(valueIn(mm, least));
  if (!has) return `Not measured: ${needWords[what]}; it wants ${wanted}.`;
  const found = `${needWords[what]} ${lengthText(valueIn(mm, has))}, wants ${wanted}`;
  return `${capital(found)}${state === "doubtful" ? ": within what was measured" : ""}.`;
}
