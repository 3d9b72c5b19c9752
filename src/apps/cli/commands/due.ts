import { type Command, Option } from "commander";
import { type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { d, h, km } from "../../../mechanics/quantity/unit.ts";
import { working } from "../../../mechanics/quantity/working.ts";
import { type Due, type DueLimit, type DueNow, dueNow, nextDue, ordinaryDuty } from "../../../mechanics/service/due.ts";
import { checksAfterRepair, daysToDistance } from "../../../mechanics/service/dueChecks.ts";
import { dayAfter, daysOfMonths } from "../../../mechanics/service/dueDate.ts";
import { fallbackDistance, type Use, useRate } from "../../../mechanics/service/dueUse.ts";
import { type MeterVerdict, meterVerdict } from "../../../mechanics/service/meter.ts";
import { dueLines, type LookInWords } from "../../../sheets/words/dueWords.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption } from "../options.ts";
import { digits, print, workingLines } from "../print.ts";
import { dayOption, todayByTheClock } from "../readings.ts";
import { meterList } from "./dueMeter.ts";

type Options = {
  readonly last?: string;
  readonly happened?: DueNow;
  readonly repaired?: string;
  readonly meter?: string;
  readonly today?: string;
  readonly at?: string;
  readonly now?: string;
  readonly every?: string;
  readonly hoursAt?: string;
  readonly hoursNow?: string;
  readonly everyHours?: string;
  readonly months?: string;
  readonly severe?: string;
  readonly working?: boolean;
  readonly json?: boolean;
};

export function dueCommand(program: Command): void {
  program
    .command("due")
    .description("when the next service falls due: by distance, hours or date, whichever comes first")
    .option("--last <day>", "the day of the last service, as 2026-01-10")
    .option("--today <day>", "the day it is; by the clock of this machine unless told")
    .option("--at <meter>", 'the meter at the last service, as "84210 km"')
    .option("--now <meter>", 'the meter today, as "87960 km"')
    .option("--every <distance>", 'the interval in distance, as "20000 km"')
    .option("--hours-at <hours>", 'the hour meter at the last service, as "640 h"')
    .option("--hours-now <hours>", 'the hour meter today, as "700 h"')
    .option("--every-hours <hours>", 'the interval in hours, as "500 h"')
    .option("--months <months>", "the interval in months, as 12")
    .option("--severe <share>", "severe duty cuts distance and hours to this share, as 0.5")
    .addOption(new Option("--happened <what>", "what makes it due now").choices([...dueNow]))
    .option("--repaired <day>", "the day a seal was repaired: when to look again")
    .option(
      "--meter <file.csv>",
      'a list of readings, by day: on, meter (with its unit, as "84210 km"); whether they can be right',
    )
    .option("--working", "print how every figure was got")
    .option("--json", "one JSON document")
    .addHelpText(
      "after",
      [
        "\nExamples:",
        '  turnsleft due --last 2026-01-10 --at "84210 km" --now "87960 km" --today 2026-04-20 --every "20000 km" --months 12',
        '  turnsleft due --last 2026-01-10 --hours-at "640 h" --hours-now "700 h" --today 2026-04-20 --every-hours "500 h" --months 24 --severe 0.5',
        '  turnsleft due --last 2026-01-10 --at "84210 km" --now "87960 km" --today 2026-04-20 --every "20000 km" --repaired 2026-04-20',
        "  turnsleft due --meter examples/meter.csv",
      ].join("\n"),
    )
    .action(answer);
}

function answer(options: Options): void {
  if (options.meter !== undefined) {
    if (options.last !== undefined)
      throw mistaken("--last", options.last, "nothing beside --meter: a list is only checked");
    meterList(options.meter, options);
    return;
  }
  if (options.last === undefined)
    throw mistaken("--last", null, "the day of the last service, as 2026-01-10; or --meter");
  const last = dayOption("--last", options.last);
  const today = options.today ? dayOption("--today", options.today) : todayByTheClock();
  if (Date.parse(today) < Date.parse(last))
    throw mistaken("--today", today, `the day of the last service, ${last}, or later`);
  const meter = (name: string, text: string | undefined): Quantity | null =>
    text === undefined ? null : positiveOption(name, "x", "length", "84210 km", text);
  const hours = (name: string, text: string | undefined): Quantity | null =>
    text === undefined ? null : positiveOption(name, "h", "time", "640 h", text);
  const distance = {
    at: meter("--at", options.at),
    now: meter("--now", options.now),
    every: meter("--every", options.every),
  };
  const clock = {
    at: hours("--hours-at", options.hoursAt),
    now: hours("--hours-now", options.hoursNow),
    every: hours("--every-hours", options.everyHours),
  };
  const days = options.months === undefined ? null : monthsOption(options.months, last);
  if (!distance.every && !clock.every && days === null && !options.happened)
    throw mistaken("--every", "nothing", "an interval: --every, --every-hours or --months");
  const severe = options.severe ? positiveOption("--severe", "f", "plain number", "0.5", options.severe) : ordinaryDuty;
  if (severe.value > 1) throw mistaken("--severe", options.severe ?? "", "a share up to 1, as 0.5");
  const verdict = meterCheck(distance, last, today);
  const due = nextDue(
    { distance: distance.every, hours: clock.every, days },
    { on: last, odometer: distance.at, hourMeter: clock.at },
    {
      today,
      odometer: corrected(verdict) ?? distance.now,
      hourMeter: clock.now,
      distanceUse: useOf(distance.at, corrected(verdict) ?? distance.now, last, today, fallbackDistance),
      hoursUse: useOf(clock.at, clock.now, last, today, null),
    },
    severe,
    options.happened ?? null,
  );
  const use =
    useOf(distance.at, corrected(verdict) ?? distance.now, last, today, fallbackDistance) ??
    useRate(null, null, fallbackDistance);
  const looks = options.repaired === undefined ? null : looksAfter(dayOption("--repaired", options.repaired), use);
  const limits = due.type === "due" || due.type === "overdue" ? due.limits : [];
  const steps = working(...limits.map(({ likely }) => likely));
  print(options.json ?? false, document(due, verdict, severe, looks, steps), [
    ...dueLines(due, verdict, { severe: options.severe === undefined ? null : digits(severe.value, 3), looks }),
    ...(options.working ? workingLines(steps) : []),
  ]);
}

function useOf(
  at: Quantity | null,
  now: Quantity | null,
  last: string,
  today: string,
  fallback: Quantity | null,
): Use | null {
  if (!at || !now) return null;
  return useRate({ meter: at, on: last }, { meter: now, on: today }, fallback);
}

type Meters = { readonly at: Quantity | null; readonly now: Quantity | null };

const meterCheck = ({ at, now }: Meters, last: string, today: string): MeterVerdict | null =>
  at && now ? meterVerdict({ meter: at, on: last }, { meter: now, on: today }, fallbackDistance) : null;

/** A reading that rolled over counts on; one in another unit is asked about, never put right silently. */
const corrected = (verdict: MeterVerdict | null): Quantity | null =>
  verdict?.type === "rolled over" ? verdict.corrected : null;

/** Months are counted on the calendar. */
function monthsOption(text: string, last: string): number {
  const months = /^\d+$/.test(text) ? Number(text) : 0;
  if (months < 1 || months > 240) throw mistaken("--months", text, "a whole number of months from 1 to 240");
  return daysOfMonths(last, months);
}

/** The looks that follow a repair, by day where the day can be told; by distance with the use of the machine. */
function looksAfter(repaired: string, use: Use | null): readonly LookInWords[] {
  const on = (it: Quantity): string => dayAfter(repaired, valueIn(d, it));
  return checksAfterRepair.checks.map((check) => {
    if (check.id === "next day" || check.id === "first look") {
      const day = on(check.after);
      return { id: check.id, on: day, earliest: day, latest: day };
    }
    if (check.id !== "by distance" || !use) return { id: check.id, on: null, earliest: null, latest: null };
    const { likely, earliest, latest } = daysToDistance(check.after, use);
    return { id: check.id, on: on(likely), earliest: on(earliest), latest: on(latest) };
  });
}

function document(
  due: Due,
  verdict: MeterVerdict | null,
  severe: Quantity,
  looks: readonly LookInWords[] | null,
  steps: ReturnType<typeof working>,
) {
  const known = due.type === "due" ? due : null;
  return {
    type: due.type,
    because: due.type === "now" ? due.because : null,
    by: due.type === "due" || due.type === "overdue" ? due.by : null,
    on: known?.on ?? null,
    earliest: known?.earliest ?? null,
    latest: known?.latest ?? null,
    limits: due.type === "due" || due.type === "overdue" ? due.limits.map(limitDocument) : [],
    missing: due.type === "due" || due.type === "not known" ? due.missing : [],
    chanceUseFirst:
      known?.chanceUseFirst === undefined || known.chanceUseFirst === null ? null : digits(known.chanceUseFirst, 3),
    meter: verdict?.type ?? null,
    severe: digits(severe.value, 3),
    looks,
    working: steps,
  };
}

function limitDocument({ by, left, likely, earliest, latest }: DueLimit) {
  const days = (it: Quantity): number => Math.floor(valueIn(d, it));
  const unit = { distance: km, hours: h, date: d }[by];
  return {
    by,
    left: digits(valueIn(unit, left), 6),
    unit: unit.symbol,
    likely_days: days(likely),
    earliest_days: days(earliest),
    latest_days: days(latest),
  };
}
