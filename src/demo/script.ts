import type * as z from "zod/mini";
import type { Fact } from "../journal/facts/fact.ts";

/** A fact as a story tells it: identities are plain texts, and the schema has the last word. */
export type Told = Unbranded<Fact>;

type Unbranded<T> = unknown extends T
  ? T
  : T extends z.core.$brand
    ? string
    : T extends string | number | boolean | null | undefined
      ? T
      : { readonly [K in keyof T]: Unbranded<T[K]> };

/** A day before or after the day the demo is opened, or minutes before that moment, so that it never looks stale. */
export type When = { readonly day: number; readonly time: string } | { readonly minutesAgo: number };

export type Line = {
  readonly job: string | null;
  readonly device: string;
  readonly by: string;
  readonly when: When;
  readonly fact: Told;
};

/** Tells what one hand did on one job: facts at a moment. */
export const telling =
  (job: string | null, by: string, device = "bench") =>
  (when: When, ...facts: readonly Told[]): readonly Line[] =>
    facts.map((fact) => ({ job, device, by, when, fact }));

export const on = (day: number, time: string): When => ({ day, time });
export const ago = (minutesAgo: number): When => ({ minutesAgo });

/** The calendar of the moment at which the demo is opened. */
export type Calendar = {
  readonly day: (offset: number) => string;
  readonly instant: (when: When) => string;
};

const DAY_ms = 86_400_000;

export function calendarOf(now: string): Calendar {
  const today = Date.parse(`${now.slice(0, 10)}T00:00:00Z`);
  const day = (offset: number): string => new Date(today + offset * DAY_ms).toISOString().slice(0, 10);
  return {
    day,
    instant: (when) =>
      "day" in when
        ? `${day(when.day)}T${when.time}:00Z`
        : new Date(Date.parse(now) - when.minutesAgo * 60_000).toISOString(),
  };
}
