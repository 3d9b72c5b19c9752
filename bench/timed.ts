/** How long a piece of work takes, ms. */
export function timed(work: () => unknown): number {
  const from = performance.now();
  work();
  return performance.now() - from;
}

/** The median of `rounds` runs after some to warm up, ms. */
export function medianOf(rounds: number, work: () => unknown): number {
  for (let i = 0; i < rounds; i++) work();
  return quantileOf(
    Array.from({ length: rounds }, () => timed(work)),
    0.5,
  );
}

/** The value that a share p of the values do not exceed. */
export function quantileOf(values: readonly number[], p: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(p * sorted.length) - 1)] ?? Number.NaN;
}
