import { statSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { pinProofs } from "../../../src/apps/server/api/pinProofs.ts";
import type { Entry } from "../../../src/journal/entry.ts";
import type { DeviceId, PersonId } from "../../../src/journal/facts/ids.ts";
import { replicateToPin } from "../../../src/journal/overrides.ts";
import { PinNeeded } from "../../../src/journal/refusals.ts";
import { replicate } from "../../../src/journal/store.ts";
import { memoryStore } from "../../../src/stores/memory.ts";
import { remoteStore } from "../../../src/stores/remote.ts";
import { note as noteOf } from "../../stores/storeContract.ts";
import { type ServedHere, servedHere, textIn } from "./servedHere.ts";

let here: ServedHere;
let token: string;
beforeAll(async () => {
  here = await servedHere();
  ({ token } = await here.paired());
});
afterAll(() => here.close());

const entry = (device: string, number: number, by: string, fact: object): Entry =>
  ({ ...noteOf(device, number, number), workshop: here.workshop, by, fact }) as unknown as Entry;
const override = { type: "RuleOverridden", rule: "fill first", reason: "the fill was out yesterday" };
const words = { type: "NoteWritten", words: "called" };
const add = (entries: readonly Entry[], proofs?: readonly string[]) =>
  here.ask("POST", "/entries", token, { entries, ...(proofs ? { proofs } : {}) });
const proofOf = async (person: string, pin: string): Promise<string> =>
  (await here.ask("POST", "/pin/proof", token, { person, pin })).body.proof;

describe("overrides and PINs", () => {
  test("where nobody has a PIN an override needs none", async () => {
    expect((await here.ask("GET", "/pin", token)).body).toEqual({ persons: [] });
    expect((await add([entry("bench", 1, "jory", override)])).status).toBe(200);
    expect((await here.ask("POST", "/pin/proof", token, { person: "jory", pin: "4711" })).body.error).toBe("no pin");
  });

  test("a PIN is set once freely, then only with the one before; of it the folder holds no more than a hash", async () => {
    const set = (pin: string, was?: string) => here.ask("POST", "/pin", token, { person: "jory", pin, was });
    expect((await set("4711")).status).toBe(204);
    expect(await set("1234")).toMatchObject({ status: 403, body: { error: "wrong pin", wait_s: 0 } });
    expect((await set("83920175", "4711")).status).toBe(204);
    expect((await here.ask("GET", "/pin", token)).body).toEqual({ persons: ["jory"] });
    // Four digits may stand in a hash by chance, eight do not.
    expect(textIn(here.folder, "pins.json")).not.toMatch(/"4711"|83920175/);
    expect(statSync(join(here.folder, "pins.json")).mode & 0o777).toBe(0o600);
    for (const pin of ["123", "1234567890123", "12a4", 4711])
      expect((await here.ask("POST", "/pin", token, { person: "sefa", pin })).status).toBe(400);
  });

  test("from then on a new override needs the PIN of who takes it on himself, and nothing is kept without", async () => {
    const told = await add([entry("bench", 2, "jory", words), entry("bench", 3, "jory", override)]);
    expect(told).toMatchObject({
      status: 403,
      body: { error: "pin needed", persons: [{ person: "jory", set: true }] },
    });
    expect((await here.ask("GET", "/heads", token)).body.heads).toEqual({ bench: 1 });
    expect((await add([entry("bench", 2, "jory", words)])).status).toBe(200);
    const proof = await proofOf("jory", "83920175");
    expect((await add([entry("bench", 3, "jory", override)], [proof])).status).toBe(200);
    expect((await add([entry("bench", 4, "jory", override)], [proof])).status).toBe(200);
  });

  test("one of a person without a PIN waits until he has one; another's proof is none", async () => {
    const proof = await proofOf("jory", "83920175");
    const mine = [entry("bench", 5, "sefa", override)];
    expect((await add(mine, [proof])).body).toMatchObject({ persons: [{ person: "sefa", set: false }] });
    await here.ask("POST", "/pin", token, { person: "sefa", pin: "2580" });
    expect((await add(mine, [proof, await proofOf("sefa", "2580")])).status).toBe(200);
  });

  test("a correction that puts an override in another fact's place needs it as well", async () => {
    const corrected = { type: "EntryCorrected", entry: "bench/2", reason: "it was one", is: override };
    expect((await add([entry("bench", 6, "jory", corrected)])).body.error).toBe("pin needed");
  });

  test("what is held already is brought again without: other devices replicate it", async () => {
    expect((await add([entry("bench", 1, "jory", override), entry("bench", 3, "jory", override)])).status).toBe(200);
    const other = memoryStore(here.workshop);
    await replicate(other, remoteStore({ address: here.address, token }));
    expect(await other.heads()).toEqual({ bench: 5 });
  });

  test("a proof counts on the device where the PIN was typed, and no longer than ten minutes", async () => {
    const proof = await proofOf("jory", "83920175");
    const tablet = await here.paired("tablet");
    const body = { entries: [entry("tablet", 1, "jory", override)], proofs: [proof] };
    expect((await here.ask("POST", "/entries", tablet.token, body)).body.error).toBe("pin needed");
    let now = 0;
    const proofs = pinProofs(() => now);
    const device = { type: "device", device: "d-1" as DeviceId } as const;
    const given = proofs.give("jory" as PersonId, device);
    expect(given.seconds).toBe(600);
    now = 599_999;
    expect([...proofs.persons([given.proof, "another"], device)]).toEqual(["jory"]);
    now = 600_000;
    expect([...proofs.persons([given.proof], device)]).toEqual([]);
  });

  test("a device that was away keeps what it wrote, is told whose PIN it needs, and brings it all over with it", async () => {
    const away = memoryStore(here.workshop);
    await away.add([
      entry("phone", 1, "jory", words),
      entry("phone", 2, "sefa", override),
      entry("phone", 3, "jory", words),
    ]);
    const { token: own } = await here.paired("was away");
    let proofs: readonly string[] = [];
    const far = remoteStore({ address: here.address, token: own, proofs: () => proofs });
    await expect(replicate(away, far)).rejects.toBeInstanceOf(PinNeeded);
    expect(Object.keys(await far.heads())).not.toContain("phone");
    // What was written before it does not wait, and what others wrote comes.
    await far.add([entry("lift", 1, "jory", words)]);
    expect(await replicateToPin(away, far)).toMatchObject({ persons: [{ person: "sefa", set: true }] });
    expect(await far.heads()).toMatchObject({ phone: 1 });
    expect(await away.heads()).toMatchObject({ phone: 3, lift: 1 });
    expect(await replicateToPin(away, far)).toBeInstanceOf(PinNeeded);
    const { body } = await here.ask("POST", "/pin/proof", own, { person: "sefa", pin: "2580" });
    proofs = [body.proof];
    expect(await replicateToPin(away, far)).toBeNull();
    expect(await far.heads()).toMatchObject({ phone: 3 });
  });

  test("the workshop's own screen forgets a PIN, and nobody else", async () => {
    expect((await here.ask("DELETE", "/pin/sefa", token)).body.error).toBe("not allowed");
    expect((await here.ask("DELETE", "/pin/sefa", here.key)).status).toBe(204);
    expect((await here.ask("DELETE", "/pin/sefa", here.key)).status).toBe(404);
    expect((await here.ask("GET", "/pin", token)).body).toEqual({ persons: ["jory"] });
  });

  test("wrong PINs are told, then made to wait", async () => {
    const proof = (pin: string) => here.ask("POST", "/pin/proof", token, { person: "jory", pin });
    // At the same time, as a program would guess them.
    const told = await Promise.all(["0000", "0001", "0002", "0003"].map(proof));
    expect(told.map(({ status }) => status).sort()).toEqual([403, 403, 403, 429]);
    const waits = await proof("83920175");
    expect(waits).toMatchObject({ status: 429, body: { error: "pin waits" } });
    expect(Number(waits.headers.get("retry-after"))).toBeGreaterThan(20);
  });
});
