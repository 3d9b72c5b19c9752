import { invented, type Span, span } from "./shopEstimates.ts";
import type { Source } from "./source.ts";

/** The methods of the trade, numbered for the documents only. */
export const methodNumbers = [
  "R0",
  "R1",
  "R2",
  "R3",
  "R4",
  "R5",
  "R6",
  "R7",
  "R8",
  "R9",
  "R10",
  "R11",
  "R12",
  "R13",
  "R14",
  "R15",
  "R16",
  "R17",
  "R18",
] as const;
export type MethodNumber = (typeof methodNumbers)[number];

/** The share of repairs that come back within a year. */
export type ComebackPrior = { readonly low: number; readonly likely: number; readonly high: number };

export type Chips = "none" | "trace" | "inside, little" | "inside, loose" | "off the unit";

/** How a method is undone; null where there is nothing to undo. */
export type Undo =
  | "unscrewed"
  | "scraper and solvent"
  | "only by the next larger method"
  | "coil wound out"
  | "drilled out"
  | "cut out"
  | "unbolted";

export type Failure =
  | "old washer left under"
  | "wrong length or pitch"
  | "takes off what is left"
  | "bottoms on something"
  | "next man fits the short one"
  | "seat scored"
  | "wrong rubber"
  | "oil film under it"
  | "opened early"
  | "walks loose"
  | "next man pulls the book figure"
  | "crooked"
  | "cracks the boss"
  | "next man fits the old size"
  | "coil proud or cross-wound"
  | "tang left in"
  | "walks out with the plug"
  | "leaks along the coil"
  | "not down on its shoulder"
  | "turns with the plug"
  | "heat over its rating"
  | "creeps with heat and lets go whole"
  | "shrinks, swells, pops out"
  | "next man cannot find the opening"
  | "oil in the pores"
  | "warps, cracks beside the weld"
  | "gasket lets go"
  | "used part with the same disease"
  | "forgotten";

/** What a method costs and how it ends, as estimates that a workshop replaces by its own. */
export type MethodEstimate = {
  /** Hours on the lift besides the normal service. */
  readonly hours: Span;
  /** Parts, in the workshop's currency. */
  readonly parts: Span;
  /** The tools of the method where they must be bought first. */
  readonly kit: Span | null;
  /** Null where it is not a repair that can come back. */
  readonly comesBack: ComebackPrior | null;
  readonly chips: Chips;
  readonly undo: Undo | null;
  readonly fails: readonly Failure[];
  /** Days after which a make-do has ended; null for what stays. */
  readonly until_days: number | null;
  /** Hours from closing until the machine may leave; null where nobody can say beforehand. */
  readonly readyAfter_h: number | null;
  readonly source: Source;
};

/** A joint that is only pulled to less is no new plug: it comes back oftener. */
export type EstimateName = MethodNumber | "lower torque";

/** A gut figure, meant within a factor of two either way. */
const prior = (likely: number): ComebackPrior => ({ low: likely / 2, likely, high: Math.min(0.9, 2 * likely) });

const row = (
  hours: Span,
  parts: Span,
  comesBack: ComebackPrior | null,
  more: Partial<Omit<MethodEstimate, "hours" | "parts" | "comesBack" | "source">> & Pick<MethodEstimate, "fails">,
): MethodEstimate => ({
  hours,
  parts,
  comesBack,
  kit: null,
  chips: "none",
  undo: null,
  until_days: null,
  readyAfter_h: 0,
  source: invented,
  ...more,
});

/** What each method costs and how it ends. Every figure is an invented estimate, kept as data to be replaced. */
export const methodEstimates: Readonly<Record<EstimateName, MethodEstimate>> = {
  R0: row(span(0, 0), span(2, 6), prior(0.005), { undo: "unscrewed", fails: ["old washer left under"] }),
  R1: row(span(0.2, 0.2), span(5, 18), prior(0.01), { undo: "unscrewed", fails: ["wrong length or pitch"] }),
  "lower torque": row(span(0, 0.2), span(2, 6), prior(0.08), {
    undo: "unscrewed",
    fails: ["walks loose", "next man pulls the book figure"],
    until_days: 365,
  }),
  R2: row(span(0.3, 0.7), span(0, 5), prior(0.03), { chips: "trace", fails: ["takes off what is left"] }),
  R3: row(span(0.2, 0.5), span(8, 25), prior(0.03), {
    undo: "unscrewed",
    fails: ["bottoms on something", "next man fits the short one"],
  }),
  R4: row(span(0.2, 0.2), span(2, 8), prior(0.03), { undo: "unscrewed", fails: ["seat scored", "wrong rubber"] }),
  R5: row(span(0.7, 1.2), span(4, 10), prior(0.25), {
    undo: "scraper and solvent",
    fails: ["oil film under it", "opened early", "walks loose", "next man pulls the book figure"],
    until_days: 365,
    readyAfter_h: null,
  }),
  R6: row(span(0.4, 0.4), span(8, 20), prior(0.2), {
    chips: "inside, loose",
    undo: "only by the next larger method",
    fails: ["crooked", "cracks the boss"],
    until_days: 7,
  }),
  R7: row(span(0.8, 1.5), span(12, 30), prior(0.03), {
    chips: "inside, little",
    undo: "only by the next larger method",
    fails: ["crooked", "next man fits the old size"],
  }),
  R8: row(span(0.8, 1.8), span(6, 18), prior(0.04), {
    kit: span(45, 120),
    chips: "inside, little",
    undo: "coil wound out",
    fails: ["coil proud or cross-wound", "tang left in", "walks out with the plug", "leaks along the coil"],
  }),
  R9: row(span(1, 2.2), span(15, 45), prior(0.015), {
    kit: span(80, 200),
    chips: "inside, loose",
    undo: "only by the next larger method",
    fails: ["not down on its shoulder", "turns with the plug"],
  }),
  R10: row(span(2, 4), span(15, 40), prior(0.03), {
    chips: "off the unit",
    fails: ["heat over its rating"],
    readyAfter_h: 24,
  }),
  R11: row(span(0.8, 1.5), span(10, 25), prior(0.25), {
    undo: "drilled out",
    fails: ["creeps with heat and lets go whole"],
    until_days: 180,
    readyAfter_h: 24,
  }),
  R12: row(span(0.1, 0.1), span(4, 15), null, {
    undo: "unscrewed",
    fails: ["shrinks, swells, pops out"],
    until_days: 14,
    readyAfter_h: null,
  }),
  R13: row(span(0.6, 1.5), span(5, 20), prior(0.05), {
    undo: "cut out",
    fails: ["next man cannot find the opening"],
  }),
  R14: row(span(2.5, 6), span(20, 60), prior(0.05), {
    chips: "off the unit",
    fails: ["oil in the pores", "warps, cracks beside the weld"],
    readyAfter_h: null,
  }),
  R15: row(span(3, 6), span(30, 90), prior(0.06), {
    chips: "inside, little",
    undo: "unbolted",
    fails: ["gasket lets go"],
  }),
  R16: row(span(0.8, 2), span(5, 20), prior(0.02), { chips: "inside, little", undo: "unbolted", fails: ["crooked"] }),
  R17: row(span(1.5, 14), span(60, 1400), prior(0.01), {
    fails: ["used part with the same disease"],
    readyAfter_h: null,
  }),
  R18: row(span(0.2, 0.2), span(0, 0), null, { fails: ["forgotten"], until_days: 90 }),
};
