import { formula } from "../quantity/formula.ts";
import { type Quantity, valueIn } from "../quantity/quantity.ts";
import { kgf_cm, kgf_m, lbf_ft, lbf_in, Nm, type Unit } from "../quantity/unit.ts";
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

const otherUnits: readonly Unit[] = [lbf_ft, lbf_in, kgf_m, kgf_cm];

/** What the figures of one port are to each other; null where there are none. */
export function bookVerdict(
  figures: readonly BookFigure[],
  seal: Ring,
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
  if (meant[0] && sorted.some((it) => isForAnother(it, seal, surface)))
    return meant.length === 1
      ? { type: "different joints", figure: meant[0] }
      : bookVerdict(meant, seal, surface, need_Nm, lightAlloy, deviation);
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

/** The unit in which one of two figures was printed before it was rounded into the unit of the other, or after. */
function roundedFrom(a: BookFigure, b: BookFigure): string | null {
  if (a.torque.unit.symbol === b.torque.unit.symbol) return null;
  const unit = [a, b].map((it) => it.torque.unit).find((it) => otherUnits.includes(it));
  if (!unit) return null;
  const [imperial, metric] = a.torque.unit === unit ? [a, b] : [b, a];
  return isRounded(metric, imperial) || isRounded(imperial, metric) ? unit.symbol : null;
}

/** Whether `figure`, to the decimals it is printed with, is `other` in its unit. */
function isRounded({ torque }: BookFigure, other: BookFigure): boolean {
  const printed = String(Number(valueIn(torque.unit, torque).toPrecision(9)));
  const decimals = printed.split(".")[1]?.length ?? 0;
  return Number(valueIn(torque.unit, other.torque).toFixed(decimals)) === Number(printed);
}

type Ring = { readonly kind: SealKind; readonly material: WasherMaterial | null };

const isFor = (figure: BookFigure, seal: Ring, surface: Surface): boolean =>
  isForSeal(figure, seal) && (figure.surface === null || figure.surface === surface);

const isForAnother = (figure: BookFigure, seal: Ring, surface: Surface): boolean =>
  (figure.seal !== null && !isForSeal(figure, seal)) || (figure.surface !== null && figure.surface !== surface);

/** Whether a figure was printed for this kind of seal. */
export const isForSeal = (figure: BookFigure, seal: Ring): boolean =>
  figure.seal !== null && (figure.seal === seal.kind || figure.seal === seal.material);
