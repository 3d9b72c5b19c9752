import type { SealKind, WasherMaterial } from "../joint/port.ts";

/** The ways of closing a port that are weighed. */
export type RemedyId =
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
};
