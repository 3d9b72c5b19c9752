import { type OilBase, oilBases, type SupposedOil, supposedOil } from "../../mechanics/fluid/gradesRange.ts";
import { type GradeLabel, gradeFromText } from "../../mechanics/fluid/gradesText.ts";
import { d341Limits, outside } from "../../mechanics/fluid/viscosityLimits.ts";
import type { Quantity } from "../../mechanics/quantity/quantity.ts";
import { type GearGradeEdition, gearGradeEditions } from "../../mechanics/tables/saeJ306.ts";
import { acceptedLabel, acceptedOil, limitsText } from "../../sheets/words/fluidWords.ts";
import { anyOf } from "../../sheets/words/problemWords.ts";
import { mistaken } from "./mistake.ts";
import { quantityOption } from "./options.ts";

/** A kinematic viscosity given as an option; a bare number is mm²/s here, as data sheets print it. */
export function viscosityOption(name: string, symbol: string, text: string): Quantity {
  const bare = /^\s*[+−-]?[\d.,]+\s*$/.test(text);
  const read = quantityOption(name, symbol, "kinematic viscosity", "15", bare ? `${text} mm²/s` : text);
  const problem = outside(read, d341Limits);
  if (problem) throw mistaken(name, text, limitsText(problem));
  return read;
}

/** A grade as a can names it. @throws InputMistake if the text names none. */
export function labelOption(name: string, text: string): GradeLabel {
  const read = gradeFromText(text);
  if (!read.ok) throw mistaken(name, text, acceptedLabel(read.problem));
  return read.label;
}

/** The edition of SAE J306 asked for, the newest where none is. @throws InputMistake if there is no such edition. */
export function editionOption(text: string | undefined): GearGradeEdition {
  const edition = text === undefined ? gearGradeEditions[0] : gearGradeEditions.find((it) => it === text);
  if (!edition) throw mistaken("--edition", text ?? null, anyOf(gearGradeEditions));
  return edition;
}

/** What the oil is made of, unknown where nobody says. @throws InputMistake if there is no such base. */
export function baseOption(text: string | undefined): OilBase {
  const base = text === undefined ? "unknown" : oilBases.find((it) => it === text);
  if (!base) throw mistaken("--base", text ?? null, anyOf(oilBases));
  return base;
}

/** What a label lets one suppose of its oil. @throws InputMistake if the label leaves an end open. */
export function supposedOption(name: string, text: string, base: OilBase, edition: GearGradeEdition): SupposedOil {
  const read = supposedOil(labelOption(name, text), base, edition, name);
  if (!read.ok) throw mistaken(name, text, acceptedOil(read.problem));
  return read.oil;
}
