import type { RemedyId } from "../../mechanics/remedies/method.ts";
import { daysBetween } from "../../mechanics/service/dueDate.ts";
import type { HeldCase } from "../../mechanics/service/heldCases.ts";
import type { JobId, PortId } from "../facts/ids.ts";
import type { JobSheet } from "../job/jobSheet.ts";
import type { Noted } from "../job/portSheet.ts";

/** A repair of the workshop and how long it is known to have held. */
export type RepairHeld = HeldCase & {
  readonly method: RemedyId;
  readonly job: JobId;
  readonly port: PortId;
  readonly madeAt: string;
  readonly cause: string | null;
  /** What the comeback cost, in the workshop's currency. */
  readonly cost: number | null;
};

/**
 * Every repair of the workshop, ready for `held`: dry looks carry it on, a comeback ends it. Nobody's word is taken for it:
 * a follow-up that was not reached adds no day.
 */
export function whatHeld(sheets: Iterable<JobSheet>): readonly RepairHeld[] {
  return [...sheets].flatMap((sheet) =>
    Object.values(sheet.ports).flatMap(({ port, repairs }) =>
      repairs.map((repair, i) => heldBy(sheet, port, repair, repairs[i + 1]?.at ?? null)),
    ),
  );
}

function heldBy(sheet: JobSheet, port: PortId, repair: Noted<"RepairMade">, next: string | null): RepairHeld {
  const madeAt = repair.at;
  const within = (at: string): boolean =>
    Date.parse(at) >= Date.parse(madeAt) && (!next || Date.parse(at) <= Date.parse(next));
  const failed = sheet.cameBack.find((it) => it.port === port && within(it.foundAt));
  const dry = sheet.looks.filter((it) => it.found === "dry" && (it.port ?? port) === port && within(it.at));
  const until = failed?.foundAt ?? null;
  const lastDry = dry.filter(({ at }) => !until || Date.parse(at) <= Date.parse(until)).at(-1)?.at ?? null;
  const seen = later(failed?.heldUntil ?? null, lastDry);
  return {
    method: repair.method,
    from_days: seen ? days(madeAt, seen) : 0,
    to_days: until ? days(madeAt, until) : null,
    job: sheet.job as JobId,
    port,
    madeAt,
    cause: failed?.cause ?? null,
    cost: failed?.cost ?? null,
  };
}

const later = (a: string | null, b: string | null): string | null =>
  a && b ? (Date.parse(a) > Date.parse(b) ? a : b) : (a ?? b);

const days = (from: string, to: string): number => Math.max(0, daysBetween(from.slice(0, 10), to.slice(0, 10)));
