import { valueIn } from "../../mechanics/quantity/quantity.ts";
import { turn } from "../../mechanics/quantity/unit.ts";
import type { FactOf } from "../facts/fact.ts";
import type { JobId, PersonId, PortId } from "../facts/ids.ts";
import type { JobSheet } from "../job/jobSheet.ts";
import type { Noted, PortSheet } from "../job/portSheet.ts";
import { asRead } from "../shop/instruments.ts";

/** One visit to a port: what was found, done and left there. */
export type Visit = {
  readonly job: JobId;
  readonly at: string;
  readonly opened: boolean;
  readonly brokenLoose: FactOf<"PortBrokenLoose">["hard"] | null;
  readonly washers: { readonly out: number | null; readonly in: number | null };
  /** Turns by hand from the catch to the seat, as they were counted. */
  readonly turns: number | null;
  readonly turnsHow: string | null;
  readonly torque: string | null;
  readonly pulledBy: PersonId | null;
  readonly fitted: FactOf<"PortTorqued">["fitted"] | null;
  readonly thread: string | null;
  readonly repairs: readonly Noted<"RepairMade">[];
  readonly letGo: boolean;
  readonly cameBack: readonly Noted<"CameBack">[];
  readonly warnings: readonly string[];
};

/** The history of one port, the earliest visit first. */
export type Passport = {
  readonly port: PortId;
  readonly visits: readonly Visit[];
  readonly timesOpened: number;
  readonly turns: TurnsTrend;
};

/** How the turns went over the years: 8, 7, 6 is the warning before the thread strips. */
export type TurnsTrend = {
  readonly counts: readonly { readonly at: string; readonly turns: number }[];
  /** Fewer at each of the last two counts, or a turn and more below the first; a quarter turn is the count's own doubt. */
  readonly falling: boolean;
};

/** The passport of a port out of all jobs that it was part of. A count before and after a repair is not one series. */
export function passport(port: PortId, sheets: Iterable<JobSheet>): Passport {
  const visits = [...sheets]
    .flatMap((sheet) => {
      const own = sheet.ports[port];
      return own && sheet.job !== null ? [visitOf(own, sheet, sheet.job)] : [];
    })
    .sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : a.job < b.job ? -1 : 1));
  const sinceRepair = visits.slice(visits.findLastIndex(({ repairs }) => repairs.length > 0) + 1);
  const counts = sinceRepair.flatMap(({ at, turns }) => (turns === null ? [] : [{ at, turns }]));
  return {
    port,
    visits,
    timesOpened: visits.filter(({ opened }) => opened).length,
    turns: { counts, falling: isFalling(counts.map(({ turns }) => turns)) },
  };
}

function visitOf(own: PortSheet, sheet: JobSheet, job: JobId): Visit {
  const count = own.readings.find(({ reading }) => reading === "left.turns");
  return {
    job,
    at: sheet.begunAt ?? own.since ?? "",
    opened: own.wasOut,
    brokenLoose: own.brokenLoose?.hard ?? null,
    washers: { out: own.washersOut?.count ?? null, in: own.washersIn?.count ?? null },
    turns: count ? valueIn(turn, asRead("n", count.value, "turns")) : null,
    turnsHow: count?.how ?? null,
    torque: own.torqued?.set ?? null,
    pulledBy: own.torqued?.pulledBy ?? null,
    fitted: own.torqued?.fitted ?? null,
    thread: own.thread?.thread ?? null,
    repairs: own.repairs,
    letGo: own.letGo.length > 0,
    cameBack: sheet.cameBack.filter((it) => it.port === own.port),
    warnings: own.warnings.map((it) => it.words),
  };
}

const DOUBT = 0.25;

function isFalling(turns: readonly number[]): boolean {
  const [first = 0] = turns;
  const [third, second, last = 0] = [turns.at(-3), turns.at(-2), turns.at(-1)];
  const twice = third !== undefined && second !== undefined && third - second > DOUBT && second - last > DOUBT;
  return turns.length > 1 && (twice || first - last >= 1);
}
