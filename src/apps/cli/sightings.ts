import { parse } from "csv-parse/sync";
import type { LevelSighting } from "../../mechanics/fluid/limitDistance.ts";
import { exact, type Quantity } from "../../mechanics/quantity/quantity.ts";
import { d, km, mm } from "../../mechanics/quantity/unit.ts";
import { daysBetween } from "../../mechanics/service/dueDate.ts";
import { textIn } from "./files.ts";
import { mistaken } from "./mistake.ts";
import { dayOption } from "./readings.ts";

/** Levels below the lip on the way: by distance, or by days from the `first` of them. */
export type Sightings = { readonly sightings: readonly LevelSighting[]; readonly first: string | null };

/** From a CSV with the columns distance_km and below_mm, or on (a day) and below_mm. @throws InputMistake */
export function sightingsIn(file: string): Sightings {
  const rows = rowsOf(file);
  if (rows.length < 2) throw mistaken("readings.csv", file, "at least two readings below the line of column names");
  const below = (row: Record<string, string>, i: number): Quantity =>
    exact("y", figure(`line ${i + 2}, below_mm`, row["below_mm"] ?? ""), mm, "level reading");
  if (rows[0] && "on" in rows[0]) {
    const days = rows.map(({ on = "" }, i) => dayOption(`line ${i + 2}, on`, on));
    const first = days.toSorted()[0] ?? "";
    const since = (on: string): Quantity => exact("x", daysBetween(first, on), d, "day of the reading");
    return { first, sightings: rows.map((row, i) => ({ at: since(days[i] ?? ""), below: below(row, i) })) };
  }
  const sightings = rows.map((row, i) => ({
    at: exact("x", figure(`line ${i + 2}, distance_km`, row["distance_km"] ?? ""), km, "meter"),
    below: below(row, i),
  }));
  return { first: null, sightings };
}

function rowsOf(file: string): readonly Record<string, string>[] {
  const text = textIn("readings.csv", file);
  try {
    return parse(text, { columns: true, comment: "#", skip_empty_lines: true, trim: true, bom: true });
  } catch (cause) {
    throw mistaken(
      "readings.csv",
      file,
      `CSV with the columns distance_km, below_mm, or on, below_mm; ${(cause as Error).message}`,
    );
  }
}

function figure(field: string, text: string): number {
  if (!/^-?\d+([.,]\d+)?$/.test(text)) throw mistaken(field, text, "a plain number, as 12.5");
  return Number(text.replace(",", "."));
}
