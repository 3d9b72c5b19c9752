import { type Entry, entryId } from "../entry.ts";
import type { FactOf, FactType } from "../facts/fact.ts";
import type { EntryId, JobId, MachineId, OwnerId, PersonId } from "../facts/ids.ts";
import type { GateRefusal } from "./gate.ts";
import type { Noted, Ports } from "./portSheet.ts";
import type { Units } from "./unitSheet.ts";

export type Stage = "enquiry" | "booked" | "open" | "released" | "left not running" | "closed";

/** A fact that a gate would have stopped, had its writer known all that is known now. */
export type Breach = GateRefusal & { readonly entry: EntryId; readonly by: PersonId; readonly at: string };

/** Everything of one job as it stands. */
export type JobSheet = {
  readonly job: JobId | null;
  readonly stage: Stage;
  readonly machine: MachineId | null;
  readonly owner: OwnerId | null;
  readonly cameFor: string | null;
  readonly bay: string | null;
  readonly begunAt: string | null;
  readonly endedAt: string | null;
  readonly promise: { readonly from: string; readonly to: string } | null;
  readonly units: Units;
  readonly ports: Ports;
  readonly meters: readonly Noted<"MeterRead">[];
  readonly released: Noted<"MachineReleased"> | null;
  readonly leftNotRunning: Noted<"MachineLeftNotRunning"> | null;
  readonly overrides: readonly Noted<"RuleOverridden">[];
  readonly papers: readonly Noted<"PaperIssued">[];
  readonly followUps: readonly FollowUp[];
  /** Looks in the order in which they were made, planned or not. */
  readonly looks: readonly Noted<"FollowUpDone">[];
  readonly cameBack: readonly Noted<"CameBack">[];
  readonly notices: readonly Notice[];
  readonly follows: JobId | null;
  readonly breaches: readonly Breach[];
  /** All that has no place of its own on the sheet: calls, conditions, notes, orders, costs, what was amended. */
  readonly log: readonly LogLine[];
};

export type LogLine = { readonly entry: EntryId; readonly by: PersonId; readonly at: string; readonly fact: LogFact };
export type LogFact = FactOf<(typeof logged)[number]>;

export type FollowUp = Noted<"FollowUpPlanned"> & {
  readonly state: "open" | "done" | "not reached";
  /** The day it is due now: a call that was not reached may be tried again. */
  readonly due: string | null;
};

export type Notice = Noted<"AlsoNoticed"> & { readonly settled: string | null };

const logged = [
  "CallTaken",
  "CallAnswered",
  "ScopeAgreed",
  "ConditionFound",
  "WetnessWatched",
  "TorqueChecked",
  "PartsOrdered",
  "CostsSettled",
  "NearMiss",
  "NoteWritten",
  "EntryWithdrawn",
  "EntryCorrected",
] as const satisfies readonly FactType[];

/** A job of which nothing was written yet. */
export const unwritten: JobSheet = {
  job: null,
  stage: "enquiry",
  machine: null,
  owner: null,
  cameFor: null,
  bay: null,
  begunAt: null,
  endedAt: null,
  promise: null,
  units: {},
  ports: {},
  meters: [],
  released: null,
  leftNotRunning: null,
  overrides: [],
  papers: [],
  followUps: [],
  looks: [],
  cameBack: [],
  notices: [],
  follows: null,
  breaches: [],
  log: [],
};

/** What an entry of the job changes on its sheet, but for its units and ports and for what it went past. */
export function jobAfter(sheet: JobSheet, entry: Entry): JobSheet {
  const { fact, at } = entry;
  const noted = <T extends FactType>(it: FactOf<T>): Noted<T> =>
    ({ ...it, entry: entryId(entry), by: entry.by, at }) as Noted<T>;
  switch (fact.type) {
    case "JobBooked":
      return {
        ...sheet,
        // A promise may be given anew while the machine is here.
        stage: sheet.stage === "enquiry" ? "booked" : sheet.stage,
        machine: fact.machine,
        bay: fact.bay ?? sheet.bay,
        promise: { from: fact.readyFrom, to: fact.readyTo },
      };
    case "JobOpened": {
      const { machine, owner = sheet.owner, cameFor, bay = sheet.bay, meter } = fact;
      return {
        ...sheet,
        stage: "open",
        machine,
        owner,
        cameFor,
        bay,
        meters: meter ? [...sheet.meters, noted({ type: "MeterRead", meter })] : sheet.meters,
      };
    }
    case "MeterRead":
      return { ...sheet, meters: [...sheet.meters, noted(fact)] };
    case "RuleOverridden":
      return { ...sheet, overrides: [...sheet.overrides, noted(fact)] };
    case "PaperIssued":
      return { ...sheet, papers: [...sheet.papers, noted(fact)] };
    case "MachineReleased":
      return { ...sheet, stage: "released", released: noted(fact), endedAt: at, leftNotRunning: null };
    case "MachineLeftNotRunning":
      return { ...sheet, stage: "left not running", leftNotRunning: noted(fact), endedAt: at };
    case "JobClosed":
      return { ...sheet, stage: "closed", endedAt: sheet.endedAt ?? at };
    case "FollowUpPlanned":
      return { ...sheet, followUps: [...sheet.followUps, { ...noted(fact), state: "open", due: fact.on }] };
    case "FollowUpDone": {
      const followUps = sheet.followUps.map((it) =>
        it.followUp === fact.followUp ? { ...it, state: "done" as const, due: null } : it,
      );
      return { ...sheet, followUps, looks: [...sheet.looks, noted(fact)] };
    }
    case "FollowUpNotReached": {
      const followUps = sheet.followUps.map((it) =>
        it.followUp === fact.followUp ? { ...it, state: "not reached" as const, due: fact.again ?? null } : it,
      );
      return { ...sheet, followUps };
    }
    case "CameBack":
      return { ...sheet, cameBack: [...sheet.cameBack, noted(fact)] };
    case "AlsoNoticed":
      return { ...sheet, notices: [...sheet.notices, { ...noted(fact), settled: null }] };
    case "NoticeSettled": {
      const notices = sheet.notices.map((it) => (it.notice === fact.notice ? { ...it, settled: fact.words } : it));
      return { ...sheet, notices };
    }
    case "JobFollows":
      return { ...sheet, follows: fact.earlier };
    default:
      return isLogged(fact)
        ? { ...sheet, log: [...sheet.log, { entry: entryId(entry), by: entry.by, at, fact }] }
        : sheet;
  }
}

const isLogged = (fact: Entry["fact"]): fact is LogFact => (logged as readonly FactType[]).includes(fact.type);
