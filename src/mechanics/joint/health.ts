import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, valueIn } from "../quantity/quantity.ts";
import { mm, one, turn } from "../quantity/unit.ts";
import type { Levels } from "../tables/levels.ts";
import type { Closure, Port } from "./port.ts";

/** How much of its healthy turns a port has, and whether it counts as healthy; null shares are not known. */
export type Health = { readonly share: Quantity | null; readonly healthy: boolean };

const shareOf = formula("q = n / n_h", { n: turn, n_h: turn, q: one }, "turns left against those of a sound twin hole");
const likeForLike = formula(
  "n = n_0 + (t_0 - t) / P",
  { n_0: turn, t_0: mm, t: mm, P: mm, n: turn },
  "plain geometry: a ring of thickness t costs t/P turns",
);

/**
 * Whether a port is healthy: at least 80 % of its healthy turns counted with the same ring, turns in good condition, a
 * snug catch, its own plug and its original kind of seal. A measured height of thread must be as full as the turns.
 */
export function health(port: Port, asFound: Closure, levels: Levels): Health {
  const { left, healthy } = port;
  if (!left.turns || !healthy) return { share: null, healthy: false };
  const none = exact("t", 0, mm, "counted without a ring");
  const ring = (withWasher: boolean): Quantity => (withWasher ? asFound.seal.thickness : none);
  const counted =
    left.withWasher === healthy.withWasher
      ? left.turns
      : likeForLike({ n_0: left.turns, t_0: ring(left.withWasher), t: ring(healthy.withWasher), P: port.thread.P });
  const share = shareOf({ n: counted, n_h: healthy.turns });
  const ownParts = asFound.plug.original && asFound.seal.original;
  return { share, healthy: share.value >= levels.healthyFrom - 1e-9 && isSound(port, levels) && ownParts };
}

/** Whether the turns that were counted are whole: in good condition, caught snugly, and not measured low. */
export const isSound = ({ left }: Port, levels: Levels): boolean =>
  left.condition === "good" &&
  left.catch === "snug" &&
  (left.height === null || valueIn(one, left.height) >= levels.healthyFrom - 1e-9);
