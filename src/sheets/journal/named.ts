import type { Around } from "./act.ts";

/** An identity that a hand can still read: what it is called, and a few letters that nobody else draws. */
export function identity(called: string, { fresh }: Pick<Around, "fresh">): string {
  const letters = called
    .normalize("NFD")
    .replaceAll(/[^A-Za-z0-9]+/g, "-")
    .replaceAll(/^-|-$/g, "")
    .toLowerCase()
    .slice(0, 32);
  return letters === "" ? `n-${fresh}` : `${letters}-${fresh}`;
}
