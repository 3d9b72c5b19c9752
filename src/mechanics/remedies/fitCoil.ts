import { uniform } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, taken, valueIn } from "../quantity/quantity.ts";
import { mm, one } from "../quantity/unit.ts";
import { commonPractice, sourceText } from "../tables/source.ts";
import type { ThreadForm } from "../threads/threadForm.ts";
import { need } from "./fitNeed.ts";

const practice = sourceText(commonPractice);

/** The lengths coils are sold in, as multiples of the thread's diameter. */
const lengths = [1, 1.5, 2, 2.5, 3] as const;

const nominal = formula("L = k_L * d", { k_L: one, d: mm, L: mm }, practice);
const installed = formula("L_i = L - k_i * P", { L: mm, k_i: one, P: mm, L_i: mm }, practice);
const plate = formula("l_p = L + k_s * P", { L: mm, k_s: one, P: mm, l_p: mm }, practice);
const bearing = formula("L_e = L - 0.75 * P", { L: mm, P: mm, L_e: mm }, practice);
const drilled = formula("l_d = L + k_d * P", { L: mm, k_d: one, P: mm, l_d: mm }, practice);

const fixed = (symbol: string, value: number, why: string): Quantity =>
  exact(symbol, value, one, `${why} (${practice})`);

/** A coil of one of the lengths sold, in the thread it brings back. */
export type CoilFit = {
  /** Nominal length as sold, in diameters and in mm. */
  readonly diameters: number;
  readonly L: Quantity;
  /** Length once it is wound in. */
  readonly installed: Quantity;
  /** The length that carries in the hole. */
  readonly bearing: Quantity;
  /** The depth of thread that takes it with its first turn set down. */
  readonly plate: Quantity;
  /** Where a blind hole is drilled to for a bottoming tap. */
  readonly drilledBlind: Quantity;
  /** How far the first turn stands below the face. */
  readonly setDown: Quantity;
};

const setDownOf = formula("s_d = k_s * P", { k_s: one, P: mm, s_d: mm }, practice);

/** The coil of so many diameters. */
export function coilOf({ d, P }: ThreadForm, diameters: number): CoilFit {
  const L = nominal({ k_L: exact("k_L", diameters, one, "as sold"), d });
  return {
    diameters,
    L,
    installed: installed({ L, k_i: taken("k_i", uniform(0.5, 0.75), one, practice), P }),
    bearing: bearing({ L, P }),
    plate: plate({ L, k_s: fixed("k_s", 1, "set down by a pitch"), P }),
    drilledBlind: drilled({ L, k_d: fixed("k_d", 4, "for a bottoming tap"), P }),
    setDown: setDownOf({ k_s: taken("k_s", uniform(0.75, 1.5), one, practice), P }),
  };
}

/** The drill of a coil's hole, to the tenth of a millimetre: a tenth over its least minor diameter. */
export const coilDrill = (D1_min: Quantity): Quantity =>
  exact("D_t", Math.round(10 * (valueIn(mm, D1_min) + 0.1)) / 10, mm, "within the limits of the hole");

/** The longest coil that a depth of thread surely takes; the shortest where it takes none or nobody measured it. */
export function longestCoil(thread: ThreadForm, depth: Quantity | null): CoilFit {
  const coils = lengths.map((it) => coilOf(thread, it));
  const fits = coils.filter(({ plate: wanted }) => need("depth", depth, wanted).state === "met");
  return fits.at(-1) ?? coilOf(thread, lengths[0]);
}
