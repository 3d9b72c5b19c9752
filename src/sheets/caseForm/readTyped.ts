import { inventedFigures } from "../../mechanics/remedies/inventedFigures.ts";
import { levelsWith } from "../../mechanics/tables/levels.ts";
import { referenceRanges } from "../../mechanics/tables/referenceRanges.ts";
import type { WrittenCase } from "./caseSchema.ts";
import { type Besides, type CaseRead, type DocumentReader, readWritten } from "./readCase.ts";
import type { ThreadReader } from "./threadGiven.ts";

/** Reads a case that holds readings and answers alone, as a bench writes it: our own ranges, levels and estimates stand. */
export const readTyped = (written: WrittenCase, today: string | null, threads: ThreadReader): CaseRead =>
  readWritten(written, today, threads, noDocument);

const noDocument: DocumentReader = {
  range: ({ name }) => {
    throw new Error(`a bench wrote a range for ${name}`);
  },
  besides: () => ours,
};

const ours: Besides = {
  air: { temperature: null, humidity: null },
  shop: inventedFigures,
  record: [],
  ranges: referenceRanges,
  levels: levelsWith({}),
};
