import { rowsBetween, type Strip, sumTo } from "./strip.ts";

/** Where along a strip the thread lies, and how like itself it is one period on (1 would be the same to the grey level). */
export type ThreadedRegion = { readonly from: number; readonly to: number; readonly similarity: number };

/**
 * The run of a strip that repeats one `period` on: normalised correlation of a period with the next, over the rows
 * given. Head, washer, shank and fingers do not repeat; and at half of the period a helix is not like itself.
 * Null where nothing repeats. `signal` are the three colours after `repeating`.
 */
export function threadedRegion(
  strip: Strip,
  signal: readonly Float32Array[],
  period: number,
  rows: readonly [number, number],
): ThreadedRegion | null {
  const { columns, step, s0 } = strip;
  const lag = period / step;
  const count = Math.floor(columns - lag) - 1;
  if (count < lag * 0.5) return null;
  const { product, square } = products(strip, signal, lag, count, rows);
  const similar = similarities(product, square, lag, columns);
  const best = strongest(similar, square, lag);
  const similarity = similar[best] as number;
  const least = Math.max(0.3, 0.55 * similarity);
  if (similarity < least) return null;
  let [from, to] = [best, best];
  while (from > 0 && (similar[from - 1] as number) > least) from--;
  while (to < count - 1 && (similar[to + 1] as number) > least) to++;
  const middle = (i: number): number => s0 + (i + lag / 2) * step;
  return {
    from: Math.max(s0, middle(from) - 0.45 * period),
    to: Math.min(s0 + (columns - 1) * step, middle(to) + 0.45 * period),
    similarity,
  };
}

/**
 * The part of a region in which the rim of one side repeats by itself, where that is 2.2 periods or more; else all of it.
 * A finger often lies on one side only.
 */
export function bareRim(
  strip: Strip,
  signal: readonly Float32Array[],
  side: -1 | 1,
  edge: number,
  period: number,
  { from, to }: { readonly from: number; readonly to: number },
): readonly [number, number] {
  const [near, far] = [edge - 0.6 * period, edge + 0.1 * period];
  const rows = side > 0 ? rowsBetween(strip, near, far) : rowsBetween(strip, -far, -near);
  const found = threadedRegion(strip, signal, period, rows);
  const [low, high] = found ? [Math.max(from, found.from), Math.min(to, found.to)] : [from, to];
  return high - low > 2.2 * period ? [low, high] : [from, to];
}

/** The normalised correlation with what lies a lag on, over a window of one lag about each sample; from running sums. */
function similarities(product: Float64Array, square: Float64Array, lag: number, columns: number): Float64Array {
  const count = product.length - 1;
  const similar = new Float64Array(count);
  const half = lag / 2;
  for (let i = 0; i < count; i++) {
    const low = Math.max(0, i + 0.5 - half);
    const high = Math.min(count, i + 0.5 + half);
    const here = sumTo(square, high) - sumTo(square, low);
    // The square one period on; beyond the end it is taken to be the same.
    const later = high + lag <= columns ? sumTo(square, high + lag) - sumTo(square, low + lag) : here;
    const energy = Math.sqrt(Math.max(0, here) * Math.max(0, later));
    similar[i] = energy > 0 ? (sumTo(product, high) - sumTo(product, low)) / energy : 0;
  }
  return similar;
}

/** Running sums, over the rows, of the signal times itself a lag on, and of its square. */
function products(
  { columns }: Strip,
  signal: readonly Float32Array[],
  lag: number,
  count: number,
  [first, last]: readonly [number, number],
) {
  const product = new Float64Array(count + 1);
  const square = new Float64Array(columns + 1);
  for (const plane of signal)
    for (let row = first; row <= last; row++) addProducts(plane, row * columns, lag, product, square);
  for (const sums of [product, square])
    for (let i = 1; i < sums.length; i++) sums[i] = (sums[i] as number) + (sums[i - 1] as number);
  return { product, square };
}

/** Adds those of one row, each at the place after its own. */
function addProducts(
  plane: Float32Array,
  start: number,
  lag: number,
  product: Float64Array,
  square: Float64Array,
): void {
  const whole = Math.floor(lag);
  const part = lag - whole;
  for (let i = 1; i < square.length; i++) {
    const value = plane[start + i - 1] as number;
    square[i] = (square[i] as number) + value * value;
  }
  for (let i = 1; i < product.length; i++) {
    const at = start + i - 1 + whole;
    const later = (1 - part) * (plane[at] as number) + part * (plane[at + 1] as number);
    product[i] = (product[i] as number) + (plane[start + i - 1] as number) * later;
  }
}

/** The likest place, of those where anything is to be seen: paper is like itself only in its grain. */
function strongest(similar: Float64Array, square: Float64Array, lag: number): number {
  const ahead = Math.ceil(lag);
  let most = 0;
  for (let i = 0; i < similar.length; i++) most = Math.max(most, energyFrom(square, i, ahead));
  let best = 0;
  let value = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < similar.length; i++) {
    const here = similar[i] as number;
    if (here > value && energyFrom(square, i, ahead) > 0.1 * most) {
      best = i;
      value = here;
    }
  }
  return best;
}

const energyFrom = (square: Float64Array, i: number, ahead: number): number =>
  (square[Math.min(square.length - 1, i + ahead)] as number) - (square[i] as number);
