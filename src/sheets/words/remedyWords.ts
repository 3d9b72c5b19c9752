import type { SealKind, WasherMaterial } from "../../mechanics/joint/port.ts";
import type { RemedyId } from "../../mechanics/remedies/method.ts";
import type { Check, NotOfferedReason } from "../../mechanics/remedies/remedy.ts";
import { lengthText } from "./figures.ts";

/** What a mechanic calls a remedy. */
export const remedyNames: Readonly<Record<RemedyId, string>> = {
  "lower torque": "The same joint at a lower torque",
  "longer plug": "A longer plug, the same kind of seal",
  "longer plug, bonded seal": "A longer plug with a bonded seal",
  "other seal: aluminium": "Another seal: flat aluminium washer",
  "other seal: copper": "Another seal: flat copper washer",
  "other seal: fibre": "Another seal: fibre washer",
  "other seal: crush ring": "Another seal: crush ring",
  "other seal: bonded seal": "Another seal: bonded seal",
  "other seal: O-ring": "Another seal: O-ring",
  "sealant, no washer": "No washer, sealant under the head",
  "ordinary reseal": "The same plug with a new seal",
  "new plug": "A new plug with a new seal",
  "first thread cleaned": "The first thread cleaned and rolled back",
  "self-cutting plug": "An oversize self-cutting plug",
  "next size": "Re-tapped to the next size, new plug",
  "wire coil": "A wire-coil insert, the same plug",
  "solid bushing": "A solid bushing, the same plug",
  "bonded bush": "A turned bush, bonded in",
  "cast thread": "A thread cast in filled resin",
  "expanding bung": "An expanding rubber bung",
  "closed for good": "Closed for good, another opening used",
  "welded and re-cut": "Welded up and cut anew",
  "adaptor plate": "A bolted plate with a new opening",
  "stud and nut": "A stud and a nut",
  "new part": "A new part",
  "left and watched": "Left as it is and watched",
};

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
      return "An O-ring needs a chamfer cut for it; a plain boss has none.";
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

/** "fibre washer", "bonded seal", "sealant". */
export function sealWord(seal: { readonly kind: SealKind; readonly material: WasherMaterial | null }): string {
  if (seal.kind === "flat washer")
    return seal.material === "fibre" ? "fibre washer" : `flat ${seal.material ?? ""} washer`;
  return seal.kind === "sealant, metal to metal" ? "sealant" : seal.kind;
}
