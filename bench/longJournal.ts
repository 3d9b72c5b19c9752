import type { Entry } from "../src/journal/entry.ts";
import type { WorkshopId } from "../src/journal/facts/ids.ts";

/** An ordinary entry of some 400 bytes. */
export const drainedEntry = (workshop: WorkshopId, device: string, number: number): Entry =>
  entry(workshop, device, number, "0412", {
    type: "UnitDrained",
    unit: "gear-case",
    out: "2.25 L",
    how: "jug",
    temperature: "44 °C",
    colour: "dark amber",
    metal: "paste",
    water: "no",
  });

/**
 * A journal of `count` entries over three devices: ordinary services of 40 entries each, all finished but the last three,
 * which stand open.
 */
export function longJournal(workshop: WorkshopId, count: number): readonly Entry[] {
  const devices = ["bench", "phone-1", "phone-2"];
  const numbers = new Map<string, number>();
  const jobs = Math.floor(count / service.length);
  return Array.from({ length: jobs * service.length }, (_, i) => {
    const job = Math.floor(i / service.length);
    const step = i % service.length;
    const device = devices[job % devices.length] ?? "bench";
    const number = (numbers.get(device) ?? 0) + 1;
    numbers.set(device, number);
    const open = job >= jobs - 3 && step >= service.length - 6;
    const fact = open ? { type: "NoteWritten", words: `note ${step}` } : service[step];
    return { ...entry(workshop, device, number, jobName(job), fact), clock: i + 1 };
  });
}

export const jobName = (job: number): string => `job-${String(job).padStart(5, "0")}`;

/** The entries of one job of `longJournal`. */
export const entriesOfJob = 40;

const entry = (workshop: WorkshopId, device: string, number: number, job: string, fact: unknown): Entry =>
  ({ workshop, device, number, clock: number, at: "2026-11-25T08:00:00Z", by: "jory", job, fact }) as unknown as Entry;

const ports = ["fill", "drain"];
const service: readonly object[] = [
  { type: "JobOpened", machine: "chipper", cameFor: "oil change" },
  {
    type: "UnitIdentified",
    is: {
      unit: "gear-case",
      called: "Gear case",
      holdsFluid: true,
      expected: "2.4 L",
      ports: [
        { port: "fill", called: "Level", roles: ["fill", "level"], closedBy: "plug", joint: "gear case level" },
        { port: "drain", called: "Drain", roles: ["drain"], closedBy: "plug", joint: "gear case drain" },
      ],
    },
  },
  ...ports.flatMap((port) => [
    { type: "ConditionFound", port, words: "dry" },
    {
      type: "QuestionsAnswered",
      port,
      crack: "no",
      pressure: "none",
      reaches: [],
      people: "no",
      repairedBefore: "no",
      breather: "free",
    },
    { type: "PortBrokenLoose", port, hard: "normal" },
    { type: "PortOpened", port },
    { type: "ReadingTaken", port, reading: "left.turns", value: "8", how: "with a dot" },
    { type: "ReadingTaken", port, reading: "plug.underHead", value: "13 mm", how: "caliper" },
    { type: "CatchFelt", port, catch: "snug", condition: "good" },
    { type: "WashersOut", port, count: 1 },
    { type: "WashersIn", port, count: 1 },
  ]),
  {
    type: "UnitDrained",
    unit: "gear-case",
    out: "2.3 L",
    how: "jug",
    temperature: "44 °C",
    metal: "paste",
    water: "no",
  },
  { type: "NoteWritten", words: "ordinary" },
  { type: "UnitFilled", unit: "gear-case", fluid: null, called: "Gear oil 75W-90", volume: "2.4 L" },
  { type: "LevelChecked", unit: "gear-case", right: true },
  ...ports.flatMap((port) => [
    { type: "PortClosedByHand", port },
    { type: "PortTorqued", port, set: "46 N·m", wrench: null, clicked: true, checkedAgain: false, pulledBy: "jory" },
    { type: "PortDryChecked", port, dry: true, after: "20 min", how: "paper" },
    { type: "NoteWritten", words: "as the book says" },
  ]),
  { type: "ServiceLaidDown", unit: "gear-case", every: { months: 24 }, source: "service sheet" },
  { type: "MeterRead", meter: { hours: "640 h" } },
  { type: "NoteWritten", words: "done" },
  { type: "PaperIssued", paper: "owner's sheet", to: "owner" },
  { type: "FollowUpPlanned", followUp: "f", on: "2026-12-25", way: "call" },
  { type: "MachineReleased" },
  { type: "FollowUpDone", followUp: "f", found: "dry" },
  { type: "JobClosed" },
];
