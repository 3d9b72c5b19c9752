import type { FieldWords } from "./fieldWords.ts";

export const ownerFieldWords = {
  hands: { label: "Whose is it?" },
  name: { label: "Name", hint: "It stands on a card beside the journal and can be erased without it." },
  telephone: { label: "Telephone" },
  plate: { label: "Number plate" },
  erased: { label: "Why?" },
} as const satisfies Readonly<Record<string, FieldWords>>;

export const theSame = "the same owner";
export const anotherOwner = "another one now";
export const erasedCommon = ["the owner asked", "machine sold", "not here for years"];

export const oneLine = "one line of 1 to 120 characters";
export const machineFirst = "a machine: open the job on it first";
export const newOwnersName = "the name of the new owner";
export const cardFirst = "an owner whose card is here";

export const erasesForGood =
  "Name, telephone and plate are erased for good, on every device and at the workshop. What was done at the ports stays.";
