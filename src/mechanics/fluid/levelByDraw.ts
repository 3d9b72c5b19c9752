import { normal } from "../quantity/distribution.ts";
import { type Quantity, reading, valueIn } from "../quantity/quantity.ts";
import { ml, mm } from "../quantity/unit.ts";
import { type Calibration, calibration } from "./levelCalibration.ts";
import { volumeReading } from "./levelReadings.ts";

/**
 * What a millimetre holds by what the level `fell` when a syringe drew a volume; `fill` is the whole fill, or null where
 * nobody knows it.
 */
export const calibrationByDraw = (drawn: Quantity, fell: Quantity, fill: Quantity | null): Calibration =>
  calibration(
    volumeReading(valueIn(ml, drawn), ml, "60 ml syringe", "drawn"),
    hookTwice("h_1", 0),
    hookTwice("h_2", -valueIn(mm, fell)),
    fill,
  );

/** Two readings at one lip by the same hand tell their difference better than either tells the level. */
const hookTwice = (symbol: string, level_mm: number): Quantity =>
  reading(symbol, normal(level_mm, 0.5), mm, symbol, "wire hook, one lip");
