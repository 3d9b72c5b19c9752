import type { SealKind, WasherMaterial } from "../../mechanics/joint/port.ts";
import type { RemedyId } from "../../mechanics/remedies/method.ts";

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
  "next size, other thread": "Re-tapped to the other next size, new plug",
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

/** "fibre washer", "bonded seal", "sealant". */
export function sealWord(seal: { readonly kind: SealKind; readonly material: WasherMaterial | null }): string {
  if (seal.kind === "flat washer")
    return seal.material === "fibre" ? "fibre washer" : `flat ${seal.material ?? ""} washer`;
  return seal.kind === "sealant, metal to metal" ? "sealant" : seal.kind;
}
