import type { JobId, MachineId } from "../facts/ids.ts";
import type { JobSheet, Notice } from "../job/jobSheet.ts";

export type Noticed = Notice & { readonly job: JobId; readonly machine: MachineId | null };

/** What was also noticed on a machine and is not settled, over all its jobs. */
export const noticedOn = (machine: MachineId, sheets: Iterable<JobSheet>): readonly Noticed[] =>
  [...sheets].flatMap((sheet) =>
    sheet.machine === machine && sheet.job !== null
      ? sheet.notices
          .filter(({ settled }) => settled === null)
          .map((it) => ({ ...it, job: sheet.job as JobId, machine: sheet.machine }))
      : [],
  );
