import { exactly } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { type Quantity, taken } from "../quantity/quantity.ts";
import { d, ml, ml_d, one } from "../quantity/unit.ts";
import { judgement, sourceText } from "../tables/source.ts";
import type { DripFlow, Range } from "./dropCount.ts";
import type { StopSign } from "./stopSigns.ts";

/** What the caller or the mechanic answered. Null where nobody asked. */
export type LeakAnswers = {
  readonly stopSigns: readonly StopSign[] | null;
  readonly breather: "free" | "blocked" | "none" | null;
};

/** How long a margin lasts, by the flow's range. An end is null where nothing drips at that end. */
export type Lasting = { readonly low: Quantity | null; readonly high: Quantity | null };

export type LeakTriage =
  | { readonly type: "do not drive"; readonly signs: readonly StopSign[] }
  | { readonly type: "ask first"; readonly questions: readonly ("stop signs" | "breather")[] }
  | { readonly type: "free the breather first" }
  | { readonly type: "margin used up" }
  | { readonly type: "lasts"; readonly parked: Lasting; readonly parkedHonest: Lasting; readonly driven: Lasting };

/**
 * What may be said of a drip over the telephone: signs first, then the breather, then days until the `margin` above the
 * low limit is gone, by the size of a drop and by the honest range; `driven` is the honest range at the driving factor.
 */
export function leakTriage(answers: LeakAnswers, margin: Quantity, flow: DripFlow): LeakTriage {
  const signs = answers.stopSigns ?? [];
  if (signs.length > 0) return { type: "do not drive", signs };
  if (answers.breather === "blocked") return { type: "free the breather first" };
  const questions = [
    ...(answers.stopSigns === null ? (["stop signs"] as const) : []),
    ...(answers.breather === null ? (["breather"] as const) : []),
  ];
  if (questions.length > 0) return { type: "ask first", questions };
  if (!(margin.value > 0)) return { type: "margin used up" };
  const parkedHonest = lasts(margin, flow.honest);
  const driven = { low: whenDriven(parkedHonest.low), high: whenDriven(parkedHonest.high) };
  return { type: "lasts", parked: lasts(margin, flow.bySize), parkedHonest, driven };
}

/** A drip lasts this share of its days where the machine is driven: half, or worse. */
const drivingFactor = taken(
  "f",
  exactly(0.5),
  one,
  sourceText(judgement("hot oil is thin and splashes: half of the days parked, or fewer")),
);

function lasts(margin: Quantity, flow: Range): Lasting {
  const at = (Q: Quantity): Quantity | null => (Q.value > 0 ? days({ V: margin, Q }) : null);
  return { low: at(flow.high), high: at(flow.low) };
}

const whenDriven = (t_p: Quantity | null): Quantity | null => t_p && shortened({ t_p, f: drivingFactor });

const days = formula("t = V / Q", { V: ml, Q: ml_d, t: d }, "margin over flow");
const shortened = formula("t = t_p * f", { t_p: d, f: one, t: d }, "days parked times the driving factor");
