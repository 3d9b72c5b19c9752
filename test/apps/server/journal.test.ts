import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { api, usualRates } from "../../../src/apps/server/api/api.ts";
import { pairingCode } from "../../../src/apps/server/api/pairingCode.ts";
import { pinProofs } from "../../../src/apps/server/api/pinProofs.ts";
import { watchedStore } from "../../../src/apps/server/api/watchedStore.ts";
import type { Entry } from "../../../src/journal/entry.ts";
import { pairedDevices } from "../../../src/stores/pairedDevices.ts";
import { photosIn } from "../../../src/stores/photoCopies.ts";
import { pinsIn } from "../../../src/stores/pins.ts";
import { sqlCards } from "../../../src/stores/sqlCards.ts";
import { sqliteFile } from "../../../src/stores/sqliteFile.ts";
import { sqlJournal } from "../../../src/stores/sqlJournal.ts";
import { note as noteOf, workshop } from "../../stores/storeContract.ts";
import { type ServedHere, servedHere } from "./servedHere.ts";

let here: ServedHere;
let token: string;
beforeAll(async () => {
  here = await servedHere();
  ({ token } = await here.paired());
});
afterAll(() => here.close());

const note = (device: string, number: number, clock: number, of?: string): Entry =>
  ({ ...noteOf(device, number, clock, of), workshop: here.workshop }) as Entry;
const add = (...entries: readonly unknown[]) => here.ask("POST", "/entries", token, { entries });

describe("the journal over HTTP", () => {
  test("takes entries of any device, tells the heads, and gives them back in order", async () => {
    expect((await here.ask("GET", "/heads", token)).body).toEqual({ heads: {} });
    expect(await add(note("bench", 1, 1), note("phone", 1, 2), note("bench", 2, 3, "0413"))).toMatchObject({
      status: 200,
      body: { heads: { bench: 2, phone: 1 } },
    });
    expect((await here.ask("GET", "/heads", token)).body).toEqual({ heads: { bench: 2, phone: 1 } });
    const { body } = await here.ask("POST", "/pull", token, { heads: { bench: 1 } });
    expect(body).toEqual({ entries: [note("phone", 1, 2), note("bench", 2, 3, "0413")], more: false });
    expect((await here.ask("GET", "/jobs/0413", token)).body).toEqual({ entries: [note("bench", 2, 3, "0413")] });
    expect((await here.ask("GET", "/jobs/none", token)).body).toEqual({ entries: [] });
    expect((await here.ask("GET", "/jobs/a%20b", token)).status).toBe(404);
  });

  test("a pull is taken in pieces, and says when there is more", async () => {
    const pull = async (heads: object, most: number) =>
      (await here.ask("POST", "/pull", token, { heads, most })).body as { entries: Entry[]; more: boolean };
    expect(await pull({}, 2)).toEqual({ entries: [note("bench", 1, 1), note("phone", 1, 2)], more: true });
    expect((await pull({ bench: 1, phone: 1 }, 1)).more).toBe(false);
    expect(await pull({}, 0)).toEqual({ entries: [], more: true });
  });

  test("a device may be called as what every object has: asked for, it was a fault of ours, 2026-11", async () => {
    await add(note("constructor", 1, 1), note("toString", 1, 1));
    const { status, body } = await here.ask("POST", "/pull", token, { heads: { bench: 2, phone: 1 } });
    expect([status, body.entries.length]).toEqual([200, 2]);
  });

  test.each([
    ["malformed", 400, () => [{ ...note("tablet", 1, 1), by: "" }], { place: "tablet/1", problems: [{ field: "by" }] }],
    ["malformed", 400, () => [null], { place: "an entry" }],
    [
      "foreign",
      403,
      () => [{ ...note("tablet", 1, 1), workshop: "elsewhere" }],
      { device: "tablet", number: 1, workshop: "elsewhere" },
    ],
    ["fork", 409, () => [{ ...note("bench", 1, 1), by: "sefa" }], { device: "bench", number: 1 }],
    ["gap", 409, () => [note("bench", 9, 9)], { device: "bench", number: 9, expected: 3 }],
    ["disorder", 409, () => [note("bench", 3, 3)], { device: "bench", number: 3 }],
  ])(
    "a %s is refused with %i and its place, and nothing that came with it is kept",
    async (error, status, bad, details) => {
      const told = await add(note("late", 1, 1), ...bad());
      expect(told).toMatchObject({ status, body: { error, sentence: expect.stringMatching(/\.$/), ...details } });
      expect((await here.ask("GET", "/heads", token)).body.heads).not.toHaveProperty("late");
    },
  );

  test("owners' cards are kept, and gone with the entry that erases them", async () => {
    const card = { owner: "o-1", name: "A. Brook", plates: [], clock: 2, device: "bench" };
    expect((await here.ask("POST", "/ownerCards", token, { cards: [card] })).status).toBe(204);
    expect((await here.ask("GET", "/ownerCards", token)).body).toEqual({ cards: [card] });
    const erased = { ...note("bench", 3, 9), job: null, fact: { type: "OwnerErased", owner: "o-1", why: "he asked" } };
    expect((await add(erased)).status).toBe(200);
    expect((await here.ask("GET", "/ownerCards", token)).body).toEqual({ cards: [] });
    const odd = { ...card, owner: "o 2" };
    expect(await here.ask("POST", "/ownerCards", token, { cards: [odd] })).toMatchObject({
      status: 400,
      body: { problems: [{ field: "cards.0.owner" }] },
    });
  });
});

test("a fault of ours is told to the terminal by its place, and to nobody by its words", async () => {
  const folder = mkdtempSync(join(tmpdir(), "turnsleft-"));
  const database = sqliteFile(join(folder, "journal.db"), "write");
  const { token: key } = await here.paired();
  const broken = { ...sqlJournal(database, workshop), heads: () => Promise.reject(new TypeError(`no ${key}\nat all`)) };
  const served = {
    workshop,
    store: watchedStore(broken),
    cards: sqlCards(database, workshop),
    photos: photosIn(folder),
    devices: pairedDevices(folder, () => new Date()),
    code: pairingCode(() => 0),
    pins: pinsIn(folder, () => 0),
    proofs: pinProofs(() => 0),
    key,
  };
  const lines: string[] = [];
  const app = api(
    served,
    usualRates,
    () => 0,
    (line) => lines.push(line),
  );
  const told = await app.request("/heads", { headers: { authorization: `Bearer ${key}` } });
  expect(await told.json()).toEqual({ error: "fault", sentence: expect.stringContaining("A fault of ours") });
  expect(told.status).toBe(500);
  expect(lines).toHaveLength(1);
  expect(lines[0]).toMatch(/^a fault of ours at GET \/heads: TypeError\s+at .*journal\.test\.ts/);
  expect(lines[0]).not.toContain(key);
  await database.close();
  rmSync(folder, { recursive: true });
});

describe("a disk that does not take it is told in a plain sentence", () => {
  test.each([
    ["full", 507, "pragma max_page_count = 14", "what was kept before is safe"],
    ["read-only", 503, "pragma query_only = on", "may be read and not written"],
  ])("%s", async (error, status, pragma, words) => {
    const folder = mkdtempSync(join(tmpdir(), "turnsleft-"));
    const database = sqliteFile(join(folder, "journal.db"), "write");
    await database.query(pragma, []);
    const served = {
      workshop,
      store: watchedStore(sqlJournal(database, workshop)),
      cards: sqlCards(database, workshop),
      photos: photosIn(folder),
      devices: pairedDevices(folder, () => new Date()),
      code: pairingCode(() => 0),
      pins: pinsIn(folder, () => 0),
      proofs: pinProofs(() => 0),
      key: "k".repeat(43),
    };
    const app = api(served, usualRates, () => 0);
    const headers = { authorization: `Bearer ${served.key}`, "content-type": "application/json" };
    let told: Response | null = null;
    for (let i = 1; i < 50 && (told === null || told.status === 200); i++) {
      const entry = { ...noteOf("bench", i, i), fact: { type: "NoteWritten", words: "x".repeat(2000) } };
      told = await app.request("/entries", { method: "POST", headers, body: JSON.stringify({ entries: [entry] }) });
    }
    expect(told?.status).toBe(status);
    const { sentence, ...rest } = (await told!.json()) as { sentence: string };
    expect(rest).toEqual({ error });
    expect(sentence).toContain(words);
    expect(sentence).not.toContain(folder);
    expect((await app.request("/heads", { headers })).status).toBe(200);
    await database.close();
    rmSync(folder, { recursive: true });
  });
});
