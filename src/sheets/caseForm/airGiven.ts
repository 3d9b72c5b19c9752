import { humidityByFeel, humidityFelt, humidityRead } from "../../mechanics/cure/air.ts";
import type { Quantity } from "../../mechanics/quantity/quantity.ts";
import { quantityFromText } from "../../mechanics/quantity/quantityText.ts";
import type { BayAir } from "../../mechanics/remedies/portCase.ts";
import type { InputProblem } from "../words/problemWords.ts";
import type { WrittenCase } from "./caseSchema.ts";
import type { FieldReader } from "./givenQuantity.ts";

const temperature = {
  name: "air.temperature",
  symbol: "T",
  kind: "temperature",
  ordinarily: "contact probe",
  example: "12 °C",
} as const;

/** The air in the bay: off a gauge, or by three pictures. */
export function airGiven({ air = {} }: WrittenCase, take: FieldReader, problems: InputProblem[]): BayAir {
  return { temperature: take(temperature, air.temperature), humidity: humidityGiven(air.humidity, problems) };
}

function humidityGiven(text: string | undefined, problems: InputProblem[]): Quantity | null {
  if (text === undefined) return null;
  if (text === "dry" || text === "normal" || text === "damp") return humidityFelt(text, "air.humidity");
  const read = quantityFromText(text, "plain number");
  const share = read.ok ? read.written.value * read.written.unit.inSI : Number.NaN;
  if (share > 0 && share <= 1) return humidityRead(100 * share, "air.humidity");
  problems.push({
    field: "air.humidity",
    given: `"${text}"`,
    accepted: `a share up to 100 %, as "65 %", or ${Object.keys(humidityByFeel).join(", ")}`,
  });
  return null;
}
