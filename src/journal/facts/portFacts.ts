import * as z from "zod/mini";
import { sealKinds, surfaces, washerMaterials } from "../../mechanics/joint/port.ts";
import { choice, count, day, figure, instant, label, photos, quantity, words, yesNo } from "./fields.ts";
import { instrumentId, personId, portId, sealantId } from "./ids.ts";

const fact = z.strictObject;
const type = z.literal;

const breakLooseGrades = ["by hand", "easy", "normal", "very tight"] as const;

/** The instrument as it was that day; the day of its last calibration is kept as it stood. */
const wrenchUsed = z.strictObject({ instrument: instrumentId, calibrated: z.nullable(day) });

/** What was put into a hole: the plug and its seal. */
export const fitted = z.strictObject({
  plug: label,
  underHead: z.optional(quantity("length")),
  seal: choice(sealKinds),
  material: z.optional(choice(washerMaterials)),
  surface: z.optional(choice(surfaces)),
});

/** What hands did at a port. */
export const portFacts = [
  /** Looked at, closed and sound, and left as it is. */
  fact({ type: type("PortFoundClosed"), port: portId, words: z.optional(words) }),
  fact({
    type: type("PortBrokenLoose"),
    port: portId,
    hard: choice(breakLooseGrades),
    torque: z.optional(quantity("torque")),
  }),
  /** The fill would not open, and nothing may be drained. */
  fact({ type: type("PortWouldNotOpen"), port: portId, words }),
  fact({ type: type("PortOpened"), port: portId, photos: z.optional(photos) }),
  fact({ type: type("WashersOut"), port: portId, count, words: z.optional(words) }),
  fact({
    type: type("WashersIn"),
    port: portId,
    count,
    /** Why as many went in as did, where it differs from what came out. */
    because: z.optional(words),
  }),
  /** Whether the plug that was in belongs here: across flats, reach and head as its sister's. */
  fact({
    type: type("PlugJudged"),
    port: portId,
    belongs: yesNo,
    words: z.optional(words),
    photos: z.optional(photos),
  }),
  fact({ type: type("PortClosedByHand"), port: portId, fitted: z.optional(fitted) }),
  fact({
    type: type("PortTorqued"),
    port: portId,
    set: quantity("torque"),
    /** What a wrench that shows it has reached. */
    reached: z.optional(quantity("torque")),
    wrench: z.nullable(wrenchUsed),
    clicked: yesNo,
    /** A second pull to hear the click adds load. */
    checkedAgain: yesNo,
    pulledBy: personId,
    /** Why somebody else enters it than the one who pulled. */
    enteredBecause: z.optional(words),
    witnessMark: z.optional(yesNo),
    fitted: z.optional(fitted),
    /** The scale as it stood, the mark across plug and case. */
    photos: z.optional(photos),
  }),
  /** A second pair of eyes; it torques nothing. */
  fact({ type: type("TorqueChecked"), port: portId, words: z.optional(words) }),
  fact({
    type: type("PortLetGo"),
    port: portId,
    at: z.optional(quantity("torque")),
    turned: z.optional(quantity("angle")),
    words: z.optional(words),
  }),
  /** A bead was closed; `earliest` is frozen as it was shown, the later of our clock and the label's. */
  fact({
    type: type("CureBegan"),
    port: portId,
    sealant: sealantId,
    bead: quantity("length"),
    temperature: quantity("temperature"),
    humidity: quantity("plain number"),
    closedAt: instant,
    splashFrom: z.optional(instant),
    earliest: instant,
    curedThrough_h: figure,
  }),
  fact({
    type: type("PortDryChecked"),
    port: portId,
    dry: yesNo,
    after: quantity("time"),
    how: choice(["paper", "powder", "by eye", "after a run"]),
    photos: z.optional(photos),
  }),
  /** Something that is not to stay is in the hole, and the machine is not to run. */
  fact({ type: type("PortHeldForNow"), port: portId, by: label, until: day, words: z.optional(words) }),
  fact({ type: type("PortHoldEnded"), port: portId, words: z.optional(words) }),
  fact({
    type: type("PressureHeld"),
    port: portId,
    from: quantity("pressure"),
    to: quantity("pressure"),
    minutes: count,
    fromTemperature: z.optional(quantity("temperature")),
    toTemperature: z.optional(quantity("temperature")),
    verdict: choice(["holds", "leaks", "cannot tell"]),
    words: z.optional(words),
  }),
] as const;
