import type { Port } from "../joint/port.ts";
import { uniform } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, standardUncertainty, taken } from "../quantity/quantity.ts";
import { cm3, g, kg_m3, mm } from "../quantity/unit.ts";
import { materialRows } from "../tables/materialRows.ts";
import type { Material } from "../tables/materials.ts";
import { commonPractice, sourceText } from "../tables/source.ts";

/** The metal that a larger thread takes out of a hole. */
export type Chips = {
  readonly volume: Quantity;
  readonly mass: Quantity;
  /** Whether a magnet picks them up. */
  readonly magnetic: boolean;
  /** Magnesium chips and dust burn, and an alloy nobody tested may be magnesium. */
  readonly mayBurn: boolean;
};

const volumeOf = formula("V = pi / 4 * (D_2^2 - D_a^2) * L", { D_2: mm, D_a: mm, L: mm, V: cm3 }, "plain geometry");
const massOf = formula("m = rho * V", { rho: kg_m3, V: cm3, m: g }, "definition of density");

/**
 * The chips of a thread of pitch diameter D_2 cut over a length L in a torn hole: thread against thread their pitch
 * diameters bound the metal, and a hole torn to its major diameter has less of it left to take.
 */
export function chips({ thread, material }: Port, D_2: Quantity, L: Quantity, alloyTested: boolean): Chips {
  const [low_mm, high_mm] = [1e3 * thread.d_2.value, 1e3 * thread.d.value];
  const D_a = taken("D_a", uniform(low_mm, high_mm), mm, "the torn hole, between its pitch and its major diameter");
  const volume = volumeOf({ D_2, D_a, L });
  return {
    volume,
    mass: massOf({ rho: densityOf(material), V: volume }),
    magnetic: !materialRows[material].lightAlloy,
    mayBurn: material === "AZ91D" || (material === "unknown light alloy" && !alloyTested),
  };
}

/** The range of a worked figure, two standard uncertainties either way, on the scale of its unit and never below 0. */
export const rangeOf = (q: Quantity): { readonly low: number; readonly high: number } => {
  const spread = 2 * standardUncertainty(q);
  return { low: Math.max(0, q.value - spread) / q.unit.inSI, high: (q.value + spread) / q.unit.inSI };
};

function densityOf(material: Material): Quantity {
  const rho = (value: number): Quantity => exact("rho", value, kg_m3, sourceText(commonPractice));
  if (material === "AZ91D") return rho(1810);
  if (materialRows[material].lightAlloy) return rho(2700);
  return rho(material === "pressed steel" ? 7850 : 7200);
}
