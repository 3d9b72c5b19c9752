import { pullOf } from "../joint/advice.ts";
import { type BookVerdict, bookTorque_Nm, bookVerdict } from "../joint/bookFigures.ts";
import type { CarryingTurns } from "../joint/carryingTurns.ts";
import { type Health, health } from "../joint/health.ts";
import { wrenchDeviation } from "../joint/wrench.ts";
import { support } from "../quantity/distribution.ts";
import { materialRows } from "../tables/materialRows.ts";
import { type Assumption, completed, type GivenCase } from "./givenCase.ts";
import { lowerTorque } from "./lowerTorque.ts";
import type { Method } from "./method.ts";
import type { PortCase } from "./portCase.ts";
import { openQuestion, refusalOf } from "./refusalRules.ts";
import type { Remedy } from "./remedy.ts";
import { stopRuleFor, turnsOf, type WeighedClosure, weighedClosure } from "./weighedClosure.ts";

/** What is left of a port, and what it carries as it is. */
export type FoundPort = {
  readonly portCase: PortCase;
  readonly assumed: readonly Assumption[];
  readonly health: Health;
  readonly asFound: WeighedClosure;
  /** The joint as it is, pulled to less; null where it is healthy. */
  readonly asItIs: Remedy | null;
  /** What the book figures are to each other; null where there are none. */
  readonly book: BookVerdict | null;
};

/** The port as found, weighed by itself: everything that needs no other way of closing it. */
export function foundPort(given: GivenCase): FoundPort {
  const { portCase, assumed } = completed(given);
  const { port, asFound, levels } = portCase;
  const state = health(port, asFound, levels);
  const turns = turnsOf(portCase, asFound);
  const agreed = !turns?.remarks.includes("count and lengths disagree");
  const healthy = state.healthy && agreed && portCase.asked.crack === "no";
  const asItIs = healthy ? null : lowerTorque(portCase);
  const found = asItIs ?? healthyClosure(portCase, turns);
  const book = bookOf(portCase, found);
  return {
    portCase,
    assumed,
    health: { ...state, healthy },
    asFound: healthy && book ? pulledByTheBook(portCase, found, book) : found,
    asItIs,
    book,
  };
}

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
