import { exactly } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, taken } from "../quantity/quantity.ts";
import { ml, mm } from "../quantity/unit.ts";
import { judgement, sourceText } from "../tables/source.ts";
import type { HoleLimits, PlugLimits } from "../threads/metricLimits.ts";
import type { MetricThread } from "../threads/metricThread.ts";
import { type PassageFlow, type Push, passageFlow, together } from "./threadFlow.ts";

/** The helical ways out of a thread whose plug leans on one flank. */
export type ThreadPath = {
  /** Along the helix from the inner to the outer end. */
  readonly L: Quantity;
  /** Width and gap of the open flank, and of the channel at the crests. */
  readonly w_f: Quantity;
  readonly h_f: Quantity;
  readonly w_c: Quantity;
  readonly h_c: Quantity;
};

/** The ways out of a thread engaged over `engaged`, for a clearance `c` of the pitch diameters and a crest gap `h_c`. */
export function threadPath(thread: MetricThread, engaged: Quantity, c: Quantity, h_c: Quantity): ThreadPath {
  const { P, d_2, H } = thread;
  return {
    L: helix({ l_e: engaged, P, d_2 }),
    w_f: flankWidth({ H }),
    h_f: flankGap({ c }),
    w_c: crestWidth({ P }),
    h_c,
  };
}

/** The clearance c of the pitch diameters: least, mean and greatest that the classes of plug and hole allow. */
export function pitchClearance(limits: PlugLimits & HoleLimits): Readonly<Record<"least" | "mean" | "most", Quantity>> {
  const { d2_min, d2_max, D2_min, D2_max } = limits;
  const least = clearance({ D_2: D2_min, d_2: d2_max });
  const most = clearance({ D_2: D2_max, d_2: d2_min });
  return { least, mean: middle({ c_1: least, c_2: most }), most };
}

/** The gap at the crests h_c of an ordinary 6H/6g pair near M18. */
export const ordinaryCrestGap = taken(
  "h_c",
  exactly(0.2),
  mm,
  sourceText(judgement("mean over both crests of a 6H/6g pair of 1.5 mm pitch, about 0.20 mm")),
);

/** The gap at the crests h_c of an ordinary pair of any pitch: as at 1.5 mm, in proportion to the pitch (judgement). */
export const crestGap = ({ P }: MetricThread): Quantity => crestGapOf({ h_15: ordinaryCrestGap, P, P_15: pitchOf15 });

/** The flow through a thread without sealant: open flank and crest channel side by side. */
export function threadFlow(path: ThreadPath, push: Push): PassageFlow {
  const { L } = path;
  const flank = passageFlow({ type: "slot", w: path.w_f, h: path.h_f, L }, push);
  const crest = passageFlow({ type: "slot", w: path.w_c, h: path.h_c, L }, push);
  if (!flank.ok) return flank;
  if (!crest.ok) return crest;
  const reynolds = flank.reynolds.value > crest.reynolds.value ? flank.reynolds : crest.reynolds;
  return { ok: true, flow: together(flank.flow, crest.flow), reynolds };
}

/** The volume V_c that the clearance of a thread holds: more sealant than this is squeezed out. */
export const clearanceVolume = ({ L, w_f, h_f, w_c, h_c }: ThreadPath): Quantity =>
  clearanceHolds({ L, w_f, h_f, w_c, h_c });

/** The length along the helix for an engaged length, L. */
export const helixLength = ({ P, d_2 }: MetricThread, engaged: Quantity): Quantity => helix({ l_e: engaged, P, d_2 });

const geometry = "plain geometry of a 60° thread leaning on one flank";

const helix = formula(
  "L = l_e / P * sqrt((pi * d_2)^2 + P^2)",
  { l_e: mm, P: mm, d_2: mm, L: mm },
  "plain geometry: a helix unrolled",
);
const flankWidth = formula("w_f = 5/8 * H / cos(30 * deg)", { H: mm, w_f: mm }, geometry);
const flankGap = formula("h_f = c * sin(30 * deg)", { c: mm, h_f: mm }, geometry);
const crestWidth = formula("w_c = P / 4", { P: mm, w_c: mm }, geometry);
const crestGapOf = formula(
  "h_c = h_15 * P / P_15",
  { h_15: mm, P: mm, P_15: mm, h_c: mm },
  sourceText(judgement("crest gaps go with the pitch")),
);
const pitchOf15 = exact("P_15", 1.5, mm, "pitch of the ordinary pair");
const clearance = formula("c = D_2 - d_2", { D_2: mm, d_2: mm, c: mm }, "ISO 965-1:2013, by its limits of size");
const middle = formula("c = (c_1 + c_2) / 2", { c_1: mm, c_2: mm, c: mm }, "middle of two limits");
const clearanceHolds = formula(
  "V_c = L * (w_f * h_f + w_c * h_c)",
  { L: mm, w_f: mm, h_f: mm, w_c: mm, h_c: mm, V_c: ml },
  geometry,
);
