import { entryId } from "../entry.ts";
import type { Projection } from "../projection.ts";
import { gates } from "./gates.ts";
import { type JobSheet, jobAfter, unwritten } from "./jobSheet.ts";
import { portsAfter } from "./portSheet.ts";
import { unitsAfter } from "./unitSheet.ts";

/** A job as it stands: its ports and units, what was agreed, what is open, and what went past a gate. */
export const jobSheet: Projection<JobSheet> = {
  empty: unwritten,

  apply(sheet, entry) {
    const stopped = gates(sheet, entry.fact, entry);
    const breaches = stopped.map((it) => ({ ...it, entry: entryId(entry), by: entry.by, at: entry.at }));
    const after = jobAfter(sheet, entry);
    return {
      ...after,
      job: entry.job,
      begunAt: sheet.begunAt ?? entry.at,
      units: unitsAfter(sheet.units, entry),
      ports: portsAfter(sheet.ports, entry),
      breaches: breaches.length > 0 ? [...sheet.breaches, ...breaches] : sheet.breaches,
    };
  },
};
