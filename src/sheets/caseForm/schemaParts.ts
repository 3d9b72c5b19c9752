import * as z from "zod/mini";
import { anyOf } from "../words/problemWords.ts";

/** A field with the sentence that its JSON Schema and its error both print. */
export function described<T extends z.ZodMiniType>(schema: T, description: string): T {
  z.globalRegistry.add(schema, { description });
  return schema;
}

export const choice = <const T extends readonly string[]>(choices: T) =>
  z.enum(choices, { error: anyOf(choices.map((it) => `"${it}"`)) });

/** A quantity as text, with how it is known, or as a range. */
export const quantity = (accepted: string) =>
  described(
    z.union(
      [
        z.string(),
        z.number(),
        z.strictObject({ value: z.union([z.string(), z.number()]), how: z.optional(z.string()) }),
        z.strictObject({
          low: z.union([z.string(), z.number()]),
          likely: z.union([z.string(), z.number()]),
          high: z.union([z.string(), z.number()]),
        }),
      ],
      {
        error: `${accepted}, or { "value", "how" }, or { "low", "likely", "high" }`,
      },
    ),
    accepted,
  );

export const text = (accepted: string) => described(z.string({ error: accepted }), accepted);
export const yesNo = (accepted: string) => described(z.boolean({ error: `true or false: ${accepted}` }), accepted);
export const day = text('a day as "2026-11-25"');

export const length = (what: string, example: string) => z.optional(quantity(`${what}, as "${example}"`));
