import { parse } from "csv-parse/sync";
import { exact, type Quantity } from "../../mechanics/quantity/quantity.ts";
import { quantityFromText } from "../../mechanics/quantity/quantityText.ts";
import type { MeterReading } from "../../mechanics/service/dueUse.ts";
import { acceptedQuantity } from "../../sheets/words/problemWords.ts";
import { textIn } from "./files.ts";
import { mistaken } from "./mistake.ts";
import { dayOption } from "./readings.ts";

/** A reading of a meter with the text and the line that it was written in. */
export type WrittenReading = MeterReading & { readonly text: string; readonly line: number };

/** Readings of one meter, from a CSV with the columns on (a day) and meter (a distance or hours). @throws InputMistake */
export function meterReadingsIn(file: string): readonly WrittenReading[] {
  const rows = rowsOf(file);
  for (const column of ["on", "meter"])
    if (rows[0] && !(column in rows[0])) throw mistaken("--meter", file, "the columns on, meter");
  if (rows.length < 2) throw mistaken("--meter", file, "at least two readings below the line of column names");
  return rows.map(({ on = "", meter = "", line = "" }) => ({
    on: dayOption(`line ${line}, on`, on),
    meter: meterOf(`line ${line}, meter`, meter),
    text: meter,
    line: Number(line),
  }));
}

function rowsOf(file: string): readonly Record<string, string>[] {
  const text = textIn("--meter", file);
  try {
    const rows: readonly { readonly record: Record<string, string>; readonly info: { readonly lines: number } }[] =
      parse(text, { columns: true, comment: "#", skip_empty_lines: true, trim: true, bom: true, info: true });
    return rows.map(({ record, info }) => ({ ...record, line: String(info.lines) }));
  } catch (cause) {
    throw mistaken("--meter", file, `CSV with the columns on, meter; ${(cause as Error).message}`);
  }
}

/** A unit is asked for: a meter that was read without one is the commonest slip. */
function meterOf(field: string, text: string): Quantity {
  const read = quantityFromText(text, null);
  if (!read.ok) throw mistaken(field, text, acceptedQuantity(read.problem, '"84210 km", "52325 mi" or "640 h"'));
  const { value, unit } = read.written;
  if ((unit.kind !== "length" && unit.kind !== "time") || value < 0)
    throw mistaken(field, text, 'a distance or hours, as "84210 km", "52325 mi" or "640 h"');
  return exact(unit.kind === "time" ? "h" : "x", value, unit, "meter");
}
