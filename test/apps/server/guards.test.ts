import { connect } from "node:net";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { usualRates } from "../../../src/apps/server/api/api.ts";
import { allowance } from "../../../src/apps/server/api/rate.ts";
import { note } from "../../stores/storeContract.ts";
import { type ServedHere, servedHere } from "./servedHere.ts";

let here: ServedHere;
let token: string;
beforeAll(async () => {
  here = await servedHere();
  ({ token } = await here.paired());
});
afterAll(() => here.close());

const raw = (path: string, init: RequestInit = {}) =>
  fetch(here.address + path, { ...init, headers: { authorization: `Bearer ${token}`, ...init.headers } });

test("every answer is under the strict headers and is never kept, also a refusal", async () => {
  const answers = [
    await raw("api/heads"),
    await raw("api/nowhere"),
    await raw("api/heads", { headers: { authorization: "" } }),
    await raw("api/heads", { method: "PUT" }),
    await raw("api/entries", { method: "POST", body: "{" }),
    await raw("api/heads", { headers: { origin: "http://evil.example" } }),
  ];
  expect(answers.map(({ status }) => status)).toEqual([200, 404, 401, 405, 415, 403]);
  for (const { headers } of answers) {
    expect(headers.get("cache-control")).toBe("no-store");
    expect(headers.get("content-security-policy")).toMatch(/^default-src 'none'/);
    expect(headers.get("x-content-type-options")).toBe("nosniff");
    expect(headers.get("content-type")).toMatch(/^application\/json/);
    expect(headers.get("access-control-allow-origin")).toBeNull();
  }
});

test("a page from elsewhere is not answered, and cannot use up the tries of a code", async () => {
  const code = here.newCode();
  for (const headers of [{ origin: "http://evil.example" }, { origin: "null" }, { "sec-fetch-site": "cross-site" }])
    for (let i = 0; i < 6; i++) {
      const body = JSON.stringify({ code: "000000", name: "a" });
      const init = { method: "POST", body, headers: { "content-type": "application/json", ...headers } };
      expect((await raw("api/devices", init)).status).toBe(403);
    }
  expect((await here.ask("POST", "/devices", null, { code, name: "own page" })).status).toBe(201);
  const own = { origin: here.address.slice(0, -1), "sec-fetch-site": "same-origin" };
  expect((await raw("api/heads", { headers: own })).status).toBe(200);
});

test("another method is told which are answered, and a HEAD begins no stream", async () => {
  const other = await raw("api/devices", { method: "PATCH" });
  expect([other.status, other.headers.get("allow")]).toEqual([405, "POST, GET"]);
  for (const path of ["api/changes", "api/heads"]) expect((await raw(path, { method: "HEAD" })).status).toBe(405);
});

describe("a body", () => {
  const post = (body: BodyInit, type = "application/json") =>
    raw("api/entries", { method: "POST", body, headers: { "content-type": type }, ...({ duplex: "half" } as object) });

  test("that is no JSON, no UTF-8 or of another type is refused by name", async () => {
    for (const body of ["", "{", "[1,", "\u0000", new Uint8Array([0x22, 0xff, 0x22])])
      expect(await (await post(body)).json()).toMatchObject({ error: "malformed", place: "the body" });
    expect((await post("{}", "text/plain")).status).toBe(415);
    expect(await (await post("[]")).json()).toMatchObject({ error: "malformed", problems: [{ field: "the whole" }] });
  });

  test("that is too large is refused, whether or not it says so before", async () => {
    const piece = new Uint8Array(1024 * 1024).fill(0x20);
    const endless = new ReadableStream({
      pull(controller) {
        controller.enqueue(piece);
      },
    });
    expect((await post(new Uint8Array(17 * 1024 * 1024).fill(0x20))).status).toBe(413);
    const told = await post(endless).catch((cut: Error) => cut);
    // The line may be cut before the answer was read: nobody can be made to listen while he talks.
    if (told instanceof Response) expect(told.status).toBe(413);
    const devices = { method: "POST", body: " ".repeat(5000), headers: { "content-type": "application/json" } };
    expect((await raw("api/devices", devices)).status).toBe(413);
    expect((await raw("api/heads")).status).toBe(200);
  });

  test("of more than five thousand entries is refused, and one as deep as a well", async () => {
    const many = await post(JSON.stringify({ entries: Array.from({ length: 5001 }, () => 0) }));
    expect(await many.json()).toMatchObject({ problems: [{ field: "entries", accepted: "at most 5000 at once" }] });
    const deep = (depth: number) => `${'{"a":'.repeat(depth)}1${"}".repeat(depth)}`;
    const weighed = (levels: string) =>
      JSON.stringify({
        entries: [
          {
            ...note("deep", 1, 1),
            workshop: here.workshop,
            fact: {
              type: "OptionsWeighed",
              port: "level",
              engine: "1",
              case: "CASE",
              asFound: null,
              options: [],
              working: [],
              ranges: {},
              levels: {},
            },
          },
        ],
      }).replace('"CASE"', levels);
    expect(await (await post(weighed(deep(200_000)))).json()).toMatchObject({
      error: "malformed",
      problems: [{ field: "fact.case", accepted: "a document of at most 32 levels" }],
    });
    expect((await post(weighed(deep(20)))).status).toBe(200);
  });

  test("whose line is cut in the middle leaves nothing behind, and the server as it was", async () => {
    const port = Number(new URL(here.address).port);
    const text = JSON.stringify({ entries: [{ ...note("cut", 1, 1), workshop: here.workshop }] });
    const head = `POST /api/entries HTTP/1.1\r\nHost: localhost\r\nAuthorization: Bearer ${token}\r\nContent-Type: application/json\r\n`;
    for (const framing of [`Content-Length: ${text.length}\r\n\r\n`, "Transfer-Encoding: chunked\r\n\r\nff\r\n"])
      await new Promise<void>((resolve) => {
        const socket = connect(port, "127.0.0.1", () => {
          socket.write(head + framing + text.slice(0, 100), () => setTimeout(() => socket.destroy(), 30));
        });
        socket.on("close", () => resolve());
      });
    expect((await here.ask("GET", "/heads", token)).body.heads).not.toHaveProperty("cut");
  });
});

describe("who asks too often", () => {
  test("waits for as long as he is told, and nobody else does", async () => {
    const slow = await servedHere({ device: { atOnce: 3, perSecond: 0.01 }, stranger: { atOnce: 3, perSecond: 0.01 } });
    const [one, two] = [await slow.paired(), await slow.paired()];
    const heads = (of: { token: string }) => slow.ask("GET", "/heads", of.token);
    for (let i = 0; i < 3; i++) expect((await heads(one)).status).toBe(200);
    const told = await heads(one);
    expect(told).toMatchObject({ status: 429, body: { error: "too many" } });
    // One comes back in a hundred seconds, of which some have gone.
    expect(told.body.wait_s).toBeGreaterThan(0);
    expect(told.body.wait_s).toBeLessThanOrEqual(100);
    expect(told.headers.get("retry-after")).toBe(String(told.body.wait_s));
    expect((await heads(two)).status).toBe(200);
    // Two were paired from this address; the third try is the last for a while.
    expect((await slow.ask("GET", "/heads", "A".repeat(43))).status).toBe(401);
    expect((await slow.ask("GET", "/heads", "A".repeat(43))).status).toBe(429);
    expect((await heads(two)).status).toBe(200);
    expect((await slow.ask("GET", "/heads", slow.key)).status).toBe(200);
    await slow.close();
  });

  test("has his allowance back with time, never more than the whole", () => {
    let now = 0;
    const bucket = allowance({ atOnce: 2, perSecond: 2 }, () => now);
    expect([1, 2, 3].map(() => bucket.wait_s("a"))).toEqual([0, 0, 0.5]);
    now = 500;
    expect([1, 2].map(() => bucket.wait_s("a"))).toEqual([0, 0.5]);
    now = 60_000;
    expect([1, 2, 3].map(() => bucket.wait_s("a"))).toEqual([0, 0, 0.5]);
  });

  test("may still bring a hundred thousand entries over, in pieces and one by one", () => {
    let now = 0;
    const bucket = allowance(usualRates.device, () => now);
    let waited = 0;
    for (let i = 0; i < 200; i++) waited += bucket.wait_s("pieces");
    expect(waited).toBe(0);
    // One request a millisecond is more than any disk here keeps up with.
    for (let i = 0; i < 100_000; i++) {
      now++;
      waited += bucket.wait_s("one by one");
    }
    expect(waited).toBe(0);
  });
});
