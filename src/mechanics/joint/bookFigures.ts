import { formula } from "../quantity/formula.ts";
import { type Quantity, valueIn } from "../quantity/quantity.ts";
import { kgf_m, lbf_ft, lbf_in, Nm, type Unit } from "../quantity/unit.ts";
import type { SealKind, Surface, WasherMaterial } from "./port.ts";

/** A torque that somebody printed or said, and the joint it was meant for as far as that is known. */
export type BookFigure = {
  readonly torque: Quantity;
  readonly source: string;
  readonly seal: SealKind | WasherMaterial | null;
  readonly surface: Surface | null;
};

/** What two or more figures for one port are to each other. */
export type BookVerdict =
  | { readonly type: "one figure"; readonly figure: BookFigure }
  /** Apart by less than the wrench deviates: any will do, the middle serves. */
  | { readonly type: "same for the wrench"; readonly between_Nm: number }
  /** One is the other in another unit, rounded. */
  | { readonly type: "same in another unit"; readonly figure: BookFigure; readonly unit: string }
  /** They belong to different joints: the one for this seal and surface counts. */
  | { readonly type: "different joints"; readonly figure: BookFigure }
  /** Nothing tells them apart: in a light alloy the lower that still reaches the seal's need. */
  | { readonly type: "unresolved"; readonly figure: BookFigure; readonly lower: boolean };

const middle = formula(
  "T = (T_1 + T_2) / 2",
  { T_1: Nm, T_2: Nm, T: Nm },
  "two figures within the deviation of the wrench: the middle of both",
);

const otherUnits: readonly Unit[] = [lbf_ft, lbf_in, kgf_m];

/** What the figures of one port are to each other; null where there are none. */
export function bookVerdict(
  figures: readonly BookFigure[],
  seal: { readonly kind: SealKind; readonly material: WasherMaterial | null },
  surface: Surface,
  need_Nm: number,
  lightAlloy: boolean,
  deviation: number,
): BookVerdict | null {
  const sorted = figures.toSorted((a, b) => a.torque.value - b.torque.value);
  const [lowest, highest] = [sorted[0], sorted.at(-1)];
  if (!lowest || !highest) return null;
  if (lowest === highest) return { type: "one figure", figure: lowest };
  const unit = roundedFrom(lowest, highest);
  if (unit) return { type: "same in another unit", figure: lowest, unit };
  const meant = sorted.filter((it) => isFor(it, seal, surface));
  const otherJoint = sorted.some((it) => it.seal !== null && !isForSeal(it, seal));
  if (otherJoint && meant.length === 1 && meant[0]) return { type: "different joints", figure: meant[0] };
  if (highest.torque.value <= lowest.torque.value * (1 + deviation)) {
    const T = middle({ T_1: lowest.torque, T_2: highest.torque });
    return { type: "same for the wrench", between_Nm: Math.round(valueIn(Nm, T)) };
  }
  if (!lightAlloy) return { type: "unresolved", figure: highest, lower: false };
  const reaching = sorted.find((it) => valueIn(Nm, it.torque) >= need_Nm);
  return { type: "unresolved", figure: reaching ?? lowest, lower: true };
}

/** The torque to pull by a verdict, N·m. */
export const bookTorque_Nm = (verdict: BookVerdict): number =>
  verdict.type === "same for the wrench" ? verdict.between_Nm : valueIn(Nm, verdict.figure.torque);

/** The unit in which one of two nearly equal figures is a whole number that the other was rounded from. */
function roundedFrom(a: BookFigure, b: BookFigure): string | null {
  if (a.torque.unit.symbol === b.torque.unit.symbol) return null;
  const unit = [a, b].map((it) => it.torque.unit).find((it) => otherUnits.includes(it));
  if (!unit) return null;
  const [imperial, metric] = a.torque.unit === unit ? [a, b] : [b, a];
  const printed = valueIn(metric.torque.unit, metric.torque);
  const exactly = valueIn(metric.torque.unit, imperial.torque);
  return Math.abs(exactly - printed) <= 0.5 + 0.5 * (unit.inSI / metric.torque.unit.inSI) ? unit.symbol : null;
}

function isFor(
  figure: BookFigure,
  seal: { kind: SealKind; material: WasherMaterial | null },
  surface: Surface,
): boolean {
  return isForSeal(figure, seal) && (figure.surface === null || figure.surface === surface);
}

const isForSeal = (figure: BookFigure, seal: { kind: SealKind; material: WasherMaterial | null }): boolean =>
  figure.seal !== null && (figure.seal === seal.kind || figure.seal === seal.material);
