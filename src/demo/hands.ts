import type { FactOf } from "../journal/facts/fact.ts";
import type { Calendar, Told } from "./script.ts";
import { calibrationOf } from "./workshop.ts";

type Of<T extends Told["type"]> = Extract<Told, { readonly type: T }>;
type Fitted = NonNullable<Of<"PortTorqued">["fitted"]>;

/** What hands do at every port, in the words of the journal. */
export const loose = (port: string, hard: FactOf<"PortBrokenLoose">["hard"] = "normal"): Told => ({
  type: "PortBrokenLoose",
  port,
  hard,
});
export const out = (port: string): Told => ({ type: "PortOpened", port });
export const byHand = (port: string): Told => ({ type: "PortClosedByHand", port });
export const washers = (port: string, before: number, after: number, because?: string): readonly Told[] => [
  { type: "WashersOut", port, count: before },
  { type: "WashersIn", port, count: after, ...(because === undefined ? {} : { because }) },
];

export const counted = (port: string, turns: string, how = "with a dot", withWasher = false): Told => ({
  type: "ReadingTaken",
  port,
  reading: "left.turns",
  value: turns,
  how,
  withWasher,
});

export const measured = (port: string, reading: Of<"ReadingTaken">["reading"], value: string, how: string): Told => ({
  type: "ReadingTaken",
  port,
  reading,
  value,
  how,
  ...(how === "caliper" ? { instrument: "C-1" } : {}),
});

/** The six questions answered with nothing found, and what differs from that. */
export const asked = (port: string, more: Partial<Of<"QuestionsAnswered">> = {}): Told => ({
  type: "QuestionsAnswered",
  port,
  crack: "no",
  pressure: "none",
  reaches: [],
  people: "no",
  repairedBefore: "no",
  breather: "free",
  ...more,
});

export const torqued = (
  calendar: Calendar,
  day: number,
  port: string,
  pull: { readonly set: string; readonly wrench: "TW-1" | "TW-2" | "TW-3" },
  by: string,
  fitted?: Fitted,
): Told => ({
  type: "PortTorqued",
  port,
  set: pull.set,
  wrench: { instrument: pull.wrench, calibrated: calendar.day(calibrationOf(pull.wrench, day)) },
  clicked: true,
  checkedAgain: false,
  pulledBy: by,
  ...(fitted ? { fitted } : {}),
});

export const dry = (port: string, after = "20 min"): Told => ({
  type: "PortDryChecked",
  port,
  dry: true,
  after,
  how: "paper",
});

export const level = (unit: string, belowLip = "0 mm"): Told => ({
  type: "LevelChecked",
  unit,
  right: true,
  belowLip,
  how: "wire hook",
});

export const paper: Told = { type: "PaperIssued", paper: "owner's sheet", to: "owner" };
export const released: Told = { type: "MachineReleased" };
export const closed: Told = { type: "JobClosed" };

export const overridden = (rule: string, reason: string, port?: string): Told => ({
  type: "RuleOverridden",
  rule,
  reason,
  pinGiven: true,
  ...(port === undefined ? {} : { port }),
});

/** A look that was planned and made, and found dry. */
export const seenDry = (port: string, words?: string): Told => ({
  type: "FollowUpDone",
  followUp: null,
  port,
  found: "dry",
  ...(words === undefined ? {} : { words }),
});
