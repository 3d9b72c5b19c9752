import { triangular } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, taken } from "../quantity/quantity.ts";
import { deg, kN, mm, type Unit } from "../quantity/unit.ts";
import { fromMemory, judgement, sourceText } from "../tables/source.ts";
import type { ThreadForm } from "../threads/threadForm.ts";
import type { Seal } from "./port.ts";

/** When to stop pulling: degrees from snug that are expected, and degrees past which the thread is going. */
export type StopRule = {
  readonly expected_deg: { readonly least: number; readonly most: number };
  readonly stop_deg: number;
  /** The pull in steps, N·m; the last is the figure itself. */
  readonly steps_Nm: readonly number[];
  /** The turn at the middle of its ranges, for the working. */
  readonly turn: Quantity;
};

const perForce: Unit = { symbol: "µm/kN", inSI: 1e-9, zero: 0, dimension: [0, -1, 2, 0], kind: "plain number" };

const turnFromSnug = formula(
  "theta = 360 * deg * (F * c + crush) / P",
  { F: kN, c: perForce, crush: mm, P: mm, theta: deg },
  "plain geometry: a turn advances the plug by its pitch",
);

/** Two turns and 8 mm of clamped length give 1.6 µm/kN; stiff and soft joints stand either side. */
const stiffest = 0.8;
const softest = 3.2;
const compliance = taken(
  "c",
  triangular(stiffest, 1.6, softest),
  perForce,
  sourceText(judgement("stiffness of a short plug joint, two turns and 8 mm clamped")),
);

/** How far a soft seal gives way between snug and set, mm. */
const crushes: Readonly<Record<Seal["kind"], readonly [number, number, number]>> = {
  "flat washer": [0.05, 0.15, 0.3],
  "crush ring": [0.3, 0.7, 1.2],
  "bonded seal": [0.1, 0.25, 0.4],
  "O-ring": [0, 0.05, 0.15],
  "sealant, metal to metal": [0, 0.1, 0.3],
  taper: [0, 0, 0],
  none: [0, 0, 0],
};
const crushSource = sourceText(fromMemory("soft rings give 0.1 to 0.3 mm between snug and set"));

/** No joint of this kind turns farther than this after it is snug; beyond it threads are going. Crush rings fold farther. */
const never_deg = 90;

/** The stop rule for a pull to `torque_Nm` that clamps with `clamp`. */
export function stopRule(thread: ThreadForm, seal: Seal, clamp: Quantity, torque_Nm: number): StopRule {
  const [low, likely, high] = crushes[seal.kind];
  const at = (crush_mm: number, c_um_kN: number): number =>
    turnFromSnug({ F: clamp, c: exact("c", c_um_kN, perForce), crush: exact("crush", crush_mm, mm), P: thread.P })
      .value / deg.inSI;
  const most = at(high, softest);
  const limit = seal.kind === "crush ring" ? 4 * never_deg : never_deg;
  const stop_deg = Math.min(limit, Math.max(15, 1.25 * most));
  return {
    // A fine pitch and a soft ring may reckon more than is ever let turn: nobody is told to expect what he must stop at.
    expected_deg: { least: Math.min(at(low, stiffest), stop_deg), most: Math.min(most, stop_deg) },
    stop_deg,
    steps_Nm: [1 / 3, 2 / 3, 1].map((share) => (share === 1 ? torque_Nm : Math.round(share * torque_Nm))),
    turn: turnFromSnug({
      F: clamp,
      c: compliance,
      crush: taken("crush", triangular(low, likely, high), mm, crushSource),
      P: thread.P,
    }),
  };
}
