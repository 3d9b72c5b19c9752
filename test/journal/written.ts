import { type Entry, inJournalOrder } from "../../src/journal/entry.ts";
import type { Fact } from "../../src/journal/facts/fact.ts";
import type { DeviceId, JobId, PersonId, WorkshopId } from "../../src/journal/facts/ids.ts";
import { entryFrom } from "../../src/journal/parse.ts";

/** What a test says of an entry; the rest is filled in as one device would. */
export type Said = {
  readonly by?: string;
  readonly at?: string;
  readonly device?: string;
  readonly job?: string | null;
};

/** A fact as plain data: ids are plain texts, and the schema has the last word. */
// biome-ignore lint/suspicious/noExplicitAny: the schema checks it in `written`.
export type PlainFact = { readonly type: Fact["type"]; readonly [field: string]: any };

/** A fact, or a fact and what is said of its entry. */
export type Line = PlainFact | readonly [PlainFact, Said];

export const at = (hour: string, day = "2026-11-25"): string => `${day}T${hour}:00Z`;

/** Entries as devices would write them one after the other, each having seen all before; checked as a store would. */
export function written(lines: readonly Line[]): readonly Entry[] {
  const numbers = new Map<string, number>();
  return lines.map((line, i) => {
    const [fact, said] = Array.isArray(line) ? (line as readonly [PlainFact, Said]) : [line as PlainFact, {}];
    const device = said.device ?? "bench";
    const number = (numbers.get(device) ?? 0) + 1;
    numbers.set(device, number);
    return entryFrom({
      workshop: "hollin-reach" as WorkshopId,
      device: device as DeviceId,
      number,
      clock: i + 1,
      at: said.at ?? `2026-11-25T08:${String(i).padStart(2, "0")}:00Z`,
      by: (said.by ?? "jory") as PersonId,
      job: said.job === undefined ? ("0412" as JobId) : (said.job as JobId | null),
      fact,
    });
  });
}

export const ordered = (entries: readonly Entry[]): readonly Entry[] => entries.toSorted(inJournalOrder);

/** A gear case with a fill and a drain plug, as the mechanic names it at the lift. */
export const gearCase: PlainFact = {
  type: "UnitIdentified",
  is: {
    unit: "gear-case",
    called: "Angle-gear box",
    holdsFluid: true,
    expected: "2.4 L",
    ports: [
      { port: "fill", called: "Level", roles: ["fill", "level"], closedBy: "plug", joint: "gear case level" },
      { port: "drain", called: "Drain", roles: ["drain"], closedBy: "plug", joint: "gear case drain" },
    ],
  },
};
export const opened: PlainFact = { type: "JobOpened", machine: "chipper", cameFor: "oil change" };
export const loose = (port: string, hard = "normal"): PlainFact => ({ type: "PortBrokenLoose", port, hard });
export const out = (port: string): PlainFact => ({ type: "PortOpened", port });
export const byHand = (port: string): PlainFact => ({ type: "PortClosedByHand", port });
export const drained = (volume?: string): PlainFact => ({
  type: "UnitDrained",
  unit: "gear-case",
  ...(volume === undefined ? {} : { out: volume, how: "jug" }),
});
export const filled: PlainFact = {
  type: "UnitFilled",
  unit: "gear-case",
  fluid: null,
  called: "75W-90",
  volume: "2.4 L",
};
export const level: PlainFact = {
  type: "LevelChecked",
  unit: "gear-case",
  right: true,
  belowLip: "0 mm",
  how: "wire hook",
};
export const washers = (port: string, before: number, after: number, because?: string): readonly PlainFact[] => [
  { type: "WashersOut", port, count: before },
  { type: "WashersIn", port, count: after, ...(because ? { because } : {}) },
];
export const torqued = (port: string, more: Record<string, unknown> = {}): PlainFact => ({
  type: "PortTorqued",
  port,
  set: "28 N·m",
  wrench: { instrument: "TW-2", calibrated: "2026-03-01" },
  clicked: true,
  checkedAgain: false,
  pulledBy: "jory",
  ...more,
});
export const dry = (port: string): PlainFact => ({
  type: "PortDryChecked",
  port,
  dry: true,
  after: "20 min",
  how: "paper",
});
export const ownersSheet: PlainFact = { type: "PaperIssued", paper: "owner's sheet", to: "owner" };
export const released: PlainFact = { type: "MachineReleased" };
export const overridden = (rule: string, more: Record<string, unknown> = {}): PlainFact => ({
  type: "RuleOverridden",
  rule,
  reason: "wanted on the farm tonight",
  ...more,
});

/** The whole of an ordinary service at one port, up to the level. */
export const service: readonly PlainFact[] = [
  opened,
  gearCase,
  loose("fill"),
  out("fill"),
  loose("drain"),
  out("drain"),
  drained("2.3 L"),
  ...washers("fill", 1, 1),
  ...washers("drain", 1, 1),
  byHand("drain"),
  torqued("drain"),
  filled,
  level,
  byHand("fill"),
  torqued("fill"),
];
