import { remedyIds } from "../../../mechanics/remedies/method.ts";
import { benchFields } from "./benchFields.ts";
import { type Texts, withoutPlace } from "./benchTexts.ts";

/** A case as somebody would have typed it on the bench: bare figures beside their units. What the bench does not ask is left out. */
export const caseTexts = (written: object): Texts => flattened(written, "");

function flattened(value: unknown, name: string): Texts {
  const field = benchFields[withoutPlace(name)];
  if (field?.type === "several") return { [name]: (value as readonly string[]).join(",") || field.none };
  if (name === "asked.pressure" && value !== "none") return { [name]: "yes", ...flattened(value, `${name}.value`) };
  if (typeof value === "object" && value !== null) return field ? answered(value, name) : parts(value, name);
  if (!field) return {};
  if (typeof value === "boolean") return { [name]: value ? "yes" : "no" };
  const text = String(value);
  if (field.type === "choice" && !field.choices.includes(text)) return {};
  if (field.type === "remedy" && !remedyIds.some((it) => it === text)) return {};
  return { [name]: field.type === "number" && field.unit !== "" ? text.replace(` ${field.unit}`, "") : text };
}

const parts = (value: object, name: string): Texts =>
  Object.assign(
    {},
    ...Object.entries(value).map(([key, inner]) => flattened(inner, name === "" ? key : `${name}.${key}`)),
  );

/** A reading with how it is known; of an earlier repair the yes, and what is known of it. */
function answered(value: object, name: string): Texts {
  if (name === "asked.repairedBefore") return { [name]: "yes", ...parts(value, name) };
  if (!("value" in value)) return {};
  const how = "how" in value ? { [`${name}.how`]: String(value.how) } : {};
  return { ...flattened(value.value, name), ...how };
}
