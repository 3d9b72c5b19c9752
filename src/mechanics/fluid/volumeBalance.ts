import { cdf, quantile, uniform } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { as, distributionOf, type Quantity, taken } from "../quantity/quantity.ts";
import { L, percent } from "../quantity/unit.ts";
import { commonPractice, judgement, type Source, sourceText } from "../tables/source.ts";
import { type Limits, type OutsideLimits, outside } from "./viscosityLimits.ts";
import { type UnitPair, unitPairsFor } from "./volumeBalanceUnits.ts";

export type VolumesOut = {
  readonly out: Quantity;
  readonly expected: Quantity;
  /** The share that stays in the case after draining: `residueShare` where nobody knows better. */
  readonly residue: Quantity;
  /** Oil poured through to flush chips, and how much of it was caught; it is no part of `out`. */
  readonly flush: { readonly poured: Quantity; readonly caught: Quantity } | null;
};

export const balanceBands = ["far too little", "low", "as expected", "too much"] as const;
export type BalanceBand = (typeof balanceBands)[number];

export type VolumeBalance = {
  /** r, the volume out by what was expected. */
  readonly ratio: Quantity;
  readonly band: BalanceBand;
  /** Fill nothing before this is understood: a wrong unit, a wrong figure or an overfilled case. */
  readonly stop: boolean;
  /** The probability of each band under the uncertainty of the readings. */
  readonly odds: Readonly<Record<BalanceBand, number>>;
  /** What was in the case before it was drained. */
  readonly before: Quantity;
  readonly flushLeft: Quantity | null;
  /** Whether the ratio is what a rightly filled case gives, so that no mistake is needed to explain it. */
  readonly fitsAsRead: boolean;
  /** Mistaken units that would explain the ratio, the likeliest first. */
  readonly unitPairs: readonly UnitPair[];
};

export type VolumeBalanceRead =
  | { readonly ok: true; readonly balance: VolumeBalance }
  | { readonly ok: false; readonly problem: OutsideLimits };

/** The oil that came out against what should have; both at one temperature, flush apart. */
export function volumeBalance({ out, expected, residue, flush }: VolumesOut): VolumeBalanceRead {
  const problem =
    outside(out, notNegative) ??
    outside(expected, above0) ??
    outside(residue, shares) ??
    (flush && (outside(flush.poured, notNegative) ?? outside(flush.caught, notNegative)));
  if (problem) return { ok: false, problem };
  const V_out = as("V_out", out);
  const ratio = ratioOf({ V_out, V_exp: as("V_exp", expected) });
  const band = bandOf(ratio.value);
  const mostResidue = quantile(distributionOf(residue), 0.999) * residue.unit.inSI;
  const explained = unitPairsFor(ratio, mostResidue, [out.unit, expected.unit]);
  return {
    ok: true,
    balance: {
      ratio,
      band,
      stop: band === "too much" || band === "far too little",
      odds: oddsOf(ratio),
      before: beforeDraining({ V_out, s: as("s", residue) }),
      flushLeft:
        flush && flushLeftIn({ V_poured: as("V_poured", flush.poured), V_caught: as("V_caught", flush.caught) }),
      ...explained,
    },
  };
}

/** The fluid V_bill that a job used: its fill and its flush, which is charged and never counted as fill. */
export const fluidUsed = (fill: Quantity, flush: Quantity): Quantity =>
  used({ V_fill: as("V_fill", fill), V_flush: as("V_flush", flush) });

/** The share s of its oil that stays in a case drained warm. */
export const residueShare: Quantity = taken("s", uniform(2, 5), percent, `residue, ${sourceText(commonPractice)}`);

/** Where the bands of the ratio meet. */
const balanceLevels: {
  readonly low: number;
  readonly asExpected: number;
  readonly tooMuch: number;
  readonly source: Source;
} = {
  low: 0.45,
  asExpected: 0.75,
  tooMuch: 1.15,
  source: judgement("under 45 % a wrong unit is likelier than a leak; 75 to 115 % is a drain like any other"),
};

const BALANCE = "volume balance";

const ratioOf = formula("r = V_out / V_exp", { V_out: L, V_exp: L, r: percent }, BALANCE);
const beforeDraining = formula("V_was = V_out / (1 - s)", { V_out: L, s: percent, V_was: L }, BALANCE);
const flushLeftIn = formula("V_left = V_poured - V_caught", { V_poured: L, V_caught: L, V_left: L }, BALANCE);
const used = formula("V_bill = V_fill + V_flush", { V_fill: L, V_flush: L, V_bill: L }, BALANCE);

const notNegative: Limits = { symbol: "V", unit: L, least: 0, most: null, source: "an amount" };
const above0: Limits = { ...notNegative, least: 1e-6 };
const shares: Limits = { symbol: "s", unit: percent, least: 0, most: 50, source: "a share that stays in" };

function bandOf(r: number): BalanceBand {
  const { low, asExpected, tooMuch } = balanceLevels;
  const rounded = Number(r.toPrecision(12));
  if (rounded > tooMuch) return "too much";
  if (rounded >= asExpected) return "as expected";
  return rounded >= low ? "low" : "far too little";
}

function oddsOf(ratio: Quantity): Readonly<Record<BalanceBand, number>> {
  const below = (r: number): number => cdf(distributionOf(ratio), r / ratio.unit.inSI);
  const [low, asExpected, tooMuch] = [
    below(balanceLevels.low),
    below(balanceLevels.asExpected),
    below(balanceLevels.tooMuch),
  ];
  return {
    "far too little": low,
    low: asExpected - low,
    "as expected": tooMuch - asExpected,
    "too much": 1 - tooMuch,
  };
}
