import type { FactOf } from "../../journal/facts/fact.ts";
import { measured } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";

/** The meter of a machine: kilometres of one that drives, running hours of one that stands. */
export const meterFields = { distance: measured("km", 100, "60000"), hours: measured("h", 10, "600") } as const;

type Meter = FactOf<"MeterRead">["meter"];

export function meterIn(it: Typed): Readonly<Record<string, string>> | null {
  const [distance, hours] = [it.reading("distance"), it.reading("hours")];
  return distance ? { distance } : hours ? { hours } : null;
}

export const meterTexts = (meter: Meter | undefined): Readonly<Record<string, string>> =>
  meter === undefined ? {} : "distance" in meter ? { distance: meter.distance } : { hours: meter.hours };
