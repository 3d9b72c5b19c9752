import type { FieldWords } from "./fieldWords.ts";

/** How the bench of units asks. */
export const convertFieldWords = {
  quantity: { label: "Quantity", hint: 'As it stands in the book: "46 Nm", "7/16 in", "2.5 US qt".' },
  unit: { label: "Its unit, where only a number was typed" },
} as const satisfies Readonly<Record<string, FieldWords>>;
export type ConvertField = keyof typeof convertFieldWords;

export const convertParts = { quantity: "As it stands" } as const;

export const convertStart = "Type a number with its unit: it stands here in every other unit of its kind.";

export const convertSign = "That is";

/** Why a bare measure of volume is not read. */
export const twoMeasures = "the imperial pint, quart and gallon hold a fifth more than the US ones";
export const usAndImperial =
  "A US pint is 473 ml, an imperial pint 568 ml: ask which one the book means before filling by it.";
export const torqueIsNotEnergy = "A torque in kgf·m or kgf·cm is often written without its f: 1 kgf·m is 9.8 N·m.";
export const asRead = "Four digits; no conversion knows more than the figure that went in.";
