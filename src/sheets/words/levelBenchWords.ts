import type { LevelVerdict } from "../../mechanics/fluid/levelLip.ts";
import type { FieldWords } from "./fieldWords.ts";

/** How the level bench asks for its readings. */
export const levelFieldWords = {
  by: { label: "How is a millimetre known?" },
  drawn: { label: "Drawn out", hint: "By a syringe, between two readings at one lip." },
  fallen: { label: "The level fell by" },
  fill: { label: "Whole fill", hint: "By the book: a check on the figure." },
  perMm: { label: "A millimetre holds" },
  shape: { label: "Shape of the case, lying" },
  length: { label: "Length inside" },
  width: { label: "Width inside", hint: "The diameter of a cylinder or ball." },
  height: { label: "Height inside" },
  depth: { label: "Depth of the oil", hint: "Above the lowest point inside." },
  gears: { label: "Take off what gears and shafts cut?" },
  below: { label: "Level below the lip", hint: "By a wire hook, standing level. Above the lip with a minus." },
  allowed: { label: "Lowest allowed below the lip", hint: "By the maker; 5 mm is common practice." },
  target: { label: "Level wanted, below the lip" },
  pour: { label: "About to pour in" },
  syringe: { label: "The syringe holds" },
} as const satisfies Readonly<Record<string, FieldWords>>;
export type LevelField = keyof typeof levelFieldWords;

export const levelParts = {
  holds: "What a millimetre holds",
  stands: "Where it stands",
  wanted: "Fill or draw",
} as const;

export const levelChoiceWords: Readonly<Record<string, string>> = {
  drawn: "two readings",
  known: "ml per mm",
  shape: "shape of the case",
};

export const levelStart =
  "Draw a known volume and say how far the level fell: what a millimetre holds stands here, and what is short of the lip.";

/** The word over the main figure: a millimetre's millilitres, or what is short of the lip. */
export const holdsSign = "A millimetre holds";
export const levelSigns: Readonly<Record<LevelVerdict, string>> = {
  "above the lip": "Above the lip",
  within: "Short of the lip",
  "at the edge": "At the edge: short",
  below: "Too low: short",
};

/** "give or take 90", "known to the millilitre". */
export const giveOrTakeWords = (U: number): string => (U > 0 ? `give or take ${U}` : "");

/** What to read next where no level was given. */
export const belowWanted = "Read the level below the lip: then what is short of it stands here.";
export const drawMore = "Draw more and read again: the figure is weak.";
