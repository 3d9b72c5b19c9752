/** The part of JSON Schema (draft 2020-12) that the schema of a case is written in. */
export type JsonSchema = {
  readonly type?: string | readonly string[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly JsonSchema[];
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean | JsonSchema;
  readonly propertyNames?: JsonSchema;
  readonly items?: JsonSchema;
  readonly $schema?: string;
  readonly description?: string;
};

const known = new Set(
  "type const enum anyOf properties required additionalProperties propertyNames items $schema description".split(" "),
);

/** Whether a schema accepts a value. @throws Error on a keyword that is not known here, so that none is passed over. */
export function accepts(schema: JsonSchema, value: unknown): boolean {
  for (const keyword of Object.keys(schema)) if (!known.has(keyword)) throw new Error(`the keyword ${keyword}`);
  if (schema.type !== undefined && ![schema.type].flat().some((it) => isOfType(it, value))) return false;
  if (schema.const !== undefined && schema.const !== value) return false;
  if (schema.enum && !schema.enum.includes(value)) return false;
  if (schema.anyOf && !schema.anyOf.some((it) => accepts(it, value))) return false;
  if (Array.isArray(value)) return value.every((it) => accepts(schema.items ?? {}, it));
  if (typeof value !== "object" || value === null) return true;
  const { properties = {}, required = [], additionalProperties = true } = schema;
  if (!required.every((key) => key in value)) return false;
  return Object.entries(value).every(([key, inner]) => {
    const own = properties[key];
    if (own) return accepts(own, inner);
    return typeof additionalProperties === "boolean" ? additionalProperties : accepts(additionalProperties, inner);
  });
}

function isOfType(type: string, value: unknown): boolean {
  if (type === "array") return Array.isArray(value);
  if (type === "object") return typeof value === "object" && value !== null && !Array.isArray(value);
  return typeof value === type;
}
