import * as z from "zod/mini";
import { remedyIds } from "../../mechanics/remedies/method.ts";
import { choice, day, label, photos, quantity, words, yesNo } from "./fields.ts";
import { portId, sealantId } from "./ids.ts";
import { fitted } from "./portFacts.ts";

const fact = z.strictObject;
const type = z.literal;

/** What was prepared, cut, inserted, sealed and marked. */
export const repairFacts = [
  fact({
    type: type("PortPrepared"),
    port: portId,
    dry: yesNo,
    degreased: yesNo,
    levelBelow: z.optional(quantity("length")),
    words: z.optional(words),
  }),
  fact({
    type: type("RepairMade"),
    port: portId,
    method: choice(remedyIds),
    /** A make-do has a day by which it is looked at again or replaced. */
    lasting: yesNo,
    until: z.optional(day),
    sizes: z.optional(words),
    sealant: z.optional(sealantId),
    chips: z.optional(z.strictObject({ caught: yesNo, how: words })),
    wallLeft: z.optional(quantity("length")),
    leaves: z.optional(fitted),
    photos: z.optional(photos),
  }),
  fact({
    type: type("PortTagged"),
    port: portId,
    lines: z
      .array(z.string().check(z.regex(/^[ -~]{1,28}$/, { error: "1 to 28 ASCII characters" })))
      .check(z.minLength(1), z.maxLength(5, { error: "at most five lines" })),
    photos: z.optional(photos),
  }),
  /** How the next hand finds it: what must not be done here. */
  fact({ type: type("NextHandWarned"), port: portId, words, plate: z.optional(label) }),
] as const;
