import { uniform } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { type Quantity, taken, valueIn } from "../quantity/quantity.ts";
import { cm2, min, ml, ml_d, mm } from "../quantity/unit.ts";
import { judgement, sourceText } from "../tables/source.ts";

/** How deep oil lies on smooth ground, e; rough ground holds less. */
export const filmOnSmoothGround = taken(
  "e",
  uniform(0.33, 0.98),
  mm,
  sourceText(judgement("contact angles of 10 to 30°, oil of 0.031 N/m and 877 kg/m³")),
);

/** The area A of a round spot. */
export const spotArea = (D: Quantity): Quantity => roundArea({ D });

/** The volume V in a spot of an area, for the depth e of its film. */
export const spotVolume = (A: Quantity, e: Quantity): Quantity => filmVolume({ A, e });

/** The flow Q that makes a volume in a time. */
export const flowFromVolume = (V: Quantity, t: Quantity): Quantity => volumeFlow({ V, t });

/**
 * Whether a pool would fail a periodic test: more than 75 mm across within five minutes, idling. Far above what a mechanic
 * accepts. Source: UK periodic test manual, 8.4.1, as quoted.
 */
export const poolVerdict = (diameter: Quantity, time: Quantity): "fails" | "passes" | "watched too long" => {
  if (valueIn(mm, diameter) <= POOL_mm) return "passes";
  return valueIn(min, time) <= POOL_min ? "fails" : "watched too long";
};

const POOL_mm = 75;
const POOL_min = 5;

const roundArea = formula("A = pi / 4 * D^2", { D: mm, A: cm2 }, "plain geometry");
const filmVolume = formula("V = A * e", { A: cm2, e: mm, V: ml }, "plain geometry");
const volumeFlow = formula("Q = V / t", { V: ml, t: min, Q: ml_d }, "plain rate");
