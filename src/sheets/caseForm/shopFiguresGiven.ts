import { inventedFigures } from "../../mechanics/remedies/inventedFigures.ts";
import type { RemedyId } from "../../mechanics/remedies/method.ts";
import type { OwnFigures, ShopFigures } from "../../mechanics/remedies/shopFigures.ts";
import type { Span } from "../../mechanics/tables/shopEstimates.ts";
import type { InputProblem } from "../words/problemWords.ts";
import type { WrittenCase, WrittenSpan } from "./caseSchema.ts";
import { asGiven } from "./schemaProblems.ts";

/** The workshop's own figures over the invented ones. A span that cannot be is left out; its mistake is told. */
export function shopFiguresGiven({ shop = {}, estimates = {} }: WrittenCase, problems: InputProblem[]): ShopFigures {
  const of = Object.entries(estimates).map(([id, own = {}]): [string, OwnFigures] => {
    const span = (key: "hours" | "parts" | "comesBack"): Span | null =>
      spanGiven(`estimates.${id}.${key}`, own[key], problems);
    const comesBack = span("comesBack");
    if (comesBack && comesBack.high > 1)
      problems.push({
        field: `estimates.${id}.comesBack`,
        given: asGiven(own.comesBack),
        accepted: "shares from 0 to 1",
      });
    return [id, { hours: span("hours"), parts: span("parts"), comesBack }];
  });
  return {
    rate_perHour: shop.rate ?? inventedFigures.rate_perHour,
    comeback: spanGiven("shop.comeback", shop.comeback, problems) ?? inventedFigures.comeback,
    of: Object.fromEntries(of) as { readonly [id in RemedyId]?: OwnFigures },
  };
}

/** Where the likeliest is left out, the middle is. */
function spanGiven(field: string, written: WrittenSpan | undefined, problems: InputProblem[]): Span | null {
  if (!written) return null;
  const { low, high, likely = (low + high) / 2 } = written;
  if (low <= likely && likely <= high) return { low, likely, high };
  problems.push({ field, given: asGiven(written), accepted: "low, likely and high in this order" });
  return null;
}
