import * as z from "zod/mini";
import { quantityFromText } from "../../mechanics/quantity/quantityText.ts";
import type { Kind } from "../../mechanics/quantity/unit.ts";

/** What somebody wrote or said. */
export const words = z
  .string({ error: "a text" })
  .check(
    z.minLength(1, { error: "a text that is not empty" }),
    z.maxLength(2000, { error: "at most 2000 characters" }),
  );

/** A name on a label: one line. */
export const label = z
  .string({ error: "a text of one line" })
  .check(z.regex(/^[^\p{Cc}]{1,120}$/u, { error: "one line of 1 to 120 characters" }));

/** A quantity as it was read or typed, with its unit; it is converted once, when it is worked with. */
export const quantity = (kind: Kind) =>
  z.string({ error: `a ${kind} with its unit, as text` }).check(
    z.maxLength(40, { error: "at most 40 characters" }),
    z.refine((text) => quantityFromText(text, kind).ok, { error: `a ${kind} with its unit` }),
  );

/** A day, ISO 8601. */
export const day = z
  .string({ error: "a day, as 2026-11-25" })
  .check(z.refine((text) => isDay(text), { error: "a day, as 2026-11-25" }));

const isDay = (text: string): boolean => {
  const instant = /^\d{4}-\d{2}-\d{2}$/.test(text) ? Date.parse(`${text}T00:00:00Z`) : Number.NaN;
  return Number.isFinite(instant) && new Date(instant).toISOString().slice(0, 10) === text;
};

/** A moment in UTC, to the second or finer. */
export const instant = z.string({ error: "a moment in UTC, as 2026-11-25T10:40:00Z" }).check(
  z.refine((text) => /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,3})?Z$/.test(text) && Number.isFinite(Date.parse(text)), {
    error: "a moment in UTC, as 2026-11-25T10:40:00Z",
  }),
);

/** A whole number from 0 up. */
export const count = z
  .int({ error: "a whole number" })
  .check(z.minimum(0, { error: "from 0" }), z.maximum(1000, { error: "up to 1000" }));

/** A figure that a document of ours gave, finite. */
export const figure = z.number({ error: "a number" });

/** Money in the workshop's currency. */
export const price = z.number({ error: "an amount of money" }).check(z.minimum(0, { error: "from 0" }));
export const priceRange = z.strictObject({ low: price, high: price });

/** Photos by the SHA-256 of their bytes. */
export const photos = z
  .array(z.string().check(z.regex(/^[0-9a-f]{64}$/, { error: "the SHA-256 of a photo, 64 hexadecimal digits" })))
  .check(z.maxLength(50, { error: "at most 50 photos" }));

/** A choice among words of the trade. */
export const choice = <const T extends readonly [string, ...string[]] | readonly string[]>(choices: T) =>
  z.enum(choices, { error: `one of: ${choices.join("; ")}` });

export const yesNo = z.boolean({ error: "true or false" });

/** Data of this shape, all of it only to be read. */
export type Read<T> = unknown extends T
  ? T
  : T extends string | number | boolean | null | undefined
    ? T
    : { readonly [K in keyof T]: Read<T[K]> };
