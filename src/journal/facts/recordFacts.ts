import * as z from "zod/mini";
import { photos, words } from "./fields.ts";
import { entryId } from "./ids.ts";

const fact = z.strictObject;
const type = z.literal;

/** What is said about the record itself. An entry stays for good; a withdrawal takes it out of the picture, not out of the file. */
export const recordFacts = [
  fact({ type: type("NoteWritten"), words, photos: z.optional(photos) }),
  fact({ type: type("EntryWithdrawn"), entry: entryId, reason: words }),
] as const;
