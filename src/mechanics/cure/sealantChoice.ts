import { type Quantity, valueIn } from "../quantity/quantity.ts";
import { h, mm } from "../quantity/unit.ts";
import { anaerobicLimits } from "../tables/cureData.ts";

/** What is known of a joint when its sealing is chosen. */
export type SealingCase = {
  readonly taper: boolean;
  readonly thread: "sound" | "worn" | "torn";
  /** Clearance in diameter of a worn thread; null where nobody knows it. */
  readonly gap: Quantity | null;
  /** Whether the plug takes a snug pull. */
  readonly holdsSnug: boolean;
  /** Depth of the deepest score across the seat; null for a good seat. */
  readonly score: Quantity | null;
  readonly washerAtHand: boolean;
  readonly openedOften: boolean;
  readonly oily: boolean;
  readonly lightAlloy: boolean;
  /** Time until it must be on the road; null where there is time enough. */
  readonly timeToRoad: Quantity | null;
};

export type SealingMeans =
  | "new washer at full torque"
  | "bonded seal"
  | "O-ring plug"
  | "silicone under the head"
  | "silicone under the head, stated temporary"
  | "silicone with a splash wait"
  | "low or medium anaerobic"
  | "low or medium anaerobic with activator"
  | "high-viscosity anaerobic"
  | "high-viscosity anaerobic with activator"
  | "gasket, reusable"
  | "thread repair"
  | "paste or tape for taper threads";

export type SealingAvoid =
  | "any paste"
  | "copper washer at low torque"
  | "high-strength anaerobic"
  | "anaerobic locker"
  | "anaerobic"
  | "anaerobic without activator"
  | "PTFE tape on a parallel thread"
  | "overtightening a cast boss";

export type SealingRow =
  | "taper thread"
  | "thread torn or gap too wide"
  | "sound thread, good seat"
  | "sound thread, scored seat"
  | "scored too deep"
  | "worn thread, narrow gap"
  | "worn thread, middling gap"
  | "worn thread, gap not known";

export type SealingChoice = {
  readonly row: SealingRow;
  /** Best first. */
  readonly means: readonly SealingMeans[];
  readonly avoid: readonly SealingAvoid[];
  readonly first: readonly ("clean to bare metal" | "measure the gap" | "dress the seat")[];
  readonly because: readonly ("opened often" | "less than a day")[];
};

/** Which class of sealing for which gap: the first row that fits, then what haste and frequent opening change. Judgement. */
export function sealingChoice(given: SealingCase): SealingChoice {
  const { row, means, avoid } = rowFor(given);
  const hasty = given.timeToRoad !== null && valueIn(h, given.timeToRoad) < anaerobicLimits.full_h.value;
  const often = given.openedOften && means.some(isAnaerobic);
  const kept = often || (hasty && row !== "taper thread") ? means.filter((it) => !isSlow(it, often, hasty)) : means;
  const instead: readonly SealingMeans[] = [
    ...(often ? (["gasket, reusable"] as const) : []),
    ...(hasty && means.some(isSlowToCure) ? (["bonded seal", "silicone with a splash wait"] as const) : []),
  ];
  return {
    row,
    means: unique([...kept, ...instead]),
    avoid: unique([
      ...avoid,
      ...(often ? (["anaerobic"] as const) : []),
      ...(hasty ? (["anaerobic without activator"] as const) : []),
      ...(given.taper ? [] : (["PTFE tape on a parallel thread"] as const)),
    ]),
    first: [
      ...(given.oily && [...kept, ...instead].some(needsBareMetal) ? (["clean to bare metal"] as const) : []),
      ...(row === "worn thread, gap not known" ? (["measure the gap"] as const) : []),
      ...(row === "scored too deep" ? (["dress the seat"] as const) : []),
    ],
    because: [
      ...(often ? (["opened often"] as const) : []),
      ...(hasty && means.some(isSlowToCure) ? (["less than a day"] as const) : []),
    ],
  };
}

type Row = Pick<SealingChoice, "row" | "means" | "avoid">;

function rowFor({ taper, thread, gap, holdsSnug, score, washerAtHand, lightAlloy }: SealingCase): Row {
  const gap_mm = gap ? valueIn(mm, gap) : null;
  if (taper)
    return { row: "taper thread", means: ["paste or tape for taper threads"], avoid: ["overtightening a cast boss"] };
  if (thread === "torn" || !holdsSnug || (gap_mm !== null && gap_mm > anaerobicLimits.highViscosity_mm.value))
    return {
      row: "thread torn or gap too wide",
      means: ["thread repair", "silicone under the head, stated temporary"],
      avoid: ["anaerobic"],
    };
  if (thread === "worn") return wornRow(gap_mm, lightAlloy);
  if (score === null)
    return {
      row: "sound thread, good seat",
      means: washerAtHand ? ["new washer at full torque"] : ["bonded seal", "O-ring plug"],
      avoid: ["any paste"],
    };
  return {
    row: valueIn(mm, score) <= DEEPEST_SCORE_mm ? "sound thread, scored seat" : "scored too deep",
    means: ["bonded seal", "O-ring plug", "silicone under the head"],
    avoid: ["copper washer at low torque"],
  };
}

function wornRow(gap_mm: number | null, lightAlloy: boolean): Row {
  if (gap_mm === null)
    return { row: "worn thread, gap not known", means: ["silicone under the head"], avoid: ["anaerobic locker"] };
  return gap_mm <= anaerobicLimits.locker_mm.value
    ? {
        row: "worn thread, narrow gap",
        means: [lightAlloy ? "low or medium anaerobic with activator" : "low or medium anaerobic"],
        avoid: ["high-strength anaerobic"],
      }
    : {
        row: "worn thread, middling gap",
        means: [
          lightAlloy ? "high-viscosity anaerobic with activator" : "high-viscosity anaerobic",
          "silicone under the head",
        ],
        avoid: ["anaerobic locker", "high-strength anaerobic"],
      };
}

/** Deeper scores than this pass under a bonded seal's lip. */
const DEEPEST_SCORE_mm = 0.1;

const isAnaerobic = (means: SealingMeans): boolean => means.includes("anaerobic");
/** Anaerobics need their day; silicone needs more, but its skin bears splash. */
const isSlowToCure = (means: SealingMeans): boolean => isAnaerobic(means) || means === "silicone under the head";
const isSlow = (means: SealingMeans, often: boolean, hasty: boolean): boolean =>
  (often && isAnaerobic(means)) || (hasty && isSlowToCure(means));
const needsBareMetal = (means: SealingMeans): boolean => isAnaerobic(means) || means.includes("silicone");
const unique = <T>(list: readonly T[]): readonly T[] => [...new Set(list)];
