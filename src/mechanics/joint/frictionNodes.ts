import { nodesOf } from "../quantity/distributionNodes.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Ranges } from "../tables/referenceRanges.ts";
import type { ThreadForm } from "../threads/threadForm.ts";
import type { Surface } from "./port.ts";
import { torqueArm } from "./torque.ts";

/**
 * Columns of frictions and of the torque arm they give, with their weights. Thread and head share a common friction and
 * each has some of its own. Rows with one thread friction stand together, `rowsPerThread` at a time.
 */
export type FrictionNodes = {
  readonly mu_th: Float64Array;
  readonly arm_m: Float64Array;
  readonly weight: Float64Array;
  readonly rowsPerThread: number;
};

const commonCount = 12;
const ownCount = 3;

/** The frictions of a surface, and the arm T/F of ISO 16047 for each. */
export function frictionNodes(thread: ThreadForm, D_b: Quantity, surface: Surface, ranges: Ranges): FrictionNodes {
  const common = nodesOf(ranges[`friction ${surface}`].distribution, commonCount);
  const own = nodesOf(ranges["friction own"].distribution, ownCount);
  const count = common.at.length * own.at.length ** 2;
  const mu_th = new Float64Array(count);
  const mu_b = new Float64Array(count);
  const weight = new Float64Array(count);
  let row = 0;
  for (let i = 0; i < common.at.length; i++)
    for (let j = 0; j < own.at.length; j++)
      for (let l = 0; l < own.at.length; l++, row++) {
        mu_th[row] = (common.at[i] as number) * (own.at[j] as number);
        mu_b[row] = (common.at[i] as number) * (own.at[l] as number);
        weight[row] = (common.weight[i] as number) * (own.weight[j] as number) * (own.weight[l] as number);
      }
  const { P, d_2, alpha } = thread;
  const arm_m = torqueArm.over({ P: P.value, d_2: d_2.value, alpha: alpha.value, D_b: D_b.value, mu_th, mu_b });
  return { mu_th, arm_m, weight, rowsPerThread: own.at.length };
}
