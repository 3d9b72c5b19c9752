import { formula } from "../quantity/formula.ts";
import { exact, type Quantity } from "../quantity/quantity.ts";
import { kg_m3, mm, Pa, type Unit } from "../quantity/unit.ts";

export const m_s2: Unit = { symbol: "m/s²", inSI: 1, zero: 0, dimension: [1, 0, -2, 0], kind: "plain number" };

/** The standard acceleration of free fall g. */
export const freeFall = exact("g", 9.80665, m_s2, "3rd CGPM (1901), exact");

/** The pressure p of a head of fluid. */
export const headPressure = (rho: Quantity, head: Quantity): Quantity => ofHead({ rho, g: freeFall, h: head });

const ofHead = formula("p = rho * g * h", { rho: kg_m3, g: m_s2, h: mm, p: Pa }, "hydrostatics");
