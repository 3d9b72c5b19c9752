import { afterAll, afterEach, beforeAll, describe, expect, test, vi } from "vitest";
import type { Entry } from "../../../src/journal/entry.ts";
import { note as noteOf } from "../../stores/storeContract.ts";
import { type ServedHere, servedHere } from "./servedHere.ts";

let here: ServedHere;
let token: string;
beforeAll(async () => {
  here = await servedHere();
  ({ token } = await here.paired());
});
afterAll(() => here.close());

const add = (device: string, number: number) => {
  const entry = { ...noteOf(device, number, number), workshop: here.workshop } as Entry;
  return here.ask("POST", "/entries", token, { entries: [entry] });
};

/** What a stream says, line by line as it comes; empty lines left out. */
async function listening(of = token) {
  const stop = new AbortController();
  const answer = await fetch(`${here.address}api/changes`, {
    headers: { authorization: `Bearer ${of}` },
    signal: stop.signal,
  });
  if (answer.body === null || !answer.ok) throw new Error(String(answer.status));
  const reader = answer.body.pipeThrough(new TextDecoderStream()).getReader();
  let rest = "";
  const next = async (): Promise<string | null> => {
    while (!rest.includes("\n")) {
      const { done, value } = await reader.read();
      if (done) return null;
      rest += value;
    }
    const end = rest.indexOf("\n");
    const line = rest.slice(0, end);
    rest = rest.slice(end + 1);
    return line === "" ? next() : line;
  };
  return { answer, next, stop: () => stop.abort() };
}

/** The heads of the next event. */
async function headsOf({ next }: Awaited<ReturnType<typeof listening>>): Promise<unknown> {
  expect(await next()).toBe("event: heads");
  return JSON.parse((await next())?.replace(/^data: /, "") ?? "null");
}

describe("changes", () => {
  test("are told at once and after every append, to all who listen", async () => {
    const [one, two] = [await listening(), await listening((await here.paired("tablet")).token)];
    expect(one.answer.headers.get("content-type")).toBe("text/event-stream");
    expect(one.answer.headers.get("cache-control")).toBe("no-store");
    expect([await headsOf(one), await headsOf(two)]).toEqual([{}, {}]);
    await add("bench", 1);
    expect([await headsOf(one), await headsOf(two)]).toEqual([{ bench: 1 }, { bench: 1 }]);
    await add("phone", 1);
    expect(await headsOf(one)).toEqual({ bench: 1, phone: 1 });
    for (const it of [one, two]) it.stop();
  });

  test("are told in the end however many came at once", async () => {
    const line = await listening();
    await headsOf(line);
    const adds = Array.from({ length: 50 }, (_, i) => add(`many-${i}`, 1));
    await Promise.all(adds);
    let heads: Record<string, number> = {};
    while (Object.keys(heads).filter((it) => it.startsWith("many-")).length < 50)
      heads = (await headsOf(line)) as Record<string, number>;
    line.stop();
  });

  test("are told to nobody who was shut out: his line ends at once", async () => {
    const lost = await here.paired("lost");
    const line = await listening(lost.token);
    await headsOf(line);
    await here.ask("DELETE", `/devices/${lost.device}`, token);
    expect(await line.next()).toBeNull();
  });
});

describe("a line on which nothing happens", () => {
  afterEach(() => {
    vi.restoreAllMocks();
    vi.useRealTimers();
  });

  test("says so every fifteen seconds, so that nobody takes it for dead", async () => {
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
    const timers = vi.spyOn(globalThis, "setTimeout");
    const line = await listening();
    await headsOf(line);
    for (let i = 0; i < 3; i++) {
      let said = false;
      const comment = line.next().then((it) => {
        said = true;
        return it;
      });
      // Others wait in this process as well.
      await expect.poll(() => timers.mock.calls.filter(([, ms]) => ms === 15_000).length).toBe(i + 1);
      await vi.advanceTimersByTimeAsync(14_900);
      expect(said).toBe(false);
      await vi.advanceTimersByTimeAsync(100);
      expect(await comment).toBe(":");
    }
    line.stop();
  });
});

/** The last, for its hundred lines take a while to be gone. */
test("a line that was let go makes room for another", async () => {
  for (let round = 0; round < 2; round++) {
    // The server hears of a line's end by the end of its socket, a little later.
    const room = () => vi.waitFor(() => listening(), { timeout: 20_000 });
    const lines = await Promise.all(Array.from({ length: 100 }, room));
    const refused = await here.ask("GET", "/changes", token);
    expect([refused.status, refused.body.error]).toEqual([429, "too many"]);
    for (const it of lines) it.stop();
  }
});
