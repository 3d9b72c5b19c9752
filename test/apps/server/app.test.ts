import { brotliDecompressSync, gunzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { serverApp } from "../../../src/apps/server/app.ts";
import { builtFiles } from "../../../src/apps/server/builtFiles.ts";
import { builtFolder, contents } from "./builtFolder.ts";

const app = serverApp({ files: builtFiles(builtFolder()), version: "9.8.7" });

type Asked = { readonly method?: string; readonly headers?: Record<string, string>; readonly base?: string };

const ask = (path: string, { method = "GET", headers = {}, base = "http://localhost:8746" }: Asked = {}) =>
  Promise.resolve(app.request(new Request(base + path, { method, headers: { host: new URL(base).host, ...headers } })));

/** As the issue states it, word for word. */
const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; worker-src 'self'; " +
  "connect-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

describe("every answer carries the strict headers", () => {
  test.each([
    ["the page", "/", {}, 200],
    ["a script", "/assets/app-1a2B_c-4.js", {}, 200],
    ["a page that is known already", "/", { headers: { "if-none-match": "*" } }, 304],
    ["health", "/health", {}, 200],
    ["nothing there", "/nowhere", {}, 404],
    ["another method", "/", { method: "POST" }, 405],
    ["a foreign name", "/", { base: "http://evil.example" }, 403],
    ["only the head", "/", { method: "HEAD" }, 200],
  ] as const)("%s", async (_, path, asked, status) => {
    const answer = await ask(path, asked);
    expect(answer.status).toBe(status);
    expect(answer.headers.get("content-security-policy")).toBe(policy);
    expect(answer.headers.get("x-content-type-options")).toBe("nosniff");
    expect(answer.headers.get("referrer-policy")).toBe("no-referrer");
    expect(answer.headers.get("cross-origin-opener-policy")).toBe("same-origin");
    expect(answer.headers.get("cross-origin-resource-policy")).toBe("same-origin");
    const features = (answer.headers.get("permissions-policy") ?? "").split(", ");
    expect(features).toContain("camera=(self)");
    expect(features).toContain("geolocation=()");
    expect(features.filter((it) => !it.endsWith("=()"))).toEqual(["camera=(self)"]);
  });

  test("a fault of ours too, and it tells nothing of the inside", async () => {
    const files = new Map(builtFiles(builtFolder()));
    const broken = { ...files.get("/index.html")!, bytes: null! };
    const faulty = serverApp({ files: new Map([["/index.html", broken]]), version: "1" });
    const answer = await faulty.request(new Request("http://localhost/", { headers: { host: "localhost" } }));
    expect([answer.status, await answer.text()]).toEqual([
      500,
      "A fault of ours: the request could not be answered.\n",
    ]);
    expect(answer.headers.get("content-security-policy")).toBe(policy);
  });
});

describe("who is answered", () => {
  test.each([
    "http://localhost:8746",
    "http://localhost",
    "http://LOCALHOST:1",
    "http://127.0.0.1:8746",
    "http://[::1]:8746",
  ])("%s is this machine", async (base) => {
    expect((await ask("/", { base })).status).toBe(200);
  });

  test.each([
    "evil.example",
    "localhost.evil.example",
    "evil.example:8746",
    "localhost.",
    "127.0.0.1.nip.example",
    "127.0.0.2",
    "192.168.1.20:8746",
    "[::2]",
    "0.0.0.0",
    "localhost:8746@evil.example",
    "",
  ])("Host: %s is not", async (host) => {
    const answer = await ask("/", { headers: { host } });
    expect([answer.status, await answer.text()]).toEqual([
      403,
      "This server answers only to localhost, 127.0.0.1 and [::1].\n",
    ]);
  });

  test("a whole address in the request line counts as well as the Host header", async () => {
    const request = new Request("http://evil.example/", { headers: { host: "localhost:8746" } });
    expect((await app.request(request)).status).toBe(403);
  });

  test.each(["POST", "PUT", "PATCH", "DELETE", "OPTIONS", "PROPFIND"])("%s is not", async (method) => {
    for (const path of ["/", "/health", "/nowhere"]) {
      const answer = await ask(path, { method });
      expect([answer.status, answer.headers.get("allow")]).toEqual([405, "GET, HEAD"]);
    }
  });
});

describe("what is answered", () => {
  test.each([
    ["/", "index.html", "text/html; charset=utf-8"],
    ["/index.html", "index.html", "text/html; charset=utf-8"],
    ["/?from=elsewhere", "index.html", "text/html; charset=utf-8"],
    ["/assets/app-1a2B_c-4.js", "assets/app-1a2B_c-4.js", "text/javascript; charset=utf-8"],
    ["/assets/app-Zz09xY12.css", "assets/app-Zz09xY12.css", "text/css; charset=utf-8"],
    ["/assets/letters-00aa11bb.woff2", "assets/letters-00aa11bb.woff2", "font/woff2"],
    ["/assets/port-00aa11bb.svg", "assets/port-00aa11bb.svg", "image/svg+xml"],
    ["/bench.webmanifest", "bench.webmanifest", "application/manifest+json"],
    ["/odd.xyz", "odd.xyz", "application/octet-stream"],
  ])("%s is %s as %s", async (path, name, type) => {
    const answer = await ask(path);
    expect([answer.status, answer.headers.get("content-type")]).toEqual([200, type]);
    expect(await answer.text()).toBe(contents[name]);
    expect(answer.headers.get("content-length")).toBe(String(contents[name]?.length));
  });

  test("HEAD is GET without the body", async () => {
    const [head, get] = [await ask("/", { method: "HEAD" }), await ask("/")];
    expect(await head.text()).toBe("");
    expect([...head.headers]).toEqual([...get.headers]);
  });

  test("/health tells the version and is not kept", async () => {
    const answer = await ask("/health");
    expect(await answer.json()).toEqual({ status: "ok", version: "9.8.7" });
    expect(answer.headers.get("cache-control")).toBe("no-store");
  });

  test.each([
    ["/nowhere"],
    ["/assets"],
    ["/assets/"],
    ["/index.html/"],
    ["/.hidden"],
    ["/%2ehidden"],
    ["/../secret.txt"],
    ["/%2e%2e/secret.txt"],
    ["/%2e%2e%2fsecret.txt"],
    ["/..%5csecret.txt"],
    ["/..\\secret.txt"],
    ["/assets/..%2f..%2fsecret.txt"],
    ["/assets/%2e%2e/%2e%2e/secret.txt"],
    ["/assets/....//....//secret.txt"],
    ["/%252e%252e/secret.txt"],
    ["//secret.txt"],
    ["//etc/passwd"],
    ["/%2fetc%2fpasswd"],
    ["/C:%5cWindows%5cwin.ini"],
    ["/file:%2f%2f%2fetc%2fpasswd"],
    ["/index.html%00"],
    ["/index.html%00.txt"],
    ["/%00"],
    ["/%"],
    ["/%c0%ae%c0%ae/secret.txt"],
    ["/constructor"],
    ["/__proto__"],
  ])("%s is nothing: a plain sentence, and nothing of the disk", async (path) => {
    const answer = await ask(path);
    expect(answer.status).toBe(404);
    expect(answer.headers.get("content-type")).toMatch(/^text\/plain/);
    expect(await answer.text()).toBe("There is nothing at this address; the bench is at /.\n");
  });
});

describe("how it travels", () => {
  const script = "/assets/app-1a2B_c-4.js";

  test.each([
    ["gzip, deflate, br", "br"],
    ["gzip", "gzip"],
    ["br;q=0, gzip", "gzip"],
    ["BR;Q=0.1", "br"],
    ["*", "br"],
    ["*, br;q=0", "gzip"],
    ["deflate", null],
    ["identity", null],
    ["gzip;q=0", null],
  ])("Accept-Encoding: %s gives %s", async (accepted, wanted) => {
    const answer = await ask(script, { headers: { "accept-encoding": accepted } });
    expect(answer.headers.get("content-encoding")).toBe(wanted);
    expect(answer.headers.get("vary")).toBe("Accept-Encoding");
    const bytes = Buffer.from(await answer.arrayBuffer());
    const unpacked = wanted === "br" ? brotliDecompressSync(bytes) : wanted === "gzip" ? gunzipSync(bytes) : bytes;
    expect(unpacked.toString()).toBe(contents["assets/app-1a2B_c-4.js"]);
    expect(answer.headers.get("content-length")).toBe(String(bytes.length));
  });

  test("what is small already is not packed again", async () => {
    for (const path of ["/assets/letters-00aa11bb.woff2", "/assets/app-Zz09xY12.css"])
      expect((await ask(path, { headers: { "accept-encoding": "br" } })).headers.get("content-encoding")).toBeNull();
  });

  test("names that change with their content are kept for ever, all others asked for again", async () => {
    const kept = async (path: string) => (await ask(path)).headers.get("cache-control");
    for (const path of [script, "/assets/app-Zz09xY12.css", "/assets/letters-00aa11bb.woff2"])
      expect(await kept(path)).toBe("public, max-age=31536000, immutable");
    for (const path of ["/", "/index.html", "/bench.webmanifest"]) expect(await kept(path)).toBe("no-cache");
  });

  test("asked again with its tag, it is not sent twice; packed otherwise, it has another tag", async () => {
    const tag = async (accepted: string) =>
      (await ask(script, { headers: { "accept-encoding": accepted } })).headers.get("etag") ?? "";
    const [packed, plain] = [await tag("br"), await tag("identity")];
    expect(packed).not.toBe(plain);
    const again = await ask(script, { headers: { "accept-encoding": "br", "if-none-match": `"other", W/${packed}` } });
    expect([again.status, await again.text(), again.headers.get("etag")]).toEqual([304, "", packed]);
    const other = await ask(script, { headers: { "accept-encoding": "br", "if-none-match": plain } });
    expect(other.status).toBe(200);
  });
});
