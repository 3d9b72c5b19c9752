import { type DropSize, dropVolume, oilSurfaceTension } from "../../mechanics/fluid/drop.ts";
import { dripFlow, type Range } from "../../mechanics/fluid/dropCount.ts";
import { fallFor } from "../../mechanics/fluid/leakDistance.ts";
import { type LeakAnswers, leakTriage } from "../../mechanics/fluid/leakTriage.ts";
import { drawBack } from "../../mechanics/fluid/levelVolumes.ts";
import { exact, type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { degC, kg_m3, ml, ml_d, mm } from "../../mechanics/quantity/unit.ts";
import { type Step, working } from "../../mechanics/quantity/working.ts";
import type { DripInWords } from "../words/leakWords.ts";

/** What was counted and asked of a drip. */
export type DripKnown = {
  readonly drops: number;
  readonly time: Quantity;
  /** Where the count was given. */
  readonly id: string;
  readonly drop: DropSize;
  /** What a millimetre of level holds, and how far the level stands above its low limit. Null where nobody knows. */
  readonly perHeight: Quantity | null;
  readonly aboveLimit: Quantity | null;
  readonly answers: LeakAnswers;
};

/** All that may be said of a counted drip. */
export function dripInWords({ drops, time, id, drop, perHeight, aboveLimit, answers }: DripKnown): DripInWords {
  const flow = dripFlow({ drops, time, id }, drop, 0.95);
  const margin = perHeight && aboveLimit && drawBack(perHeight, aboveLimit, limit);
  const triage = leakTriage(answers, margin ?? exact("V", 0, ml, "no limit given"), flow);
  // Without a margin nothing can be said of days; signs and questions stand all the same.
  const told = margin || (triage.type !== "lasts" && triage.type !== "margin used up") ? triage : null;
  const fallADay = perHeight && { bySize: fallOf(flow.bySize, perHeight), honest: fallOf(flow.honest, perHeight) };
  return { drops, flow, triage: told, fallADay };
}

/** How every figure of a drip was got. */
export function dripWorking({ flow, triage, fallADay }: DripInWords): readonly Step[] {
  const days = triage?.type === "lasts" ? [triage.parked, triage.parkedHonest, triage.driven] : [];
  return working(
    flow.flow,
    ...ends(flow.bySize),
    ...ends(flow.honest),
    ...days.flatMap(({ low, high }) => [low, high]).filter((it) => it !== null),
    ...(fallADay ? ends(fallADay.bySize) : []),
  );
}

/** The size of a drop of gear oil as it hangs from a lip of radius `r`, parked; null outside the lips the law holds for. */
export function dropFromLip(r: Quantity): DropSize | null {
  const rho = exact("rho", 877, kg_m3, "gear oil at 20 °C (from memory)");
  const found = dropVolume(r, oilSurfaceTension(exact("T", 20, degC, "taken: the oil as it drips, parked")), rho);
  return found.ok ? found.drop : null;
}

const limit = exact("h_L", 0, mm, "counted from the limit");

/** The fall of the level that what is lost in a day makes. */
function fallOf({ low, high }: Range, k: Quantity): Range {
  const inADay = (Q: Quantity): Quantity => fallFor(exact("V", valueIn(ml_d, Q), ml, "lost in a day"), k);
  return { low: inADay(low), high: inADay(high) };
}

const ends = ({ low, high }: Range): readonly Quantity[] => [low, high];
