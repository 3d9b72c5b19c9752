/** Points and weights that stand for a distribution in an integral; the weights add to 1. */
export type Nodes = { readonly at: Float64Array; readonly weight: Float64Array };

/** Gauss-Legendre nodes of a number uniform between `low` and `high`. Abramowitz and Stegun, 25.4.30. */
export function uniformNodes(low: number, high: number, count: number): Nodes {
  const { at, weight } = legendre(count);
  return {
    at: at.map((x) => low + ((x + 1) / 2) * (high - low)),
    weight: weight.map((w) => w / 2),
  };
}

/** Gauss-Hermite nodes of a standard normal number. Abramowitz and Stegun, 25.4.46, with x = z/√2. */
export function normalNodes(count: number): Nodes {
  const { at, weight } = hermite(count);
  return { at: at.map((x) => x * Math.SQRT2), weight: weight.map((w) => w / Math.sqrt(Math.PI)) };
}

/** Nodes of a triangular number: each straight piece of its density by Gauss-Legendre nodes. */
export function triangularNodes(low: number, likely: number, high: number, countPerPiece: number): Nodes {
  if (low === high) return { at: Float64Array.of(low), weight: Float64Array.of(1) };
  const at: number[] = [];
  const weight: number[] = [];
  for (const [from, to, foot] of [
    [low, likely, low],
    [likely, high, high],
  ] as const) {
    if (from === to) continue;
    const piece = uniformNodes(from, to, countPerPiece);
    piece.at.forEach((x, i) => {
      at.push(x);
      weight.push(((piece.weight[i] as number) * 2 * Math.abs(x - foot)) / (high - low));
    });
  }
  return { at: Float64Array.from(at), weight: Float64Array.from(weight) };
}

/** Every pair of two independent sets: columns of the first, of the second, and their joint weights. */
export function crossed(
  a: Nodes,
  b: Nodes,
): { readonly a: Float64Array; readonly b: Float64Array; readonly weight: Float64Array } {
  const count = a.at.length * b.at.length;
  const columns = { a: new Float64Array(count), b: new Float64Array(count), weight: new Float64Array(count) };
  let row = 0;
  for (let i = 0; i < a.at.length; i++)
    for (let j = 0; j < b.at.length; j++, row++) {
      columns.a[row] = a.at[i] as number;
      columns.b[row] = b.at[j] as number;
      columns.weight[row] = (a.weight[i] as number) * (b.weight[j] as number);
    }
  return columns;
}

const legendre = remembered((count) =>
  rule(
    count,
    (i) => Math.cos((Math.PI * (i + 0.75)) / (count + 0.5)),
    (x) => {
      let [previous, current] = [1, x];
      for (let k = 2; k <= count; k++)
        [previous, current] = [current, ((2 * k - 1) * x * current - (k - 1) * previous) / k];
      const slope = (count * (x * current - previous)) / (x * x - 1);
      return { value: current, slope, weight: 2 / ((1 - x * x) * slope * slope) };
    },
  ),
);

/** The orthonormal recurrence keeps high orders from overflowing. */
const hermite = remembered((count) =>
  rule(
    count,
    (i, found) => hermiteGuess(i, count, found),
    (x) => {
      let [previous, current] = [0, Math.PI ** -0.25];
      for (let k = 1; k <= count; k++)
        [previous, current] = [current, x * Math.sqrt(2 / k) * current - Math.sqrt((k - 1) / k) * previous];
      const slope = Math.sqrt(2 * count) * previous;
      return { value: current, slope, weight: 2 / (slope * slope) };
    },
  ),
);

/** First guesses of the roots from the outside in. Press et al., Numerical Recipes, 3rd ed., 4.6.1. */
function hermiteGuess(i: number, count: number, found: readonly number[]): number {
  const at = (k: number): number => found[k] as number;
  if (i === 0) return Math.sqrt(2 * count + 1) - 1.85575 * (2 * count + 1) ** -0.16667;
  if (i === 1) return at(0) - (1.14 * count ** 0.426) / at(0);
  if (i === 2) return 1.86 * at(1) - 0.86 * at(0);
  if (i === 3) return 1.91 * at(2) - 0.91 * at(1);
  return 2 * at(i - 1) - at(i - 2);
}

type Polynomial = (x: number) => { readonly value: number; readonly slope: number; readonly weight: number };

/** A symmetric Gauss rule: the roots of its polynomial by Newton's iteration from good first guesses. */
function rule(count: number, guess: (i: number, found: readonly number[]) => number, polynomial: Polynomial): Nodes {
  const at = new Float64Array(count);
  const weight = new Float64Array(count);
  const found: number[] = [];
  for (let i = 0; i < Math.ceil(count / 2); i++) {
    let x = guess(i, found);
    for (let step = 1, rounds = 0; Math.abs(step) > 1e-15 && rounds < 50; rounds++) {
      const { value, slope } = polynomial(x);
      step = value / slope;
      x -= step;
    }
    if (count % 2 === 1 && i === Math.floor(count / 2)) x = 0;
    found.push(x);
    at[i] = -x;
    at[count - 1 - i] = x;
    weight[i] = polynomial(x).weight;
    weight[count - 1 - i] = weight[i] as number;
  }
  return { at, weight };
}

function remembered(made: (count: number) => Nodes): (count: number) => Nodes {
  const known = new Map<number, Nodes>();
  return (count) => {
    const nodes = known.get(count) ?? made(count);
    known.set(count, nodes);
    return nodes;
  };
}
