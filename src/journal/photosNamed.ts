import type { Fact } from "./facts/fact.ts";

/** The photos that a fact names, or what it puts in another's place; each by the SHA-256 of its bytes. */
export function photosNamed(fact: Fact): readonly string[] {
  const said = fact.type === "EntryCorrected" ? fact.is : fact;
  return "photos" in said ? (said.photos ?? []) : [];
}
