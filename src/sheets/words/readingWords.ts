/** What a mechanic calls a field of the case; the field's own name where it needs no other. */
export const readingWord = (reading: string): string => words[reading] ?? reading;

const words: Readonly<Record<string, string>> = {
  "case.threadDepth": "depth of the hole",
  "case.thinnestWall": "wall",
  "case.roomBehind": "room behind",
  temperature: "temperature",
  "plug.propertyClass": "strength class of the plug",
  "plug.underHead": "length of the plug",
  "plug.headDiameter": "head of the plug",
  "plug.chamfer": "point of the plug",
  "plug.original": "plug belongs here",
  "seal.kind": "seal",
  "seal.material": "washer of",
  "seal.outside": "outside of the seal",
  "seal.inside": "inside of the seal",
  "seal.thickness": "thickness of the seal",
  "seal.original": "seal belongs here",
  "left.counted": "turns counted",
  "left.withWasher": "washer on while counting",
  "left.condition": "condition of the turns",
  "left.catch": "how it catches",
  "left.goodFrom": "good thread from",
  "left.goodTo": "good thread to",
  "left.height": "height of the thread",
  surface: "thread and head",
  today: "today",
};
