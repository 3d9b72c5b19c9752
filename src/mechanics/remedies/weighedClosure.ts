import { type Advice, advice } from "../joint/advice.ts";
import { type CarryingTurns, carryingTurns } from "../joint/carryingTurns.ts";
import type { Closure } from "../joint/port.ts";
import { type SealNeed, sealNeed } from "../joint/sealTorque.ts";
import { type StopRule, stopRule } from "../joint/stopRule.ts";
import { bearingDiameter, clampForce } from "../joint/torque.ts";
import { type TorqueWindow, torqueWindow } from "../joint/window.ts";
import { wrenchDeviation } from "../joint/wrench.ts";
import type { Distribution } from "../quantity/distribution.ts";
import { exact, type Quantity, taken } from "../quantity/quantity.ts";
import { Nm, one } from "../quantity/unit.ts";
import { sourceText } from "../tables/source.ts";
import type { PortCase } from "./portCase.ts";
import type { Refusal } from "./refusalRules.ts";

/** One closure, weighed: its window and what to pull, or why there is none. */
export type WeighedClosure = {
  readonly closure: Closure;
  readonly turns: CarryingTurns | null;
  readonly window: TorqueWindow | null;
  readonly advice: Advice | null;
  readonly stop: StopRule | null;
  readonly refused: Refusal | null;
};

/** A closure that a rule refuses: no torque, no limit, no odds. */
export const refusedClosure = (closure: Closure, turns: CarryingTurns | null, refused: Refusal): WeighedClosure => ({
  closure,
  turns,
  window: null,
  advice: null,
  stop: null,
  refused,
});

/** The window of a closure and the advice in it; its seal is one that a window covers. */
export function weighedClosure(portCase: PortCase, closure: Closure, turns: CarryingTurns): WeighedClosure {
  const { port, ranges, levels } = portCase;
  const need = needFor(closure);
  return weighedBy(portCase, closure, turns, (wrench) =>
    torqueWindow({ port, closure, turns, need, wrench, ranges, levels }),
  );
}

/** What the seal of a closure needs, where it is one that a window covers. */
export function needFor({ seal }: Closure): SealNeed {
  const need = sealNeed(seal);
  if (!need) throw new Error(`a window for ${seal.kind}`);
  return need;
}

/** The advice in a window that hangs on the deviation of the wrench. */
export function weighedBy(
  portCase: PortCase,
  closure: Closure,
  turns: CarryingTurns,
  windowWith: (deviation: Distribution) => TorqueWindow,
): WeighedClosure {
  const { wrenches, ranges } = portCase;
  const deviation = (wrench: (typeof wrenches)[number] | null): Distribution => wrenchDeviation(wrench, ranges);
  const atLarge = windowWith(deviation(null));
  const chosen = advice(atLarge, portCase);
  const wrench = chosen.type === "pull" ? chosen.wrench : null;
  const window = wrench && deviation(wrench) !== deviation(null) ? windowWith(deviation(wrench)) : atLarge;
  const tools = wrench ? { ...portCase, wrenches: [wrench] } : portCase;
  const final = window === atLarge ? chosen : advice(window, tools);
  // The wrench that was chosen deviates more than the one in general: where that closes its window, another may do.
  if (final.type !== "pull" && wrench && wrenches.length > 1)
    return weighedBy({ ...portCase, wrenches: wrenches.filter((it) => it !== wrench) }, closure, turns, windowWith);
  return {
    closure,
    turns,
    window,
    advice: final,
    stop: final.type === "pull" ? stopRuleFor(portCase, closure, final.torque_Nm) : null,
    refused: null,
  };
}

/** The clamp force of a torque at middle friction. */
export function clampAt({ port, ranges }: PortCase, closure: Closure, torque_Nm: number): Quantity {
  const friction = ranges[`friction ${closure.surface}`];
  const mu = (symbol: string): Quantity => taken(symbol, friction.distribution, one, sourceText(friction.source));
  const D_b = bearingDiameter(closure.seal.outside, closure.seal.inside);
  return clampForce({ thread: port.thread, D_b, mu_th: mu("mu_th"), mu_b: mu("mu_b") }, exact("T", torque_Nm, Nm));
}

/** The stop rule of a pull; null for a taper, which turns on for turns while it wedges. */
export const stopRuleFor = (portCase: PortCase, closure: Closure, torque_Nm: number): StopRule | null =>
  closure.seal.kind === "taper"
    ? null
    : stopRule(portCase.port.thread, closure.seal, clampAt(portCase, closure, torque_Nm), torque_Nm);

/** What `closure` catches in this case. */
export const turnsOf = ({ port, asFound, ranges }: PortCase, closure: Closure): CarryingTurns | null =>
  carryingTurns(port, asFound, closure, ranges);
