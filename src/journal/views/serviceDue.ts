import { exact, type Quantity } from "../../mechanics/quantity/quantity.ts";
import { quantityFromText } from "../../mechanics/quantity/quantityText.ts";
import { type Due, meterToday, nextDue, ordinaryDuty } from "../../mechanics/service/due.ts";
import { daysBetween, daysOfMonths } from "../../mechanics/service/dueDate.ts";
import { fallbackDistance, type MeterReading, useRate } from "../../mechanics/service/dueUse.ts";
import type { FactOf } from "../facts/fact.ts";
import type { JobId, MachineId, UnitId } from "../facts/ids.ts";
import type { JobSheet } from "../job/jobSheet.ts";

/** The next service of a unit, by distance, hours or date, whichever comes first. */
export type ServiceDue = {
  readonly type: "service";
  /** The likely day; today where it is overdue. */
  readonly on: string;
  readonly job: JobId;
  readonly machine: MachineId;
  readonly unit: UnitId;
  readonly due: Due;
};

/** The services that were laid down last for each unit, with where its machine's meter is by now. */
export function servicesDue(sheets: readonly JobSheet[], today: string): readonly ServiceDue[] {
  const inOrder = sheets.toSorted((a, b) => ((a.begunAt ?? "") < (b.begunAt ?? "") ? -1 : 1));
  const latest = new Map<string, { sheet: JobSheet; unit: UnitId; laid: FactOf<"ServiceLaidDown"> }>();
  for (const sheet of inOrder)
    for (const { unit, service } of Object.values(sheet.units))
      if (service) latest.set(`${sheet.machine} ${unit}`, { sheet, unit, laid: service });
  return [...latest.values()].flatMap(({ sheet, unit, laid }) => serviceDue(sheet, unit, laid, inOrder, today));
}

function serviceDue(
  sheet: JobSheet,
  unit: UnitId,
  { every }: FactOf<"ServiceLaidDown">,
  all: readonly JobSheet[],
  today: string,
): readonly ServiceDue[] {
  const { machine, job } = sheet;
  const doneAt = sheet.endedAt ?? sheet.begunAt;
  if (machine === null || job === null || doneAt === null || doneAt.slice(0, 10) > today) return [];
  const on = doneAt.slice(0, 10);
  const readings = metersOf(machine, all, today);
  const [odometer, hourMeter] = [meter(readings, "length", on), meter(readings, "time", on)];
  const due = nextDue(
    {
      distance: every.distance === undefined ? null : asQuantity("D", every.distance),
      hours: every.hours === undefined ? null : asQuantity("D", every.hours),
      days: every.months === undefined ? null : daysOfMonths(on, every.months),
    },
    { on, odometer: odometer.atService, hourMeter: hourMeter.atService },
    {
      today,
      odometer: now(odometer, fallbackDistance, today),
      hourMeter: now(hourMeter, null, today),
      distanceUse: useRate(odometer.first, odometer.last, fallbackDistance),
      hoursUse: useRate(hourMeter.first, hourMeter.last, null),
    },
    ordinaryDuty,
    null,
  );
  if (due.type === "not known") return [];
  return [{ type: "service", on: due.type === "due" ? due.on : today, job, machine, unit, due }];
}

/** Every reading of the machine's meters up to a day, in the order of their days. */
const metersOf = (machine: MachineId, all: readonly JobSheet[], today: string): readonly MeterReading[] =>
  all
    .filter((it) => it.machine === machine)
    .flatMap(({ meters, looks }) => [
      ...meters.map(({ meter, at }) => ({ meter, at })),
      ...looks.flatMap(({ meter, at }) => (meter ? [{ meter, at }] : [])),
    ])
    .map(({ meter, at }) => ({
      meter: "distance" in meter ? asQuantity("x", meter.distance) : asQuantity("h", meter.hours),
      on: at.slice(0, 10),
    }))
    .filter(({ on }) => on <= today)
    .toSorted((a, b) => (a.on < b.on ? -1 : 1));

type Meter = {
  readonly first: MeterReading | null;
  readonly last: MeterReading | null;
  readonly atService: Quantity | null;
};

function meter(readings: readonly MeterReading[], kind: "length" | "time", doneOn: string): Meter {
  const own = readings.filter((it) => it.meter.unit.kind === kind);
  const before = own.filter(({ on }) => on <= doneOn).at(-1) ?? null;
  return { first: own[0] ?? null, last: own.at(-1) ?? null, atService: before?.meter ?? null };
}

/** Where the meter is by now: the last reading, carried on by the use. */
function now({ first, last }: Meter, fallback: Quantity | null, today: string): Quantity | null {
  if (!last) return null;
  const use = useRate(first, last, fallback);
  const days = daysBetween(last.on, today);
  return use && days > 0 ? meterToday(last.meter, use, days) : last.meter;
}

function asQuantity(symbol: string, text: string): Quantity {
  const read = quantityFromText(text, null);
  if (!read.ok) throw new Error(`"${text}" was kept as a quantity`);
  return exact(symbol, read.written.value, read.written.unit, "meter");
}
