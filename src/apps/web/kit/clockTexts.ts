import { today, two } from "./clock.ts";

/** The day and the time by the clock of this device, as "2026-11-25 11:40". */
export function clockNow(): string {
  const now = new Date();
  return `${today()} ${two(now.getHours())}:${two(now.getMinutes())}`;
}

/** A moment of the journal by the clock of this device: the time today, the day and the time on any other. */
export function momentText(instant: string): string {
  const at = new Date(instant);
  const time = `${two(at.getHours())}:${two(at.getMinutes())}`;
  const day = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  return day === today() ? time : `${day} ${time}`;
}
