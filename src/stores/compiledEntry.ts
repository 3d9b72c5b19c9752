import * as core from "zod/v4/core";
import { type Entry, entrySchema } from "../journal/entry.ts";
import { factSchema } from "../journal/facts/fact.ts";
import { entryFrom } from "../journal/parse.ts";

/**
 * The entry in `document`, checked by the very schemas of `entryFrom`, each compiled into one function: half the time of a whole
 * add goes into that check else. A page may not compile, under its policy; a store on this machine may.
 *
 * It is made with its keys in the order of their names, those of its fact too, so that most need no sorting for their text.
 * @throws MalformedEntry that names every field which is not as it has to be
 */
export function compiledEntryFrom(document: unknown): Entry {
  const read = core.safeParse(compiled, document);
  return read.success ? (read.data as Entry) : entryFrom(document);
}

const byName = (shape: core.$ZodShape): core.$ZodShape =>
  Object.fromEntries(Object.entries(shape).sort(([a], [b]) => (a < b ? -1 : 1)));

const facts = factSchema.def.options.map(({ def }) => new core.$ZodObjectJIT({ ...def, shape: byName(def.shape) }));

const compiled = new core.$ZodObjectJIT({
  ...entrySchema.def,
  shape: byName({
    ...entrySchema.def.shape,
    fact: new core.$ZodDiscriminatedUnion({ ...factSchema.def, discriminator: "type", options: facts }),
  }),
});
