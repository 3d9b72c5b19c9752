import { formula } from "../quantity/formula.ts";
import { type Quantity, valueIn } from "../quantity/quantity.ts";
import { ml, ml_mm, mm, one } from "../quantity/unit.ts";
import { judgement, type Source } from "../tables/source.ts";
import { doubtOf } from "./levelDoubt.ts";

/** The volume to draw out so that the level falls from `now` to `target`; negative where it has to be filled. */
export const drawBack = (perHeight: Quantity, now: Quantity, target: Quantity): Quantity =>
  volumeBetween({ k: perHeight, h_1: now, h_2: target });

/** The volume to fill so that the level rises from `now` to `target`; negative where it has to be drawn out. */
export const topUp = (perHeight: Quantity, now: Quantity, target: Quantity): Quantity =>
  volumeBetween({ k: perHeight, h_1: target, h_2: now });

/** The volume gone since the level stood at `then`. */
export const volumeLost = (perHeight: Quantity, then: Quantity, now: Quantity): Quantity =>
  volumeBetween({ k: perHeight, h_1: then, h_2: now });

/** A volume in strokes of a syringe: full ones and what is left for the last. */
export type Strokes = { readonly full: number; readonly last_ml: number };

/** How `volume` is drawn or filled with a syringe that holds `syringe`; no strokes where the volume is not above 0. */
export function strokes(volume: Quantity, syringe: Quantity): Strokes {
  const [volume_ml, syringe_ml] = [valueIn(ml, volume), valueIn(ml, syringe)];
  if (!(volume_ml > 0)) return { full: 0, last_ml: 0 };
  const full = Math.floor(volume_ml / syringe_ml + 1e-9);
  return { full, last_ml: Math.max(0, volume_ml - full * syringe_ml) };
}

/** The share of the fill that is gone, and what that calls for. */
export type Loss = { readonly share: Quantity; readonly verdict: "carry on" | "warn" | "stop" };

/**
 * What a loss calls for where nobody knows how deep the gears must dip, judged at the end of the share that 1 in 20 lie
 * beyond: a doubtful reading is taken for the worse.
 */
export function lossVerdict(lost: Quantity, fill: Quantity): Loss {
  const share = shareLost({ V: lost, V_fill: fill });
  const worst = share.value + doubtOf(share);
  const { warnFrom, stopFrom } = lossLevels;
  return { share, verdict: worst >= stopFrom ? "stop" : worst >= warnFrom ? "warn" : "carry on" };
}

/** Shares of the fill from which a loss warns and stops. */
const lossLevels: { readonly warnFrom: number; readonly stopFrom: number; readonly source: Source } = {
  warnFrom: 0.15,
  stopFrom: 0.3,
  source: judgement("no public general limit exists; the maker's figure goes before these"),
};

const volumeBetween = formula(
  "V = k * (h_1 - h_2)",
  { k: ml_mm, h_1: mm, h_2: mm, V: ml },
  "plain geometry: volume per height times the difference of level",
);
const shareLost = formula("s = V / V_fill", { V: ml, V_fill: ml, s: one }, "plain share");
