import type { RemedyId } from "./method.ts";

/** What a method leaves of the port, the plug and the seal. */
export type Leaves = {
  readonly thread:
    | "as it is"
    | "cleaned"
    | "cut by the plug"
    | "one size larger"
    | "steel coil"
    | "steel bush"
    | "cast in resin"
    | "bung in the bore"
    | "closed"
    | "welded and cut anew"
    | "in a plate"
    | "stud"
    | "new part";
  readonly plug: "same" | "new, same size" | "longer" | "one size larger" | "self-cutting" | "bung" | "none" | "nut";
  readonly seal: "same" | "new, same kind" | "another kind" | "sealant" | "larger ring" | "gasket besides" | "none";
};

const as = (thread: Leaves["thread"], plug: Leaves["plug"], seal: Leaves["seal"]): Leaves => ({ thread, plug, seal });
const otherSeal = as("as it is", "same", "another kind");

/** What each method leaves behind. */
export const leaves: Readonly<Record<RemedyId, Leaves>> = {
  "ordinary reseal": as("as it is", "same", "new, same kind"),
  "new plug": as("as it is", "new, same size", "new, same kind"),
  "lower torque": as("as it is", "same", "new, same kind"),
  "first thread cleaned": as("cleaned", "same", "new, same kind"),
  "longer plug": as("as it is", "longer", "new, same kind"),
  "longer plug, bonded seal": as("as it is", "longer", "another kind"),
  "other seal: aluminium": otherSeal,
  "other seal: copper": otherSeal,
  "other seal: fibre": otherSeal,
  "other seal: crush ring": otherSeal,
  "other seal: bonded seal": otherSeal,
  "other seal: O-ring": otherSeal,
  "sealant, no washer": as("as it is", "same", "sealant"),
  "self-cutting plug": as("cut by the plug", "self-cutting", "new, same kind"),
  "next size": as("one size larger", "one size larger", "larger ring"),
  "next size, other thread": as("one size larger", "one size larger", "larger ring"),
  "wire coil": as("steel coil", "same", "new, same kind"),
  "solid bushing": as("steel bush", "same", "new, same kind"),
  "bonded bush": as("steel bush", "same", "new, same kind"),
  "cast thread": as("cast in resin", "same", "new, same kind"),
  "expanding bung": as("bung in the bore", "bung", "none"),
  "closed for good": as("closed", "none", "none"),
  "welded and re-cut": as("welded and cut anew", "same", "new, same kind"),
  "adaptor plate": as("in a plate", "new, same size", "gasket besides"),
  "stud and nut": as("stud", "nut", "same"),
  "new part": as("new part", "new, same size", "new, same kind"),
  "left and watched": as("as it is", "same", "same"),
};
