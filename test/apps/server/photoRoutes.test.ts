import { readdirSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { join } from "node:path";
import { Readable } from "node:stream";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { hugePng, nameOf, phonePhoto, plainPhoto, plainPng, plainWebp } from "../../stores/pictures.ts";
import { type ServedHere, servedHere } from "./servedHere.ts";

let served: ServedHere;
let authorization: string;
beforeAll(async () => {
  served = await servedHere();
  authorization = `Bearer ${(await served.paired()).token}`;
});
afterAll(() => served.close());

/** As long as a machine that has much else to do may take. */
const patient = { timeout: 20_000 };

const folder = (): string => join(served.folder, "photos");
const at = (name: string): string => `${served.address}api/photos${name === "" ? "" : `/${name}`}`;
const ask = (name: string, asked: RequestInit = {}) =>
  fetch(at(name), { ...asked, headers: { authorization, ...(asked.headers as Record<string, string>) } });
const put = (bytes: Uint8Array, name = nameOf(bytes)) => ask(name, { method: "PUT", body: new Uint8Array(bytes) });
const kept = (): readonly string[] => {
  try {
    return readdirSync(folder());
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
    const got = await ask(nameOf(bytes));
    expect([got.status, got.headers.get("content-type")]).toEqual([200, type]);
    expect(got.headers.get("cache-control")).toBe("private, max-age=31536000, immutable");
    expect(Buffer.from(await got.arrayBuffer())).toEqual(bytes);
    const etag = got.headers.get("etag") ?? "";
    const again = await ask(nameOf(bytes), { headers: { "if-none-match": etag } });
    expect([again.status, await again.text()]).toEqual([304, ""]);
  });

  test("one that the server is asked to strip is told its name, and is there under it", async () => {
    const answer = await ask("", { method: "POST", body: new Uint8Array(await phonePhoto("jpeg")) });
    const { sha256 } = (await answer.json()) as { sha256: string };
    expect(answer.status).toBe(201);
    const bytes = Buffer.from(await (await ask(sha256)).arrayBuffer());
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
    const answer = await ask("2".repeat(64), { method: "PUT", body, duplex: "half" } as RequestInit);
    expect([answer.status, ((await answer.json()) as { error: string }).error]).toEqual([413, "too large"]);
    expect(kept()).toEqual(before);
  });

  test("a photo that is not here, and a name that is none", async () => {
    const statuses = [];
    for (const name of ["3".repeat(64), "3".repeat(63), "A".repeat(64), "..%2fdevice.json"]) {
      const answer = await ask(name);
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
    const asked = request(at(nameOf(bytes)), {
      method: "PUT",
      headers: { authorization, "content-length": bytes.length },
    });
    asked.on("error", () => {});
    asked.write(bytes.subarray(0, bytes.length / 2));
    await expect.poll(() => kept().some((it) => it.startsWith("incoming-")), patient).toBe(true);
    asked.destroy();
    await expect.poll(() => kept().some((it) => it.startsWith("incoming-")), patient).toBe(false);
    expect((await ask(nameOf(bytes))).status).toBe(404);
  });

  test("a stranger, whatever he brings", async () => {
    const bytes = await plainPhoto(33, 33);
    for (const asked of [{ method: "PUT", body: new Uint8Array(bytes) }, { method: "GET" }])
      expect((await fetch(at(nameOf(bytes)), asked)).status).toBe(401);
    expect((await fetch(at(""), { method: "POST", body: new Uint8Array(bytes) })).status).toBe(401);
    expect(kept().some((it) => it.startsWith(nameOf(bytes)))).toBe(false);
  });

  test("trouble of the disk, and nothing of where it lies", async () => {
    const other = await servedHere();
    writeFileSync(join(other.folder, "photos"), "a file");
    const { token } = await other.paired();
    const answer = await fetch(`${other.address}api/photos/${"4".repeat(64)}`, {
      method: "PUT",
      headers: { authorization: `Bearer ${token}` },
      body: new Uint8Array(9),
    });
    expect(answer.status).toBe(500);
    expect(await answer.text()).not.toContain(other.folder);
    await other.close();
  });
});
