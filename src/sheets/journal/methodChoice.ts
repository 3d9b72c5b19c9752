import type { PortId } from "../../journal/facts/ids.ts";
import type { PortSheet } from "../../journal/job/portSheet.ts";
import { type RemedyId, remedyIds } from "../../mechanics/remedies/method.ts";
import type { Typed } from "../sums/typed.ts";
import type { Around } from "./act.ts";

/** The sheet of the port that an act is about; null before anything was written of it. */
export const portSheetOf = ({ sheet, about }: Around): PortSheet | null =>
  (about.type === "port" && sheet.ports[about.port as PortId]) || null;

/** The ways that may be named: those that were weighed and not refused, in their order; all of them where nothing was weighed. */
export function waysOpen(around: Around): readonly RemedyId[] {
  const weighed = portSheetOf(around)?.weighed?.options.filter(({ refused }) => refused === null) ?? [];
  return weighed.length > 0 ? weighed.map(({ id }) => id) : remedyIds;
}

/** A way in a field, whatever was weighed. */
export const wayIn = (it: Typed, name: string): RemedyId | null => it.chosen(name, remedyIds);
