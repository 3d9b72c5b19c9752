import type { LabelCheck, SiliconeCaution } from "../../mechanics/cure/label.ts";

/** What the label has answered; a tube of silicone is asked harder, for gear oil softens ordinary grades. */
export type LabelInWords = {
  readonly checks: readonly LabelCheck[];
  readonly useBy: string | null;
  readonly silicone: boolean;
};

/** Why a tube stays shut, in one line; nothing where its label forbids nothing. */
export function forbidden({ checks, useBy, silicone }: LabelInWords): readonly string[] {
  const said = checks.flatMap((it) => {
    if (it.verdict !== "no") return [];
    return it.id === "in date"
      ? [`it is past its date, ${useBy}`]
      : [`its label does not name this fluid${silicone ? ", and gear oil softens ordinary silicone" : ""}`];
  });
  return said.length > 0 ? [`Not this tube: ${said.join("; ")}.`] : [];
}

/** What the label has answered, and what is still asked of it: a question, never an assumption. */
export function labelLines({ checks, useBy, silicone }: LabelInWords): readonly string[] {
  const why = silicone ? " Gear oil softens ordinary silicone." : "";
  return checks.flatMap((it) => {
    if (it.id === "silicone type") return silicone && it.caution ? [typeWords[it.caution]] : [];
    if (it.verdict === "no") return [];
    if (it.id === "in date")
      return [it.verdict === "yes" ? `It is in date, until ${useBy}.` : "Is it in date? (--use-by)"];
    return [it.verdict === "yes" ? "It names this fluid." : `Does it name this fluid?${why} (--names-fluid)`];
  });
}

/** The questions that nobody has answered, for a document. */
export const stillAsked = (checks: readonly LabelCheck[]): readonly string[] =>
  checks.flatMap((it) => (it.verdict === "asked" && it.id !== "silicone type" ? [questions[it.id]] : []));

const questions: Readonly<Record<Exclude<LabelCheck["id"], "silicone type">, string>> = {
  "label names this fluid": "does the label name this fluid?",
  "in date": "is the sealant in date?",
};
const typeWords: Readonly<Record<NonNullable<SiliconeCaution>, string>> = {
  "corrodes metals": "An acetoxy silicone gives off acid: it corrodes metals.",
  "restricted in Europe": "An oxime silicone is restricted in Europe: see its safety sheet, and air the bay.",
};
