import { normal } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { normalQuantile } from "../quantity/normal.ts";
import { exact, type Quantity, taken, valueIn } from "../quantity/quantity.ts";
import { d, km, mm, one, type Unit } from "../quantity/unit.ts";

/** One reading of a level below the lip (positive down), and where on the way it was taken: a distance or a time. */
export type LevelSighting = { readonly at: Quantity; readonly below: Quantity };

/** Where the level reaches its limit, counted from the same zero as the sightings. */
export type LimitReached =
  | {
      readonly type: "reached";
      readonly slope: Quantity;
      readonly at: Quantity;
      readonly earliest: Quantity;
      readonly latest: Quantity;
      /** What is left from the last sighting to the estimate, and to the earliest; negative when it is past. */
      readonly left: Quantity;
      readonly leftAtLeast: Quantity;
    }
  /** The slope cannot be told from none at this confidence; g is 1 or more. Null where sightings do not differ in place. */
  | { readonly type: "not enough data"; readonly g: number | null }
  | { readonly type: "not falling"; readonly slope: Quantity };

/**
 * The distance, km, at which a level falls to `limit` below the lip: a straight line through the sightings, each read with
 * the same known standard error `s`, turned round by Fieller's theorem at `confidence` (0.9). Act on the earliest.
 */
export const limitDistance = (
  sightings: readonly LevelSighting[],
  limit: Quantity,
  s: Quantity,
  confidence: number,
): LimitReached => limitReached(overDistance, sightings, limit, s, normalDeviate(confidence));

/** The day at which a level falls to `limit` below the lip, otherwise as limitDistance; sightings are at times. */
export const limitDay = (
  sightings: readonly LevelSighting[],
  limit: Quantity,
  s: Quantity,
  confidence: number,
): LimitReached => limitReached(overTime, sightings, limit, s, normalDeviate(confidence));

/** The same for a handed deviate q: Student's, where `s` was estimated from the sightings themselves. */
export const limitDistanceAtDeviate = (
  sightings: readonly LevelSighting[],
  limit: Quantity,
  s: Quantity,
  q: number,
): LimitReached => limitReached(overDistance, sightings, limit, s, q);

const normalDeviate = (confidence: number): number => {
  if (!(confidence > 0 && confidence < 1)) throw new RangeError(`limitDistance: confidence ${confidence}`);
  return normalQuantile((1 + confidence) / 2);
};

const fieller =
  "E. C. Fieller, J. R. Stat. Soc. B 16 (1954), as inverse prediction from a line with a known error (from memory)";

/** The equations of a line over an axis: texts are one, units are the axis's. */
function lineOver(axis: Unit, slope: Unit, square: Unit) {
  const units = { d: axis, q: one, s: mm, b: slope, g: one, n: one, S_xx: square } as const;
  return {
    axis,
    slopeUnit: slope,
    square,
    toLimit: formula("d = (y_L - y_m) / b", { y_L: mm, y_m: mm, b: slope, d: axis }, fieller),
    limitAt: formula("x = x_m + d", { x_m: axis, d: axis, x: axis }, fieller),
    spread: formula("g = q^2 * s^2 / (b^2 * S_xx)", { q: one, s: mm, b: slope, S_xx: square, g: one }, fieller),
    low: formula(
      "x_1 = x_m + (d - q * s / b * sqrt((1 - g) / n + d^2 / S_xx)) / (1 - g)",
      { x_m: axis, ...units, x_1: axis },
      fieller,
    ),
    high: formula(
      "x_2 = x_m + (d + q * s / b * sqrt((1 - g) / n + d^2 / S_xx)) / (1 - g)",
      { x_m: axis, ...units, x_2: axis },
      fieller,
    ),
    left: formula("x_left = x - x_last", { x: axis, x_last: axis, x_left: axis }, "plain difference"),
  };
}
type Line = ReturnType<typeof lineOver>;

const overDistance = lineOver(
  km,
  { symbol: "mm/km", inSI: 1e-6, zero: 0, dimension: [0, 0, 0, 0], kind: "plain number" },
  { symbol: "km²", inSI: 1e6, zero: 0, dimension: [2, 0, 0, 0], kind: "area" },
);
const overTime = lineOver(
  d,
  { symbol: "mm/d", inSI: mm.inSI / d.inSI, zero: 0, dimension: [1, 0, -1, 0], kind: "speed" },
  { symbol: "d²", inSI: d.inSI ** 2, zero: 0, dimension: [0, 0, 2, 0], kind: "plain number" },
);

function limitReached(
  line: Line,
  sightings: readonly LevelSighting[],
  limit: Quantity,
  s: Quantity,
  q: number,
): LimitReached {
  const { axis, slopeUnit, square } = line;
  const x = sightings.map(({ at }) => valueIn(axis, at));
  const y = sightings.map(({ below }) => valueIn(mm, below));
  const n = sightings.length;
  const [x_mean, y_mean] = [mean(x), mean(y)];
  const squares = x.reduce((sum, it) => sum + (it - x_mean) ** 2, 0);
  if (!(n >= 2 && squares > 0)) return { type: "not enough data", g: null };
  const products = x.reduce((sum, it, i) => sum + (it - x_mean) * ((y[i] ?? 0) - y_mean), 0);
  const s_mm = valueIn(mm, s);
  const fitted = (symbol: string, value: number, u: number, unit: Unit): Quantity =>
    u > 0
      ? taken(symbol, normal(value, u), unit, `least squares through ${n} sightings, ${symbol}`)
      : exact(symbol, value, unit);

  const b = fitted("b", products / squares, s_mm / Math.sqrt(squares), slopeUnit);
  const certain = (it: Quantity, unit: Unit): Quantity => exact(it.symbol, valueIn(unit, it), unit, "estimate");
  const S_xx = exact("S_xx", squares, square, "squares of the sightings about their mean");
  const fixed = {
    q: exact("q", q, one, "deviate of the confidence"),
    s: certain(s, mm),
    b: certain(b, slopeUnit),
    S_xx,
  };
  const g = b.value === 0 ? null : line.spread(fixed);
  if (!g || g.value >= 1) return { type: "not enough data", g: g?.value ?? null };
  if (b.value < 0) return { type: "not falling", slope: b };

  const x_m = exact("x_m", x_mean, axis, "mean of the sightings");
  const toLimit = line.toLimit({ y_L: limit, y_m: fitted("y_m", y_mean, s_mm / Math.sqrt(n), mm), b });
  const at = line.limitAt({ x_m, d: toLimit });
  const ends = { x_m, ...fixed, d: certain(toLimit, axis), g, n: exact("n", n, one) };
  const earliest = line.low(ends);
  const x_last = exact("x_last", Math.max(...x), axis, "the last sighting");
  return {
    type: "reached",
    slope: b,
    at,
    earliest,
    latest: line.high(ends),
    left: line.left({ x: at, x_last }),
    leftAtLeast: line.left({ x: earliest, x_last }),
  };
}

const mean = (values: readonly number[]): number => values.reduce((sum, it) => sum + it, 0) / values.length;
