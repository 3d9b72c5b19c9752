import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import { Hono } from "hono";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Listening, listen } from "../../../src/apps/server/listen.ts";
import { photoRoutes } from "../../../src/apps/server/photoRoutes.ts";
import { photoFolder } from "../../../src/stores/photoFolder.ts";
import { hugePng, nameOf, phonePhoto, plainPhoto, plainPng, plainWebp } from "../../stores/pictures.ts";

const scratch = mkdtempSync(join(tmpdir(), "turnsleft-"));
const folder = join(scratch, "photos");
let served: Listening;
beforeAll(async () => {
  const app = new Hono().route("/api/photos", photoRoutes(photoFolder(folder)));
  app.onError((_, c) => c.text("", 500));
  const listening = await listen((asked) => app.fetch(asked), 0);
  if (typeof listening !== "object") throw new Error(listening);
  served = listening;
});
afterAll(async () => {
  await served.close();
  rmSync(scratch, { recursive: true });
});

const at = (name: string): string => `${served.address}api/photos/${name}`;
const put = (bytes: Uint8Array, name = nameOf(bytes)) =>
  fetch(at(name), { method: "PUT", body: new Uint8Array(bytes) });
const kept = (): readonly string[] => {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
};

describe("a photo over HTTP", () => {
  test.each([
    ["image/jpeg", plainPhoto],
    ["image/png", plainPng],
    ["image/webp", plainWebp],
  ] as const)("%s comes back as it was put, twice put or not, and may be kept for ever", async (type, made) => {
    const bytes = await made();
    for (const _ of [1, 2]) {
      const answer = await put(bytes);
      expect([answer.status, await answer.json()]).toEqual([200, { sha256: nameOf(bytes), bytes: bytes.length }]);
    }
    const got = await fetch(at(nameOf(bytes)));
    expect([got.status, got.headers.get("content-type")]).toEqual([200, type]);
    expect(got.headers.get("cache-control")).toBe("private, max-age=31536000, immutable");
    expect(Buffer.from(await got.arrayBuffer())).toEqual(bytes);
    const etag = got.headers.get("etag") ?? "";
    const again = await fetch(at(nameOf(bytes)), { headers: { "if-none-match": etag } });
    expect([again.status, await again.text()]).toEqual([304, ""]);
    const head = await fetch(at(nameOf(bytes)), { method: "HEAD" });
    expect([head.status, head.headers.get("content-length")]).toEqual([200, String(bytes.length)]);
  });

  test("one that the server is asked to strip is told its name, and is there under it", async () => {
    const answer = await fetch(at("").slice(0, -1), { method: "POST", body: new Uint8Array(await phonePhoto("jpeg")) });
    const { sha256 } = (await answer.json()) as { sha256: string };
    expect(answer.status).toBe(201);
    const bytes = Buffer.from(await (await fetch(at(sha256))).arrayBuffer());
    expect([nameOf(bytes), bytes.includes("Exif")]).toEqual([sha256, false]);
  });
});

describe("what is refused is told in a sentence, and leaves nothing", () => {
  test.each([
    ["the digest of another", async () => put(await plainPhoto(), "1".repeat(64)), 422, "wrong digest"],
    ["no picture", async () => put(Buffer.from("turns = 3.5")), 415, "no picture"],
    ["a place", async () => put(await phonePhoto("jpeg")), 422, "carries more"],
    ["a bomb", async () => put(await hugePng(30_000)), 413, "too many pixels"],
    ["30 MB", async () => put(Buffer.alloc(30_000_000)), 413, "too large"],
    ["a name that is none", async () => put(await plainPng(), "..%2f..%2fdevice.json"), 400, "no name"],
  ] as const)("%s", async (_, asked, status, error) => {
    const before = kept();
    const answer = await asked();
    const said = (await answer.json()) as { error: string; sentence: string };
    expect([answer.status, said.error]).toEqual([status, error]);
    expect(said.sentence).toMatch(/^[A-Z].*\.$/);
    expect(kept()).toEqual(before);
  });

  test("30 MB whose length is not announced", async () => {
    const before = kept();
    async function* pieces(): AsyncGenerator<Uint8Array> {
      for (let i = 0; i < 30; i++) yield new Uint8Array(1_000_000);
    }
    const body = Readable.toWeb(Readable.from(pieces()));
    const answer = await fetch(at("2".repeat(64)), { method: "PUT", body, duplex: "half" } as RequestInit);
    expect([answer.status, ((await answer.json()) as { error: string }).error]).toEqual([413, "too large"]);
    expect(kept()).toEqual(before);
  });

  test("a photo that is not here, and a name that is none", async () => {
    const statuses = [];
    for (const name of ["3".repeat(64), "3".repeat(63), "A".repeat(64), "..%2fdevice.json"]) {
      const answer = await fetch(at(name));
      statuses.push([answer.status, ((await answer.json()) as { error: string }).error]);
    }
    expect(statuses).toEqual([
      [404, "not there"],
      [400, "no name"],
      [400, "no name"],
      [400, "no name"],
    ]);
  });

  test("a line that is cut in the middle", async () => {
    const bytes = await plainPhoto(800, 600);
    const asked = request(at(nameOf(bytes)), { method: "PUT", headers: { "content-length": bytes.length } });
    asked.on("error", () => {});
    asked.write(bytes.subarray(0, bytes.length / 2));
    await expect.poll(() => kept().some((it) => it.startsWith("incoming-"))).toBe(true);
    asked.destroy();
    await expect.poll(() => kept().some((it) => it.startsWith("incoming-"))).toBe(false);
    expect((await fetch(at(nameOf(bytes)))).status).toBe(404);
  });

  test("trouble of the disk is left to those it is mounted behind", async () => {
    const place = join(scratch, "a file");
    writeFileSync(place, "");
    const app = new Hono().route("/", photoRoutes(photoFolder(join(place, "photos"))));
    app.onError((fault, c) => c.text(fault.name, 503));
    const bytes = new Uint8Array(await plainPng());
    const answer = await app.request(`/${nameOf(bytes)}`, { method: "PUT", body: bytes });
    expect([answer.status, await answer.text()]).toEqual([503, "StoreTrouble"]);
  });
});
