import type { GateRefusal } from "../../journal/job/gate.ts";
import type { JobSheet } from "../../journal/job/jobSheet.ts";
import { nextStep } from "../../journal/job/nextStep.ts";
import { isTight, type PortState } from "../../journal/job/portSheet.ts";
import type { Shop } from "../../journal/shop/shop.ts";
import { type Standing, type StandingPort, standing } from "../../journal/views/standing.ts";
import { fluidStateWords, gateWords, portStateWords } from "../words/gateWords.ts";
import { type Names, namesIn } from "../words/journalNames.ts";
import { promiseWords } from "../words/promiseWords.ts";
import { spanWords } from "../words/standingWords.ts";
import { stepWords } from "../words/stepWords.ts";

/** A port on the wall. `alarm` is a state in which nobody walks away. */
export type PortOnWall = {
  readonly port: string;
  readonly called: string;
  readonly state: string;
  readonly alarm: boolean;
  readonly since: string | null;
  readonly hand: string | null;
  /** A moment or a day. */
  readonly until: string | null;
};

/** A promised range in UTC, and why it cannot be kept. */
export type PromiseShown = { readonly from: string; readonly to: string; readonly broken: string | null };

/** A job on the wall, in words. */
export type JobOnWall = {
  readonly job: string;
  readonly machine: string;
  readonly where: string | null;
  /** By when it is promised, while it has not left. */
  readonly promise: PromiseShown | null;
  readonly gone: boolean;
  readonly mayStart: boolean;
  readonly mayLeave: boolean;
  readonly ports: readonly PortOnWall[];
  readonly units: readonly {
    readonly unit: string;
    readonly called: string;
    readonly state: string;
    readonly stop: string | null;
  }[];
  readonly next: string | null;
  /** Why it must not be started, and why it must not leave, each said once. */
  readonly forbids: readonly string[];
  readonly breaches: readonly string[];
};

/** What stands in the workshop at `now`, what must not be started first. */
export function standingShown(sheets: Iterable<JobSheet>, shop: Shop, now: string): readonly JobOnWall[] {
  const all = [...sheets];
  const byJob = new Map(all.map((it) => [it.job, it]));
  return standing(all, now).flatMap((it) => {
    const sheet = byJob.get(it.job);
    return sheet ? [jobOnWall(it, sheet, shop, now)] : [];
  });
}

export function jobOnWall(it: Standing, sheet: JobSheet, shop: Shop, now: string): JobOnWall {
  const names = namesIn(shop, sheet);
  const next = nextStep(sheet, now);
  return {
    job: it.job,
    machine: it.machine === null ? "Machine not named" : names.machine(it.machine),
    where: it.bay,
    promise: promiseShown(it, sheet, now),
    gone: it.stage === "released",
    mayStart: it.notStarted.length === 0,
    mayLeave: it.notLeaving.length === 0,
    ports: it.ports.map((port) => portOnWall(port, names)),
    units: it.units.map(({ unit, called, fluid, stop }) => ({
      unit,
      called,
      state: fluidStateWords[fluid],
      stop: stop ? gateWords["volume stop"] : null,
    })),
    next:
      next && stepWords[next.step].sentence(next.port ? names.port(next.port) : next.unit ? names.unit(next.unit) : ""),
    forbids: [...new Set([...it.notStarted, ...it.notLeaving].map((refusal) => gateSentence(refusal, names)))],
    breaches: it.breaches.map((breach) => `${gateSentence(breach, names)} (${names.person(breach.by)})`),
  };
}

/** The promise of a job that has not left; the clock of a bead may run past it. */
function promiseShown({ stage, ports }: Standing, { promise }: JobSheet, now: string): PromiseShown | null {
  if (!promise || (stage !== "booked" && stage !== "open")) return null;
  const to = Date.parse(promise.to);
  const cures = ports.some((it) => it.state === "curing" && it.until !== null && Date.parse(it.until) > to);
  return { ...promise, broken: Date.parse(now) > to ? promiseWords.over : cures ? promiseWords.cures : null };
}

/** Why a gate is shut, with the port or unit that it is about. */
export function gateSentence({ gate, port, unit }: GateRefusal, names: Names): string {
  const about = port ? names.port(port) : unit ? names.unit(unit) : null;
  return about === null ? gateWords[gate] : `${about}: ${gateWords[gate]}`;
}

const portOnWall = ({ port, state, minutes, by, until }: StandingPort, names: Names): PortOnWall => ({
  port,
  called: names.port(port),
  state: portStateWords[state],
  alarm: state === "curing" || state === "held for now" || !(isTight(state as PortState) || state === "closed"),
  since: minutes === null ? null : spanWords(minutes),
  hand: by === null ? null : names.person(by),
  until,
});
