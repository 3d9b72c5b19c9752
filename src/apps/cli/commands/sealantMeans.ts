import { type AnaerobicCure, anaerobicCure } from "../../../mechanics/cure/anaerobic.ts";
import { heatVerdict, type Reopening, reopening } from "../../../mechanics/cure/label.ts";
import type { SealingMeans } from "../../../mechanics/cure/sealantChoice.ts";
import type { Quantity } from "../../../mechanics/quantity/quantity.ts";
import { type Sealant, type SealedFluid, sealantFluids } from "../../../mechanics/tables/cureData.ts";
import type { Source } from "../../../mechanics/tables/source.ts";
import { type AnaerobicOptions, metalsOf } from "./sealantAnaerobic.ts";

/** A means with what it bears, whether it cures here and how it is undone; null where that is not asked of it. */
export type MeansFound = {
  readonly means: SealingMeans;
  readonly heat: ReturnType<typeof heatVerdict> | null;
  /** Null too where gap, metals or temperature are missing. */
  readonly anaerobic: AnaerobicCure | null;
  readonly undone: Reopening | null;
  readonly fluid: {
    readonly verdict: "bears it" | "ask the label" | "does not bear it";
    readonly source: Source;
  } | null;
};

type Joint = AnaerobicOptions & { readonly clearance: Quantity | null; readonly T: Quantity | null };

/** @throws InputMistake */
export function meansFound(
  means: SealingMeans,
  joint: Joint,
  hottest: Quantity | null,
  fluid: SealedFluid | null,
): MeansFound {
  const sealant = sealantOf(means);
  return {
    means,
    heat: sealant && hottest && heatVerdict(sealant, hottest),
    fluid: sealant && fluid && sealantFluids[sealant][fluid],
    anaerobic: sealant === "anaerobic" ? cureOf(means, joint) : null,
    // "Low or medium" is undone as medium is, the harder of the two; so is a thread sealant (judgement).
    undone: sealant === "silicone" ? reopening("silicone") : sealant === "anaerobic" ? reopening("medium") : null,
  };
}

function sealantOf(means: SealingMeans): Sealant | null {
  if (means.includes("silicone")) return "silicone";
  if (means.includes("anaerobic")) return "anaerobic";
  return means === "paste or tape for taper threads" ? "PTFE tape" : null;
}

function cureOf(means: SealingMeans, { clearance: gap, metals, T, activator = false }: Joint): AnaerobicCure | null {
  if (!gap || metals === undefined || !T) return null;
  return anaerobicCure({
    gap,
    T,
    metals: metalsOf({ metals }),
    activator: activator || means.includes("with activator"),
    // Where there is oil, cleaning goes first.
    oily: false,
  });
}
