import { type Distribution, exactly, normal, triangular } from "../quantity/distribution.ts";
import { normalCdf, normalDensity } from "../quantity/normal.ts";
import { type Quantity, standardUncertainty } from "../quantity/quantity.ts";

/** A count before its lead-in is taken off: a normal count, a range given by hand, or a figure without doubt. */
export type Count = Extract<Distribution, { type: "exact" | "normal" | "triangular" }>;

/** A count read as one figure takes the uncertainty of its counting; a range given by hand is kept as it is, moved along. */
export function countShape(turns: Quantity, caught: number, s: number): Count {
  const given = turns.origin.type === "reading" ? turns.origin.distribution : null;
  const moved = caught - turns.value;
  if (given?.type === "triangular")
    return triangular(given.low + moved, given.likely + moved, given.high + moved) as Count;
  return normal(caught, s);
}

/**
 * A count that is no more than the turns which there is room for: the lesser of two normals by its mean (Clark, Operations
 * Research 9 (1961) 145, from memory), with the larger of their spreads near where they change places, so that nothing jumps
 * and another turn never makes it less. A range given by hand is cut.
 */
export function atMost(count: Count, room: Quantity): Count {
  if (count.type === "triangular") {
    const least = (it: number): number => Math.min(it, room.value);
    const [low, high] = [least(count.low), least(count.high)];
    return (low < high ? triangular(low, least(count.likely), high) : exactly(high)) as Count;
  }
  const [a, u_a] = count.type === "normal" ? [count.mean, count.sd] : [count.value, 0];
  const [b, u_b] = [room.value, standardUncertainty(room)];
  const u = Math.hypot(u_a, u_b);
  if (b - a > 8 * u) return count;
  if (u === 0) return exactly(Math.min(a, b)) as Count;
  const z = (b - a) / u;
  const mean = a * normalCdf(z) + b * normalCdf(-z) - u * normalDensity(z);
  // Over six times their difference a spread gives way to the other by less than the mean rises, even three of it below.
  const over = 6 * Math.abs(u_b - u_a);
  const passed = u_b > u_a ? 1 - (b - a) / over : (a - b) / over;
  return normal(mean, over > 0 ? u_a + (u_b - u_a) * Math.min(1, Math.max(0, passed)) : u_a);
}
