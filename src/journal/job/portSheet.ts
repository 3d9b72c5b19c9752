import { type Entry, entryId } from "../entry.ts";
import type { Fact, FactOf, FactType } from "../facts/fact.ts";
import type { EntryId, PersonId, PortId } from "../facts/ids.ts";

/** A port as hands left it. Curing is a port that is torqued with a clock still running. */
export type PortState =
  | "unknown"
  | "closed"
  | "broken loose"
  | "would not open"
  | "out"
  | "by hand"
  | "let go"
  | "torqued"
  | "dry-checked";

/** A fact of a port with its place and its hand. */
export type Noted<T extends FactType> = FactOf<T> & {
  readonly entry: EntryId;
  readonly by: PersonId;
  readonly at: string;
};

export type PortSheet = {
  readonly port: PortId;
  readonly state: PortState;
  readonly since: string | null;
  /** Whose hand brought it into this state. */
  readonly by: PersonId | null;
  /** Whether it was open at any time of the job. */
  readonly wasOut: boolean;
  readonly brokenLoose: Noted<"PortBrokenLoose"> | null;
  readonly washersOut: Noted<"WashersOut"> | null;
  readonly washersIn: Noted<"WashersIn"> | null;
  readonly plug: Noted<"PlugJudged"> | null;
  readonly torqued: Noted<"PortTorqued"> | null;
  readonly checkedAgain: number;
  readonly letGo: readonly Noted<"PortLetGo">[];
  /** Whether turns were counted or the port repaired since it last let go. */
  readonly countedSinceLetGo: boolean;
  readonly cure: Noted<"CureBegan"> | null;
  readonly dry: Noted<"PortDryChecked"> | null;
  readonly heldForNow: Noted<"PortHeldForNow"> | null;
  readonly pressure: readonly Noted<"PressureHeld">[];
  readonly questions: Omit<FactOf<"QuestionsAnswered">, "type" | "port">;
  /** The last reading of each kind. */
  readonly readings: readonly Noted<"ReadingTaken">[];
  readonly caught: Noted<"CatchFelt"> | null;
  readonly seat: Noted<"SeatJudged"> | null;
  readonly material: Noted<"MaterialJudged"> | null;
  readonly thread: Noted<"ThreadNamed"> | null;
  readonly weighed: Noted<"OptionsWeighed"> | null;
  readonly offered: Noted<"OptionsOffered"> | null;
  readonly decided: Noted<"OwnerDecided"> | null;
  readonly prepared: Noted<"PortPrepared"> | null;
  readonly repairs: readonly Noted<"RepairMade">[];
  readonly tag: Noted<"PortTagged"> | null;
  readonly warnings: readonly Noted<"NextHandWarned">[];
};

export type Ports = Readonly<Record<PortId, PortSheet>>;

export function portsAfter(ports: Ports, entry: Entry): Ports {
  const { fact, at } = entry;
  if (!("port" in fact) || fact.port === undefined) return ports;
  const known = ports[fact.port] ?? untouched(fact.port);
  const now = portAfter(known, entry.fact, entry);
  if (now === known) return ports;
  const moved = now.state !== known.state || moves.has(fact.type);
  return { ...ports, [fact.port]: moved ? { ...now, since: at, by: handOf(entry) } : now };
}

/** A plug that was closed by hand twice is by hand since the second time. */
const moves = new Set<FactType>(["PortBrokenLoose", "PortOpened", "PortClosedByHand", "PortTorqued", "PortLetGo"]);

const handOf = ({ fact, by }: Entry): PersonId => (fact.type === "PortTorqued" ? fact.pulledBy : by);

const untouched = (port: PortId): PortSheet => ({
  port,
  state: "unknown",
  since: null,
  by: null,
  wasOut: false,
  brokenLoose: null,
  washersOut: null,
  washersIn: null,
  plug: null,
  torqued: null,
  checkedAgain: 0,
  letGo: [],
  countedSinceLetGo: true,
  cure: null,
  dry: null,
  heldForNow: null,
  pressure: [],
  questions: {},
  readings: [],
  caught: null,
  seat: null,
  material: null,
  thread: null,
  weighed: null,
  offered: null,
  decided: null,
  prepared: null,
  repairs: [],
  tag: null,
  warnings: [],
});

/** What opens a port undoes what closed it; what was found out about it stays. */
const opened = { torqued: null, checkedAgain: 0, cure: null, dry: null } as const;

function portAfter(sheet: PortSheet, fact: Fact, entry: Entry): PortSheet {
  const noted = <T extends FactType>(it: FactOf<T>): Noted<T> =>
    ({ ...it, entry: entryId(entry), by: entry.by, at: entry.at }) as Noted<T>;
  switch (fact.type) {
    case "PortFoundClosed":
      return { ...sheet, state: "closed" };
    case "PortBrokenLoose":
      return { ...sheet, ...opened, state: "broken loose", brokenLoose: noted(fact) };
    case "PortWouldNotOpen":
      return { ...sheet, state: "would not open" };
    case "PortOpened":
      return { ...sheet, ...opened, state: "out", wasOut: true };
    case "WashersOut":
      return { ...sheet, washersOut: noted(fact), washersIn: null };
    case "WashersIn":
      return { ...sheet, washersIn: noted(fact) };
    case "PlugJudged":
      return { ...sheet, plug: noted(fact) };
    case "PortClosedByHand":
      return { ...sheet, ...opened, state: "by hand" };
    case "PortTorqued": {
      const checkedAgain = sheet.checkedAgain + (fact.checkedAgain ? 1 : 0);
      return { ...sheet, state: "torqued", torqued: noted(fact), checkedAgain, dry: null };
    }
    case "PortLetGo":
      return { ...sheet, ...opened, state: "let go", letGo: [...sheet.letGo, noted(fact)], countedSinceLetGo: false };
    case "CureBegan":
      return { ...sheet, cure: noted(fact) };
    case "PortDryChecked":
      return { ...sheet, dry: noted(fact), state: fact.dry && isTight(sheet.state) ? "dry-checked" : tightOnly(sheet) };
    case "PortHeldForNow":
      return { ...sheet, heldForNow: noted(fact) };
    case "PortHoldEnded":
      return { ...sheet, heldForNow: null };
    case "PressureHeld":
      return { ...sheet, pressure: [...sheet.pressure, noted(fact)] };
    case "QuestionsAnswered": {
      const { type: _type, port: _port, ...answers } = fact;
      return { ...sheet, questions: { ...sheet.questions, ...answers } };
    }
    case "ReadingTaken": {
      const others = sheet.readings.filter((it) => it.reading !== fact.reading);
      const counted = sheet.countedSinceLetGo || fact.reading === "left.turns";
      return { ...sheet, readings: [...others, noted(fact)], countedSinceLetGo: counted };
    }
    case "CatchFelt":
      return { ...sheet, caught: noted(fact) };
    case "SeatJudged":
      return { ...sheet, seat: noted(fact) };
    case "MaterialJudged":
      return { ...sheet, material: noted(fact) };
    case "ThreadNamed":
      return { ...sheet, thread: noted(fact) };
    case "OptionsWeighed":
      return { ...sheet, weighed: noted(fact) };
    case "OptionsOffered":
      return { ...sheet, offered: noted(fact) };
    case "OwnerDecided":
      return { ...sheet, decided: noted(fact) };
    case "PortPrepared":
      return { ...sheet, prepared: noted(fact) };
    case "RepairMade":
      return { ...sheet, repairs: [...sheet.repairs, noted(fact)], countedSinceLetGo: true };
    case "PortTagged":
      return { ...sheet, tag: noted(fact) };
    case "NextHandWarned":
      return { ...sheet, warnings: [...sheet.warnings, noted(fact)] };
    default:
      return sheet;
  }
}

/** Whether a port is torqued at least. */
export const isTight = (state: PortState): boolean => state === "torqued" || state === "dry-checked";

const tightOnly = ({ state }: PortSheet): PortState => (state === "dry-checked" ? "torqued" : state);
