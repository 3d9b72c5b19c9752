import { type Distribution, quantile } from "./distribution.ts";
import { type Nodes, normalNodes, triangularNodes, uniformNodes } from "./quadrature.ts";

/** Quadrature nodes of a distribution: Gauss rules where one is known, else equal shares of the probability. */
export function nodesOf(distribution: Distribution, count: number): Nodes {
  switch (distribution.type) {
    case "exact":
      return { at: Float64Array.of(distribution.value), weight: Float64Array.of(1) };
    case "uniform":
      return uniformNodes(distribution.low, distribution.high, count);
    case "normal": {
      const { at, weight } = normalNodes(count);
      return { at: at.map((z) => distribution.mean + z * distribution.sd), weight };
    }
    case "lognormal": {
      const { at, weight } = normalNodes(count);
      return { at: at.map((z) => distribution.median * Math.exp(z * distribution.sigma)), weight };
    }
    case "triangular":
      return triangularNodes(distribution.low, distribution.likely, distribution.high, count);
    case "cut": {
      const { at, weight } = uniformNodes(0, 1, 4 * count);
      return { at: at.map((p) => quantile(distribution, p)), weight };
    }
    default:
      return distribution satisfies never;
  }
}
