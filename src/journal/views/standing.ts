import type { JobId, MachineId, PersonId, PortId, UnitId } from "../facts/ids.ts";
import type { GateRefusal } from "../job/gate.ts";
import { leavingRefusals, startingRefusals } from "../job/gates.ts";
import type { Breach, JobSheet, Stage } from "../job/jobSheet.ts";
import { isTight, type PortSheet, type PortState } from "../job/portSheet.ts";
import type { FluidState, UnitSheet } from "../job/unitSheet.ts";

/** A port that somebody touched, as the wall shows it. */
export type StandingPort = {
  readonly port: PortId;
  readonly state: PortState | "curing" | "held for now";
  /** For how long, whole minutes; null where nobody knows since when. */
  readonly minutes: number | null;
  readonly by: PersonId | null;
  /** Until when, of a bead that cures (a moment) or a hole held for now (a day). */
  readonly until: string | null;
};

export type StandingUnit = {
  readonly unit: UnitId;
  readonly called: string;
  readonly fluid: FluidState;
  /** What came out was far too little or too much: fill nothing before it is understood. */
  readonly stop: boolean;
};

/** A job that stands in the workshop, in the bay or in the yard. */
export type Standing = {
  readonly job: JobId;
  readonly machine: MachineId | null;
  readonly bay: string | null;
  readonly stage: Stage;
  readonly ports: readonly StandingPort[];
  readonly units: readonly StandingUnit[];
  /** Why it must not be started; none if it may. */
  readonly notStarted: readonly GateRefusal[];
  /** Why it must not leave; none if it may. */
  readonly notLeaving: readonly GateRefusal[];
  readonly breaches: readonly Breach[];
};

/**
 * What is open, drained, by hand or curing at `now`, the most urgent first: a job that left with a port not tight, then
 * machines that must not be started, then the rest, each by their oldest port.
 */
export function standing(sheets: Iterable<JobSheet>, now: string): readonly Standing[] {
  return [...sheets]
    .filter(stands)
    .map((sheet) => standingOf(sheet, now))
    .sort((a, b) => urgency(a) - urgency(b) || longest(b) - longest(a) || (a.job < b.job ? -1 : 1));
}

/** A job stands while it is open; one that was let go stands on if what came later shows that it should not have been. */
const stands = (sheet: JobSheet): boolean =>
  sheet.job !== null && (sheet.stage === "open" || (sheet.stage === "released" && startingRefusals(sheet).length > 0));

/** One job as the wall shows it at `now`. */
export function standingOf(sheet: JobSheet, now: string): Standing {
  return {
    job: sheet.job as JobId,
    machine: sheet.machine,
    bay: sheet.bay,
    stage: sheet.stage,
    ports: Object.values(sheet.ports)
      .filter((it) => it.state !== "unknown" || it.heldForNow !== null)
      .map((it) => standingPort(it, now)),
    units: Object.values(sheet.units).map(standingUnit),
    notStarted: startingRefusals(sheet),
    notLeaving: leavingRefusals(sheet, now),
    breaches: sheet.breaches,
  };
}

function standingPort({ port, state, since, by, cure, heldForNow }: PortSheet, now: string): StandingPort {
  const minutes = since === null ? null : minutesBetween(since, now);
  if (heldForNow) {
    const held = minutesBetween(heldForNow.at, now);
    return { port, state: "held for now", minutes: held, by: heldForNow.by, until: heldForNow.until };
  }
  const curing = cure !== null && isTight(state) && Date.parse(now) < Date.parse(cure.earliest);
  if (curing) return { port, state: "curing", minutes: minutesBetween(cure.closedAt, now), by, until: cure.earliest };
  return { port, state, minutes, by, until: null };
}

const standingUnit = ({ unit, is, fluid, balance, fills }: UnitSheet): StandingUnit => ({
  unit,
  called: is?.called ?? unit,
  fluid,
  stop: fluid === "drained" && fills.length === 0 && (balance?.stop ?? false),
});

/** Never below nothing: the clock of another device may run ahead. */
const minutesBetween = (from: string, to: string): number =>
  Math.max(0, Math.floor((Date.parse(to) - Date.parse(from)) / 60_000));

const urgency = ({ stage, notStarted }: Standing): number => (stage === "released" ? 0 : notStarted.length > 0 ? 1 : 2);

const longest = ({ ports }: Standing): number =>
  Math.max(0, ...ports.filter(({ state }) => !isTight(state as PortState)).map(({ minutes }) => minutes ?? 0));
