import type * as z from "zod/mini";
import { anyOf, type InputProblem } from "../words/problemWords.ts";
import { nearest } from "./nearest.ts";

/** The mistakes of a document against its schema, each with its field, what was given, and what is accepted. */
export function schemaProblems(schema: z.ZodMiniType, given: unknown): readonly InputProblem[] {
  const read = schema.safeParse(given);
  if (read.success) return [];
  return read.error.issues.map((issue): InputProblem => {
    const field = fieldName(issue.path);
    if (issue.code !== "unrecognized_keys")
      return { field, given: asGiven(at(given, issue.path)), accepted: issue.message };
    const key = issue.keys[0] ?? "";
    const known = keysAt(schema, issue.path);
    const close = nearest(key, known);
    return {
      field: fieldName([...issue.path, key]),
      given: "a key that is not known here",
      accepted: close ? `"${close}"` : anyOf(known.map((it) => `"${it}"`)),
    };
  });
}

/** What somebody gave, short enough for one line. */
export function asGiven(value: unknown): string {
  if (value === undefined) return "nothing";
  const text = JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

/** "wrenches[0].least". */
const fieldName = (path: readonly PropertyKey[]): string =>
  path.reduce<string>(
    (name, key) => (typeof key === "number" ? `${name}[${key}]` : name === "" ? String(key) : `${name}.${String(key)}`),
    "",
  ) || "case";

function at(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (inner, key) =>
      typeof inner === "object" && inner !== null ? (inner as Record<PropertyKey, unknown>)[key] : undefined,
    value,
  );
}

/** The keys that a schema knows at a path, through optionals, lists and alternatives. */
function keysAt(schema: z.ZodMiniType, path: readonly PropertyKey[]): readonly string[] {
  const { innerType, element, options, shape } = schema._zod.def as Definition;
  const [key, ...rest] = path;
  if (innerType) return keysAt(innerType, path);
  if (options) return options.flatMap((it) => keysAt(it, path));
  if (element) return key === undefined ? [] : keysAt(element, rest);
  if (!shape) return [];
  if (key === undefined) return Object.keys(shape);
  const inner = shape[String(key)];
  return inner ? keysAt(inner, rest) : [];
}

/** The parts of a schema's definition that lead further in. */
type Definition = {
  readonly innerType?: z.ZodMiniType;
  readonly element?: z.ZodMiniType;
  readonly options?: readonly z.ZodMiniType[];
  readonly shape?: Readonly<Record<string, z.ZodMiniType>>;
};
