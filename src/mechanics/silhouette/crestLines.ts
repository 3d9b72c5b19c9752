import type { CrestEdge } from "./crestEdge.ts";
import { quantile } from "./robust.ts";

/**
 * Two crest lines fitted together, in pixels: at s along, the left one lies at slope*s - (left + taper*s/2) across and
 * the right one at slope*s + right + taper*s/2.
 */
export type CrestLines = {
  readonly left: number;
  readonly right: number;
  readonly slope: number;
  readonly taper: number;
  /** Root mean square of what the edges miss the lines by, of those that were kept. */
  readonly scatter: number;
  readonly kept: number;
};

/**
 * The lines through the edges of both sides. A single bad segment would tilt one line by several per cent of the width,
 * so the growth of the diameter has a prior about 0: a tight one, and a loose one that is believed only where six edges
 * or more speak for a taper thread. `uncertainty` is what an edge may be off by, pixels, `slopePrior` the slope that the axis
 * may still have.
 */
export function crestLines(edges: readonly CrestEdge[], uncertainty: number, slopePrior: number): CrestLines {
  const parallel = fitted(edges, uncertainty, slopePrior, 0.025);
  if (edges.length < 6) return parallel;
  const free = fitted(edges, uncertainty, slopePrior, 0.09);
  return Math.abs(free.taper) > LEAST_TAPER && free.scatter < BETTER * parallel.scatter ? free : parallel;
}

/** Growth of the diameter along a thread above which it is a taper one; those of the standards have 1/16. */
export const LEAST_TAPER = 0.035;

/** Lines that may diverge always fit a little better; a taper thread is missed by parallel ones plainly. */
const BETTER = 0.7;

function fitted(edges: readonly CrestEdge[], uncertainty: number, slopePrior: number, taperPrior: number): CrestLines {
  let weights = edges.map(() => 1);
  let found = solved(edges, weights, uncertainty, slopePrior, taperPrior);
  for (let round = 0; round < 8; round++) {
    const off = edges.map((it) => missed(it, found));
    const scale = Math.max(0.5 * uncertainty, 1.48 * quantile(off.map(Math.abs), 0.5));
    weights = off.map((it) => 1 / (1 + (it / (2 * scale)) ** 2));
    found = solved(edges, weights, uncertainty, slopePrior, taperPrior);
  }
  const off = edges.map((it) => missed(it, found) ** 2);
  const total = weights.reduce((sum, it) => sum + it, 0);
  const square = off.reduce((sum, it, i) => sum + it * (weights[i] as number), 0);
  return { ...found, scatter: Math.sqrt(square / total), kept: weights.filter((it) => it > 0.3).length };
}

type Lines = Omit<CrestLines, "scatter" | "kept">;

const missed = ({ side, s, distance }: CrestEdge, { left, right, slope, taper }: Lines): number =>
  distance - ((side < 0 ? left : right) + side * slope * s + (taper * s) / 2);

/** Weighted least squares for left, right, slope and taper, with priors about 0 on the last two. */
function solved(
  edges: readonly CrestEdge[],
  weights: readonly number[],
  uncertainty: number,
  slopePrior: number,
  taperPrior: number,
): Lines {
  const normal = Array.from({ length: 4 }, () => new Float64Array(5));
  edges.forEach(({ side, s, distance }, i) => {
    const row = [side < 0 ? 1 : 0, side > 0 ? 1 : 0, side * s, s / 2];
    for (let a = 0; a < 4; a++) {
      const line = normal[a] as Float64Array;
      const w = (weights[i] as number) * (row[a] as number);
      for (let b = 0; b < 4; b++) line[b] = (line[b] as number) + w * (row[b] as number);
      line[4] = (line[4] as number) + w * distance;
    }
  });
  for (const [at, prior] of [[2, slopePrior] as const, [3, taperPrior] as const]) {
    const line = normal[at] as Float64Array;
    line[at] = (line[at] as number) + (uncertainty / prior) ** 2;
  }
  const [left, right, slope, taper] = gaussSolved(normal);
  return { left: left as number, right: right as number, slope: slope as number, taper: taper as number };
}

/** Gauss elimination with pivoting; a column that nothing determines comes out as 0. */
export function gaussSolved(rows: readonly Float64Array[]): readonly number[] {
  const a = [...rows];
  const n = a.length;
  for (let c = 0; c < n; c++) {
    let pivot = c;
    for (let r = c + 1; r < n; r++) if (Math.abs(a[r]?.[c] ?? 0) > Math.abs(a[pivot]?.[c] ?? 0)) pivot = r;
    [a[c], a[pivot]] = [a[pivot] as Float64Array, a[c] as Float64Array];
    const line = a[c] as Float64Array;
    const lead = line[c] as number;
    if (Math.abs(lead) < 1e-12) continue;
    for (let r = 0; r < n; r++) {
      const other = a[r] as Float64Array;
      const factor = r === c ? 0 : (other[c] as number) / lead;
      if (factor !== 0) for (let k = c; k <= n; k++) other[k] = (other[k] as number) - factor * (line[k] as number);
    }
  }
  return a.map((line, i) => (Math.abs(line[i] as number) < 1e-12 ? 0 : (line[n] as number) / (line[i] as number)));
}
