import { quantile } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, taken } from "../quantity/quantity.ts";
import { kPa, mm, Pa } from "../quantity/unit.ts";
import { moistureCure } from "../tables/cureData.ts";
import { sourceText } from "../tables/source.ts";

/** The pressure that blows uncured paste out of a gap: likely, and between its least and its greatest yield stress. */
export type BlowOut = { readonly likely: Quantity; readonly least: Quantity; readonly most: Quantity };

/** The pressure Dp that uncured paste holds in a gap h over its length l. It is why a skin can do where nothing is cured. */
export function blowOut(gap: Quantity, length: Quantity): BlowOut {
  const { distribution, source } = moistureCure.yieldStress_Pa;
  const at = (tau_y: Quantity): Quantity => plug({ tau_y, l: length, h: gap });
  const end = (p: number): Quantity => exact("tau_y", quantile(distribution, p), Pa, sourceText(source));
  return { likely: at(taken("tau_y", distribution, Pa, sourceText(source))), least: at(end(0)), most: at(end(1)) };
}

/** Whether uncured paste holds a pressure over the outside: surely, perhaps, or not. */
export const pasteHolds = (pressure: Quantity, { least, most }: BlowOut): "holds" | "may hold" | "is blown out" =>
  pressure.value <= least.value ? "holds" : pressure.value <= most.value ? "may hold" : "is blown out";

const plug = formula(
  "Dp = 2 * tau_y * l / h",
  { tau_y: Pa, l: mm, h: mm, Dp: kPa },
  "balance of forces on a plug of Bingham paste between two walls",
);
