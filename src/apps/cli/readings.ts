import { normal } from "../../mechanics/quantity/distribution.ts";
import { type Quantity, reading, valueIn } from "../../mechanics/quantity/quantity.ts";
import type { Kind } from "../../mechanics/quantity/unit.ts";
import { mistaken } from "./mistake.ts";
import { quantityOption } from "./options.ts";

/** A reading given as an option, with the standard uncertainty `u` of its instrument, in the unit it was typed in. */
export function readingOption(
  name: string,
  symbol: string,
  kind: Kind,
  example: string,
  text: string,
  u: Quantity,
): Quantity {
  const { unit, value } = quantityOption(name, symbol, kind, example, text);
  const figure = valueIn(unit, { symbol, value, unit, contributions: {}, origin: u.origin });
  return reading(symbol, normal(figure, u.value / unit.inSI), unit, name, "read");
}

/** A day given as an option. @throws InputMistake if it is none. */
export function dayOption(name: string, text: string): string {
  const known = /^\d{4}-\d{2}-\d{2}$/.test(text) && new Date(`${text}T00:00:00Z`).toJSON()?.slice(0, 10) === text;
  if (!known) throw mistaken(name, text, "a day as 2026-11-25");
  return text;
}

/** Today by the clock of this machine: only the command line may look at it. */
export const todayByTheClock = (): string => new Date().toISOString().slice(0, 10);

/** A moment given as an option, in UTC; by the clock of this machine where it was not. @throws InputMistake if it is none. */
export function momentOption(name: string, text: string | undefined): string {
  if (text === undefined) return new Date().toISOString();
  const read = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2})?Z$/.test(text) ? Date.parse(text) : Number.NaN;
  if (!Number.isFinite(read) || new Date(read).toISOString().slice(0, 16) !== text.slice(0, 16))
    throw mistaken(name, text, "a moment in UTC, as 2026-11-25T10:40Z");
  return new Date(read).toISOString();
}
