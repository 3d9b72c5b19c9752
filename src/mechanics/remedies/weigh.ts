import { referenceAir } from "../cure/air.ts";
import { pullOf } from "../joint/advice.ts";
import { type BookVerdict, bookTorque_Nm, bookVerdict } from "../joint/bookFigures.ts";
import type { CarryingTurns } from "../joint/carryingTurns.ts";
import { type Health, health } from "../joint/health.ts";
import { wrenchDeviation } from "../joint/wrench.ts";
import { support } from "../quantity/distribution.ts";
import { exact } from "../quantity/quantity.ts";
import { percent } from "../quantity/unit.ts";
import { materialRows } from "../tables/materials.ts";
import { judgement } from "../tables/source.ts";
import { type Assumption, completed, type GivenCase } from "./givenCase.ts";
import { longerPlugs } from "./longerPlug.ts";
import { lowerTorque } from "./lowerTorque.ts";
import { type MeasureFirst, measureFirst } from "./measureFirst.ts";
import type { Method } from "./method.ts";
import { type NextMeasurements, nextMeasurements } from "./nextMeasurement.ts";
import { offerOfRemedy, offerOfRepair } from "./offers.ts";
import { otherSeals } from "./otherSeal.ts";
import type { PortCase } from "./portCase.ts";
import { type BreakEven, breakEvens, type Ranked, ranked } from "./ranking.ts";
import { openQuestion, refusalOf } from "./refusalRules.ts";
import type { NotOffered, Remedy } from "./remedy.ts";
import type { Repair } from "./repair.ts";
import { repairs, repairsOfHealthy, withoutTorque } from "./repairs.ts";
import { sealantNoWasher } from "./sealantNoWasher.ts";
import { stopRuleFor, turnsOf, type WeighedClosure, weighedClosure } from "./weighedClosure.ts";

/** What is left, what it will carry, and what can be done. */
export type Weighed = {
  readonly portCase: PortCase;
  readonly assumed: readonly Assumption[];
  readonly health: Health;
  readonly asFound: WeighedClosure;
  /** What the book figures are to each other; null where there are none. */
  readonly book: BookVerdict | null;
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
export function weigh(given: GivenCase): Weighed {
  const { portCase, assumed } = completed(given);
  const { port, asFound, levels } = portCase;
  const state = health(port, asFound, levels);
  const turns = turnsOf(portCase, asFound);
  const agreed = !turns?.remarks.includes("count and lengths disagree");
  const healthy = state.healthy && agreed && portCase.asked.crack === "no";
  const asItIs = lowerTorque(portCase);
  const found = healthy ? healthyClosure(portCase, turns) : asItIs;
  const book = bookOf(portCase, found);
  const weighedFound = healthy && book ? pulledByTheBook(portCase, found, book) : found;
  const longer = healthy ? [] : longerPlugs(portCase);
  const sealed = asFound.seal.kind === "sealant, metal to metal";
  const remedies = healthy
    ? []
    : [
        asItIs,
        ...longer.flatMap((it) => (it.offered ? [it.remedy] : [])),
        ...otherSeals(portCase),
        ...(sealed ? [] : [sealantNoWasher(portCase)]),
      ];
  const silent = found.refused !== null && given.wish.afterRepair !== true;
  const done = healthy ? repairsOfHealthy(portCase) : repairs(portCase, found);
  const others = silent ? done.map(withoutTorque) : done;
  const offers = [...remedies.map((it) => offerOfRemedy(it, portCase)), ...others.map(offerOfRepair)];
  const ranking = ranked(offers, portCase, given.wish, given.record);
  const first = remedies.find(({ id, window }) => id === ranking[0]?.id && window) ?? null;
  const best =
    first && first.id !== "lower torque"
      ? first
      : (remedies.find(({ id, window }) => id !== "lower torque" && window?.open && !window.narrow) ?? null);
  const notOffered = longer.flatMap((it) => (it.offered ? [] : [it.why]));
  const measured = found.window ? found : (remedies.find((it) => it.window) ?? found);
  return {
    portCase,
    assumed: [...assumed, ...airTaken(portCase, remedies)],
    health: { ...state, healthy },
    asFound: weighedFound,
    book,
    remedies,
    notOffered,
    repairs: others,
    ranking,
    breakEvens: breakEvens(ranking, portCase.shop),
    next: healthy ? { measurements: [], shares: [] } : nextMeasurements(portCase, measured, best),
    missing: measureFirst(notOffered, others),
  };
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

/** A healthy port takes its book figure whatever the joint; a window of ours is shown only where no rule forbids it. */
function healthyClosure(portCase: PortCase, turns: CarryingTurns | null): WeighedClosure {
  const { asFound } = portCase;
  const pulledToLess: Method = { id: "lower torque", seal: asFound.seal, fullStrength: false };
  if (turns && refusalOf(pulledToLess, answered(portCase), turns) === null)
    return weighedClosure(portCase, asFound, turns);
  return { closure: asFound, turns, window: null, advice: null, stop: null, refused: null };
}

/** The questions that only a make-do has to wait for, taken as harmless where nobody asked them. */
function answered(portCase: PortCase): PortCase {
  if (openQuestion(portCase.asked) === null) return portCase;
  const { asked } = portCase;
  const harmless = { pressure: "none", reaches: [], people: "no", repairedBefore: "no", breather: "free" } as const;
  return {
    ...portCase,
    asked: {
      ...asked,
      pressure: asked.pressure ?? harmless.pressure,
      reaches: asked.reaches ?? harmless.reaches,
      people: asked.people ?? harmless.people,
      repairedBefore: asked.repairedBefore ?? harmless.repairedBefore,
      breather: asked.breather ?? harmless.breather,
    },
  };
}

function bookOf({ port, asFound, bookFigures, ranges }: PortCase, { window }: WeighedClosure): BookVerdict | null {
  const [, deviation] = support(wrenchDeviation(null, ranges));
  const { lightAlloy } = materialRows[port.material];
  return bookVerdict(bookFigures, asFound.seal, asFound.surface, window?.need_Nm ?? 0, lightAlloy, deviation);
}

function pulledByTheBook(portCase: PortCase, found: WeighedClosure, book: BookVerdict): WeighedClosure {
  const torque_Nm = bookTorque_Nm(book);
  return { ...found, advice: pullOf(torque_Nm, portCase), stop: stopRuleFor(portCase, found.closure, torque_Nm) };
}
