import { atLeast, atMost, inWhole } from "../lettering.ts";
import type { WindowProps } from "./windowProps.ts";

/** A torque window in words, for those who hear it. */
export function windowInWords(props: WindowProps): string {
  const { need_Nm, limit_Nm, cautiousRule_Nm, medianStrip_Nm, floor_Nm, advice_Nm, bookFigures, wrench } = props;
  const empty = Math.max(need_Nm, floor_Nm ?? 0) > limit_Nm;
  const verdict = empty
    ? "The window is empty: no torque does both."
    : advice_Nm === null
      ? "No figure to set."
      : `Set ${inWhole(advice_Nm)} N·m.`;
  return [
    verdict,
    `The seal needs ${atLeast(need_Nm)}, careful limit ${atMost(limit_Nm)}, half strip at ${inWhole(medianStrip_Nm)}, third rule ${atMost(cautiousRule_Nm)} N·m.`,
    ...(floor_Nm === null ? [] : [`Floor against shaking loose ${atLeast(floor_Nm)} N·m.`]),
    ...bookFigures.map(({ torque_Nm, label }) => `Book figure ${inWhole(torque_Nm)} N·m, ${label}.`),
    ...(wrench ? [`${wrench.name} sets ${inWhole(wrench.least_Nm)} to ${inWhole(wrench.most_Nm)} N·m.`] : []),
  ].join(" ");
}
