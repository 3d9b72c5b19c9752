import type { Context } from "hono";
import type * as z from "zod/mini";
import type { Caller } from "./caller.ts";
import type { RefusalKind } from "./refusals.ts";

export type Schema = z.ZodMiniType;

/** One thing that can be asked for: the only statement of it, from which it is answered and described. */
export type Route = {
  readonly method: "get" | "post" | "put" | "delete";
  /** Below /api, with `:name` for a part that names something. */
  readonly path: `/${string}`;
  readonly title: string;
  readonly who: Caller["type"];
  /** What the body has to be, null for none. */
  readonly body: Schema | null;
  /** The same as it is described, where what is inside is checked further on. */
  readonly described: Schema | null;
  /** The media type of a body that is no JSON and is taken as it comes; null for none. */
  readonly raw: string | null;
  /** The largest body; null for a route that takes it as it comes and counts it itself. */
  readonly most_bytes: number | null;
  readonly status: 200 | 201 | 204;
  /** What is answered; null for nothing, a text for what is no JSON. */
  readonly answer: Schema | string | null;
  readonly refusals: readonly RefusalKind[];
  readonly run: (asked: Asked<unknown>) => Promise<Response> | Response;
};

/** One request whose body is as it has to be. */
export type Asked<Body> = {
  readonly c: Context;
  readonly caller: Caller;
  readonly body: Body;
  /** The part of the path that is called so. */
  readonly named: (name: string) => string;
};

type Described<Body extends Schema | null> = Omit<Route, "run" | "body" | "described" | "raw" | "most_bytes"> & {
  readonly body: Body;
  readonly described?: Schema;
  readonly raw?: string;
  readonly most_bytes?: number | null;
  readonly run: (asked: Asked<Body extends Schema ? z.infer<Body> : null>) => Promise<Response> | Response;
};

/** A body is small unless it is told otherwise. */
const SMALL_bytes = 4096;

export const route = <Body extends Schema | null>(it: Described<Body>): Route => ({
  described: it.body,
  raw: null,
  most_bytes: SMALL_bytes,
  ...it,
  run: it.run as Route["run"],
});
