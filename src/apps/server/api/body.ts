import type { Context } from "hono";
import { problemsOf } from "../../../journal/parse.ts";
import { refused } from "./refusals.ts";
import type { Schema } from "./route.ts";

/** What a request brings, read as it has to be, or why not. */
export type Brought = { readonly ok: true; readonly body: unknown } | { readonly ok: false; readonly answer: Response };

/** Reads a body of JSON. @throws if the connection is lost in the middle of it */
export async function bodyIn(c: Context, schema: Schema | null): Promise<Brought> {
  if (schema === null) return { ok: true, body: null };
  if (!/^application\/json\s*(;|$)/i.test(c.req.header("content-type") ?? "")) return no(refused("media type"));
  const bytes = await c.req.arrayBuffer();
  let document: unknown;
  try {
    document = JSON.parse(utf8.decode(bytes));
  } catch {
    const problems = [{ field: "the whole", accepted: "JSON in UTF-8" }];
    return no(refused("malformed", { place: "the body", problems }));
  }
  const read = schema.safeParse(document);
  if (read.success) return { ok: true, body: read.data };
  return no(refused("malformed", { place: "the body", problems: problemsOf(read.error) }));
}

const no = (answer: Response): Brought => ({ ok: false, answer });

/** What is no UTF-8 is refused: put right silently, it would be another entry than the one that was written. */
const utf8 = new TextDecoder("utf-8", { fatal: true });
