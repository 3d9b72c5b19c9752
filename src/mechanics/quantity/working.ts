import { type Quantity, standardUncertainty } from "./quantity.ts";
import { onScale } from "./unit.ts";

/** One line of the working, as it is printed. */
export type Step = {
  readonly formula: string;
  readonly substituted: string;
  readonly result: string;
  readonly source: string;
};

/** The lines that lead to `quantities`, each once, inputs before what is made of them. */
export function working(...quantities: readonly Quantity[]): Step[] {
  const seen = new Set<Quantity>();
  const steps: Step[] = [];
  quantities.forEach(visit);
  return steps;

  function visit(quantity: Quantity): void {
    if (quantity.origin.type !== "worked" || seen.has(quantity)) return;
    seen.add(quantity);
    const { formula, source, inputs } = quantity.origin;
    Object.values(inputs).forEach(visit);
    const right = formula.slice(formula.indexOf("=") + 1).trim();
    const substituted = right.replace(/[A-Za-z_][A-Za-z0-9_]*/g, (name) => {
      const given = inputs[name];
      return given ? estimate(given) : name;
    });
    const step = { formula, substituted, result: written(quantity), source };
    if (!steps.some((it) => it.formula === formula && it.substituted === substituted)) steps.push(step);
  }
}

/** "9.026 mm". */
export const estimate = ({ value, unit }: Quantity): string =>
  `${Number(onScale(value, unit).toPrecision(4))} ${unit.symbol}`.trim();

/** "44.7 ± 6.4 N·m": the estimate and its expanded uncertainty U = k·u_c, k = 2. JCGM 100:2008, 6.2.1. */
export function written(q: Quantity): string {
  const U = (2 * standardUncertainty(q)) / q.unit.inSI;
  if (U === 0) return estimate(q);
  const decimals = Math.max(0, 1 - Math.floor(Math.log10(U)));
  return `${onScale(q.value, q.unit).toFixed(decimals)} ± ${U.toFixed(decimals)} ${q.unit.symbol}`.trim();
}
