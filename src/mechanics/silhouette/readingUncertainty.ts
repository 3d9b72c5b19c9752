import { formula } from "../quantity/formula.ts";
import { one } from "../quantity/unit.ts";
import type { ThreadReading } from "./threadReading.ts";

/**
 * The relative standard uncertainty of period over width, from what the photo itself shows. The weights are judged on
 * rendered photos.
 */
export function ratioUncertainty(it: ThreadReading): number {
  const share = it.period_px / it.width_px;
  const parts = {
    phase: Math.max(it.periodError, (PHASE_WEIGHT * it.phaseRms) / Math.max(1, it.turns)),
    scatter: (EDGE_WEIGHT * it.edgeScatter_px) / it.width_px,
    blur: Math.max(LEAST_BLUR, 0.35 * (it.soft - SHARP), 0.5 * it.gap) * share,
    sides: 0.35 * it.sidesDiffer,
    tilt: tiltUncertainty(it),
    rest: REST,
  };
  return combined.over(parts)[0] as number;
}

/** The cosine that the period is short by where the part stands obliquely and the photo shows it; else 1. */
export function obliquity(it: ThreadReading): { readonly known: boolean; readonly cosine: number } {
  const trusted = it.helixFit > TRUSTED_FIT && Math.abs(it.lead) > 0.6 && Math.abs(it.lead) < 1.6;
  const sine = Math.min(0.99, Math.abs(it.oblique));
  const corrected = trusted && sine > LEAST_SINE && sine < MOST_SINE;
  return { known: trusted, cosine: corrected ? Math.sqrt(1 - sine * sine) : 1 };
}

const combined = formula(
  "u = sqrt(phase^2 + scatter^2 + blur^2 + sides^2 + tilt^2 + rest^2)",
  { phase: one, scatter: one, blur: one, sides: one, tilt: one, rest: one, u: one },
  "JCGM 100:2008, eq. (10); its weights are judged on rendered photos",
);

const PHASE_WEIGHT = 1.3;
const EDGE_WEIGHT = 0.7;
/** The least that a crest line may be off by, periods; and how soft a sharp photo's edge is. */
const LEAST_BLUR = 0.045;
const SHARP = 0.14;
/** Perspective, lens and everything that no picture shows. */
const REST = 0.004;
const UNKNOWN_TILT = 0.01;
/** Below this the bulge that is fitted is often that of a glint or of nothing, and would be corrected by wrongly. */
const TRUSTED_FIT = 0.94;
/** 7 and 23 degrees: below the bulge of the lines is too slight to correct by, above it says too little. */
const LEAST_SINE = 0.122;
const MOST_SINE = 0.391;

function tiltUncertainty(it: ThreadReading): number {
  const { known, cosine } = obliquity(it);
  return known ? 0.5 * (1 / cosine - 1) : UNKNOWN_TILT;
}
