import * as z from "zod/mini";
import { described, text } from "./schemaParts.ts";

/** What was measured of an unknown thread, as the command `thread` reads it. */
export const measuredThread = z.strictObject(
  {
    outside: z.optional(text('over the middle threads of the plug, as "19.9 mm"')),
    worn: z.optional(
      described(
        z.union([z.boolean(), z.string()], { error: 'true, or by how much at most, as "0.1 mm"' }),
        "worn there",
      ),
    ),
    gaps: z.optional(text('along a rule, as "8 in 12.1 mm"')),
    gauge: z.optional(z.array(text('a leaf that seats, as "1.5 mm" or "18/in"'), { error: "a list of leaves" })),
    bore: z.optional(text('the mouth of the hole, as "18.4 mm"')),
    travel: z.optional(text('as "5 turns in 7.6 mm"')),
    taper: z.optional(text('growth of the diameter over a length, as "0.0 mm in 10 mm"')),
    narrows: z.optional(text('how much the hole narrows over a depth, as "0.0 mm in 10 mm"')),
    meshes: z.optional(text('as "two turns, then tight"')),
    hexagon: z.optional(text('across the flats of this plug, as "27 mm"')),
    sister: z.optional(text('across the flats of the plug in the sound port, as "24 mm"')),
  },
  { error: 'a thread such as "M20x1.5", or what was measured of it: { "outside", "gaps", "bore", "travel", ... }' },
);
export type MeasuredThread = z.infer<typeof measuredThread>;
