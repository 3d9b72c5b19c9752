import { exactly, uniform } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { type Quantity, taken } from "../quantity/quantity.ts";
import { degC, deltaK, ml, ml_mm, mm, one, perK } from "../quantity/unit.ts";
import { judgement, sourceText } from "../tables/source.ts";

/** A fill as it is warmed from the reference temperature. */
export type Warming = {
  /** The fill at the reference temperature. */
  readonly V: Quantity;
  /** Volume of the oil when warm over its volume at the reference temperature. */
  readonly r: Quantity;
  /** Linear expansion of the case. */
  readonly alpha: Quantity;
  /** Warm less reference temperature. */
  readonly DT: Quantity;
};

/** The difference DT between a temperature and the reference temperature. */
export const temperatureDifference = (T: Quantity, reference: Quantity): Quantity =>
  difference({ T, T_ref: reference });

/** The volume V_net by which a fill outgrows its case. */
export const netGrowth = (warming: Warming): Quantity => growth(warming);

/** The rise Dh of the level that goes with it, for the volume per height at the reference temperature. */
export const netRise = (warming: Warming, perHeight: Quantity): Quantity => {
  const { alpha, DT } = warming;
  return rise({ V_net: netGrowth(warming), k: perHeight, alpha, DT });
};

/** How the oil stood when its level was read. */
export type Standing = { readonly type: "cold" } | { readonly type: "hot"; readonly minutesSinceStop: number | null };

export type LevelAtReference = { readonly level: Quantity; readonly reading: "settled" | "widened" };

/**
 * The level at the reference temperature, from the level read and the net rise that the warmth accounts for. Oil that was
 * on the move less than ten minutes ago hangs on the walls or carries air, so its reading is widened by 2 mm either way.
 */
export function levelAtReference(read: Quantity, risen: Quantity, standing: Standing): LevelAtReference {
  const settled = standing.type === "cold" || (standing.minutesSinceStop ?? 0) >= SETTLED_min;
  const e = settled ? exactlyStill : unsettled(read);
  return { level: referenceLevel({ h: read, Dh: risen, e }), reading: settled ? "settled" : "widened" };
}

const difference = formula("DT = T - T_ref", { T: degC, T_ref: degC, DT: deltaK }, "plain difference");
const growth = formula(
  "V_net = V * (r - (1 + alpha * DT)^3)",
  { V: ml, r: one, alpha: perK, DT: deltaK, V_net: ml },
  "plain geometry: the hollow of a case grows as its metal does",
);
const rise = formula(
  "Dh = V_net / (k * (1 + alpha * DT)^2)",
  { V_net: ml, k: ml_mm, alpha: perK, DT: deltaK, Dh: mm },
  "plain geometry: the surface of a case grows as its metal does",
);
const referenceLevel = formula(
  "h_ref = h - Dh - e",
  { h: mm, Dh: mm, e: mm, h_ref: mm },
  "plain difference, with what unsettled oil adds",
);

/** Oil held up on gears and walls reads low for 10 to 20 minutes, air in it reads high (from memory). */
const SETTLED_min = 10;
const exactlyStill = taken("e", exactly(0), mm, "oil at rest");

/** Two readings are unsettled each in its own way, so each has its own error. */
const unsettled = ({ origin, symbol }: Quantity): Quantity =>
  taken("e", uniform(-2, 2), mm, `${unsettledSource}, ${origin.type === "reading" ? origin.id : symbol}`);
const unsettledSource = sourceText(judgement("oil on the walls reads low, air in the oil reads high"));
