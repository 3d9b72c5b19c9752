/**
 * The parts of an answer that are another than in the one before it. What stays is not handed over again, and keeps its
 * identity in the page, so that nothing that shows it is drawn anew.
 */
export function changedParts<T extends object>(before: T | null, now: T): Partial<T> {
  if (!before) return now;
  const keys = Object.keys(now) as (keyof T)[];
  const changed = keys.filter((key) => JSON.stringify(before[key]) !== JSON.stringify(now[key]));
  return Object.fromEntries(changed.map((key) => [key, now[key]])) as Partial<T>;
}
