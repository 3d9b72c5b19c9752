import { cumulated, type LogDensity, probabilityBelow, step } from "./logDensity.ts";

/** The density of the lesser of two independent quantities. */
export function minimum(a: LogDensity, b: LogDensity): LogDensity {
  if (lastOf(a) <= b.first - step && b.zero === 0) return a;
  if (lastOf(b) <= a.first - step && a.zero === 0) return b;
  const [belowA, belowB] = [cumulated(a), cumulated(b)];
  const first = Math.min(a.first, b.first);
  const count = Math.ceil((Math.min(lastOf(a), lastOf(b)) - first) / step) + 1;
  const mass = new Float64Array(count);
  const below = (i: number): number => {
    const edge = Math.exp(first + (i + 0.5) * step);
    const [p, q] = [probabilityBelow(a, belowA, edge), probabilityBelow(b, belowB, edge)];
    return p + q - p * q;
  };
  const zero = a.zero + b.zero - a.zero * b.zero;
  let lower = zero;
  for (let i = 0; i < count; i++) {
    const upper = below(i);
    mass[i] = upper - lower;
    lower = upper;
  }
  return { first, mass, zero };
}

const lastOf = ({ first, mass }: LogDensity): number => first + (mass.length - 1) * step;
