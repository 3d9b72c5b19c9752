/** Exponents of length, mass, time and temperature. Torque is [2, 1, -2, 0]. */
export type Dimension = readonly [number, number, number, number];

export const plain: Dimension = [0, 0, 0, 0];

export const sameDimension = (a: Dimension, b: Dimension): boolean =>
  a === b || (a[0] === b[0] && a[1] === b[1] && a[2] === b[2] && a[3] === b[3]);

/** The dimension of x·yⁿ. */
export const productDimension = (x: Dimension, y: Dimension, n: number): Dimension => [
  x[0] + n * y[0],
  x[1] + n * y[1],
  x[2] + n * y[2],
  x[3] + n * y[3],
];

/** A mistake in our code, not in the mechanic's numbers: a length was used where a force belongs. */
export class DimensionError extends Error {
  override readonly name = "DimensionError";
  constructor(where: string, expected: Dimension) {
    super(`${where} does not have the dimension [${expected.join(", ")}]`);
  }
}
