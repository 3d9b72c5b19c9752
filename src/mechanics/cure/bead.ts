import { formula } from "../quantity/formula.ts";
import { exact, type Quantity } from "../quantity/quantity.ts";
import { ml, mm, mm2, one } from "../quantity/unit.ts";
import { fromMemory, sourceText } from "../tables/source.ts";

/** A round bead laid on a seat, once round. Diameters of the seat and of the circle that the bead was laid on. */
export type Bead = {
  readonly thickness: Quantity;
  readonly laidOn: Quantity;
  readonly seatInside: Quantity;
  readonly seatOutside: Quantity;
  /** The film that is left under the head; never wrung dry. */
  readonly film: Quantity;
};

export type BeadSpread = {
  readonly volume: Quantity;
  /** How broad the bead lies once pressed to its film. */
  readonly breadth: Quantity;
  /** The shares that pass the inner and the outer edge of the seat. */
  readonly inward: Quantity;
  readonly outward: Quantity;
  readonly inward_ml: number;
  readonly covers: "the whole seat" | "part of the seat";
  readonly advice: "as it should be" | "thinner, or farther out" | "covers too little" | "not on the seat";
};

/**
 * Where a bead goes when the head presses it to a film: even to both sides of the circle it was laid on (judgement), so what
 * reaches past the inner edge goes into the case. Lay it so that nothing does: thin, and none on the first inner turn.
 */
export function beadSpread(bead: Bead): BeadSpread {
  const { thickness: d_b, laidOn: D_l, seatInside: D_i, seatOutside: D_o, film } = bead;
  const volume = beadVolume({ d_b, l: around({ D: D_l }) });
  const breadth = pressedBreadth({ A: section({ d_b }), t: film });
  const inside = roomInside({ D_l, D_i });
  const outside = roomOutside({ D_o, D_l });
  const inward = beyond(breadth, inside);
  const outward = beyond(breadth, outside);
  const covered = breadth.value / 2 >= Math.max(inside.value, outside.value);
  const onSeat = inside.value >= 0 && outside.value >= 0;
  return {
    volume,
    breadth,
    inward,
    outward,
    inward_ml: (inward.value * volume.value) / ml.inSI,
    covers: covered ? "the whole seat" : "part of the seat",
    advice: !onSeat
      ? "not on the seat"
      : inward.value > 0
        ? "thinner, or farther out"
        : covered || outward.value > 0
          ? "as it should be"
          : "covers too little",
  };
}

/** The volume of a bead by its thickness and its length, V_b. */
export const volumeOfBead = (thickness: Quantity, length: Quantity): Quantity =>
  beadVolume({ d_b: thickness, l: length });

/** What a thread cannot hold of the sealant put on it, and pushes into the case; never below nothing. */
export function squeezedFromThread(onThread: Quantity, clearance: Quantity): Quantity {
  const rest = excess({ V: onThread, V_c: clearance });
  return rest.value > 0 ? rest : exact("V_x", 0, ml, "the thread holds it all");
}

/** Films that are left where a head is only pulled snug, mm. */
export const usualFilm_mm = {
  low: 0.1,
  high: 0.3,
  source: sourceText(fromMemory("film of a paste under a head")),
} as const;

function beyond(breadth: Quantity, room: Quantity): Quantity {
  const share = shareBeyond({ B: breadth, a: room });
  if (share.value <= 0) return exact("s", 0, one, "does not reach the edge");
  return share.value >= 1 ? exact("s", 1, one, "all of it") : share;
}

const geometry = "plain geometry";
const spread = "a bead pressed flat spreads evenly to both sides (judgement)";

const around = formula("l = pi * D", { D: mm, l: mm }, geometry);
const section = formula("A = pi / 4 * d_b^2", { d_b: mm, A: mm2 }, geometry);
const beadVolume = formula("V_b = pi / 4 * d_b^2 * l", { d_b: mm, l: mm, V_b: ml }, geometry);
const pressedBreadth = formula("B = A / t", { A: mm2, t: mm, B: mm }, spread);
const roomInside = formula("a = (D_l - D_i) / 2", { D_l: mm, D_i: mm, a: mm }, geometry);
const roomOutside = formula("a = (D_o - D_l) / 2", { D_o: mm, D_l: mm, a: mm }, geometry);
const shareBeyond = formula("s = 1/2 - a / B", { a: mm, B: mm, s: one }, spread);
const excess = formula("V_x = V - V_c", { V: ml, V_c: ml, V_x: ml }, "plain difference");
