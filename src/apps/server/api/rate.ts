/** So many at once, and then so many a second. */
export type Rate = { readonly atOnce: number; readonly perSecond: number };

/** Counts what each asks for. */
export type Allowance = {
  /** Takes one from the allowance of `name`: 0 if it had one, else in how many seconds it will. */
  wait_s(name: string): number;
};

/** As many names as are remembered; beyond it the one that asked longest ago is forgotten. */
const MOST_NAMES = 10_000;

/** A bucket for each name, filled by `clock`, which gives milliseconds and is never set back. */
export function allowance({ atOnce, perSecond }: Rate, clock: () => number): Allowance {
  const buckets = new Map<string, { left: number; at: number }>();
  return {
    wait_s(name) {
      const at = clock();
      const known = buckets.get(name);
      const left = known ? Math.min(atOnce, known.left + ((at - known.at) / 1000) * perSecond) : atOnce;
      // Put in anew, so that the first of the map is the one that asked longest ago.
      buckets.delete(name);
      buckets.set(name, { left: left >= 1 ? left - 1 : left, at });
      if (buckets.size > MOST_NAMES) buckets.delete(buckets.keys().next().value ?? "");
      return left >= 1 ? 0 : (1 - left) / perSecond;
    },
  };
}
