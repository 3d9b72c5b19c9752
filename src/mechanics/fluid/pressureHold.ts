import { formula } from "../quantity/formula.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { bar, K, kPa, min, mm, N, type Unit } from "../quantity/unit.ts";
import { absoluteTemperature } from "./breather.ts";
import { doubtOf } from "./levelDoubt.ts";

/** A hold: gauge readings and temperatures at its start and end. Vacuum reads negative. */
export type Hold = {
  readonly p_1: Quantity;
  readonly p_2: Quantity;
  readonly T_1: Quantity;
  readonly T_2: Quantity;
  /** Outside pressure, absolute, taken as the same throughout. */
  readonly p_0: Quantity;
  readonly time: Quantity;
};

export type HoldVerdict = {
  /** What the gauge would have read at the end at the first temperature. */
  readonly atFirstTemperature: Quantity;
  /** What was lost towards the outside, temperature taken out; negative where the hold gained. */
  readonly loss: Quantity;
  readonly perMinute: Quantity;
  readonly verdict: "holds" | "leaks" | "cannot tell";
};

/**
 * Whether a hold lost more than `allowed`, its temperature taken out by absolute pressure.
 *
 * "cannot tell" where the gauge and the thermometer leave it open 19 times in 20. A pressure lost and a vacuum lost both count
 * as loss towards the outside pressure.
 * @throws RangeError if the hold began at the outside pressure, which tests nothing.
 */
export function holdVerdict(hold: Hold, allowed: Quantity): HoldVerdict {
  const { p_1, p_2, p_0, time } = hold;
  const [T_1, T_2] = [absoluteTemperature(hold.T_1), absoluteTemperature(hold.T_2)];
  if (p_1.value === 0) throw new RangeError("holdVerdict: neither pressure nor vacuum at the start");
  const p_c = atFirst({ p_2, p_0, T_1, T_2 });
  const loss = p_1.value > 0 ? pressureLoss({ p_1, p_c }) : vacuumLoss({ p_1, p_c });
  const doubt = doubtOf(loss);
  const verdict =
    loss.value - doubt > allowed.value ? "leaks" : loss.value + doubt <= allowed.value ? "holds" : "cannot tell";
  return { atFirstTemperature: p_c, loss, perMinute: lossRate({ Dp: loss, t: time }), verdict };
}

/** What a case with water on its other side has passed: only pressure and vacuum together count. */
export function waterTest(
  pressure: HoldVerdict["verdict"] | null,
  vacuum: HoldVerdict["verdict"] | null,
): "passed" | "failed" | "cannot tell" | "not done" {
  if (pressure === "leaks" || vacuum === "leaks") return "failed";
  if (pressure === null || vacuum === null) return "not done";
  return pressure === "holds" && vacuum === "holds" ? "passed" : "cannot tell";
}

/** What a change of temperature alone does to a gauge, in a closed volume. */
export const thermalDrift = (p: Quantity, p_0: Quantity, T_1: Quantity, T_2: Quantity): Quantity =>
  drift({ p, p_0, T_1: absoluteTemperature(T_1), T_2: absoluteTemperature(T_2) });

/** The force F with which a pressure over the outside pushes a plug out, on the circle D that it acts on. */
export const plugForce = (p: Quantity, D: Quantity): Quantity => pushes({ p, D });

const barPerMinute: Unit = {
  symbol: "bar/min",
  inSI: bar.inSI / min.inSI,
  zero: 0,
  dimension: [-1, 1, -3, 0],
  kind: "plain number",
};

const gayLussac = "Gay-Lussac's law: absolute pressure goes with absolute temperature in a closed volume";

const atFirst = formula(
  "p_c = (p_2 + p_0) * T_1 / T_2 - p_0",
  { p_2: bar, p_0: bar, T_1: K, T_2: K, p_c: bar },
  gayLussac,
);
const drift = formula("Dp_T = (p + p_0) * (T_2 / T_1 - 1)", { p: bar, p_0: bar, T_1: K, T_2: K, Dp_T: bar }, gayLussac);
const pressureLoss = formula("Dp = p_1 - p_c", { p_1: bar, p_c: bar, Dp: bar }, "what the gauge lost");
const vacuumLoss = formula("Dp = p_c - p_1", { p_1: bar, p_c: bar, Dp: bar }, "what the vacuum lost");
const lossRate = formula("v = Dp / t", { Dp: bar, t: min, v: barPerMinute }, "plain rate");
const pushes = formula("F = p * pi / 4 * D^2", { p: kPa, D: mm, F: N }, "pressure on a circle");
