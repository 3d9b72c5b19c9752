import type { ThreadField } from "../words/threadBenchWords.ts";
import { choice, measured, type SumField } from "./sumField.ts";

/** What is read of an unknown thread, by field. */
export const threadFields = {
  outside: measured("mm", 0.05, "20"),
  crests: choice("clean", "worn"),
  gaps: measured("", 1, "8"),
  along: measured("mm", 0.5, "12"),
  counted: choice("gaps", "crests"),
  photoPitch: measured("mm", 0.01, "1.5"),
  photoSpread: measured("mm", 0.01, "0.03"),
  seats: measured("mm", 0.25, "1.5"),
  seatsNot: measured("mm", 0.25, "1.25"),
  bore: measured("mm", 0.05, "18.4"),
  turns: measured("", 1, "5"),
  travel: measured("mm", 0.5, "7.5"),
  grown: { type: "number", unit: "mm", step: 0.05, start: "0", from: "nothing" },
  grownOver: measured("mm", 1, "10"),
  narrows: { type: "number", unit: "mm", step: 0.05, start: "0", from: "nothing" },
  narrowsOver: measured("mm", 1, "10"),
  turned: choice("plug", "known"),
  felt: choice("tight", "free"),
  meshTurns: measured("", 0.5, "2"),
  meshIn: { type: "text", common: ["M18x1.5", "M20x1.5", "M22x1.5"] },
  hexagon: measured("mm", 0.5, "24"),
  sister: measured("mm", 0.5, "24"),
} as const satisfies Readonly<Record<ThreadField, SumField>>;
