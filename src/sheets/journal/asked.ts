import { notPlanned } from "../words/afterWords.ts";

/** The choice of a machine that was never here before. */
export const another = "another";

export const isAnother = (machine: string): boolean => machine === another;

/** What is asked of it before a job can be opened on it. */
const ofAnother = ["called", "unit", "expected", "drainThread", "fillThread"];

/** What is asked further, by the question and the answer that leads on to it. */
const askedAfter: Readonly<Record<string, readonly [question: string, answer: string]>> = {
  pressureValue: ["pressure", "yes"],
  earlierMethod: ["repairedBefore", "yes"],
  earlierCause: ["repairedBefore", "yes"],
  at: ["followUp", notPlanned],
};

/**
 * Whether a field of a form is asked for, by what was given in the others and who writes. Kept apart from the forms, so that the
 * page that draws them needs none of what reads them.
 */
export function isAsked(field: string, fields: object, text: (field: string) => string, by: string): boolean {
  if ("machine" in fields && ofAnother.includes(field)) return isAnother(text("machine"));
  if (field === "enteredBecause") return text("pulledBy") !== "" && by !== "" && text("pulledBy") !== by;
  const [question = "", answer = ""] = askedAfter[field] ?? [];
  return question in fields ? text(question) === answer : true;
}
