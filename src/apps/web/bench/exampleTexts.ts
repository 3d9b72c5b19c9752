import { exampleCase } from "../../../sheets/caseForm/exampleCase.ts";
import { benchFields } from "./benchFields.ts";
import { type Texts, withoutPlace } from "./benchTexts.ts";

/** The worked example as somebody would have typed it here: bare figures beside their units. */
export const exampleTexts = (): Texts => flattened(exampleCase, "");

/** The day of the worked example: its wrenches are in date on that day. */
export const exampleDay: string = exampleCase.today;

function flattened(value: unknown, name: string): Texts {
  const field = benchFields[withoutPlace(name)];
  if (field?.type === "several") return { [name]: (value as readonly string[]).join(",") || field.none };
  if (typeof value === "object" && value !== null)
    return Object.fromEntries(
      Object.entries(value).flatMap(([key, inner]) =>
        Object.entries(flattened(inner, name === "" ? key : `${name}.${key}`)),
      ),
    );
  if (!field) return {};
  if (typeof value === "boolean") return { [name]: value ? "yes" : "no" };
  const text = String(value);
  return { [name]: field.type === "number" && field.unit !== "" ? text.replace(` ${field.unit}`, "") : text };
}
