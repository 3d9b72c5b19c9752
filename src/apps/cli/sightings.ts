import { parse } from "csv-parse/sync";
import type { LevelSighting } from "../../mechanics/fluid/limitDistance.ts";
import { exact } from "../../mechanics/quantity/quantity.ts";
import { km, mm } from "../../mechanics/quantity/unit.ts";
import { textIn } from "./files.ts";
import { mistaken } from "./mistake.ts";

/** Levels below the lip on the way, from a CSV with the columns distance_km and below_mm. */
export function sightingsIn(file: string): readonly LevelSighting[] {
  const rows = rowsOf(file);
  if (rows.length < 2) throw mistaken("readings.csv", file, "at least two readings below the line of column names");
  return rows.map(({ distance_km = "", below_mm = "" }, i) => ({
    at: exact("x", figure(`line ${i + 2}, distance_km`, distance_km), km, "meter"),
    below: exact("y", figure(`line ${i + 2}, below_mm`, below_mm), mm, "level reading"),
  }));
}

function rowsOf(file: string): readonly Record<string, string>[] {
  const text = textIn("readings.csv", file);
  try {
    return parse(text, { columns: true, comment: "#", skip_empty_lines: true, trim: true, bom: true });
  } catch (cause) {
    throw mistaken("readings.csv", file, `CSV with the columns distance_km, below_mm; ${(cause as Error).message}`);
  }
}

function figure(field: string, text: string): number {
  if (!/^-?\d+([.,]\d+)?$/.test(text)) throw mistaken(field, text, "a plain number, as 12.5");
  return Number(text.replace(",", "."));
}
