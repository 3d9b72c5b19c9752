import { type Quantity, standardUncertainty } from "./quantity.ts";
import { onScale, um } from "./unit.ts";

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
    const { formula, source, inputs, scales } = quantity.origin;
    Object.values(inputs).forEach(visit);
    const right = formula.slice(formula.indexOf("=") + 1).trim();
    const substituted = right.replace(/[A-Za-z_][A-Za-z0-9_]*/g, (name, at: number) => {
      const given = inputs[name];
      if (!given) return name;
      const figure = estimate({ ...given, unit: scales?.[name] ?? given.unit });
      return bracketed(figure, right.slice(at + name.length)) ? `(${figure})` : figure;
    });
    const step = { formula, substituted, result: written(quantity), source };
    if (!steps.some((it) => it.formula === formula && it.substituted === substituted)) steps.push(step);
  }
}

/**
 * "9.026 mm", "18.994 mm", "46.1 N·m": four significant digits, and of a length under a metre the micrometre too, because
 * limits of size differ there. Zeros at the end are left off.
 */
export function estimate({ value, unit }: Quantity): string {
  const number = onScale(value, unit);
  const figure = Number(number.toPrecision(4));
  if (unit.kind !== "length" || Math.abs(value) >= 1) return `${figure} ${unit.symbol}`.trim();
  const decimals = Math.max(0, Math.ceil(Math.log10(unit.inSI / um.inSI) - 1e-9));
  const fine = Number(number.toFixed(decimals));
  return `${Math.abs(fine - number) < Math.abs(figure - number) ? fine : figure} ${unit.symbol}`;
}

/** "44.7 ± 6.4 N·m": the estimate and its expanded uncertainty U = k·u_c, k = 2. JCGM 100:2008, 6.2.1. */
export function written(q: Quantity): string {
  const U = (2 * standardUncertainty(q)) / q.unit.inSI;
  if (U === 0) return estimate(q);
  const decimals = Math.max(0, 1 - Math.floor(Math.log10(U)));
  return `${onScale(q.value, q.unit).toFixed(decimals)} ± ${U.toFixed(decimals)} ${q.unit.symbol}`.trim();
}

/** A negative figure, or one with its unit under a power, would be read otherwise than it is meant. */
const bracketed = (figure: string, next: string): boolean =>
  figure.startsWith("-") || (figure.includes(" ") && next.trimStart().startsWith("^"));
