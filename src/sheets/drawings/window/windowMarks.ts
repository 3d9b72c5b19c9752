import { atLeast, atMost, inTenths, inWhole, shortened } from "../lettering.ts";
import type { Mark } from "./markRows.ts";
import type { TorqueAxis } from "./torqueAxis.ts";
import type { WindowProps } from "./windowProps.ts";

export type MarkKind = "book" | "third" | "median" | "floor" | "need" | "limit";

/** What is lettered under the bar: its marks, and the edges that have no room over it. Notes are cut at `noteWidth`. */
export function windowMarks(
  props: WindowProps,
  axis: TorqueAxis,
  edges: { readonly low_Nm: number; readonly lowLettered: boolean; readonly limitLettered: boolean },
  letter: number,
  noteWidth: number,
): readonly Mark<MarkKind>[] {
  const { need_Nm, limit_Nm, floor_Nm, cautiousRule_Nm, medianStrip_Nm, bookFigures } = props;
  const figures = edgeFigures(edges.low_Nm, limit_Nm);
  const low = edges.low_Nm === need_Nm ? "need" : "floor";
  const mark = (id: MarkKind, torque_Nm: number, text: string, bold = false, note = ""): Mark<MarkKind> => {
    const size = 0.9 * letter;
    const notes = note === "" ? [] : [{ text: shortened(note, noteWidth, size), size, bold: false }];
    return { id, x: axis.at(torque_Nm), lines: [{ text, size: letter, bold }, ...notes] };
  };
  const lowMark = mark(low, edges.low_Nm, `${low} ${figures.low}`, true);
  const need = mark("need", need_Nm, `need ${atLeast(need_Nm)}`);
  const floor = floor_Nm === null ? [] : [mark("floor", floor_Nm, `floor ${atLeast(floor_Nm)}`)];
  return [
    ...(edges.lowLettered ? [] : [lowMark]),
    ...(low === "need" ? floor : [need]),
    ...(edges.limitLettered ? [] : [mark("limit", limit_Nm, `careful limit ${figures.limit}`, true)]),
    ...bookFigures.map(({ torque_Nm, label }) =>
      mark("book", torque_Nm, `book figure ${inWhole(torque_Nm)}`, true, label),
    ),
    mark("third", cautiousRule_Nm, `third rule ${atMost(cautiousRule_Nm)}`),
    mark("median", medianStrip_Nm, `half strip ${inWhole(medianStrip_Nm)}`),
  ];
}

/** The edges as they are lettered: need rounded up and limit down, to tenths where whole figures would tell an open window as empty. */
export function edgeFigures(low_Nm: number, limit_Nm: number): { readonly low: string; readonly limit: string } {
  const [low, limit] = [atLeast(low_Nm), atMost(limit_Nm)];
  const misleading = low_Nm <= limit_Nm && Number(low) > Number(limit);
  return misleading ? { low: inTenths(low_Nm), limit: inTenths(limit_Nm) } : { low, limit };
}
