import { fieldWords } from "./fieldWords.ts";

/** The word over the main figure, or in its place. */
export const signWords = {
  pull: "Pull to",
  "book figure": "Healthy: pull to",
  "no torque": "No torque",
  "no wrench": "No wrench here",
  refused: "Refused",
  "look again": "Look again",
} as const;

/** What the port comes to in one look. */
export type BenchSign = keyof typeof signWords;

/** What stands on the bench before there is an answer. */
export const startSentence = "Say what it is, its thread and its metal, and count the turns: the answer stands here.";

/** What is still wanted before anything can be weighed: "Still wanted: thread, case made of." */
export const wantedSentence = (fields: readonly string[]): string => stillWanted(fields.map(labelOf));

/** What a wrench or a book figure still lacks: "Not counted yet. Still wanted: scale to." */
export const notCountedYet = (fields: readonly string[]): string => `Not counted yet. ${wantedSentence(fields)}`;

/** Under the first answer, while the rest of it is fetched, and where it could not be. */
export const waysComing = "Weighing what can be done ...";
export const waysNotFetched =
  "The rest could not be fetched: no network? Pull nothing before you have read what to mind.";

/** Which fields cannot be read; the figures of before do not hold for what is typed now. */
export const unreadSentence = (fields: readonly string[]): string => cannotBeRead(fields.map(labelOf));

/** The same of fields by their labels. */
export const stillWanted = (labels: readonly string[]): string => `Still wanted: ${labels.map(inSentence).join(", ")}.`;
export const cannotBeRead = (labels: readonly string[]): string =>
  `Cannot be read: ${labels.map(inSentence).join(", ")}. No answer stands until it is mended.`;

/** Under every answer. */
export const standing =
  "An estimate to help a competent person, not an approval to drive; the maker's figures, local rules and licensed trades come first.";

/** What a field is called in a sentence; its own name where the bench does not ask for it. */
function labelOf(field: string): string {
  const name = field.replace(/\.\d+(?=\.|$)/g, "");
  const label = (fieldWords as Readonly<Record<string, { readonly label: string }>>)[name]?.label ?? name;
  return label;
}

/** A label inside a sentence: without its question mark, in small letters. */
const inSentence = (label: string): string =>
  label.replace(/\?$/, "").replace(/^(?!I )[A-Z](?=[a-z])/, (letter) => letter.toLowerCase());
