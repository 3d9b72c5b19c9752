/**
 * What Stirling's formula leaves of ln Γ(x): ln Γ(x) - ((x - 1/2) ln x - x + ln(2 pi)/2), to 1e-15, for x above 0.
 * It is small, so differences of log-gammas made with it lose nothing to the large terms that cancel.
 * Source: F. W. J. Olver et al., NIST Digital Library of Mathematical Functions, 5.11.1 (from memory, proved by test).
 */
export function stirlingRemainder(x: number): number {
  let [at, below] = [x, 0];
  for (; at < SERIES_FROM; at++) below += (at + 0.5) * Math.log1p(1 / at) - 1;
  const square = 1 / (at * at);
  return below + SERIES.reduceRight((sum, coefficient) => sum * square + coefficient, 0) / at;
}

/**
 * s ln(s/m) + m - s without loss where s and m are alike.
 * Source: C. Loader, "Fast and accurate computation of binomial probabilities" (2000), bd0 (from memory).
 */
export function deviance(s: number, m: number): number {
  const difference = s - m;
  if (Math.abs(difference) >= 0.1 * (s + m)) return s * Math.log(s / m) - difference;
  const v = difference / (s + m);
  let sum = difference * v;
  let term = 2 * s * v;
  for (let k = 3; ; k += 2) {
    term *= v * v;
    const next = sum + term / k;
    if (next === sum) return sum;
    sum = next;
  }
}

/** From here on the first term left out is below 1e-16. */
const SERIES_FROM = 10;

/** B_2k / (2k (2k - 1)) with the Bernoulli numbers B_2 to B_14. */
const SERIES = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156];
