import { uniform } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, taken, valueIn } from "../quantity/quantity.ts";
import { deg, kg_m3, ml, ml_mm, mm, mm2_s, N_m, one } from "../quantity/unit.ts";
import { commonPractice, judgement, published, sourceText } from "../tables/source.ts";
import { freeFall, m_s2 } from "./leakHead.ts";
import { doubtOf } from "./levelDoubt.ts";

/** The height e at which oil stands above the lip before it runs out; psi is its contact angle on the metal. */
export const puddleHeight = (gamma: Quantity, rho: Quantity, psi: Quantity): Quantity =>
  puddle({ a: capillaryLength({ gamma, rho, g: freeFall }), psi });

/** How far above the lip oil stands that was filled until it ran out. */
export const standsAboveLip = taken(
  "e",
  uniform(0.33, 0.98),
  mm,
  sourceText(judgement("contact angles of 10 to 30° on metal; clean metal is below 10° (Goto 1960)")),
);

/** How many times longer oil takes to find its level than oil of the viscosity `hot`. */
export const levellingFactor = (nu: Quantity, hot: Quantity): Quantity => slower({ nu, nu_hot: hot });

/** Filled until it runs out means: until it runs slower than this many drops a minute. Judgement. */
export const doneBelow_drops_per_min = 6;

/** The lower lip of the hole, where levels are counted from. */
export const lip = exact("h_lip", 0, mm, "levels are counted from the lower lip");

/** The lowest level that is left as it is, where the maker says nothing. */
export const allowedBelowLip = exact("h_min", -5, mm, sourceText(commonPractice));

export type LevelVerdict = "above the lip" | "within" | "at the edge" | "below";

/** Where a level stands between the lip and the `lowest` allowed, told apart as well as its reading can 19 times in 20. */
export function levelVerdict(level: Quantity, lowest: Quantity): LevelVerdict {
  const doubt_mm = doubtOf(level) / mm.inSI;
  const [h, least] = [valueIn(mm, level), valueIn(mm, lowest)];
  if (h - doubt_mm > MOST_PUDDLE_mm) return "above the lip";
  if (h + doubt_mm < least) return "below";
  return h - doubt_mm >= least ? "within" : "at the edge";
}

export type FillTarget = {
  /** The level to fill to, cold. */
  readonly level: Quantity;
  readonly because:
    | "sound seal, to the lip"
    | "stays under the lip when hot"
    | "rise not known"
    | "as low as allowed, reaches the lip when hot";
};

/** Where a sound seal lets a cold case be filled to. */
export const fillTargetSound: FillTarget = {
  level: exact("h_t", 0, mm, published("US Army LO 9-2320-363-12: bottom of the opening, housing cold").document),
  because: "sound seal, to the lip",
};

/**
 * Where to fill a cold case whose seal is doubtful: as high as keeps the hot level under the lip 19 times in 20, and not
 * below `lowest`. The `rise` is null where nobody knows it.
 */
export function fillTargetDoubtful(rise: Quantity | null, lowest: Quantity): FillTarget {
  if (!rise) return { level: lowest, because: "rise not known" };
  const U = exact("U", doubtOf(rise) / mm.inSI, mm, "one-sided, 19 in 20");
  const level = belowLip({ Dh: rise, U });
  return level.value < lowest.value
    ? { level: lowest, because: "as low as allowed, reaches the lip when hot" }
    : { level, because: "stays under the lip when hot" };
}

/** What runs out when a volume is filled; negative is room left. */
export type Overflow = { readonly volume: Quantity; readonly verdict: "none" | "possible" | "runs out" };

/** What will run over the lip when `filling` is poured in at the level `now`, told before it is poured. */
export function overflow(perHeight: Quantity, now: Quantity, filling: Quantity): Overflow {
  const volume = over({ V_f: filling, k: perHeight, h_lip: lip, h: now });
  const doubt = doubtOf(volume);
  const verdict = volume.value - doubt > 0 ? "runs out" : volume.value + doubt > 0 ? "possible" : "none";
  return { volume, verdict };
}

const drops =
  "P.-G. de Gennes, F. Brochard-Wyart, D. Quéré, Capillarity and Wetting Phenomena (2004), ch. 2 (from memory)";

const capillaryLength = formula("a = sqrt(gamma / (rho * g))", { gamma: N_m, rho: kg_m3, g: m_s2, a: mm }, drops);
const puddle = formula("e = 2 * a * sin(psi / 2)", { a: mm, psi: deg, e: mm }, drops);
const slower = formula("f = nu / nu_hot", { nu: mm2_s, nu_hot: mm2_s, f: one }, "levelling goes with viscosity");
const belowLip = formula("h_t = -(Dh + U)", { Dh: mm, U: mm, h_t: mm }, "so that the level when hot stays at the lip");
const over = formula(
  "V_o = V_f - k * (h_lip - h)",
  { V_f: ml, k: ml_mm, h_lip: mm, h: mm, V_o: ml },
  "plain geometry: what is filled less the room below the lip",
);

/** Dirty or oil-shedding metal holds up as much as a contact angle of 90° does. */
const MOST_PUDDLE_mm = 2.7;
