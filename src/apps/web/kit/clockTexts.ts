import { today, two } from "./clock.ts";

/** The day and the time by the clock of this device, as "2026-11-25 11:40". */
export function clockNow(): string {
  const now = new Date();
  return `${today()} ${two(now.getHours())}:${two(now.getMinutes())}`;
}

/** A moment of the journal by the clock of this device: the time today, the day and the time on any other. */
export function momentText(instant: string): string {
  const { day, time } = onClock(instant);
  return day === today() ? time : `${day} ${time}`;
}

/** A range of moments by the clock of this device, its day said once. */
export function rangeText({ from, to }: { readonly from: string; readonly to: string }): string {
  const [begin, end] = [onClock(from), onClock(to)];
  return `${momentText(from)} to ${begin.day === end.day ? end.time : momentText(to)}`;
}

/** The day of a moment by the clock of this device, as 2026-11-25. */
export const dayOf = (instant: string): string => onClock(instant).day;

function onClock(instant: string) {
  const at = new Date(instant);
  return {
    day: `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`,
    time: `${two(at.getHours())}:${two(at.getMinutes())}`,
  };
}
