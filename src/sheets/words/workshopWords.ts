import type { FieldWords } from "./fieldWords.ts";

export const workshopFieldWords = {
  machine: { label: "Which machine?" },
  called: { label: "What is it called?", hint: "As the workshop calls it." },
  unit: { label: "What is worked on?" },
  expected: { label: "It should hold" },
  drainThread: { label: "Thread of the drain", hint: "As M20x1.5, where it is known." },
  fillThread: { label: "Thread of the fill", hint: "As M20x1.5, where it is known." },
  cameFor: { label: "Came for" },
  bay: { label: "Where does it stand?" },
  distance: { label: "Kilometres" },
  hours: { label: "Running hours" },
  person: { label: "Name" },
  role: { label: "What he or she does here" },
  leaves: { label: "Whose name?", hint: "What was signed with it stays." },
  workshop: { label: "Name of the workshop", hint: "As it stands on its papers." },
  place: { label: "Where it is" },
  currency: { label: "Currency" },
  wrench: { label: "Number on the wrench", hint: "As TW-4." },
  works: { label: "Kind" },
  least: { label: "Scale from" },
  most: { label: "Scale to" },
  step: { label: "Step of the scale" },
  calibrated: { label: "Last calibrated", hint: "As 2026-06-01." },
} as const satisfies Readonly<Record<string, FieldWords>>;

/** The tap of a machine that was never here before. */
export const anotherOne = "another one";
