import { evaluate } from "mathjs";
import * as named from "../../../src/mechanics/quantity/unit.ts";
import { inSI, type Unit } from "../../../src/mechanics/quantity/unit.ts";
import type { Step } from "../../../src/mechanics/quantity/working.ts";

const isUnit = (it: unknown): it is Unit => typeof it === "object" && it !== null && "symbol" in it && "inSI" in it;

/** Longest symbol first, so that "mm²/s" is not read as "mm". */
const units: readonly Unit[] = Object.values(named)
  .filter(isUnit)
  .filter(({ symbol }) => symbol !== "")
  .toSorted((a, b) => b.symbol.length - a.symbol.length);

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
const figure = new RegExp(
  `(-?\\d+(?:\\.\\d+)?(?:e[+-]?\\d+)?) (${units.map(({ symbol }) => escaped(symbol)).join("|")})(?![\\p{L}·/²³])`,
  "gu",
);

/** A substituted text worked out by another program, its figures in SI, or as the plain numbers they are written as. */
export function recomputed(substituted: string, as: "SI" | "numbers"): number {
  const text = substituted.replace(figure, (_, number: string, symbol: string) => {
    const unit = units.find((it) => it.symbol === symbol);
    return unit && as === "SI" ? `(${inSI(Number(number), unit)})` : `(${number})`;
  });
  return evaluate(text, { deg: Math.PI / 180, ln: Math.log }) as number;
}

/** A printed result: its value in SI or as the plain number, and half of its last digit. */
export function printedResult(
  { result }: Step,
  as: "SI" | "numbers",
): { readonly value: number; readonly half: number } {
  const [estimate = ""] = result.split(" ± ");
  const symbol = result
    .split(" ")
    .slice(result.includes("±") ? 3 : 1)
    .join(" ");
  const unit = units.find((it) => it.symbol === symbol);
  const number = estimate.split(" ")[0] ?? "";
  const half = 0.5 * 10 ** -(number.split(".")[1]?.length ?? 0);
  if (as === "numbers" || !unit) return { value: Number(number), half };
  return { value: inSI(Number(number), unit), half: half * unit.inSI };
}
