import { shapes } from "../../mechanics/fluid/shapeNames.ts";
import type { LevelField } from "../words/levelBenchWords.ts";
import { choice, measured, type SumField } from "./sumField.ts";

const beside = (unit: string, step: number, start: string) =>
  ({ type: "number", unit, step, start, from: "nothing" }) as const;

/** What is read of a level, by field. */
export const levelFields = {
  by: choice("drawn", "known", "shape"),
  drawn: measured("ml", 10, "60"),
  fallen: measured("mm", 0.5, "3"),
  fill: measured("L", 0.1, "2.4"),
  perMm: measured("ml/mm", 1, "22"),
  shape: choice(...shapes),
  length: measured("mm", 5, "150"),
  width: measured("mm", 5, "120"),
  height: measured("mm", 5, "100"),
  depth: measured("mm", 5, "70"),
  gears: choice("yes", "no"),
  below: { type: "number", unit: "mm", step: 0.5, start: "5", from: "anywhere" },
  allowed: beside("mm", 1, "5"),
  target: beside("mm", 1, "0"),
  pour: measured("ml", 10, "200"),
  syringe: measured("ml", 10, "60"),
} as const satisfies Readonly<Record<LevelField, SumField>>;
