import { type CarryingTurns, carryingTurns } from "../joint/carryingTurns.ts";
import type { Closure, Left, Port } from "../joint/port.ts";
import { sealNeed } from "../joint/sealTorque.ts";
import { carriedTurns, heightDensity, holeTurnDensity, plugTurnDensity } from "../joint/stripTorque.ts";
import { cautiousTorque } from "../joint/thirdRule.ts";
import { windowOf } from "../joint/window.ts";
import { type LogDensity, logDensity, product, times } from "../quantity/logDensity.ts";
import { minimum } from "../quantity/minimum.ts";
import { exact, type Quantity, valueIn } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import { sourceText } from "../tables/source.ts";
import type { Thread } from "../threads/thread.ts";
import { standardLimits } from "../threads/threadLimits.ts";
import type { PortCase } from "./portCase.ts";
import { sealSize } from "./sealSize.ts";
import { needFor, turnsOf, type WeighedClosure, weighedBy, weighedClosure } from "./weighedClosure.ts";
import { withoutRing } from "./withoutRing.ts";

/** A thread cut new: good, snug, from a depth below the face to another. */
export const cutNew = (from: Quantity, to: Quantity): Left => ({
  turns: null,
  counting: "with a dot",
  withWasher: true,
  condition: "good",
  catch: "snug",
  goodFrom: from,
  goodTo: to,
  height: null,
});

export const atTheFace: Quantity = exact("z_1", 0, mm, "cut from the face");

/** The port with its own thread whole over its depth again; null where nobody measured the hole. */
export const wholeAgain = (portCase: PortCase): PortCase | null => {
  const { port } = portCase;
  return port.threadDepth && { ...portCase, port: { ...port, left: cutNew(atTheFace, port.threadDepth) } };
};

/** The port with a larger thread cut to a depth, and a new plug on a ring of the same kind. */
export function recutPort(portCase: PortCase, thread: Thread, depth: Quantity): PortCase {
  const { port, asFound } = portCase;
  const d_mm = valueIn(mm, thread.d);
  const { seal, plug } = asFound;
  const size = sealSize(seal.kind, thread, null);
  const length = (symbol: string, value_mm: number): Quantity => exact(symbol, value_mm, mm, sourceText(size.source));
  const ring = {
    ...seal,
    outside: length("D_o", size.outside_mm),
    inside: length("D_i", size.inside_mm),
    chamfer: null,
    original: true,
  };
  const withRing = size.thickness_mm === 0 ? ring : { ...ring, thickness: length("t", size.thickness_mm) };
  const endsInside_mm = Math.floor(valueIn(mm, depth) + valueIn(mm, withRing.thickness) + 1e-9);
  const present_mm = plug.underHead ? valueIn(mm, plug.underHead) : 0;
  // Plugs are seldom longer than their diameter, and what passes the end of the hole bears nothing (judgement).
  const underHead = exact("l", Math.max(present_mm, Math.min(endsInside_mm, d_mm)), mm, "the new plug");
  const closure: Closure = {
    ...asFound,
    seal: withRing,
    plug: {
      ...plug,
      underHead,
      headDiameter: null,
      chamfer: exact("c", 1e3 * thread.P.value * 0.75, mm, "the new plug"),
      original: true,
    },
  };
  const recut: Port = {
    ...port,
    thread,
    limits: standardLimits(thread),
    left: cutNew(atTheFace, depth),
    healthy: null,
  };
  return { ...portCase, port: recut, asFound: closure };
}

/** A port whose own thread is the new one, weighed; null where its seal is not one that a window covers. */
export function weighedAnew(portCase: PortCase): WeighedClosure | null {
  const { asFound } = portCase;
  const turns = turnsOf(portCase, asFound);
  return turns && sealNeed(asFound.seal) ? weighedClosure(portCase, asFound, turns) : null;
}

/** What holds an insert in the case: its outer thread, from and to where it carries, and what its strength goes by. */
export type OuterThread = {
  readonly thread: Thread;
  readonly limits: Port["limits"];
  readonly from: Quantity;
  readonly to: Quantity;
  /** What tables of the trade stand below bare shear by, in place of our model; null for a thread like any other. */
  readonly tableFactor: number | null;
};

/**
 * A plug of the old size in an insert, weighed: the insert's outer thread strips out of the case, or the plug's thread
 * strips in the steel of the insert, whichever is the weaker. Null where the plug's length is known neither by itself nor
 * by the turns of a healthy twin, or where no window covers the seal.
 */
export function weighedInsert(
  portCase: PortCase,
  inner: { readonly from: Quantity; readonly to: Quantity },
  outer: OuterThread,
): WeighedClosure | null {
  const { port, asFound, ranges, levels } = portCase;
  const turns = turnsInside(portCase, inner);
  const case_: Port = { ...port, thread: outer.thread, limits: outer.limits, left: cutNew(outer.from, outer.to) };
  const held = outerTurns(case_, asFound, portCase);
  if (!turns || !held || !sealNeed(asFound.seal)) return null;
  const steel: Port = { ...port, left: cutNew(inner.from, inner.to) };
  const likeAThread = (density: LogDensity, it: Port, carrying: CarryingTurns): LogDensity =>
    product(
      density,
      carriedTurns(it, carrying, ranges),
      logDensity(ranges["strip model"].distribution),
      heightDensity(it, ranges),
    );
  const perTurn = holeTurnDensity(case_, ranges);
  const hole =
    outer.tableFactor === null
      ? likeAThread(perTurn, case_, held)
      : times(held.caught.value / outer.tableFactor, perTurn);
  const strip = minimum(hole, likeAThread(plugTurnDensity(port, asFound, ranges), steel, turns));
  const cautiousRule_Nm = cautiousTorque(case_, asFound, held, ranges, port.thread);
  const need = needFor(asFound);
  return weighedBy({ ...portCase, port: steel }, asFound, turns, (wrench) =>
    windowOf({ port, closure: asFound, need, wrench, ranges, levels }, strip, cautiousRule_Nm),
  );
}

/** What the plug catches in the insert: by its length, else as much as in a healthy twin hole. */
function turnsInside(portCase: PortCase, { from, to }: { readonly from: Quantity; readonly to: Quantity }) {
  const { port, asFound, ranges } = portCase;
  const cut = cutNew(from, to);
  if (asFound.plug.underHead) return carryingTurns({ ...port, left: cut }, asFound, asFound, ranges);
  if (!port.healthy) return null;
  const { turns, withWasher } = port.healthy;
  const left: Left = { ...cut, turns, withWasher, counting: port.left.counting, goodFrom: null, goodTo: null };
  return carryingTurns({ ...port, left }, asFound, asFound, ranges);
}

/** The insert lies in its thread from end to end, as a plug would that just fills it. */
function outerTurns(case_: Port, asFound: Closure, { ranges }: PortCase): CarryingTurns | null {
  const { goodTo } = case_.left;
  if (!goodTo) return null;
  const filling: Closure = {
    ...asFound,
    plug: { ...asFound.plug, underHead: goodTo, chamfer: null },
    seal: withoutRing(asFound.seal, "an insert has no ring"),
  };
  const turns = carryingTurns(case_, filling, filling, ranges);
  return turns && { ...turns, passesThrough: false, leadInShare: 1 };
}
