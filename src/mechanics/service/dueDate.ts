/** The number of a day, counted from 1970-01-01; `day` is ISO 8601. @throws RangeError if it is not a date. */
export function dayNumber(day: string): number {
  const instant = /^\d{4}-\d{2}-\d{2}$/.test(day) ? Date.parse(`${day}T00:00:00Z`) : Number.NaN;
  if (!Number.isFinite(instant) || new Date(instant).toISOString().slice(0, 10) !== day)
    throw new RangeError(`dayNumber: ${day} is not a date`);
  return instant / DAY_ms;
}

/**
 * The day, ISO 8601, on which a number of days from `day` has passed: part of a day counts as the day it falls on. A
 * millionth of a day is forgiven, so that 40 worked as 39.999999999 is 40.
 */
export const dayAfter = (day: string, days: number): string =>
  new Date((dayNumber(day) + Math.floor(days + 1e-6)) * DAY_ms).toISOString().slice(0, 10);

/** Whole days from one day to another, negative when it lies before. */
export const daysBetween = (from: string, to: string): number => dayNumber(to) - dayNumber(from);

/** The days of whole calendar months from a day; of a month that is shorter its last day counts. */
export function daysOfMonths(from: string, months: number): number {
  const start = new Date(dayNumber(from) * DAY_ms);
  const lastOfMonth = new Date(Date.UTC(start.getUTCFullYear(), start.getUTCMonth() + months + 1, 0));
  const ends = Date.UTC(
    lastOfMonth.getUTCFullYear(),
    lastOfMonth.getUTCMonth(),
    Math.min(start.getUTCDate(), lastOfMonth.getUTCDate()),
  );
  return ends / DAY_ms - dayNumber(from);
}

const DAY_ms = 86_400_000;
