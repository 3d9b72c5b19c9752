import type { RemedyId } from "../../mechanics/remedies/method.ts";
import { notPlanned } from "../words/afterWords.ts";

/** The choice of a machine that was never here before. */
export const another = "another";

export const isAnother = (machine: string): boolean => machine === another;

/** What is asked of it before a job can be opened on it. */
const ofAnother = ["called", "unit", "expected", "drainThread", "fillThread"];

/** What is asked further, by the question and the answers that lead on to it. */
const askedAfter: Readonly<Record<string, readonly [question: string, leads: (answer: string) => boolean]>> = {
  pressureValue: ["pressure", is("yes")],
  earlierMethod: ["repairedBefore", is("yes")],
  earlierCause: ["repairedBefore", is("yes")],
  at: ["followUp", is(notPlanned)],
  ...rowAfter(1),
  ...rowAfter(2),
  ...rowAfter(3),
  way2: ["way1", given],
  way3: ["way2", given],
  recommended: ["way2", given],
  option: ["decision", is("chosen", "refused")],
  instead: ["decision", is("refused")],
  putOffUntil: ["decision", is("put off")],
  upTo: ["decision", is("left to the workshop")],
  notBeyond: ["decision", is("left to the workshop")],
  lasts: ["method", (method) => method !== "" && !isMakeDo(method)],
  over: ["reading", is("length over gaps", "travel for turns")],
  material: ["seal", is("flat washer")],
};

function is(...answers: readonly string[]) {
  return (answer: string): boolean => answers.includes(answer);
}

function given(answer: string): boolean {
  return answer !== "";
}

/** What is asked of a way that is offered, once it was named. */
function rowAfter(row: number): typeof askedAfter {
  const way: (typeof askedAfter)[string] = [`way${row}`, given];
  return { [`low${row}`]: way, [`high${row}`]: way, [`ready${row}`]: way, [`told${row}`]: way };
}

/** The ways that are never to last, whatever holds them. */
export function isMakeDo(method: string): boolean {
  return makeDos.includes(method);
}

/** Those whose estimates end on a day (a test holds both together); a page that draws a form has no use for the estimates. */
const makeDos: readonly string[] = [
  "lower torque",
  "sealant, no washer",
  "self-cutting plug",
  "cast thread",
  "expanding bung",
  "left and watched",
] satisfies readonly RemedyId[];

/**
 * Whether a field of a form is asked for, by what was given in the others and who writes. Kept apart from the forms, so that the
 * page that draws them needs none of what reads them.
 */
export function isAsked(field: string, fields: object, text: (field: string) => string, by: string): boolean {
  if ("machine" in fields && ofAnother.includes(field)) return isAnother(text("machine"));
  if (field === "enteredBecause") return text("pulledBy") !== "" && by !== "" && text("pulledBy") !== by;
  // A make-do has a day by which it is looked at again.
  if (field === "until" && "lasts" in fields) return isMakeDo(text("method")) || text("lasts") === "make-do";
  const [question, leads] = askedAfter[field] ?? [];
  return question !== undefined && leads !== undefined && question in fields ? leads(text(question)) : true;
}
