import { type Quantity, valueIn } from "../quantity/quantity.ts";
import { degC } from "../quantity/unit.ts";
import { daysBetween } from "../service/dueDate.ts";
import {
  type AnaerobicStrength,
  anaerobicLimits,
  type Sealant,
  type SiliconeType,
  sealantHeat,
  siliconeTypes,
} from "../tables/cureData.ts";

/** What is asked of the label, never assumed. Null where nobody has looked. */
export type LabelAnswers = {
  /** Gear oil softens ordinary silicone, and hot oil swells it. */
  readonly namesThisFluid: boolean | null;
  readonly useBy: string | null;
  readonly siliconeType: SiliconeType | null;
};

export type LabelCheck =
  | { readonly id: "label names this fluid"; readonly verdict: "yes" | "no" | "asked" }
  | { readonly id: "in date"; readonly verdict: "yes" | "no" | "asked" }
  | { readonly id: "silicone type"; readonly verdict: SiliconeType | "asked"; readonly caution: SiliconeCaution };

export type SiliconeCaution = (typeof siliconeTypes)[SiliconeType]["caution"];

/** What the label answers on the day `today`, ISO 8601: the date on it is the last good day. */
export function labelChecks(answers: LabelAnswers, today: string): readonly LabelCheck[] {
  const { namesThisFluid, useBy, siliconeType } = answers;
  return [
    { id: "label names this fluid", verdict: namesThisFluid === null ? "asked" : namesThisFluid ? "yes" : "no" },
    { id: "in date", verdict: useBy === null ? "asked" : daysLeft(useBy, today) >= 0 ? "yes" : "no" },
    {
      id: "silicone type",
      verdict: siliconeType ?? "asked",
      caution: siliconeType ? siliconeTypes[siliconeType].caution : null,
    },
  ];
}

/** Whole days from `today` to the last good day of a tube, negative when it is past. @throws RangeError if one is no date. */
export const daysLeft = (useBy: string, today: string): number => daysBetween(today, useBy);

/** Whether a sealant bears the heat of its joint, and how far it is from its limit, K. */
export function heatVerdict(sealant: Sealant, hottest: Quantity) {
  const room_K = sealantHeat[sealant].most_degC - valueIn(degC, hottest);
  return {
    verdict: room_K >= 0 ? ("bears it" as const) : ("too hot" as const),
    room_K,
    source: sealantHeat[sealant].source,
  };
}

export type Reopening = {
  readonly by: "scraper and solvent" | "hand tools" | "hand tools, heat if it stays" | "heat";
  /** The temperature that softens it, null where heat is not needed. */
  readonly heatTo_degC: number | null;
  readonly caution: "strips a weak boss" | null;
};

/** What opens a joint again. */
export function reopening(sealed: "silicone" | AnaerobicStrength): Reopening {
  const heatTo_degC = anaerobicLimits.softens_degC.value;
  switch (sealed) {
    case "silicone":
      return { by: "scraper and solvent", heatTo_degC: null, caution: null };
    case "low":
      return { by: "hand tools", heatTo_degC: null, caution: null };
    case "medium":
      return { by: "hand tools, heat if it stays", heatTo_degC, caution: null };
    case "high":
      return { by: "heat", heatTo_degC, caution: "strips a weak boss" };
    default:
      return sealed satisfies never;
  }
}
