import { dayAfter } from "../../mechanics/service/dueDate.ts";
import type { Levels } from "../../mechanics/tables/levels.ts";
import type { FollowUpId, InstrumentId, JobId, NoticeId, PortId } from "../facts/ids.ts";
import type { JobSheet } from "../job/jobSheet.ts";
import type { Shop } from "../shop/shop.ts";
import { type ServiceDue, servicesDue } from "./serviceDue.ts";

/** One thing that falls due on a day. */
export type DueThing =
  | {
      readonly type: "follow-up";
      readonly on: string;
      readonly job: JobId;
      readonly followUp: FollowUpId;
      readonly notReached: boolean;
    }
  | { readonly type: "make-do ends"; readonly on: string; readonly job: JobId; readonly port: PortId }
  | { readonly type: "held for now"; readonly on: string; readonly job: JobId; readonly port: PortId }
  | { readonly type: "calibration"; readonly on: string; readonly instrument: InstrumentId }
  | { readonly type: "shelf date"; readonly on: string; readonly stock: string; readonly called: string }
  | { readonly type: "part arrives"; readonly on: string; readonly job: JobId; readonly words: string }
  | {
      readonly type: "also noticed";
      readonly on: string;
      readonly job: JobId;
      readonly notice: NoticeId;
      readonly words: string;
    }
  | { readonly type: "promised"; readonly on: string; readonly job: JobId; readonly here: boolean }
  | { readonly type: "call to answer"; readonly on: string; readonly job: JobId; readonly words: string }
  | ServiceDue;

/** The day of a moment in UTC by the clock of the place, ISO 8601. */
export type DayOf = (instant: string) => string;

/** All that falls due, the earliest first; what is overdue stands on top. `today` is a day, ISO 8601. */
export function fallingDue(
  shop: Shop,
  sheets: Iterable<JobSheet>,
  today: string,
  dayOf: DayOf,
  levels: Levels,
): readonly DueThing[] {
  const all = [...sheets].filter(({ job }) => job !== null);
  return [
    ...all.flatMap((sheet) => ofJob(sheet, sheet.job as JobId, dayOf)),
    ...calibrations(shop, levels),
    ...shelf(shop),
    ...servicesDue(all, today),
  ].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.type < b.type ? -1 : 1));
}

function ofJob(sheet: JobSheet, job: JobId, dayOf: DayOf): readonly DueThing[] {
  const calls = sheet.log.filter(({ fact }) => fact.type === "CallTaken");
  const answered = sheet.log.some(({ fact }) => fact.type === "CallAnswered");
  return [
    ...sheet.followUps.flatMap(({ due, followUp, state }): DueThing[] =>
      due === null ? [] : [{ type: "follow-up", on: due, job, followUp, notReached: state === "not reached" }],
    ),
    ...Object.values(sheet.ports).flatMap(({ port, repairs, heldForNow }): DueThing[] => {
      const until = repairs.at(-1)?.until;
      const ended = sheet.cameBack.some((it) => it.port === port) && repairs.length === sheet.cameBack.length;
      return [
        ...(until && !ended ? [{ type: "make-do ends" as const, on: until, job, port }] : []),
        ...(heldForNow ? [{ type: "held for now" as const, on: heldForNow.until, job, port }] : []),
      ];
    }),
    ...sheet.notices.flatMap(({ notice, words, look, settled, at }): DueThing[] =>
      settled ? [] : [{ type: "also noticed", on: look === "today" ? dayOf(at) : look, job, notice, words }],
    ),
    ...sheet.log.flatMap(({ fact }): DueThing[] =>
      fact.type === "PartsOrdered" && fact.arrives && sheet.stage === "open"
        ? [{ type: "part arrives", on: fact.arrives, job, words: fact.words }]
        : [],
    ),
    ...(sheet.promise && (sheet.stage === "booked" || sheet.stage === "open")
      ? [{ type: "promised" as const, on: dayOf(sheet.promise.to), job, here: sheet.stage === "open" }]
      : []),
    ...(answered || sheet.stage !== "enquiry"
      ? []
      : calls.flatMap(({ fact, at }): DueThing[] =>
          fact.type === "CallTaken" ? [{ type: "call to answer", on: dayOf(at), job, words: fact.words }] : [],
        )),
  ];
}

function calibrations({ instruments }: Shop, { calibrationDays }: Levels): readonly DueThing[] {
  return Object.values(instruments).flatMap(({ instrument, is, calibrated, retired }): DueThing[] => {
    const last = calibrated.at(-1);
    if (retired || is?.kind !== "wrench" || !last) return [];
    return [{ type: "calibration", on: dayAfter(last, calibrationDays), instrument }];
  });
}

function shelf({ stock }: Shop): readonly DueThing[] {
  const dated = [
    ...Object.values(stock.sealants).map(({ sealant, called, shelfDate }) => ({ stock: sealant, called, shelfDate })),
    ...Object.values(stock.fluids).map(({ fluid, called, shelfDate }) => ({ stock: fluid, called, shelfDate })),
  ];
  return dated.flatMap(({ stock: id, called, shelfDate }): DueThing[] =>
    shelfDate ? [{ type: "shelf date", on: shelfDate, stock: id, called }] : [],
  );
}
