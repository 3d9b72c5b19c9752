import type { GateName } from "../../../src/journal/job/gate.ts";
import { gates } from "../../../src/journal/job/gates.ts";
import { jobSheet } from "../../../src/journal/job/jobProjection.ts";
import type { JobSheet } from "../../../src/journal/job/jobSheet.ts";
import { project } from "../../../src/journal/projection.ts";
import { at, type Line, type PlainFact, written } from "../written.ts";

/** The sheet that entries come to. */
export const sheetOf = (...lines: readonly Line[]): JobSheet => project(jobSheet, written(lines));

/** The gates that are shut for a fact, by name. */
export const shut = (sheet: JobSheet, fact: PlainFact, by = "jory", when = at("10:40")): readonly GateName[] => {
  const [entry] = written([[fact, { by, at: when }]]);
  return gates(sheet, entry!.fact, entry!).map(({ gate }) => gate);
};
