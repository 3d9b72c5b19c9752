import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  cut,
  type Distribution,
  exactly,
  lognormal,
  mean,
  normal,
  standardDeviation,
  triangular,
  uniform,
} from "../../../src/mechanics/quantity/distribution.ts";
import { nodesOf } from "../../../src/mechanics/quantity/distributionNodes.ts";
import {
  crossed,
  type Nodes,
  normalNodes,
  triangularNodes,
  uniformNodes,
} from "../../../src/mechanics/quantity/quadrature.ts";

const integral = ({ at, weight }: Nodes, f: (x: number) => number): number =>
  at.reduce((sum, x, i) => sum + (weight[i] as number) * f(x), 0);

/** Figures of fifteen digits, the last one by rounding. */
const toPrinted = (actual: number, printed: number): void =>
  expect(Math.abs(actual - printed)).toBeLessThan(2e-15 + 1e-12 * Math.abs(printed));

/** [nodes, then abscissa x >= 0 and weight]; both tables are symmetric. */
type Table = readonly (readonly [count: number, rows: readonly (readonly [x: number, w: number])[]])[];

// Abramowitz and Stegun, table 25.4 (from memory): abscissas and weights of Gauss-Legendre integration over [-1, 1].
const legendre: Table = [
  [2, [[0.577350269189626, 1]]],
  [
    3,
    [
      [0, 0.888888888888889],
      [0.774596669241483, 0.555555555555556],
    ],
  ],
  [
    4,
    [
      [0.339981043584856, 0.652145154862546],
      [0.861136311594053, 0.347854845137454],
    ],
  ],
  [
    5,
    [
      [0, 0.568888888888889],
      [0.538469310105683, 0.478628670499366],
      [0.906179845938664, 0.236926885056189],
    ],
  ],
  [
    6,
    [
      [0.238619186083197, 0.467913934572691],
      [0.661209386466265, 0.360761573048139],
      [0.932469514203152, 0.17132449237917],
    ],
  ],
  [
    8,
    [
      [0.18343464249565, 0.362683783378362],
      [0.525532409916329, 0.313706645877887],
      [0.796666477413627, 0.222381034453374],
      [0.960289856497536, 0.101228536290376],
    ],
  ],
  [
    10,
    [
      [0.148874338981631, 0.295524224714753],
      [0.433395394129247, 0.269266719309996],
      [0.679409568299024, 0.219086362515982],
      [0.865063366688985, 0.149451349150581],
      [0.973906528517172, 0.066671344308688],
    ],
  ],
];

// Abramowitz and Stegun, table 25.10 (from memory): abscissas and weights of Gauss-Hermite integration, weight exp(-x²).
const hermite: Table = [
  [2, [[Math.SQRT1_2, 0.8862269254528]]],
  [
    3,
    [
      [0, 1.181635900604],
      [1.224744871391589, 0.2954089751509],
    ],
  ],
  [
    4,
    [
      [0.52464762327529, 0.8049140900055],
      [1.650680123885785, 0.08131283544725],
    ],
  ],
  [
    5,
    [
      [0, 0.9453087204829],
      [0.958572464613819, 0.3936193231522],
      [2.020182870456086, 0.01995324205905],
    ],
  ],
  [
    6,
    [
      [0.436077411927617, 0.7246295952244],
      [1.335849074013697, 0.1570673203229],
      [2.350604973674492, 0.004530009905509],
    ],
  ],
  [
    10,
    [
      [0.342901327223705, 0.6108626337353],
      [1.036610829789514, 0.2401386110823],
      [1.756683649299882, 0.03387439445548],
      [2.53273167423279, 0.001343645746781],
      [3.436159118837738, 7.640432855233e-6],
    ],
  ],
];

/** Compares rows of x >= 0 with the upper half of the nodes, and its mirror image with the lower. */
function agreesWith(rows: readonly (readonly [number, number])[], { at, weight }: Nodes): void {
  const last = at.length - 1;
  const half = last - rows.length + 1;
  rows.forEach(([x, w], i) => {
    toPrinted(at[half + i] as number, x);
    expect(weight[half + i]).toBeCloseTo(w, 12);
    toPrinted(at[last - half - i] as number, -x);
    expect(weight[last - half - i]).toBeCloseTo(w, 12);
  });
}

describe("Gauss-Legendre nodes", () => {
  test.each(legendre)("of order %d are those of table 25.4", (count, rows) => {
    const { at, weight } = uniformNodes(-1, 1, count);
    agreesWith(rows, { at, weight: weight.map((w) => 2 * w) });
  });

  test.each([1, 2, 3, 5, 8, 16, 24])("of order %d are exact to degree 2n - 1, and no further", (count) => {
    const nodes = uniformNodes(-1, 1, count);
    for (let k = 0; k <= 2 * count - 1; k++)
      expect(integral(nodes, (x) => x ** k)).toBeCloseTo(k % 2 === 1 ? 0 : 1 / (k + 1), 14);
    if (count > 12) return;
    expect(Math.abs(integral(nodes, (x) => x ** (2 * count)) - 1 / (2 * count + 1))).toBeGreaterThan(1e-12);
  });

  test("move to any interval", () => {
    expect(integral(uniformNodes(2, 5, 4), (x) => x ** 3)).toBeCloseTo((5 ** 4 - 2 ** 4) / 4 / 3, 12);
  });
});

describe("Gauss-Hermite nodes", () => {
  test.each(hermite)("of order %d are those of table 25.10", (count, rows) => {
    const { at, weight } = normalNodes(count);
    agreesWith(rows, { at: at.map((z) => z / Math.SQRT2), weight: weight.map((w) => w * Math.sqrt(Math.PI)) });
  });

  // The moments of a standard normal number are (k - 1)!!.
  test.each([1, 2, 3, 5, 8, 16, 32])("of order %d give the moments of a normal number to degree 2n - 1", (count) => {
    const nodes = normalNodes(count);
    for (let k = 0, moment = 1; k <= Math.min(20, 2 * count - 1); k += 2) {
      expect(integral(nodes, (z) => z ** k) / moment).toBeCloseTo(1, 12);
      expect(integral(nodes, (z) => z ** (k + 1))).toBeCloseTo(0, 3);
      moment *= k + 1;
    }
    if (count > 8) return;
    const next = Array.from({ length: count }, (_, i) => 2 * i + 1).reduce((product, odd) => product * odd, 1);
    expect(Math.abs(integral(nodes, (z) => z ** (2 * count)) / next - 1)).toBeGreaterThan(1e-5);
  });

  test.each([40, 64, 100])("of order %d are all different and still add to 1", (count) => {
    const { at, weight } = normalNodes(count);
    for (let i = 1; i < count; i++) expect(at[i] as number).toBeGreaterThan(at[i - 1] as number);
    expect(integral({ at, weight }, () => 1)).toBeCloseTo(1, 13);
    expect(integral({ at, weight }, (z) => z * z)).toBeCloseTo(1, 12);
  });
});

describe("nodes of a distribution", () => {
  const cases: readonly (readonly [string, Distribution, number])[] = [
    ["exact", exactly(3), 1e-13],
    ["uniform", uniform(2, 5), 1e-13],
    ["normal", normal(-2, 0.7), 1e-13],
    ["lognormal", lognormal(0.85, 0.2), 1e-12],
    ["triangular", triangular(0.4, 0.7, 0.95), 1e-13],
    ["triangular with its peak at an end", triangular(0, 0, 0.8), 1e-13],
    ["triangular of one value", triangular(2, 2, 2), 1e-13],
    // Equal shares of probability: the ends of an open tail are met only nearly.
    ["normal cut on both sides", cut(normal(0.63, 0.04), 0.52, 0.74), 2e-3],
    ["lognormal cut below", cut(lognormal(225, 0.12), 140, null), 2e-3],
  ];

  test.each(cases)("%s: they add to 1 and keep its mean and its deviation", (_, distribution, tolerance) => {
    const nodes = nodesOf(distribution, 16);
    const at = mean(distribution);
    expect(integral(nodes, () => 1)).toBeCloseTo(1, 13);
    expect(Math.abs(integral(nodes, (x) => x) / at - 1)).toBeLessThan(tolerance);
    const deviation = Math.sqrt(integral(nodes, (x) => (x - at) ** 2));
    expect(Math.abs(deviation - standardDeviation(distribution))).toBeLessThan(
      tolerance * Math.max(1e-3, deviation) + 1e-14,
    );
  });

  test("a triangle is integrated piece by piece, so a kink at its peak costs nothing", () => {
    // The mean distance from the peak of triangular(0, 1, 3): pieces of 1/3 and 2/3 with 1/3 and 2/3 as mean distance.
    expect(integral(triangularNodes(0, 1, 3, 3), (x) => Math.abs(x - 1))).toBeCloseTo(1 / 9 + 4 / 9, 14);
  });
});

test("crossed sets hold every pair once, with the product of the weights", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 }), (m, n) => {
      const { a, b, weight } = crossed(normalNodes(m), uniformNodes(0, 1, n));
      expect(new Set([...a].map((x, i) => `${x} ${b[i]}`)).size).toBe(m * n);
      expect(weight.reduce((sum, w) => sum + w, 0)).toBeCloseTo(1, 12);
      // Independent: the mean of a product is the product of the means.
      expect(a.reduce((sum, x, i) => sum + (weight[i] as number) * (x + 2) * (b[i] as number), 0)).toBeCloseTo(1, 12);
    }),
  );
});
