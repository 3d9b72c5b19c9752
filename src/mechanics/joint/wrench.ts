import type { Distribution } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, valueIn } from "../quantity/quantity.ts";
import { deg, mm, Nm } from "../quantity/unit.ts";
import type { Levels } from "../tables/levels.ts";
import type { Ranges } from "../tables/referenceRanges.ts";
import type { wrenchKinds } from "./wrenchKinds.ts";

export type Wrench = {
  readonly name: string;
  readonly kind: (typeof wrenchKinds)[number];
  readonly least: Quantity;
  readonly most: Quantity;
  readonly step: Quantity;
  /** ISO 8601 day of its last calibration; null where nobody says. */
  readonly calibrated: string | null;
  readonly crowFoot: CrowFoot | null;
};

/** An extension on the square: what it adds to the lever, and its angle to the handle. */
export type CrowFoot = {
  /** From the square of the wrench to the middle of the grip. */
  readonly lever: Quantity;
  /** From the square of the wrench to the middle of the plug. */
  readonly extension: Quantity;
  /** 0 in line, 90° across. */
  readonly angle: Quantity;
};

/** Whether a figure pulled with a wrench may be claimed afterwards. Outside it, a wrench may tighten; it may not claim. */
export type Evidence = "in range and in date" | "out of range" | "out of date" | "date not known";

/** The deviation of a wrench as a share of the figure set; the same as for a wrench over 10 N·m where none is named. */
export function wrenchDeviation(wrench: Wrench | null, ranges: Ranges): Distribution {
  const small = wrench !== null && valueIn(Nm, wrench.most) <= 10;
  return ranges[small ? "wrench up to 10 N·m" : "wrench over 10 N·m"].distribution;
}

/** The part of its scale that a wrench may be used on, N·m: not below 20 % of full scale. ISO 6789. */
export function usableRange(wrench: Wrench, levels: Levels): { readonly from_Nm: number; readonly to_Nm: number } {
  const to_Nm = valueIn(Nm, wrench.most);
  return { from_Nm: Math.max(valueIn(Nm, wrench.least), levels.leastShareOfScale * to_Nm), to_Nm };
}

/** The marks between `from_Nm` and `to_Nm` that a wrench can be set to, upwards, N·m. */
export function marks(wrench: Wrench | null, from_Nm: number, to_Nm: number): readonly number[] {
  const first = wrench ? valueIn(Nm, wrench.least) : 0;
  const step = wrench ? valueIn(Nm, wrench.step) : 1;
  const last = Math.min(to_Nm, wrench ? valueIn(Nm, wrench.most) : Number.POSITIVE_INFINITY);
  const from = Math.max(0, Math.ceil((from_Nm - first) / step - 1e-9));
  const count = Math.floor((last - first) / step + 1e-9) - from + 1;
  return Array.from({ length: Math.max(0, count) }, (_, i) => first + (from + i) * step);
}

/** Whether `torque_Nm` pulled with this wrench on the day `today` may be claimed. */
export function evidence(wrench: Wrench, torque_Nm: number, today: string | null, levels: Levels): Evidence {
  const { from_Nm, to_Nm } = usableRange(wrench, levels);
  if (torque_Nm < from_Nm - 1e-9 || torque_Nm > to_Nm + 1e-9) return "out of range";
  if (!wrench.calibrated || !today) return "date not known";
  const days = (Date.parse(today) - Date.parse(wrench.calibrated)) / 86_400_000;
  // A day that cannot be read, or that is still to come, dates nothing.
  if (!(days >= 0)) return "date not known";
  return days > levels.calibrationDays ? "out of date" : "in range and in date";
}

const withPrevailing = formula(
  "T_w = T + T_p",
  { T: Nm, T_p: Nm, T_w: Nm },
  "ISO 2320: what the thread itself resists does not clamp and is added (form from memory)",
);

const crowFootSetting = formula(
  "T_set = T_w * L / (L + E * cos(a))",
  { T_w: Nm, L: mm, E: mm, a: deg, T_set: Nm },
  "levers: the extension in line lengthens the lever, across it changes nothing",
);

/**
 * The figure to set on a wrench so that the joint gets `torque_Nm`: more by the torque T_p at which the plug already turned
 * before it was seated, less where a crow-foot lengthens the lever.
 */
export function figureToSet(wrench: Wrench | null, torque_Nm: number, T_p: Quantity | null): Quantity {
  const T = exact("T", torque_Nm, Nm, "advice");
  const T_w = T_p ? withPrevailing({ T, T_p }) : T;
  if (!wrench?.crowFoot) return T_w;
  const { lever, extension, angle } = wrench.crowFoot;
  return crowFootSetting({ T_w, L: lever, E: extension, a: angle });
}
