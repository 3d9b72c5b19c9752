import { referenceAir } from "../cure/air.ts";
import { chamferDepth, chamferSource } from "../joint/oRingChamfer.ts";
import { type TaperTurns, taperTurns } from "../joint/taperTurns.ts";
import { exact } from "../quantity/quantity.ts";
import { percent } from "../quantity/unit.ts";
import { judgement } from "../tables/source.ts";
import { isTaper } from "../threads/thread.ts";
import { type FoundPort, foundPort } from "./foundPort.ts";
import type { Assumption, GivenCase } from "./givenCase.ts";
import { longerPlugs } from "./longerPlug.ts";
import { type MeasureFirst, measureFirst } from "./measureFirst.ts";
import { type NextMeasurements, nextMeasurements } from "./nextMeasurement.ts";
import { offerOfRemedy, offerOfRepair } from "./offers.ts";
import { otherSeals } from "./otherSeal.ts";
import type { PortCase } from "./portCase.ts";
import { type BreakEven, breakEvens, type Ranked, ranked } from "./ranking.ts";
import type { NotOffered, Remedy } from "./remedy.ts";
import type { Repair } from "./repair.ts";
import { repairs, repairsOfHealthy, withoutTorque } from "./repairs.ts";
import { sealantNoWasher } from "./sealantNoWasher.ts";

/** What is left, what it will carry, and what can be done. */
export type Weighed = FoundPort & {
  /** What turns say where the thread is a taper one; null where it is not. */
  readonly taper: TaperTurns | null;
  readonly remedies: readonly Remedy[];
  readonly notOffered: readonly NotOffered[];
  /** The methods that do more than close what is left; of a healthy port only its ordinary reseal. */
  readonly repairs: readonly Repair[];
  /** What may be offered of both, best first. */
  readonly ranking: readonly Ranked[];
  readonly breakEvens: readonly BreakEven[];
  /** What is worth measuring next, for the port as found or, where that is refused, for the first remedy with a window. */
  readonly next: NextMeasurements;
  /** What nobody has measured and some of it cannot be judged without. */
  readonly missing: readonly MeasureFirst[];
};

/** The whole answer for one case. */
export const weigh = (given: GivenCase): Weighed => weighedWays(foundPort(given), given);

/** The port as found with every way of closing or repairing it, ranked, and what to measure next. */
export function weighedWays(found: FoundPort, given: GivenCase): Weighed {
  const { portCase, asFound, asItIs } = found;
  const { port } = portCase;
  const longer = asItIs ? longerPlugs(portCase) : [];
  const sealed = portCase.asFound.seal.kind === "sealant, metal to metal";
  const remedies = asItIs
    ? [
        asItIs,
        ...longer.flatMap((it) => (it.offered ? [it.remedy] : [])),
        ...otherSeals(portCase),
        ...(sealed ? [] : [sealantNoWasher(portCase)]),
      ]
    : [];
  const silent = asFound.refused !== null && given.wish.afterRepair !== true;
  const done = asItIs ? repairs(portCase, asFound) : repairsOfHealthy(portCase);
  const others = silent ? done.map(withoutTorque) : done;
  const offers = [...remedies.map((it) => offerOfRemedy(it, portCase)), ...others.map(offerOfRepair)];
  const ranking = ranked(offers, portCase, given.wish, given.record);
  const first = remedies.find(({ id, window }) => id === ranking[0]?.id && window) ?? null;
  const best =
    first && first.id !== "lower torque"
      ? first
      : (remedies.find(({ id, window }) => id !== "lower torque" && window?.open && !window.narrow) ?? null);
  const notOffered = longer.flatMap((it) => (it.offered ? [] : [it.why]));
  const measured = asFound.window ? asFound : (remedies.find((it) => it.window) ?? asFound);
  return {
    ...found,
    assumed: [...found.assumed, ...chamferTaken(portCase), ...airTaken(portCase, remedies)],
    taper: isTaper(port.thread) ? taperTurns(port.thread, port.left.turns) : null,
    remedies,
    notOffered,
    repairs: others,
    ranking,
    breakEvens: breakEvens(ranking, portCase.shop),
    next: asItIs ? nextMeasurements(portCase, measured, best) : { measurements: [], shares: [] },
    missing: measureFirst(notOffered, others),
  };
}

/** How deep the chamfer is taken to be that an O-ring was found in and nobody measured. */
function chamferTaken({ asFound }: PortCase): readonly Assumption[] {
  const value = asFound.seal.chamfer ? null : chamferDepth(asFound.seal);
  return value ? [{ reading: "seal.chamfer", value, source: chamferSource }] : [];
}

/** What is taken of the air where a sealant cures in it and nobody said. */
function airTaken({ air, port }: PortCase, remedies: readonly Remedy[]): readonly Assumption[] {
  const cures = remedies.some(({ closure, refused }) => !refused && closure.seal.kind === "sealant, metal to metal");
  if (!cures || !(air.temperature ?? port.temperature)) return [];
  const RH = exact("RH", 100 * referenceAir.RH.value, percent);
  return [
    ...(air.temperature
      ? []
      : [{ reading: "air.temperature", value: port.temperature ?? "", source: asWarm } as const]),
    ...(air.humidity ? [] : [{ reading: "air.humidity", value: RH, source: middling }]),
  ];
}

const asWarm = judgement("the bay is as warm as the case");
const middling = judgement("as in the air sealants are tested in, 23/50 by ISO 291; dry air takes longer");
