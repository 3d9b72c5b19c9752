import type { BookFigure } from "../joint/bookFigures.ts";
import type { Closure, Port } from "../joint/port.ts";
import type { Wrench } from "../joint/wrench.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { JointKind } from "../tables/jointKinds.ts";
import type { Levels } from "../tables/levels.ts";
import type { Ranges } from "../tables/referenceRanges.ts";
import type { ShopFigures } from "./shopFigures.ts";

/** A hurt or healthy port with everything that is known of it, ready to be weighed. */
export type PortCase = {
  readonly joint: JointKind;
  readonly asked: Asked;
  readonly port: Port;
  readonly asFound: Closure;
  readonly bookFigures: readonly BookFigure[];
  readonly wrenches: readonly Wrench[];
  /** Torque at which the plug turns over the last turn before its seat; null where it turns freely by hand. */
  readonly prevailing: Quantity | null;
  /** The day the case is weighed, ISO 8601; null where nobody says. */
  readonly today: string | null;
  /** From the face of the hole to the nearest thing in front of it; null where nobody measured it. */
  readonly roomInFront: Quantity | null;
  readonly air: BayAir;
  readonly shop: ShopFigures;
  readonly ranges: Ranges;
  readonly levels: Levels;
};

/** The air in the bay, as far as somebody says: a curing sealant lives on it. */
export type BayAir = { readonly temperature: Quantity | null; readonly humidity: Quantity | null };

export const reaches = ["tyre", "brake", "exhaust", "belt", "water"] as const;
export type Reached = (typeof reaches)[number];

/** The six questions before any number, and those that a rule asks further. Null is unanswered, never "no". */
export type Asked = {
  readonly crack: "no" | "yes" | null;
  readonly pressure: "none" | Quantity | null;
  readonly reaches: readonly Reached[] | null;
  readonly people: "no" | "yes" | null;
  readonly repairedBefore: "no" | EarlierRepair | null;
  readonly breather: "free" | "blocked" | "none" | null;
  readonly waterTest: "passed" | "failed" | "not done" | null;
  readonly alloyTested: "yes" | "no" | null;
  readonly overrides: readonly Override[];
};

export type EarlierRepair = { readonly method: string; readonly cause: string | null };

/** Somebody takes a refusal on himself, by name and with a reason. It never makes us print a number. */
export type Override = { readonly rule: string; readonly by: string; readonly reason: string };

export const firstQuestions = ["crack", "pressure", "reaches", "people", "repairedBefore", "breather"] as const;
export type FirstQuestion = (typeof firstQuestions)[number];
