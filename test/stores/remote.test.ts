import { mkdtempSync, readFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Entry } from "../../src/journal/entry.ts";
import type { DeviceId, JobId, PersonId } from "../../src/journal/facts/ids.ts";
import { pen } from "../../src/journal/pen.ts";
import {
  ForeignEntry,
  JournalDisorder,
  JournalFork,
  JournalGap,
  type MalformedEntry,
} from "../../src/journal/refusals.ts";
import { type JournalStore, replicate } from "../../src/journal/store.ts";
import { StoreTrouble } from "../../src/journal/storeTrouble.ts";
import { newIdentity } from "../../src/stores/identity.ts";
import { memoryStore } from "../../src/stores/memory.ts";
import { remoteCards, remoteStore } from "../../src/stores/remote.ts";
import { type ServedHere, servedHere } from "../apps/server/servedHere.ts";
import { cutLine } from "./cutLine.ts";
import { ownerCardsContract } from "./ownerCardsContract.ts";
import { none, note, storeContract, workshop } from "./storeContract.ts";

const open: ServedHere[] = [];
afterAll(async () => {
  for (const it of open) await it.close();
});

/** A server of this workshop on a new file of SQLite, and a device that was let in. */
async function served(rates?: Parameters<typeof servedHere>[0]) {
  const folder = mkdtempSync(join(tmpdir(), "turnsleft-remote-"));
  newIdentity(folder, workshop);
  const here = await servedHere(rates, folder);
  open.push(here);
  const { token, device } = await here.paired();
  return { here, token, device, far: { address: here.address, token } };
}

storeContract("remote, over HTTP to SQLite in a file", async () => remoteStore((await served()).far));
ownerCardsContract("remote, over HTTP to SQLite in a file", async () => {
  const { far } = await served();
  return { store: remoteStore(far), cards: remoteCards(far) };
});

const thrownBy = async (work: () => Promise<unknown>): Promise<unknown> =>
  work().then(
    () => null,
    (fault) => fault,
  );

describe("a remote store", () => {
  let store: JournalStore;
  let far: { address: string; token: string };
  let here: ServedHere;
  beforeAll(async () => {
    ({ far, here } = await served());
    store = remoteStore(far);
    await store.add([note("bench", 1, 1)]);
  });

  test("throws what the journal there threw, as itself and with its place", async () => {
    const place = (number: number) => ({ device: "bench", number });
    const fork = await thrownBy(() => store.add([{ ...note("bench", 1, 1), by: "sefa" } as Entry]));
    expect(fork).toBeInstanceOf(JournalFork);
    expect(fork).toMatchObject({ place: place(1) });
    const gap = await thrownBy(() => store.add([note("bench", 5, 5)]));
    expect(gap).toBeInstanceOf(JournalGap);
    expect(gap).toMatchObject({ place: place(5), expected: 2 });
    const disorder = await thrownBy(() => store.add([note("bench", 2, 1)]));
    expect(disorder).toBeInstanceOf(JournalDisorder);
    expect(disorder).toMatchObject({ place: place(2) });
    const foreign = await thrownBy(() => store.add([{ ...note("bench", 2, 2), workshop: "x" } as unknown as Entry]));
    expect(foreign).toBeInstanceOf(ForeignEntry);
    expect(foreign).toMatchObject({ place: place(2), workshop: "x", here: workshop });
    const malformed = (await thrownBy(() => store.add([{ ...note("bench", 2, 2), at: "noon" }]))) as MalformedEntry;
    expect(malformed.name).toBe("MalformedEntry");
    const [local, problem] = [
      await thrownBy(() => memoryStore(workshop).add([{ ...note("bench", 2, 2), at: "noon" }])),
      malformed.problems[0],
    ];
    expect(malformed.message).toBe((local as Error).message);
    expect(problem).toEqual({ field: "at", accepted: "a moment in UTC, as 2026-11-25T10:40:00Z" });
  });

  test("brings over more than goes in one piece, both ways, also to a device that has some of it", async () => {
    const there = remoteStore((await served()).far);
    const entries = Array.from({ length: 4700 }, (_, i) => note(`d${i % 3}`, Math.floor(i / 3) + 1, i + 1));
    for (let i = 0; i < entries.length; i += 4000) await there.add(entries.slice(i, i + 4000));
    expect(await there.since(none)).toEqual(entries);
    expect(await there.since({ d0: 1500, d1: 1500, d2: 1500 } as never)).toEqual(entries.slice(4500));
    const own = memoryStore(workshop);
    await own.add([note("late", 1, 1)]);
    await replicate(own, there);
    expect(await own.heads()).toEqual(await there.heads());
    expect(await own.since(none)).toEqual(await there.since(none));
  });

  test("a wall clock that was set back changes no order, and its entries are kept as they were written", async () => {
    const far = await served();
    const own = remoteStore(far.far);
    const writer = pen(own, workshop, far.device as DeviceId);
    const moments = ["2026-11-25T10:00:00Z", "2019-01-01T00:00:00Z", "2026-11-25T10:00:01Z"];
    for (const at of moments)
      await writer.write({ by: "jory" as PersonId, job: "0412" as JobId, at }, { type: "NoteWritten", words: at });
    expect((await own.ofJob("0412" as JobId)).map(({ at }) => at)).toEqual(moments);
  });

  test("one that was shut out, and one whose server is gone, say so", async () => {
    const lost = await here.paired("lost");
    const other = remoteStore({ ...far, token: lost.token });
    await here.ask("DELETE", `/devices/${lost.device}`, far.token);
    expect(await thrownBy(() => other.heads())).toMatchObject({ trouble: "not let in", place: far.address });
    const nobody = remoteStore({ address: "http://localhost:9", token: "x" });
    expect(await thrownBy(() => nobody.heads())).toMatchObject({ trouble: "not reachable" });
  });

  test("something else that answers in the server's place is no server", async () => {
    const page = createServer((_, answer) => answer.end("<h1>Welcome to the network</h1>"));
    await new Promise<void>((resume) => page.listen(0, "127.0.0.1", resume));
    const address = `http://127.0.0.1:${(page.address() as AddressInfo).port}`;
    expect(await thrownBy(() => remoteStore({ address, token: "x" }).heads())).toMatchObject({
      trouble: "not reachable",
    });
    page.closeAllConnections();
    page.close();
  });

  test("what is too much for one request says so, and what is too much at once waits for its turn", async () => {
    const big = Array.from({ length: 5001 }, (_, i) => note("big", i + 1, i + 1));
    expect(await thrownBy(() => store.add(big))).toMatchObject({ name: "MalformedEntry" });
    const words = "x".repeat(2000);
    const heavy = Array.from(
      { length: 4900 },
      (_, i) =>
        ({
          ...note("big", i + 1, i + 1),
          fact: { type: "NoteWritten", words, photos: Array(20).fill("a".repeat(64)) },
        }) as never,
    );
    expect(await thrownBy(() => store.add(heavy))).toMatchObject({ trouble: "too much at once" });
    const slow = await served({ device: { atOnce: 2, perSecond: 2 }, stranger: { atOnce: 9, perSecond: 9 } });
    const asked = Array.from({ length: 4 }, () => remoteStore(slow.far).heads());
    expect(await Promise.all(asked)).toEqual([{}, {}, {}, {}]);
  });
});

describe("a line that breaks in the middle of an append", () => {
  const entries = [1, 2, 3].map((number) => note("bench", number, number));

  test.each([
    ["before anything was said", [{ afterBytes: 1 }]],
    ["within the head", [{ afterBytes: 60 }]],
    ["within the entries", [{ afterBytes: 500 }]],
    ["when all was kept, before anybody was told", ["before the answer" as const]],
  ])("%s is taken up again, and all is kept once", async (_, cuts) => {
    const { far, here } = await served();
    const line = await cutLine(here.address);
    line.cuts = [...cuts];
    await remoteStore({ ...far, address: line.address }).add(entries);
    expect(line.cuts).toEqual([]);
    expect(await remoteStore(far).since(none)).toEqual(entries);
    await line.close();
  });

  test.each([
    ["was kept", "before the answer" as const, 3],
    ["did not arrive", { afterBytes: 400 }, 0],
  ])("and does not come back is a trouble; what %s can be sent again", async (_, cut, kept) => {
    const { far, here } = await served();
    const line = await cutLine(here.address);
    line.cuts = [cut, cut];
    const own = remoteStore({ ...far, address: line.address });
    expect(await thrownBy(() => own.add(entries))).toBeInstanceOf(StoreTrouble);
    expect(await remoteStore(far).since(none)).toHaveLength(kept);
    await own.add(entries);
    expect(await remoteStore(far).since(none)).toEqual(entries);
    await line.close();
  });
});

test("a remote store needs nothing that a browser has not", () => {
  const seen = new Set<string>();
  const visit = (path: string): void => {
    if (seen.has(path)) return;
    seen.add(path);
    for (const [, from = ""] of readFileSync(path, "utf8").matchAll(/from "([^"]+)"/g)) {
      if (from.startsWith(".")) visit(join(dirname(path), from));
      else expect([path, from]).toEqual([path, "zod/mini"]);
    }
  };
  visit(new URL("../../src/stores/remote.ts", import.meta.url).pathname);
  expect([...seen].some((it) => it.endsWith("remoteAnswer.ts"))).toBe(true);
});
