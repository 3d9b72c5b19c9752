import { type ComebackPrior, type MethodEstimate, methodEstimates } from "../tables/methodEstimates.ts";
import type { Span } from "../tables/shopEstimates.ts";
import { judgement } from "../tables/source.ts";
import { methodOf, type RemedyId } from "./method.ts";

/** What a workshop reckons with: its rate, what a comeback costs it, and its own figures for single methods. */
export type ShopFigures = {
  readonly rate_perHour: number;
  readonly comeback: Span;
  readonly of: { readonly [id in RemedyId]?: OwnFigures };
};

/** A workshop's own figures for one method; what it leaves out stays as estimated here. */
export type OwnFigures = {
  readonly hours: Span | null;
  readonly parts: Span | null;
  readonly comesBack: ComebackPrior | null;
};

/** A thread that is pulled to less because it is hurt is looked at within a year, whatever closes it (judgement). */
const lookedAtWithin_days = 365;

/** The days after which a make-do has ended; null for what stays. */
export const endsAfter_days = ({ until_days }: MethodEstimate, lasting: boolean): number | null =>
  lasting ? null : (until_days ?? lookedAtWithin_days);

/** What a method costs and how it ends, by the workshop's own figures where it has them. */
export function estimateOf(id: RemedyId, { of }: ShopFigures): MethodEstimate {
  const invented = methodEstimates[id === "lower torque" ? "lower torque" : methodOf[id]];
  const own = of[id];
  if (!own) return invented;
  return {
    ...invented,
    hours: own.hours ?? invented.hours,
    parts: own.parts ?? invented.parts,
    comesBack: own.comesBack ?? invented.comesBack,
    source: judgement("the workshop's own figures"),
  };
}
