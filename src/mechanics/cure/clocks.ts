import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, valueIn } from "../quantity/quantity.ts";
import { degC, h, min, mm, one } from "../quantity/unit.ts";
import { moistureCure } from "../tables/cureData.ts";
import { sourceText } from "../tables/source.ts";
import { type Air, slownessIn } from "./air.ts";
import { type CureTime, type FrontSpeed, timeToDepth } from "./front.ts";

/** What the label of the sealant says must pass before it is splashed, and for which air it says so. */
export type LabelTime = { readonly time: Quantity; readonly saidFor: "reference air" | "this air" };

/** A joint sealed with a moisture-curing silicone. */
export type SealedJoint = {
  /** Width of the seat, or of the bead where it is wider, from its open edge inward. */
  readonly width: Quantity;
  readonly open: "one edge" | "both edges";
  readonly air: Air;
  readonly front: FrontSpeed;
  readonly label: LabelTime | null;
};

/** The two clocks of a sealed joint, each from the time it was closed. */
export type CureClocks = {
  readonly mayBeSplashed: {
    readonly time: Quantity;
    readonly because: "skin" | "least time" | "label";
    readonly skin: CureTime;
    readonly leastTime: Quantity;
    readonly label: Quantity | null;
  };
  readonly curedThrough: CureTime;
  readonly slowness: Quantity;
  readonly notes: readonly CureNote[];
};

export type CureNote =
  | "colder than the chemistry likes"
  | "dry air: heating the bay slows it"
  | "thirty minutes is no cure";

/**
 * When a joint may be splashed and when it is cured through.
 *
 * Splash waits for a skin of 0.5 mm in this air; never less than 30 minutes, longer in the same measure as this air is
 * slower; and for the label's time where that is longer. Cured through is the width of the seat, halved by two open edges.
 */
export function cureClocks(joint: SealedJoint): CureClocks {
  const { width, open, air, front, label } = joint;
  const slowness = slownessIn(air);
  const skin = timeToDepth(skinDepth, air, front);
  const leastTime = stretched(thirtyMinutes, slowness);
  const labelTime = label && (label.saidFor === "this air" ? label.time : stretched(label.time, slowness));
  const waits = [
    { because: "skin", time: skin.likely },
    { because: "least time", time: leastTime },
    ...(labelTime ? [{ because: "label", time: labelTime } as const] : []),
  ] as const;
  const longest = waits.reduce((a, b) => (b.time.value > a.time.value ? b : a));
  const through = open === "both edges" ? half({ w: width }) : width;
  return {
    mayBeSplashed: { ...longest, skin, leastTime, label: labelTime },
    curedThrough: timeToDepth(through, air, front),
    slowness,
    notes: notesOn(air, slowness),
  };
}

const skinDepth = exact("z", moistureCure.skin_mm.value, mm, sourceText(moistureCure.skin_mm.source));
const thirtyMinutes = exact(
  "t_0",
  moistureCure.leastSplash_min.value,
  min,
  sourceText(moistureCure.leastSplash_min.source),
);

/** A time said for the reference air, in slower air longer, in faster air the same. */
function stretched(time: Quantity, slowness: Quantity): Quantity {
  return inThisAir({ t_0: time, f: slowness.value > 1 ? slowness : exact("f", 1, one, "never less than it says") });
}

function notesOn(air: Air, slowness: Quantity): readonly CureNote[] {
  return [
    ...(valueIn(degC, air.T) < moistureCure.coldest_degC.value ? (["colder than the chemistry likes"] as const) : []),
    ...(valueIn(one, air.RH) < DRY && slowness.value > 1 ? (["dry air: heating the bay slows it"] as const) : []),
    "thirty minutes is no cure",
  ];
}

const DRY = 0.4;

const inThisAir = formula("t = t_0 * f", { t_0: min, f: one, t: h }, "the wait goes with the slowness of the air");
const half = formula("z = w / 2", { w: mm, z: mm }, "two open edges meet in the middle");
