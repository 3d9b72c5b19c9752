import * as z from "zod/mini";
import { reaches } from "../../mechanics/remedies/portCase.ts";
import { choice, count, instant, label, photos, price, quantity, words, yesNo } from "./fields.ts";
import { machineId, ownerId, portId, unitId } from "./ids.ts";
import { unitNoted } from "./shopFacts.ts";

const fact = z.strictObject;
const type = z.literal;

export const meterReading = z.union([
  z.strictObject({ distance: quantity("length") }),
  z.strictObject({ hours: quantity("time") }),
]);

export const levelKnown = ["wire hook", "mirror", "finger", "finger, calibrated"] as const;

/** From the first call to the first look: what was said, found and asked before anybody turned a plug. */
export const arrivalFacts = [
  /** A caller's words and the advice he got; a job may begin with it. */
  fact({
    type: type("CallTaken"),
    words,
    seenAt: z.optional(words),
    drops: z.optional(z.strictObject({ count, within: quantity("time") })),
    machine: z.optional(machineId),
  }),
  fact({ type: type("CallAnswered"), advice: words }),
  fact({
    type: type("JobBooked"),
    machine: machineId,
    bay: z.optional(label),
    /** The promise is a range. */
    readyFrom: instant,
    readyTo: instant,
  }),
  fact({
    type: type("JobOpened"),
    machine: machineId,
    owner: z.optional(ownerId),
    cameFor: words,
    bay: z.optional(label),
    meter: z.optional(meterReading),
  }),
  /** How far the workshop may go without a call. */
  fact({ type: type("ScopeAgreed"), words, upTo: z.optional(price), keysTaken: z.optional(yesNo) }),
  fact({ type: type("ConditionFound"), port: z.optional(portId), words, photos: z.optional(photos) }),
  fact({
    type: type("WetnessWatched"),
    port: z.optional(portId),
    minutes: count,
    found: choice(["dry", "damp", "wet", "drop"]),
    photos: z.optional(photos),
  }),
  /** The six questions before any number, of one port. What is left out was not answered; that is never a "no". */
  fact({
    type: type("QuestionsAnswered"),
    port: portId,
    crack: z.optional(choice(["no", "yes"])),
    pressure: z.optional(z.union([type("none"), quantity("pressure")])),
    reaches: z.optional(z.array(choice(reaches))),
    people: z.optional(choice(["no", "yes"])),
    repairedBefore: z.optional(z.union([type("no"), z.strictObject({ method: label, cause: z.optional(words) })])),
    breather: z.optional(choice(["free", "blocked", "none"])),
    waterTest: z.optional(choice(["passed", "failed", "not done"])),
    alloyTested: z.optional(choice(["yes", "no"])),
  }),
  /** The level on arrival: below the lip is positive. */
  fact({
    type: type("LevelFound"),
    unit: unitId,
    belowLip: quantity("length"),
    how: choice(levelKnown),
    oil: choice(["cold", "warm", "hot"]),
    standsLevel: yesNo,
  }),
  /** Which unit is worked on, and which of its ports is which. */
  fact({ type: type("UnitIdentified"), is: unitNoted, photos: z.optional(photos) }),
] as const;
