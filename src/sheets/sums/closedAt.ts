/**
 * The time at which a joint was closed: "2026-11-25T11:40", or "11:40" of the day `today` where one is handed. It is a clock
 * time of the place, and reckoned with as if it were one without a zone. Null where `text` is none.
 */
export function closedAtFromText(text: string, today: string | null): Date | null {
  const given = text.trim().replace(/^(\d{4}-\d{2}-\d{2}) +(?=\d)/, "$1T");
  const whole =
    today !== null && /^\d{1,2}[:.]\d{2}$/.test(given) ? `${today}T${given.replace(".", ":").padStart(5, "0")}` : given;
  const at = new Date(`${whole}Z`);
  // The thirtieth of February parses as a date, and comes back as another day.
  return !Number.isNaN(at.getTime()) && at.toISOString().slice(0, 16) === whole ? at : null;
}

/** Whether `text` is a day of the calendar, as 2026-11-25. */
export const isDay = (text: string): boolean => closedAtFromText(`${text}T00:00`, null) !== null;
