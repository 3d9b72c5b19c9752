import { published, type Source } from "./source.ts";

/** What a leak looks like after it was wiped dry, least first. */
export const leakSights = ["dry", "stain", "weep", "drop hanging", "drip", "stream"] as const;
export type LeakSight = (typeof leakSights)[number];

/** What a scheme says of a leak; what it calls for where it says so. */
export type LeakClass = {
  readonly pmcs: "none" | "I" | "II" | "III";
  readonly isoTr11340: 0 | 1 | 2 | 3 | 4 | 5;
  readonly calls: "nothing" | "look more often" | "report at once" | "stop";
};

/**
 * Classes by what is seen. PMCS: I wetness, no drops; II drops form and do not fall; III drops fall. I and II may be run with
 * more frequent level checks, III is reported at once; found in use it is finished if only drops, not a stream, fall.
 */
export const leakClasses: Readonly<Record<LeakSight, LeakClass>> = {
  dry: { pmcs: "none", isoTr11340: 0, calls: "nothing" },
  stain: { pmcs: "I", isoTr11340: 1, calls: "look more often" },
  weep: { pmcs: "I", isoTr11340: 2, calls: "look more often" },
  "drop hanging": { pmcs: "II", isoTr11340: 3, calls: "look more often" },
  drip: { pmcs: "III", isoTr11340: 4, calls: "report at once" },
  stream: { pmcs: "III", isoTr11340: 5, calls: "stop" },
};

/** Where the classes come from. */
export const leakClassSources: Readonly<Record<"pmcs" | "isoTr11340" | "inUse", Source>> = {
  pmcs: published("US Army TM 5-3895-383-24, 1-10, and other manuals"),
  inUse: published("US Army TM 5-3895-369-14, 4-10"),
  isoTr11340: published("ISO/TR 11340, table 1, as quoted"),
};
