import * as z from "zod/mini";
import { levelKnown } from "./arrivalFacts.ts";
import { choice, label, photos, quantity, words, yesNo } from "./fields.ts";
import { fluidId, unitId } from "./ids.ts";

const fact = z.strictObject;
const type = z.literal;

const volumeKnown = ["jug", "meter pump", "60 ml syringe"] as const;

/** What went out of a unit, through it and into it. */
export const fluidFacts = [
  fact({
    type: type("UnitDrained"),
    unit: unitId,
    /** The flush apart; left out where nobody measured. */
    out: z.optional(quantity("volume")),
    how: z.optional(choice(volumeKnown)),
    temperature: z.optional(quantity("temperature")),
    colour: z.optional(label),
    metal: z.optional(choice(["none", "paste", "flakes", "pieces"])),
    water: z.optional(choice(["no", "milky", "free water"])),
    photos: z.optional(photos),
  }),
  /** A little drawn out so that a joint may be worked on dry; the unit is not empty. */
  fact({ type: type("LevelDrawnDown"), unit: unitId, out: quantity("volume"), fell: z.optional(quantity("length")) }),
  /** Poured through to wash chips out, and never counted as fill. */
  fact({
    type: type("UnitFlushed"),
    unit: unitId,
    poured: quantity("volume"),
    caught: quantity("volume"),
    words: z.optional(words),
  }),
  fact({
    type: type("UnitFilled"),
    unit: unitId,
    fluid: z.nullable(fluidId),
    /** The name as it stands on the drum. */
    called: label,
    volume: quantity("volume"),
    how: z.optional(choice(volumeKnown)),
    temperature: z.optional(quantity("temperature")),
  }),
  fact({
    type: type("LevelChecked"),
    unit: unitId,
    right: yesNo,
    belowLip: z.optional(quantity("length")),
    how: z.optional(choice(levelKnown)),
    temperature: z.optional(quantity("temperature")),
    tilt: z.optional(quantity("angle")),
    words: z.optional(words),
  }),
] as const;
