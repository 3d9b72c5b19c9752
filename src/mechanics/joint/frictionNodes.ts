import type { Distribution } from "../quantity/distribution.ts";
import { nodesOf } from "../quantity/distributionNodes.ts";
import { type LogDensity, logDensityOfNodes } from "../quantity/logDensity.ts";
import { crossed } from "../quantity/quadrature.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { remembered } from "../quantity/remembered.ts";
import type { Ranges } from "../tables/referenceRanges.ts";
import type { ThreadForm } from "../threads/threadForm.ts";
import type { Surface } from "./port.ts";
import { torqueArm } from "./torque.ts";

/**
 * Columns of frictions with their weights. Thread and head share a common friction and each has some of its own. Rows with
 * one thread friction stand together, `rowsPerThread` at a time; `mu` is that friction, once for each such group.
 */
type Frictions = {
  readonly mu: Float64Array;
  readonly mu_th: Float64Array;
  readonly mu_b: Float64Array;
  readonly weight: Float64Array;
  readonly rowsPerThread: number;
};

/** The same rows with the logarithm of the torque arm, m, that each gives, and the density of that arm. */
export type FrictionNodes = Omit<Frictions, "mu_th" | "mu_b"> & {
  readonly lnArm: Float64Array;
  readonly arm: LogDensity;
};

const commonCount = 12;
const ownCount = 3;

/** The frictions of a surface, and the arm T/F of ISO 16047 for each. */
export function frictionNodes(thread: ThreadForm, D_b: Quantity, surface: Surface, ranges: Ranges): FrictionNodes {
  const shared = ranges[`friction ${surface}`].distribution;
  const { mu_th, mu_b, ...rows } = frictionsOf(shared)(ranges["friction own"].distribution);
  const { P, d_2, alpha } = thread;
  const arm_m = torqueArm.over({ P: P.value, d_2: d_2.value, alpha: alpha.value, D_b: D_b.value, mu_th, mu_b });
  const lnArm = arm_m.map(Math.log);
  return { ...rows, lnArm, arm: logDensityOfNodes({ at: lnArm, weight: rows.weight }) };
}

/** The frictions alone: every closure with the same surface has them. */
const frictionsOf = remembered((shared: Distribution) =>
  remembered((each: Distribution): Frictions => {
    const own = nodesOf(each, ownCount);
    const rowsPerThread = own.at.length;
    const threads = crossed(nodesOf(shared, commonCount), own);
    const mu = threads.a.map((common, i) => common * (threads.b[i] as number));
    const rows = crossed({ at: mu, weight: threads.weight }, own);
    const mu_b = rows.b.map((head, row) => head * (threads.a[Math.floor(row / rowsPerThread)] as number));
    return { mu, mu_th: rows.a, mu_b, weight: rows.weight, rowsPerThread };
  }),
);
