/** How long a piece of work takes, ms. */
export function timed(work: () => unknown): number {
  const from = performance.now();
  work();
  return performance.now() - from;
}

/** The median of `rounds` runs after some to warm up, ms; each on what is `prepared` for it, which is not timed. */
export function medianOf<T>(rounds: number, prepared: () => T, work: (given: T) => unknown): number {
  for (let i = 0; i < rounds; i++) work(prepared());
  const times = Array.from({ length: rounds }, () => {
    const given = prepared();
    return timed(() => work(given));
  });
  return quantileOf(times, 0.5);
}

/** The value that a share p of the values do not exceed. */
export function quantileOf(values: readonly number[], p: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(p * sorted.length) - 1)] ?? Number.NaN;
}
