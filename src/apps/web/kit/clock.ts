/** As "07". */
export const two = (n: number): string => String(n).padStart(2, "0");

/** The day by the clock of this device, as 2026-11-25. */
export function today(): string {
  const now = new Date();
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** A clock time of this device, as 2026-11-25T16:00, as a moment in UTC. */
export const momentOf = (clock: string): string => new Date(clock).toISOString();
