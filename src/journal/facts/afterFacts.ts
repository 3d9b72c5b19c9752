import * as z from "zod/mini";
import { meterReading } from "./arrivalFacts.ts";
import { choice, day, instant, label, photos, price, quantity, words, yesNo } from "./fields.ts";
import { followUpId, noticeId, portId, unitId } from "./ids.ts";

const fact = z.strictObject;
const type = z.literal;

const papers = ["owner's sheet", "next hand's card", "tag", "bay card", "file", "case page"] as const;
const followUpWays = ["call", "message", "look", "service"] as const;

/** Handing over, looking again, and what came of it. */
export const afterFacts = [
  fact({ type: type("MeterRead"), meter: meterReading }),
  fact({
    type: type("PaperIssued"),
    paper: choice(papers),
    port: z.optional(portId),
    to: z.optional(choice(["owner", "next hand", "machine", "file"])),
  }),
  fact({ type: type("MachineReleased"), meter: z.optional(meterReading), words: z.optional(words) }),
  /** The one way out with a port open or a level unchecked: locked, on a trailer or by hand, signed for. */
  fact({ type: type("MachineLeftNotRunning"), carriedBy: words, signedFor: yesNo }),
  fact({ type: type("JobClosed"), words: z.optional(words) }),
  fact({
    type: type("ServiceLaidDown"),
    unit: unitId,
    every: z.strictObject({
      distance: z.optional(quantity("length")),
      hours: z.optional(quantity("time")),
      months: z.optional(z.int().check(z.minimum(1))),
    }),
    source: label,
  }),
  fact({
    type: type("FollowUpPlanned"),
    followUp: followUpId,
    port: z.optional(portId),
    on: day,
    way: choice(followUpWays),
  }),
  fact({
    type: type("FollowUpDone"),
    /** Null for a look that nobody had planned. */
    followUp: z.nullable(followUpId),
    port: z.optional(portId),
    found: choice(["dry", "weeps", "drips", "failed"]),
    meter: z.optional(meterReading),
    words: z.optional(words),
    photos: z.optional(photos),
  }),
  /** Silence is not success. */
  fact({ type: type("FollowUpNotReached"), followUp: followUpId, again: z.optional(day) }),
  /** A repair of this job came back; written on the job that made it. */
  fact({
    type: type("CameBack"),
    port: portId,
    /** When it was seen to have failed, and the last time it was known to hold. */
    foundAt: instant,
    heldUntil: z.optional(instant),
    how: choice(["weep", "drip", "spun", "fell out", "seal", "other"]),
    cause: words,
    turnsNow: z.optional(quantity("turns")),
    meter: z.optional(meterReading),
    cost: z.optional(price),
  }),
  /** Another complaint or finding: it gets its own line, and a look today or a day. */
  fact({ type: type("AlsoNoticed"), notice: noticeId, words, look: z.union([type("today"), day]) }),
  fact({ type: type("NoticeSettled"), notice: noticeId, words }),
  /** Nothing happened, but it nearly did. */
  fact({ type: type("NearMiss"), words }),
] as const;
