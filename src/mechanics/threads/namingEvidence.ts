import type { Quantity } from "../quantity/quantity.ts";

/** One thing known about an unknown thread. Its quantities carry how well they were read. */
export type ThreadEvidence =
  /** Over the middle threads of the plug; worn crests take off up to `wearUpTo`. */
  | { readonly type: "outside diameter"; readonly diameter: Quantity; readonly wearUpTo: Quantity }
  /** So many gaps from crest to crest along a rule. */
  | { readonly type: "gaps"; readonly count: number; readonly length: Quantity }
  /** A leaf of the pitch gauge laid in, with no light under its teeth or with some. */
  | { readonly type: "pitch gauge"; readonly leaf: Quantity; readonly seats: boolean }
  /** A pitch measured otherwise, from a photograph say. */
  | { readonly type: "pitch"; readonly pitch: Quantity }
  /** The narrowest width at the mouth of the hole; worn crests give up to `wearUpTo` more. */
  | { readonly type: "bore"; readonly diameter: Quantity; readonly wearUpTo: Quantity }
  /** How far the plug travels in so many turns. */
  | { readonly type: "travel"; readonly turns: number; readonly length: Quantity }
  /** How much the outside diameter grows over a length along the plug. */
  | { readonly type: "taper"; readonly change: Quantity; readonly over: Quantity }
  /** How much the hole narrows over a depth, from its mouth inward. */
  | { readonly type: "hole taper"; readonly change: Quantity; readonly over: Quantity }
  | MeshEvidence
  /** Across the flats of this plug and of its sister in a sound port. */
  | { readonly type: "hexagon"; readonly plug: Quantity; readonly sister: Quantity };

/**
 * Turned together by hand: "two turns, then tight". `known` is the designation of the other part's thread, or null where
 * that is the hole the plug was found in.
 */
export type MeshEvidence = {
  readonly type: "mesh";
  readonly unknown: "plug" | "hole";
  readonly known: string | null;
  /** Turns from the first catch; where it stays free, the turns that were tried. */
  readonly turns: number;
  readonly felt: "tight" | "free";
};

/** Whether a piece of evidence was read of the hole, and not of a plug alone. */
export const isOfHole = (it: ThreadEvidence): boolean =>
  it.type === "bore" || it.type === "hole taper" || (it.type === "mesh" && it.unknown === "hole");

/** Standard uncertainties of readings at the lift, mm; the judgement of the trade, for the caller to pass. */
export const readingUncertainty_mm = {
  "caliper, clean": 0.05,
  "caliper, worn or dirty": 0.1,
  "rule, any length": 0.3,
  /** ±0.05 mm of pitch over five turns. */
  "depth rod, travel": 0.25,
  "inside jaws, bore": 0.15,
} as const;

/** The most that crests of a plug or a hole are taken to be worn, mm on the diameter; judgement. */
export const GREATEST_WEAR_mm = 0.15;

/** What the naming of threads takes for granted; all of it judgement. */
export const namingJudgement = {
  /** Share of readings that say nothing of the thread: misread, on the lead-in, over a burr. */
  blunder: 0.01,
  /** Share of sound pairs that bind on dirt or damage all the same. */
  dirtyThread: 0.05,
  /** Share of counts that count crests for gaps. */
  crestsCounted: 0.1,
  /** Share of plugs that are the right thread for the hole they are found in. */
  ownHole: 0.7,
  /** Standard deviation of what parts miss their limits by, mm. */
  outOfLimits_mm: 0.02,
  /** Straightness, burrs and lead-in, felt in any length along the thread, mm. */
  alongThread_mm: 0.05,
  /** Standard uncertainty of the turn at which a thread is felt to bind, counted without a dot. */
  bindTurns: 0.5,
  /** Length over which a gauge leaf is compared, and the mismatch at its ends that light begins to show, mm. */
  leafLength_mm: 12,
  leafMismatch_mm: 0.4,
  /** Outside diameters differing by more than this, mm, are never tried in one another. */
  oneSize_mm: 1.5,
  /** Flats differing by more than this, mm, belong to two sizes of wrench. */
  sameHexagon_mm: 0.5,
  /** Threads a plug shows at most to a rule. */
  mostGaps: 12,
  /** Odds of the first over the second below which both must be shown. */
  oddsToName: 20,
} as const;
