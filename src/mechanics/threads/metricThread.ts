import { formula } from "../quantity/formula.ts";
import { exact, type Quantity } from "../quantity/quantity.ts";
import { remembered } from "../quantity/remembered.ts";
import { mm, mm2 } from "../quantity/unit.ts";
import { flankOf60, type ThreadForm } from "./threadForm.ts";

/** An ISO metric thread by its basic sizes. Symbols as in ISO 724. */
export type MetricThread = ThreadForm & { readonly type: "metric"; readonly H: Quantity };

const triangle = formula("H = sqrt(3) / 2 * P", { P: mm, H: mm }, "ISO 68-1:1998, 3");
const pitchDiameter = formula("d_2 = d - 3/4 * H", { d: mm, H: mm, d_2: mm }, "ISO 724:1993, 3");
const minorDiameter = formula("D_1 = d - 5/4 * H", { d: mm, H: mm, D_1: mm }, "ISO 724:1993, 3");
const rootDiameter = formula("d_3 = d - 17/12 * H", { d: mm, H: mm, d_3: mm }, "ISO 898-1:2013, 9.1.6.1");
const area = formula("A_s = pi / 4 * ((d_2 + d_3) / 2)^2", { d_2: mm, d_3: mm, A_s: mm2 }, "ISO 898-1:2013, 9.1.6.1");

/** The basic profile of M`d`×`P`, both in millimetres. */
export function metricThread(d_mm: number, P_mm: number): MetricThread {
  const d = exact("d", d_mm, mm);
  const P = exact("P", P_mm, mm);
  const H = triangle({ P });
  const designation = `M${d_mm}x${P_mm}`;
  return {
    type: "metric",
    designation,
    d,
    P,
    H,
    alpha: flankOf60,
    d_2: pitchDiameter({ d, H }),
    D_1: minorDiameter({ d, H }),
    d_3: rootDiameter({ d, H }),
  };
}

/** The same of a row of a table of sizes, reckoned once for each row. */
export const metricThreadOf = remembered(
  ({ d_mm, P_mm }: { readonly d_mm: number; readonly P_mm: number }): MetricThread => metricThread(d_mm, P_mm),
);

/** Nominal stress area A_s, the area that carries the load in tension. */
export const stressArea = ({ d_2, d_3 }: Pick<ThreadForm, "d_2" | "d_3">): Quantity => area({ d_2, d_3 });
