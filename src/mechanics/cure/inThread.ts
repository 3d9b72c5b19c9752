import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, valueIn } from "../quantity/quantity.ts";
import { d, mm, one } from "../quantity/unit.ts";
import { judgement, sourceText } from "../tables/source.ts";
import { type MetricThread, metricThread } from "../threads/metricThread.ts";
import type { Air } from "./air.ts";
import { type CureTime, depthAfter, type FrontSpeed, timeToDepth } from "./front.ts";

/** How a thread full of sealant lies: wholly apart, slack so that sealant crosses the flanks, or flank on flank. */
export const threadFits = ["straight gap", "slack", "flank on flank"] as const;
export type ThreadFit = (typeof threadFits)[number];

/** The plain truth about sealant inside a thread: moisture comes only from its outer end. */
export type CureInThread = {
  /** The way moisture has to go to the depth. */
  readonly path: Quantity;
  readonly time: CureTime;
  /** How deep along the axis a day cures. */
  readonly firstDay: Quantity;
  readonly verdict: "days" | "weeks" | "practically never";
  /** What may be credited with sealing: never the sealant inside. */
  readonly credit: "the bead under the head or at the mouth";
};

/** When sealant cures at `depth` along the axis of a thread. */
export function cureInThread(
  thread: MetricThread,
  depth: Quantity,
  fit: ThreadFit,
  air: Air,
  front: FrontSpeed,
): CureInThread {
  const detour = detourOf(thread, fit);
  const path = way({ l: depth, n: detour });
  const time = timeToDepth(path, air, front);
  const likely_d = time.likely.value / d.inSI;
  return {
    path,
    time,
    firstDay: advance({ z: depthAfter(exact("t", 1, d), air, front).likely, n: detour }),
    verdict: likely_d > NEVER_d ? "practically never" : likely_d > WEEKS_d ? "weeks" : "days",
    credit: "the bead under the head or at the mouth",
  };
}

/** The plain truth for every way a thread may lie. */
export type CureByFit = {
  readonly depth_mm: number;
  readonly straightGap: CureInThread;
  readonly slack: CureInThread;
  readonly flankOnFlank: CureInThread;
};

/** When sealant cures inside a thread however it lies; without a thread or depth, 10 mm inside an ordinary port thread. */
export function cureByFit(thread: MetricThread | null, depth: Quantity | null, air: Air, front: FrontSpeed): CureByFit {
  const at = (fit: ThreadFit): CureInThread =>
    cureInThread(thread ?? portThread, depth ?? insideDepth, fit, air, front);
  return {
    depth_mm: valueIn(mm, depth ?? insideDepth),
    straightGap: at("straight gap"),
    slack: at("slack"),
    flankOnFlank: at("flank on flank"),
  };
}

const portThread = metricThread(20, 1.5);
const insideDepth = exact("l", 10, mm, "10 mm inside the thread");

/** The way along the thread over the way along its axis. */
function detourOf({ P, d_2 }: MetricThread, fit: ThreadFit): Quantity {
  switch (fit) {
    case "straight gap":
      return exact("n", 1, one, "a gap without thread");
    case "slack":
      return exact("n", 2, one, sourceText(judgement("down one flank and up the next")));
    case "flank on flank":
      return helix({ P, d_2 });
    default:
      return fit satisfies never;
  }
}

const NEVER_d = 365;
const WEEKS_d = 14;

const way = formula("z = l * n", { l: mm, n: one, z: mm }, "plain geometry");
const advance = formula("l = z / n", { z: mm, n: one, l: mm }, "plain geometry");
const helix = formula(
  "n = sqrt((pi * d_2)^2 + P^2) / P",
  { P: mm, d_2: mm, n: one },
  "plain geometry: a helix unrolled, over its pitch",
);
