import type { Distribution } from "../quantity/distribution.ts";
import { cumulated, type LogDensity, probabilityBelow, quantileOf } from "../quantity/logDensity.ts";
import type { Levels } from "../tables/levels.ts";
import type { Ranges } from "../tables/referenceRanges.ts";
import type { CarryingTurns } from "./carryingTurns.ts";
import { frictionNodes } from "./frictionNodes.ts";
import type { Closure, Port } from "./port.ts";
import { type SealNeed, sealTorqueDensity } from "./sealTorque.ts";
import { stripForceDensity, stripTorqueDensity } from "./stripTorque.ts";
import { cautiousTorque } from "./thirdRule.ts";
import { bearingDiameter } from "./torque.ts";

/** Between what the seal needs and what the thread will bear: the torques that satisfy both, if there are any. */
export type TorqueWindow = {
  /** The least torque at which 95 of 100 such seals close. */
  readonly need_Nm: number;
  /** The careful limit: at most 1 in 100 strips, and not above half of the median strip torque. */
  readonly limit_Nm: number;
  readonly medianStrip_Nm: number;
  /** Where the third rule of NASA RP-1228 strips. */
  readonly cautiousRule_Nm: number;
  /** Against walking loose by vibration; null where a sealant or a lock holds the plug. */
  readonly floor_Nm: number | null;
  readonly open: boolean;
  readonly narrow: boolean;
  readonly strips: Odds;
  readonly closes: Odds;
};

/** The probability of an event by the torque set. */
export type Odds = { readonly density: LogDensity; readonly cumulative: Float64Array };

/** The probability that it has happened at `torque_Nm`. */
export const oddsAt = ({ density, cumulative }: Odds, torque_Nm: number): number =>
  Math.min(1, probabilityBelow(density, cumulative, torque_Nm));

/** The torque, N·m, at which it has happened with probability p; 0 where it happens at any pull. */
export const torqueAt = ({ density, cumulative }: Odds, p: number): number => quantileOf(density, cumulative, p);

/** What one closure of a port is weighed by. */
export type Weighing = {
  readonly port: Port;
  readonly closure: Closure;
  readonly turns: CarryingTurns;
  readonly need: SealNeed;
  /** The deviation of the wrench, as a share of the figure set. */
  readonly wrench: Distribution;
  readonly ranges: Ranges;
  readonly levels: Levels;
};

/**
 * The torque window of one closure: strip and seal by the same friction, plug and wrench.
 * Densities of the logarithms are convolved, so nothing is drawn at random and every edge moves smoothly.
 */
export function torqueWindow(weighing: Weighing): TorqueWindow {
  const { port, closure, turns, ranges } = weighing;
  const cautiousRule_Nm = cautiousTorque(port, closure, turns, ranges);
  return windowOf(weighing, stripForceDensity(port, closure, turns, ranges), cautiousRule_Nm);
}

/** The window of a closure whose strip force, N, is known: what lets go need not be the port's own thread. */
export function windowOf(
  { port, closure, need, wrench, ranges, levels }: Omit<Weighing, "turns">,
  strip: LogDensity,
  cautiousRule_Nm: number,
): TorqueWindow {
  const { seal } = closure;
  const friction = frictionNodes(port.thread, bearingDiameter(seal.outside, seal.inside), closure.surface, ranges);
  const strips = odds(stripTorqueDensity(port, closure, strip, friction, wrench, ranges));
  const closes = odds(sealTorqueDensity(seal, need, friction, wrench, ranges));
  const medianStrip_Nm = torqueAt(strips, 0.5);
  const limit_Nm = Math.min(torqueAt(strips, levels.stripOdds), levels.shareOfMedian * medianStrip_Nm);
  const need_Nm = torqueAt(closes, levels.closeOdds);
  const floor_Nm = closure.heldOtherwise ? null : vibrationFloor(port, levels);
  const least_Nm = Math.max(need_Nm, floor_Nm ?? 0);
  return {
    need_Nm,
    limit_Nm,
    medianStrip_Nm,
    cautiousRule_Nm,
    floor_Nm,
    open: limit_Nm >= least_Nm,
    narrow: limit_Nm >= least_Nm && limit_Nm < levels.narrowBelow * least_Nm,
    strips,
    closes,
  };
}

const odds = (density: LogDensity): Odds => ({ density, cumulative: cumulated(density) });

function vibrationFloor({ thread }: Port, levels: Levels): number {
  const d_mm = 1e3 * thread.d.value;
  if (d_mm < 11.9) return levels.floorBelowM12_Nm;
  return d_mm < 15.9 ? levels.floorM12toM14_Nm : levels.floorFromM16_Nm;
}
