import type { SealKind, WasherMaterial } from "../joint/port.ts";
import type { MethodNumber } from "../tables/methodEstimates.ts";

/** What else can be done about a port than closing what is left of it. */
export type RepairId =
  | "ordinary reseal"
  | "new plug"
  | "first thread cleaned"
  | "self-cutting plug"
  | "next size"
  | "next size, other thread"
  | "wire coil"
  | "solid bushing"
  | "bonded bush"
  | "cast thread"
  | "expanding bung"
  | "closed for good"
  | "welded and re-cut"
  | "adaptor plate"
  | "stud and nut"
  | "new part"
  | "left and watched";

/** The ways of closing a port that are weighed. */
export type RemedyId =
  | RepairId
  | "lower torque"
  | "longer plug"
  | "longer plug, bonded seal"
  | "other seal: aluminium"
  | "other seal: copper"
  | "other seal: fibre"
  | "other seal: crush ring"
  | "other seal: bonded seal"
  | "other seal: O-ring"
  | "sealant, no washer";

/** The number of each remedy in the documents. */
export const methodOf: Readonly<Record<RemedyId, MethodNumber>> = {
  "ordinary reseal": "R0",
  "new plug": "R1",
  "lower torque": "R1",
  "first thread cleaned": "R2",
  "longer plug": "R3",
  "longer plug, bonded seal": "R3",
  "other seal: aluminium": "R4",
  "other seal: copper": "R4",
  "other seal: fibre": "R4",
  "other seal: crush ring": "R4",
  "other seal: bonded seal": "R4",
  "other seal: O-ring": "R4",
  "sealant, no washer": "R5",
  "self-cutting plug": "R6",
  "next size": "R7",
  "next size, other thread": "R7",
  "wire coil": "R8",
  "solid bushing": "R9",
  "bonded bush": "R10",
  "cast thread": "R11",
  "expanding bung": "R12",
  "closed for good": "R13",
  "welded and re-cut": "R14",
  "adaptor plate": "R15",
  "stud and nut": "R16",
  "new part": "R17",
  "left and watched": "R18",
};

export const remedyIds = Object.keys(methodOf) as readonly RemedyId[];

/** A way of closing a port, as far as a refusal rule asks. */
export type Method = {
  readonly id: RemedyId;
  readonly seal: { readonly kind: SealKind; readonly material: WasherMaterial | null };
  /** A repair that gives back what the port always bore; anything less is a make-do. */
  readonly fullStrength: boolean;
};

export const isSealantAlone = ({ seal }: Method): boolean => seal.kind === "sealant, metal to metal";

/** Whether a method is the one that `before` names in a mechanic's own words. */
export function isNamedBy({ id, seal }: Method, before: string): boolean {
  const said = before.toLowerCase();
  if (said.includes(id)) return true;
  // "A longer plug with a bonded seal" was a longer plug first.
  if (/\blong/.test(said)) return id.startsWith("longer plug");
  if (seal.kind === "sealant, metal to metal" && words["sealant, no washer"].test(said)) return true;
  return (
    words[id].test(said) || (id.startsWith("other seal") && /\b(an?other|different|new) (seal|washer|ring)/.test(said))
  );
}

const retapped = /re-?tap|next size|bigger (plug|thread)/;

/** Words that mechanics use for each method. */
const words: Readonly<Record<RemedyId, RegExp>> = {
  "lower torque": /torque|tighten|\bpulled\b/,
  "longer plug": /\blong/,
  "longer plug, bonded seal": /\blong/,
  "other seal: aluminium": /alumin|\balu\b/,
  "other seal: copper": /copper/,
  "other seal: fibre": /fib(re|er)/,
  "other seal: crush ring": /crush/,
  "other seal: bonded seal": /bonded|lipped/,
  "other seal: O-ring": /\bo-? ?ring/,
  "sealant, no washer": /sealant|sealer|silicone?\b|paste|liquid gasket|\bglue|anaerobic/,
  "ordinary reseal": /\breseal/,
  "new plug": /\bnew (plug|bolt)/,
  "first thread cleaned": /clean|chas(e|ed|ing)|restor|rolled back/,
  "self-cutting plug": /self.?(cutting|tapping)|oversize/,
  "next size": retapped,
  "next size, other thread": retapped,
  "wire coil": /wire|\bcoil|thread insert/,
  "solid bushing": /solid|\bbush/,
  "bonded bush": /bonded bush|bonded sleeve/,
  "cast thread": /resin|epoxy|filler|cast thread/,
  "expanding bung": /\bbung|expand/,
  "closed for good": /for good|blanked|retired/,
  "welded and re-cut": /weld/,
  "adaptor plate": /adaptor|adapter|\bplate/,
  "stud and nut": /\bstud/,
  "new part": /new (part|pan|cover|case|head)|replaced/,
  "left and watched": /watch|left alone|left as/,
};
