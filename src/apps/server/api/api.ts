import type { IncomingMessage } from "node:http";
import { type Context, Hono, type Next } from "hono";
import { bodyLimit } from "hono/body-limit";
import { bodyIn } from "./body.ts";
import { type Caller, callerOf, mayUse } from "./caller.ts";
import { changesRoute } from "./changesRoute.ts";
import { deviceRoutes } from "./deviceRoutes.ts";
import { faultAnswer } from "./faultAnswer.ts";
import { journalRoutes } from "./journalRoutes.ts";
import { openApiRoute } from "./openApi.ts";
import { photoRoutes } from "./photoRoutes.ts";
import { pinRoutes } from "./pinRoutes.ts";
import { allowance, type Rate } from "./rate.ts";
import { refused, refusedFor } from "./refusals.ts";
import type { Route } from "./route.ts";
import type { ServedWorkshop } from "./servedWorkshop.ts";

/** How much is answered: to each device, and to each address that shows no token that counts. */
export type Rates = { readonly device: Rate; readonly stranger: Rate };

/**
 * A hundred thousand entries are two hundred requests of five hundred, or at a thousand a second not two minutes one by one;
 * somebody who types a code needs a try now and then. Judgement.
 */
export const usualRates: Rates = {
  device: { atOnce: 5000, perSecond: 1000 },
  stranger: { atOnce: 30, perSecond: 1 },
};

/**
 * The workshop's journal as answers to requests below /api. `clock` gives milliseconds and is never set back; `report` is told every
 * fault of ours by its kind and place in the code, never by its words: they may hold what somebody wrote, or a token.
 */
export function api(
  served: ServedWorkshop,
  rates: Rates,
  clock: () => number,
  report: (line: string) => void = () => {},
): Hono {
  const described: readonly Route[] = [
    ...journalRoutes(served),
    ...photoRoutes(served),
    ...deviceRoutes(served),
    ...pinRoutes(served),
    changesRoute(served),
  ];
  const routes = [...described, openApiRoute(described)];
  const devices = allowance(rates.device, clock);
  const strangers = allowance(rates.stranger, clock);
  const app = new Hono();
  app.use(neverKept, sameOriginOnly);
  for (const it of routes)
    app.on(it.method.toUpperCase(), it.path, letIn(it), limitedTo(it.most_bytes), async (c) => {
      const brought = await bodyIn(c, it.body);
      if (!brought.ok) return brought.answer;
      return it.run({ c, caller: callerOn(c), body: brought.body, named: (name) => c.req.param(name) ?? "" });
    });
  for (const [path, methods] of methodsByPath(routes))
    app.all(path, () => refused("method", { methods }, { Allow: methods.join(", ") }));
  app.all("*", () => refused("not there"));
  app.onError((fault, c) => {
    const told = faultAnswer(fault) ?? (c.req.raw.signal.aborted ? gone() : null);
    if (told === null) report(`a fault of ours at ${c.req.method} ${c.req.path}: ${placeOf(fault)}`);
    return told ?? refused("fault");
  });
  return app;

  /** Lets through who may, as often as he may. Who shows a token that counts is not kept out by those who try others. */
  function letIn(it: Route) {
    return async (c: Context, next: Next): Promise<Response | undefined> => {
      // A stream would be begun for a HEAD, and nobody would ever read it.
      if (c.req.method === "HEAD") return refused("method", { methods: [it.method.toUpperCase()] });
      const caller = callerOf(c.req.header("authorization"), served.devices, served.key);
      if (caller.type === "workshop") return through(c, next, caller);
      const [counted, name] = caller.type === "device" ? [devices, caller.device] : [strangers, addressOf(c)];
      const wait_s = counted.wait_s(name);
      if (wait_s > 0) return refusedFor("too many", wait_s);
      if (mayUse(caller, it.who)) return through(c, next, caller);
      return caller.type === "anybody"
        ? refused("not paired", {}, { "WWW-Authenticate": "Bearer" })
        : refused("not allowed");
    };
  }
}

const CALLER = "caller";
const callerOn = (c: Context): Caller => c.get(CALLER);

async function through(c: Context, next: Next, caller: Caller): Promise<undefined> {
  c.set(CALLER, caller);
  await next();
}

const limitedTo = (most_bytes: number | null) =>
  most_bytes === null
    ? uncounted
    : bodyLimit({ maxSize: most_bytes, onError: () => refused("too large", { most_bytes }) });

const uncounted = (_: Context, next: Next): Promise<void> => next();

/** Unless it never changes: a photo is called by its bytes. */
async function neverKept(c: Context, next: Next): Promise<void> {
  await next();
  if (!c.res.headers.get("Cache-Control")?.includes("immutable")) c.res.headers.set("Cache-Control", "no-store");
}

/** A page from elsewhere may send what it likes to this machine, and could use up the tries of a code. */
async function sameOriginOnly(c: Context, next: Next): Promise<Response | undefined> {
  const origin = c.req.header("origin");
  const site = c.req.header("sec-fetch-site");
  const own = origin === undefined || origin === new URL(c.req.url).origin;
  if (!own || (site !== undefined && site !== "same-origin" && site !== "none")) return refused("origin");
  await next();
  return undefined;
}

/** The address of the other end; there is none where no socket is. */
const addressOf = (c: Context): string =>
  (c.env as { incoming?: IncomingMessage } | undefined)?.incoming?.socket.remoteAddress ?? "here";

function methodsByPath(routes: readonly Route[]): ReadonlyMap<string, readonly string[]> {
  const byPath = new Map<string, string[]>();
  for (const { path, method } of routes) byPath.set(path, [...(byPath.get(path) ?? []), method.toUpperCase()]);
  return byPath;
}

/** The kind of a fault and where it came up, without its message. */
const placeOf = ({ name, message, stack = "" }: Error): string =>
  `${name}${stack.replace(`${name}: ${message}`, "").replace(message, "")}`;

/** Nobody is there any more to hear it: the line was cut in the middle of the request. */
const gone = (): Response => refused("malformed", { place: "the body", problems: [] });
