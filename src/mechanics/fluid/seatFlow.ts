import { formula } from "../quantity/formula.ts";
import { exact, type Quantity } from "../quantity/quantity.ts";
import { ml_d, mm, one } from "../quantity/unit.ts";
import { type PassageFlow, type Push, passageFlow, together } from "./threadFlow.ts";

/** A seat under a head, and what is open across it: a gap all round, a score from its inner to its outer edge. */
export type LeakySeat = {
  readonly inside: Quantity;
  readonly outside: Quantity;
  readonly gap: Quantity | null;
  /** The side of the score, taken as a triangle of three equal sides. */
  readonly score: Quantity | null;
};

/** The flow past a seat, its gap and its score side by side; null where nothing is open. */
export function seatFlow({ inside, outside, gap, score }: LeakySeat, push: Push): PassageFlow | null {
  const L = seatWidth({ D_o: outside, D_i: inside });
  const d = seatMiddle({ D_o: outside, D_i: inside });
  const round = gap && passageFlow({ type: "annulus", d, h: gap, epsilon: even, L }, push);
  const along = score && passageFlow({ type: "triangle", a: score, L }, push);
  if (round && !round.ok) return round;
  if (along && !along.ok) return along;
  if (!round || !along) return round ?? along;
  const reynolds = round.reynolds.value > along.reynolds.value ? round.reynolds : along.reynolds;
  return { ok: true, flow: together(round.flow, along.flow), reynolds };
}

/** The flow Q of two passages one after the other, from what each would pass alone under the same pressure. */
export const oneAfterOther = (Q_1: Quantity, Q_2: Quantity): Quantity => inSeries({ Q_1, Q_2 });

const geometry = "plain geometry";

const even = exact("epsilon", 0, one, "open alike all round");

const seatWidth = formula("L = (D_o - D_i) / 2", { D_o: mm, D_i: mm, L: mm }, geometry);
const seatMiddle = formula("d = (D_o + D_i) / 2", { D_o: mm, D_i: mm, d: mm }, geometry);
const inSeries = formula(
  "Q = Q_1 * Q_2 / (Q_1 + Q_2)",
  { Q_1: ml_d, Q_2: ml_d, Q: ml_d },
  "laminar passages in a row share the pressure",
);
