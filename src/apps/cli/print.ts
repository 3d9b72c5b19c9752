import type { Step } from "../../mechanics/quantity/working.ts";

/** Prints an answer: one JSON document, or lines for people. */
export function print(json: boolean, document: object, lines: readonly string[]): void {
  process.stdout.write(json ? `${JSON.stringify(document, null, 2)}\n` : `${lines.join("\n")}\n`);
}

/** The working as lines for a pencil: equation, numbers put in, result, source. */
export const workingLines = (steps: readonly Step[]): readonly string[] =>
  steps.flatMap(({ formula, substituted, result, source }) => [
    `  ${formula}`,
    `      = ${substituted} = ${result}`,
    `      ${source}`,
  ]);

/** Rounded to `decimals`, as a number. */
export const decimals = (value: number, count: number): number => Number(value.toFixed(count));

/** Rounded to `count` significant digits, as a number. */
export const digits = (value: number, count: number): number => Number(value.toPrecision(count));
