import { type Distribution, quantile, survival } from "../quantity/distribution.ts";
import { nodesOf } from "../quantity/distributionNodes.ts";
import {
  cumulated,
  type LogDensity,
  logDensity,
  logDensityOfNodes,
  product,
  spreadAll,
  step,
  times,
} from "../quantity/logDensity.ts";
import { minimum } from "../quantity/minimum.ts";
import { crossed, uniformNodes } from "../quantity/quadrature.ts";
import { distributionOf, exact, valueIn } from "../quantity/quantity.ts";
import { remembered } from "../quantity/remembered.ts";
import { degC, MPa } from "../quantity/unit.ts";
import { iso898, type PropertyClassRow, propertyClassRow } from "../tables/iso898.ts";
import { materialRows } from "../tables/materialRows.ts";
import type { Ranges } from "../tables/referenceRanges.ts";
import { tensileStressArea } from "../threads/tensileStressArea.ts";
import type { Thread } from "../threads/thread.ts";
import { type CarryingTurns, leadIn } from "./carryingTurns.ts";
import type { FrictionNodes } from "./frictionNodes.ts";
import type { Closure, Port } from "./port.ts";
import { externalStripArea, heightFactor, internalStripArea, plugYieldForces } from "./stripping.ts";
import { turnsDensity } from "./turnsDensity.ts";

const nodesPerTolerance = 6;

/**
 * The density of the force, N, at which the thread of the hole or of the plug strips: strength, shear ratio and area of
 * each, times turns, height left and the scatter of the model, which they share.
 */
export function stripForceDensity(port: Port, closure: Closure, turns: CarryingTurns, ranges: Ranges): LogDensity {
  const { turn, known } = turnOf(port)(ranges)(propertyClassRow(closure.plug.propertyClass, 1e3 * port.thread.d.value));
  const key = JSON.stringify([turns.count, turns.passesThrough, turns.leadInShare]);
  const found = known.get(key) ?? product(carriedTurns(port, turns, ranges), turn);
  known.set(key, found);
  return found;
}

/**
 * One turn as it is left, whatever closes the port: its weaker thread, times the scatter of the model and the height. Beside
 * it the strip forces already reckoned: rings of one thickness catch the same turns.
 */
const turnOf = remembered((port: Port) =>
  remembered((ranges: Ranges) =>
    remembered((plug: PropertyClassRow) => ({
      turn: product(
        heightDensity(port, ranges),
        logDensity(ranges["strip model"].distribution),
        minimum(holeTurnDensity(port, ranges), plugTurnOf(port, plug, ranges)),
      ),
      known: new Map<string, LogDensity>(),
    })),
  ),
);

/** The density of the bare force, N, at which one turn of the hole strips. */
export function holeTurnDensity(port: Port, ranges: Ranges): LogDensity {
  const row = materialRows[port.material];
  return product(
    times(1e6 * heatFactor(port, ranges), logDensity(ranges[row.strength].distribution)),
    logDensity(ranges[row.shearRatio].distribution),
    internalAreaDensity(port),
  );
}

/** The density of the bare force, N, at which one turn of the plug strips. */
export const plugTurnDensity = (port: Port, closure: Closure, ranges: Ranges): LogDensity =>
  plugTurnOf(port, propertyClassRow(closure.plug.propertyClass, 1e3 * port.thread.d.value), ranges);

function plugTurnOf(port: Port, { R_m_MPa }: PropertyClassRow, ranges: Ranges): LogDensity {
  return product(
    times(1e6 * R_m_MPa, logDensity(ranges["plug strength"].distribution)),
    logDensity(ranges["plug shear ratio"].distribution),
    externalAreaDensity(port),
  );
}

/** The density of the turns that carry, less their lead-in and what uneven sharing takes of them. */
export function carriedTurns(port: Port, turns: CarryingTurns, ranges: Ranges): LogDensity {
  const k = ranges[materialRows[port.material].sharing].distribution;
  return turnsDensity(turns.count, leadIn(turns, ranges), quantile(k, 0.5), ranges["sharing exponent"].distribution);
}

/**
 * The density of the torque, N·m, set on the wrench at which the joint lets go: it strips or the plug yields, whichever
 * comes first. Friction works on the arm and on the plug's yield together, so both are taken row by row of `friction`.
 */
export function stripTorqueDensity(
  port: Port,
  closure: Closure,
  strip: LogDensity,
  friction: FrictionNodes,
  wrench: Distribution,
  ranges: Ranges,
): LogDensity {
  const { lnArm, weight, rowsPerThread } = friction;
  const result = product(strip, friction.arm);
  const plug = propertyClassRow(closure.plug.propertyClass, 1e3 * port.thread.d.value);
  const yields = yieldForces(port.thread)(plug)(friction.mu);
  changesByYield(strip)(yields)(ranges["plug strength"].distribution).forEach((change, i) => {
    for (let row = i * rowsPerThread; row < (i + 1) * rowsPerThread; row++)
      spreadAll(result, change, lnArm[row] as number, weight[row] as number);
  });
  return product(result, wrenchDensity(wrench));
}

/** What the plug's yield changes in a strip force, for each thread friction; closures that catch the same turns share it. */
const changesByYield = remembered((strip: LogDensity) =>
  remembered((yields: Float64Array) =>
    remembered((strength: Distribution) => {
      const notStripped = cumulated(strip).map((below) => 1 - below);
      // The upper edge of every cell, N.
      const edges = strip.mass.map((_, i) => Math.exp(strip.first + (i + 0.5) * step));
      return [...yields].map((force) => changeByYield(strip, edges, notStripped, strength, force));
    }),
  ),
);

/** The density of 1 / (1 + w): what a wrench that turns out a share w too strong takes from the figure set on it. */
export const wrenchDensity: (wrench: Distribution) => LogDensity = remembered((wrench) => {
  const { at, weight } = nodesOf(wrench, 5);
  return logDensityOfNodes({ at: at.map((w) => -Math.log1p(w)), weight });
});

/**
 * What a plug that yields at `force`, N, times its `strength` changes in the mass of the strip force: taken where the thread
 * would have outlived the plug, put where the plug yields. Nothing where the thread strips long before.
 */
function changeByYield(
  { first, mass, zero }: LogDensity,
  edges: Float64Array,
  notStripped: Float64Array,
  strength: Distribution,
  force: number,
): LogDensity {
  const begins = Math.max(0, Math.ceil((Math.log(force * quantile(strength, 1e-12)) - first) / step));
  const surely = force * quantile(strength, 1 - 1e-12);
  let ends = mass.length;
  while (ends > begins && (notStripped[ends - 1] ?? 0) < 1e-10) ends--;
  const change = new Float64Array(Math.max(0, ends - begins));
  let holds = begins > 0 ? (notStripped[begins - 1] ?? 0) : 1 - zero;
  for (let i = begins; i < ends; i++) {
    const edge = edges[i] as number;
    const after = edge > surely ? 0 : (notStripped[i] as number) * survival(strength, edge / force);
    change[i - begins] = holds - after - (mass[i] as number);
    holds = after;
  }
  return { first: first + begins * step, mass: change, zero: 0 };
}

/** The yield force, N, of a plug of the least strength of its class, for each thread friction. */
const yieldForces = remembered((thread: Thread) =>
  remembered(({ R_p_MPa }: PropertyClassRow) => {
    const R_p = exact("R_p", R_p_MPa, MPa, iso898.document);
    return remembered((mu: Float64Array) => plugYieldForces(thread, tensileStressArea(thread), R_p, mu));
  }),
);

/** Light alloys and their castings lose strength with heat; a case nobody measured has cooled. */
export function heatFactor({ temperature }: Port, ranges: Ranges): number {
  if (!temperature || valueIn(degC, temperature) <= 60) return 1;
  const range = valueIn(degC, temperature) > 120 ? ranges["heat above 120 °C"] : ranges["heat above 60 °C"];
  return quantile(range.distribution, 0.5);
}

/** The density of the shear area of one turn of the hole, m², within the tolerances of plug and hole. */
export function internalAreaDensity({ thread, limits }: Port): LogDensity {
  const { a: d, b: D_2, weight } = withinTolerance(limits.d_min, limits.d_max, limits.D2_min, limits.D2_max);
  const area = internalStripArea.over({ d, D_2, ...oneTurn(thread) });
  return logDensityOfNodes({ at: area.map(Math.log), weight });
}

function externalAreaDensity({ thread, limits }: Port): LogDensity {
  const { a: d_2, b: D_1, weight } = withinTolerance(limits.d2_min, limits.d2_max, limits.D1_min, limits.D1_max);
  const area = externalStripArea.over({ d_2, D_1, ...oneTurn(thread) });
  return logDensityOfNodes({ at: area.map(Math.log), weight });
}

const oneTurn = ({ P, alpha }: Port["thread"]) => ({ L: P.value, P: P.value, alpha: alpha.value });

type Limit = { readonly value: number };

const withinTolerance = (aMin: Limit, aMax: Limit, bMin: Limit, bMax: Limit) =>
  crossed(
    uniformNodes(aMin.value, aMax.value, nodesPerTolerance),
    uniformNodes(bMin.value, bMax.value, nodesPerTolerance),
  );

/** What is left of a turn's strength with its height: measured, or by the condition of the turns. */
export function heightDensity({ left }: Port, ranges: Ranges): LogDensity {
  // A thread that is gone has been refused before; should one be weighed all the same, it counts as poor.
  const name = left.condition === "gone" ? "height poor" : (`height ${left.condition}` as const);
  const h = nodesOf(left.height ? distributionOf(left.height) : ranges[name].distribution, 6);
  const { a, b, weight } = crossed(h, nodesOf(ranges["height effect"].distribution, 6));
  const eta = heightFactor.over({ h: a.map((it) => Math.min(1, Math.max(leastHeight, it))), s: b });
  return logDensityOfNodes({ at: eta.map(Math.log), weight });
}

/** A measured height may err below nothing at all; this much is taken as left. */
const leastHeight = 0.05;
