import { levelVerdict, lip, overflow } from "../../mechanics/fluid/levelLip.ts";
import { drawBack, strokes } from "../../mechanics/fluid/levelVolumes.ts";
import { exact, type Quantity } from "../../mechanics/quantity/quantity.ts";
import { ml } from "../../mechanics/quantity/unit.ts";
import { volumeFigure } from "../words/levelFigures.ts";
import type { LevelInWords } from "../words/levelWords.ts";

/** What is known of a level before anything is reckoned from it: what a millimetre holds, where the level stands, what is wanted. */
export type LevelKnown = Pick<
  LevelInWords,
  "perHeight" | "calibration" | "shape" | "read" | "tilt" | "level" | "cold" | "lowest" | "fillTarget" | "assumed"
> & {
  /** The level wanted; null for the fill target where there is one. */
  readonly target: Quantity | null;
  /** What is about to be poured in. */
  readonly poured: Quantity | null;
  readonly syringe: Quantity;
};

/** All that may be said of a level: its verdict, how far it is from the lip and its target, and what a pour would do. */
export function levelInWords({ target, poured, syringe, ...known }: LevelKnown): LevelInWords {
  const { perHeight, level, cold, lowest, fillTarget } = known;
  const now = cold?.level ?? level;
  const wanted = target ?? fillTarget?.level ?? null;
  return {
    ...known,
    verdict: now && levelVerdict(now, lowest),
    toLip: now && drawBack(perHeight, now, lip),
    toTarget: now && wanted && drawnTo(wanted, drawBack(perHeight, now, wanted), syringe),
    overflow: poured && level ? { ...overflow(perHeight, level, poured), poured } : null,
  };
}

/** Strokes of the volume as it is said, so that the two agree to the millilitre. */
const drawnTo = (target: Quantity, volume: Quantity, syringe: Quantity): NonNullable<LevelInWords["toTarget"]> => ({
  target,
  volume,
  strokes: strokes(exact("V", volumeFigure(volume), ml, "as said"), syringe),
});
