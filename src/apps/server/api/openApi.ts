import * as z from "zod/mini";
import { entrySchema } from "../../../journal/entry.ts";
import { ownerCard } from "../../../journal/ownerCards.ts";
import { pairedDevice } from "../../../stores/pairedDevices.ts";
import { type RefusalKind, refusals } from "./refusals.ts";
import { type Route, route, type Schema } from "./route.ts";

/** What any request may be refused with, before it is looked at any closer. */
const always: readonly RefusalKind[] = ["host", "origin", "too many", "fault"];
const withBody: readonly RefusalKind[] = ["malformed", "media type", "too large"];

const kinds = Object.keys(refusals) as [RefusalKind, ...RefusalKind[]];
const refusal = z.looseObject({ error: z.enum(kinds), sentence: z.string() });

/** The description of these routes, by OpenAPI 3.1: made of the very schemas that requests are read with. */
export function openApiRoute(routes: readonly Route[]): Route {
  let document: object | null = null;
  const own: Route = route({
    method: "get",
    path: "/openapi.json",
    title: "This description",
    who: "anybody",
    body: null,
    status: 200,
    answer: z.looseObject({ openapi: z.string() }),
    refusals: [],
    run: ({ c }) => {
      document ??= openApi([...routes, own]);
      return c.json(document);
    },
  });
  return own;
}

function openApi(routes: readonly Route[]): object {
  const named = z.registry<{ id: string }>();
  named.add(entrySchema, { id: "Entry" });
  named.add(ownerCard, { id: "OwnerCard" });
  named.add(pairedDevice, { id: "PairedDevice" });
  named.add(refusal, { id: "Refusal" });
  for (const it of routes) {
    // What two routes have in common keeps its first name.
    for (const [part, schema] of [["Body", it.described] as const, ["Answer", it.answer] as const])
      if (schema !== null && typeof schema !== "string" && !named.has(schema))
        named.add(schema, { id: `${idOf(it)}${part}` });
  }
  const referTo = (id: string): string => `#/components/schemas/${id}`;
  const { schemas } = z.toJSONSchema(named, { io: "input", unrepresentable: "any", uri: referTo });
  const reference = (schema: Schema): object => ({ $ref: referTo(named.get(schema)?.id ?? "") });
  return {
    openapi: "3.1.0",
    info: { title: "The journal of a workshop", version: "1" },
    servers: [{ url: "/api" }],
    security: [{ paired: [] }],
    paths: pathsOf(routes, reference),
    components: {
      securitySchemes: { paired: { type: "http", scheme: "bearer", description: "the token told by POST /devices" } },
      schemas: Object.fromEntries(Object.entries(schemas).map(([id, schema]) => [id, bare(schema)])),
    },
  };
}

/** Where a schema lies is said by its place in the document. */
const bare = ({ $id: _, $schema: __, ...schema }: Record<string, unknown>): object => schema;

function pathsOf(routes: readonly Route[], reference: (schema: Schema) => object): object {
  const paths: Record<string, Record<string, object>> = {};
  for (const it of routes) {
    const path = it.path.replace(/:(\w+)/g, "{$1}");
    paths[path] = { ...paths[path], [it.method]: operation(it, reference) };
  }
  return paths;
}

function operation(it: Route, reference: (schema: Schema) => object): object {
  const parts = [...it.path.matchAll(/:(\w+)/g)].map(([, name]) => name);
  return {
    operationId: idOf(it),
    summary: it.title,
    ...(it.who === "anybody" ? { security: [] } : {}),
    ...(it.who === "workshop" ? { description: "Only by the key of the workshop's own screen." } : {}),
    parameters: parts.map((name) => ({ name, in: "path", required: true, schema: { type: "string" } })),
    ...brought(it, reference),
    responses: { [it.status]: answered(it, reference), ...refused(it, reference(refusal)) },
  };
}

function brought({ described, raw }: Route, reference: (schema: Schema) => object): object {
  if (described === null && raw === null) return {};
  const content = raw === null ? { "application/json": { schema: described && reference(described) } } : { [raw]: {} };
  return { requestBody: { required: true, content } };
}

function answered({ answer }: Route, reference: (schema: Schema) => object): object {
  if (answer === null) return { description: "Done" };
  if (typeof answer === "string")
    return { description: "A stream", content: { [answer]: { schema: { type: "string" } } } };
  return { description: "Done", content: { "application/json": { schema: reference(answer) } } };
}

/** The refusals of a route by their statuses; several may share one. */
function refused({ refusals: own, body, who }: Route, schema: object): object {
  const letIn: readonly RefusalKind[] =
    who === "anybody" ? [] : who === "device" ? ["not paired"] : ["not paired", "not allowed"];
  const byStatus = new Map<number, RefusalKind[]>();
  for (const kind of [...always, ...letIn, ...(body === null ? [] : withBody), ...own]) {
    const [status] = refusals[kind];
    byStatus.set(status, [...(byStatus.get(status) ?? []), kind]);
  }
  return Object.fromEntries(
    [...byStatus].map(([status, kinds]) => [
      status,
      {
        description: [...new Set(kinds)].map((kind) => `${kind}: ${refusals[kind][1]}`).join(" "),
        content: { "application/json": { schema } },
      },
    ]),
  );
}

/** As "postEntries", "getJobsByJob". */
const idOf = ({ method, path }: Route): string =>
  method +
  path
    .replace(/:(\w)/g, (_, first: string) => `by${first.toUpperCase()}`)
    .split(/[^A-Za-z]+/)
    .map((word) => word.slice(0, 1).toUpperCase() + word.slice(1))
    .join("");
