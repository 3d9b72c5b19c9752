import type { Quantity } from "../quantity/quantity.ts";
import { type MeterReading, useRate } from "./dueUse.ts";
import { type MeterVerdict, meterVerdict } from "./meter.ts";

/** A reading of a list, and what it is to the last one before it that can be believed; null for the first. */
export type CheckedReading = MeterReading & { readonly verdict: MeterVerdict | null };

/**
 * Readings of one meter in the order of the list, each held against the last that can be believed. What fell or jumped is left
 * aside for the next; a reading that rolled over or is in another unit counts on as corrected. The usual rate is the machine's
 * own as soon as two readings tell it, `fallback` before.
 */
export function checkedReadings(readings: readonly MeterReading[], fallback: Quantity): readonly CheckedReading[] {
  let first: MeterReading | null = null;
  let last: MeterReading | null = null;
  return readings.map((reading) => {
    if (!first || !last) {
      first = reading;
      last = reading;
      return { ...reading, verdict: null };
    }
    const usual = useRate(first, last, fallback)?.rate ?? fallback;
    const verdict = meterVerdict(last, reading, usual);
    const counted = believed(verdict, reading);
    if (counted) last = counted;
    // A meter that began again shows no rate against its figures from before.
    if (verdict.type === "rolled over") first = reading;
    // A first reading in another unit is the one that was wrong.
    if (verdict.type === "unit changed" && verdict.of === "earlier") {
      if (first === last) first = { ...first, meter: verdict.corrected };
      last = reading;
    }
    return { ...reading, verdict };
  });
}

/** The reading as it may be counted on from; null where it may not. */
function believed(verdict: MeterVerdict, reading: MeterReading): MeterReading | null {
  switch (verdict.type) {
    case "plausible":
      return reading;
    case "rolled over":
      // The next reading is as low as this one: it is held against what the meter shows.
      return reading;
    case "unit changed":
      return verdict.of === "later" ? { ...reading, meter: verdict.corrected } : null;
    default:
      return null;
  }
}
