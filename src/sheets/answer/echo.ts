import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import type { Ranges } from "../../mechanics/tables/referenceRanges.ts";
import { sourceText } from "../../mechanics/tables/source.ts";
import { writtenRange } from "../caseForm/overrides.ts";

/** The reference ranges that the answer hangs on, as a case may write them, with their units and sources. */
export function usedRanges({ portCase }: Weighed): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    Object.entries(portCase.ranges as Ranges).map(([name, { distribution, unit, source }]) => [
      name,
      { ...writtenRange(distribution), unit: unit.symbol, source: sourceText(source) },
    ]),
  );
}

/** The levels that the answer hangs on. */
export const usedLevels = ({ portCase }: Weighed): Readonly<Record<string, number>> => portCase.levels;
