import type { FieldWords } from "./fieldWords.ts";

/** How the cure bench asks. */
export const cureFieldWords = {
  bead: { label: "Width of the bead", hint: "The seat, or the bead where it is wider." },
  open: { label: "Edges open to air" },
  temperature: { label: "Bay and case", hint: "The colder of the two." },
  humidity: { label: "Humidity of the air" },
  felt: { label: "No gauge? It feels" },
  closed: { label: "Closed at", hint: 'As "11:40" for today, or "2026-11-25 11:40".' },
  label: { label: "The label says wait", hint: "The longer time counts." },
  namesFluid: { label: "Does the label name this fluid?", hint: "Gear oil softens ordinary silicone." },
  useBy: { label: "Date on the tube", hint: "As 2027-03-31." },
} as const satisfies Readonly<Record<string, FieldWords>>;
export type CureField = keyof typeof cureFieldWords;

export const cureParts = { joint: "Joint and air", closed: "Closed", tube: "What the label says" } as const;

export const cureChoiceWords: Readonly<Record<string, string>> = { one: "one edge", both: "both edges" };

export const closedNow = "Closed just now";

export const cureStart = "Say how wide the bead is, how warm and how damp the air: both clocks stand here.";

export const cureSigns = { through: "Cured through", forbidden: "Not this tube" } as const;

/** When it may come down and when it may go, by the two clocks of the bead. */
export const comesDown = (splash: string, closed: boolean): string =>
  closed
    ? `Comes down at ${splash} at the earliest: then it may be splashed.`
    : `Comes down ${splash} after it was closed: then it may be splashed.`;
export const goesAway = (through: string, span: string, closed: boolean): string =>
  closed
    ? `Away from ${through}: then it is cured through (${span} after closing).`
    : `Away after ${through}, cured through (${span}).`;

export const humidityOrFelt = "the share off a gauge up to 100 %, or a tap on how it feels";
export const closedNext = "Say when it was closed: then both stand here by the clock.";
export const opensAgain = "Opened again with scraper and solvent.";
export const sheetFirst = "An estimate to help a competent person; the maker's sheet of the sealant comes first.";
export const longerCounts = "Does the label say a longer time? Then the longer one counts.";

/** "until 2026-11-27 16:55", beside the hours. */
export const until = (through: string): string => `until ${through}`;
export const anotherTube = "Take a tube whose label names this fluid, and that is in date.";
