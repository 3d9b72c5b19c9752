/** What a field of a bench takes. */
export type SumField =
  | {
      readonly type: "number";
      /** The unit of the scale beside the field: a bare number is read on it. Empty for counts. */
      readonly unit: string;
      /** A mark of the instrument's scale, and where the first tap of a stepper begins. */
      readonly step: number;
      readonly start: string;
      /** What the reading has to be. */
      readonly from: "above nothing" | "nothing" | "anywhere";
    }
  | { readonly type: "choice"; readonly choices: readonly string[] }
  | { readonly type: "several"; readonly choices: readonly string[]; readonly none: string }
  | { readonly type: "text"; readonly common: readonly string[] };

export type SumFields = Readonly<Record<string, SumField>>;

/** The texts of a bench by field: what was typed, exactly, or the choice that was tapped. An empty one is not given. */
export type SumTexts = Readonly<Record<string, string>>;

/** A reading above nothing, by the marks of its instrument. */
export const measured = (unit: string, step: number, start: string): SumField => ({
  type: "number",
  unit,
  step,
  start,
  from: "above nothing",
});

export const choice = (...choices: readonly string[]): SumField => ({ type: "choice", choices });
