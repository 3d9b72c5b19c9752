import { X509Certificate } from "node:crypto";
import { type Context, Hono } from "hono";
import { withStrictHeaders } from "../strictHeaders.ts";
import { fingerprint } from "./fingerprint.ts";
import { trustPage, trustStyle } from "./trustPage.ts";

/** What a telephone has to know to trust the server, at the moment of asking; null where it needs nothing of ours. */
export type Trust = () => { readonly authority: string | null; readonly addresses: readonly string[] };

/** A page that says how a telephone comes to trust this server, and the certificate of its authority; never the key. */
export function trustRoutes(trust: Trust): Hono {
  const app = new Hono();
  app.get("/trust", (c) => {
    const { authority, addresses } = trust();
    return c.html(trustPage(authority === null ? null : fingerprint(authority), addresses), 200, asked);
  });
  app.get("/trust.css", (c) => c.body(trustStyle, 200, { ...asked, "Content-Type": "text/css; charset=utf-8" }));
  app.get("/authority.crt", (c) => {
    const { authority } = trust();
    if (authority === null) return c.notFound();
    return c.body(new Uint8Array(new X509Certificate(authority).raw), 200, {
      ...asked,
      "Content-Type": "application/x-x509-ca-cert",
      "Content-Disposition": 'attachment; filename="turnsleft-authority.crt"',
    });
  });
  return app;
}

const asked = { "Cache-Control": "no-store" };

/** What those are told who do not come by HTTPS: how they can. Nothing of the workshop goes over a line that is not closed. */
export function plainApp(trust: Trust): Hono {
  const app = new Hono();
  app.use(withStrictHeaders);
  app.route("/", trustRoutes(trust));
  const toTrust = (c: Context): Response => c.redirect("/trust", 303);
  app.all("*", toTrust);
  return app;
}
