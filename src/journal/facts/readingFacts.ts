import * as z from "zod/mini";
import { catches, conditions } from "../../mechanics/joint/port.ts";
import { quantityFromText } from "../../mechanics/quantity/quantityText.ts";
import type { Kind } from "../../mechanics/quantity/unit.ts";
import { materials } from "../../mechanics/tables/materials.ts";
import { choice, figure, label, photos, words } from "./fields.ts";
import { instrumentId, portId } from "./ids.ts";

const fact = z.strictObject;
const type = z.literal;

/** What can be measured at a port, by the name that the case form has for it where it has one. */
export const readingKinds = {
  "case.threadDepth": "length",
  "case.thinnestWall": "length",
  "case.roomBehind": "length",
  "case.temperature": "temperature",
  "plug.underHead": "length",
  "plug.headDiameter": "length",
  "plug.chamfer": "length",
  "seal.outside": "length",
  "seal.inside": "length",
  "seal.thickness": "length",
  "seal.chamfer": "length",
  "left.turns": "turns",
  "left.goodFrom": "length",
  "left.goodTo": "length",
  "left.height": "plain number",
  healthyTurns: "turns",
  prevailing: "torque",
  "plug outside diameter": "length",
  "length over gaps": "length",
  "bore at the mouth": "length",
  "gap under the head at the catch": "length",
  "travel for turns": "length",
  "boss diameter": "length",
  "seat width": "length",
  compression: "pressure",
} as const satisfies Record<string, Kind>;
export type ReadingName = keyof typeof readingKinds;
const readingNames = Object.keys(readingKinds) as readonly ReadingName[];

const readingTaken = z
  .strictObject({
    type: type("ReadingTaken"),
    port: portId,
    reading: choice(readingNames),
    value: z.string({ error: "a quantity with its unit, as text" }).check(z.maxLength(40)),
    /** The evidence: caliper, wire hook, with a dot, felt, read somewhere, assumed. */
    how: label,
    instrument: z.optional(instrumentId),
    /** For readings over several: gaps, turns. */
    over: z.optional(z.int().check(z.minimum(1))),
    withWasher: z.optional(z.boolean()),
    photos: z.optional(photos),
  })
  .check(
    z.refine(({ reading, value }) => quantityFromText(value, readingKinds[reading]).ok, {
      error: "a quantity of the reading's kind, with its unit",
      path: ["value"],
    }),
  );

/** What was measured, felt or named at a port, raw. */
export const readingFacts = [
  readingTaken,
  fact({ type: type("CatchFelt"), port: portId, catch: choice(catches), condition: z.optional(choice(conditions)) }),
  fact({
    type: type("SeatJudged"),
    port: portId,
    seat: choice(["flat", "scored", "gouged"]),
    words: z.optional(words),
  }),
  fact({ type: type("MaterialJudged"), port: portId, material: choice(materials), how: label }),
  fact({
    type: type("ThreadNamed"),
    port: portId,
    thread: label,
    /** As the naming gave it that day; left out where somebody knew. */
    probability: z.optional(figure.check(z.minimum(0), z.maximum(1))),
    how: label,
    rival: z.optional(label),
  }),
] as const;
