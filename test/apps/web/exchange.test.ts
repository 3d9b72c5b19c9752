import { expect, onTestFinished, test } from "vitest";
import { exchange } from "../../../src/apps/web/journal/exchange.ts";
import type { WorkshopId } from "../../../src/journal/facts/ids.ts";
import type { Heads } from "../../../src/journal/store.ts";
import { StoreTrouble } from "../../../src/journal/storeTrouble.ts";
import { memoryJournal } from "../../../src/stores/memory.ts";
import { note, workshop } from "../../stores/storeContract.ts";

/** A journal that is kept level with a workshop out of reach, at its first try there, which fails when it is told to. */
async function apart() {
  const [here, there] = [memoryJournal(workshop as WorkshopId), memoryJournal(workshop as WorkshopId)];
  await here.store.add([note("phone", 1, 1)]);
  const network = { isUp: false };
  let fail = (): void => {};
  const heads = async (): Promise<Heads> => {
    if (!network.isUp)
      await new Promise((_, refuse) => {
        fail = () => refuse(new StoreTrouble("not reachable", "the workshop"));
      });
    return there.store.heads();
  };
  const told: boolean[] = [];
  const { soon, end } = exchange({
    here,
    workshop: { cards: there.cards, store: { ...there.store, heads } },
    changes: () => new Promise(() => {}),
    beside: async () => null,
    told: ({ reached }) => told.push(reached),
  });
  onTestFinished(end);
  await noPauseLater();
  return { there, network, soon, fail: () => fail(), told };
}

/** Everything is in memory: whatever follows without a pause has followed by then. */
const noPauseLater = (): Promise<void> => new Promise((resume) => setImmediate(resume));

test("a network that comes back is tried at once, however long the pause was to be", async () => {
  const { there, network, soon, fail, told } = await apart();
  fail();
  await noPauseLater();
  expect(told).toEqual([false]);
  network.isUp = true;
  soon();
  await noPauseLater();
  expect(told).toEqual([false, true]);
  expect(await there.store.heads()).toEqual({ phone: 1 });
});

test("one that comes back while a try still fails is tried again after it: a pause of up to a minute came between, 2026-11", async () => {
  const { network, soon, fail, told } = await apart();
  network.isUp = true;
  soon();
  fail();
  await noPauseLater();
  expect(told).toEqual([false, true]);
});
