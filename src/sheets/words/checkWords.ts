import type { Check, NotOfferedReason } from "../../mechanics/remedies/remedy.ts";
import { lengthText } from "./figures.ts";

/** What has to be looked at first. */
export function checkSentence(check: Check): string {
  switch (check.type) {
    case "plug length":
      return `Plug ${lengthText(check.underHead_mm)} under the head: ${lengthText(check.longerBy_mm)} longer than now. Keep it with the machine.`;
    case "stands out behind":
      return `Stands out ${lengthText(check.by_mm)} inside, and the nearest thing is ${lengthText(check.room_mm)} behind: turn the shaft once and look.`;
    case "room behind not measured":
      return "Nobody has measured the room behind: push a blunt wire in and turn the shaft once.";
    case "ends in the hole":
      return "Ends inside the hole: nothing behind is touched.";
    case "thread beyond the plug looked at":
      return "The thread beyond the present plug is taken as untouched: drag a hook along it first.";
    case "seat flat and clean":
      return "The seat must be flat and clean over the width of the ring.";
    case "chamfer cut for the ring":
      return `An O-ring needs a chamfer cut for it, ${check.from_mm.toFixed(1)} to ${check.to_mm.toFixed(1)} mm deep; a plain boss has none. ${check.blind ? "Nobody has measured how near to the face the turns begin: none to all of that is taken off them." : "The turns it takes away are not counted."}`;
    case "rubber suits fluid and heat":
      return "The rubber must suit the fluid and its heat.";
    case "dry and degreased, level below the joint":
      return "Dry, degreased, and the level below the joint until it has cured.";
    case "label names this fluid":
      return "The sealant's label must name this fluid: gear oil softens ordinary silicone.";
    case "nothing inside, thin on the seat":
      return "Thin on the seat, none on the first inner turn.";
    case "cap pressure test":
      return "Cold, pumped to the pressure on the cap, for a quarter of an hour: dry, or it does not leave.";
    case "rated and pressure tested":
      return "Plug and seal must be rated for the pressure, and it is tested before it leaves.";
    case "pressure and vacuum test":
      return "Pressure and vacuum test once more after the repair.";
    default:
      return check satisfies never;
  }
}

/** Why a remedy is not offered. */
export const notOfferedSentences: Readonly<Record<NotOfferedReason, string>> = {
  "plug length not measured": "A longer plug cannot be judged: the plug's length under the head is not known.",
  "depth not measured": "A longer plug cannot be judged: hook the depth of the hole first.",
  "thread ends where the plug ends": "A longer plug gains nothing here: the thread ends where the plug ends.",
  "no room behind": "A longer plug has no room behind.",
};
