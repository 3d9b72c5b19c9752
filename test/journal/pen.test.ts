import { expect, test } from "vitest";
import type { Fact } from "../../src/journal/facts/fact.ts";
import type { DeviceId, JobId, PersonId } from "../../src/journal/facts/ids.ts";
import { pen } from "../../src/journal/pen.ts";
import { replicate } from "../../src/journal/store.ts";
import { memoryStore } from "../../src/stores/memory.ts";
import { none, note, workshop } from "../stores/storeContract.ts";

const signed = { by: "jory" as PersonId, job: "0412" as JobId, at: "2026-11-25T08:00:00Z" };
const said = (words: string): Fact => ({ type: "NoteWritten", words });
const places = async (store: ReturnType<typeof memoryStore>) =>
  (await store.since(none)).map(({ device, number, clock }) => `${device}/${number} at ${clock}`);

test("a pen numbers its device's entries and writes later than all that it has seen", async () => {
  const store = memoryStore(workshop);
  await store.add([note("phone", 1, 7)]);
  expect(await pen(store, workshop, "bench" as DeviceId).write(signed, said("a"), said("b"))).toEqual([
    "bench/1",
    "bench/2",
  ]);
  expect(await places(store)).toEqual(["phone/1 at 7", "bench/1 at 8", "bench/2 at 9"]);
});

test("what is written at the same time gets places of its own, and a refused write leaves none behind", async () => {
  const store = memoryStore(workshop);
  const bench = pen(store, workshop, "bench" as DeviceId);
  const written = await Promise.allSettled([
    bench.write(signed, said("a")),
    bench.write(signed, said("")),
    bench.write(signed, said("c")),
  ]);
  expect(written.map(({ status }) => status)).toEqual(["fulfilled", "rejected", "fulfilled"]);
  expect(await places(store)).toEqual(["bench/1 at 1", "bench/2 at 2"]);
});

test("a wall clock that was set back changes no order", async () => {
  const store = memoryStore(workshop);
  const bench = pen(store, workshop, "bench" as DeviceId);
  await bench.write(signed, said("first"));
  await bench.write({ ...signed, at: "2019-01-01T00:00:00Z" }, said("second"));
  expect((await store.ofJob(signed.job)).map(({ fact }) => fact)).toEqual([said("first"), said("second")]);
});

test("a device that was restored from a backup and wrote on is a fork on the next meeting", async () => {
  const [server, phone, restored] = [memoryStore(workshop), memoryStore(workshop), memoryStore(workshop)];
  const device = "phone" as DeviceId;
  await pen(phone, workshop, device).write(signed, said("first"));
  await replicate(phone, restored);
  await pen(phone, workshop, device).write(signed, said("second"));
  await replicate(phone, server);
  await pen(restored, workshop, device).write(signed, said("another second"));
  await expect(server.add(await restored.since(none))).rejects.toThrow("a different entry phone/2");
  expect(await places(server)).toEqual(["phone/1 at 1", "phone/2 at 2"]);
});
