import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import type { PersonId } from "../../src/journal/facts/ids.ts";
import { pairedDevices } from "../../src/stores/pairedDevices.ts";
import { pinsIn } from "../../src/stores/pins.ts";

const folder = mkdtempSync(join(tmpdir(), "turnsleft-pins-"));
afterAll(() => rmSync(folder, { recursive: true }));
const jory = "jory" as PersonId;

test("after three wrong tries each has to wait twice as long as the one before, up to an hour; a restart is no way round", async () => {
  let now = 0;
  const clock = () => now;
  let pins = pinsIn(folder, clock);
  await pins.set(jory, "4711", null);
  const waits: number[] = [];
  for (let i = 0; i < 12; i++) {
    const tried = await pins.check(jory, "0000");
    if (tried.type !== "wrong") throw new Error(tried.type);
    waits.push(tried.wait_s);
    if (tried.wait_s > 0) {
      now += tried.wait_s * 1000 - 1;
      expect(await pins.check(jory, "4711")).toEqual({ type: "too soon", wait_s: expect.closeTo(0.001, 6) });
      now += 1;
    }
  }
  expect(waits).toEqual([0, 0, 30, 60, 120, 240, 480, 960, 1920, 3600, 3600, 3600]);
  now = 0;
  pins = pinsIn(folder, clock);
  expect(await pins.check(jory, "4711")).toEqual({ type: "too soon", wait_s: 3600 });
  now = 3_600_000;
  expect(await pins.check(jory, "4711")).toEqual({ type: "right" });
  expect(await pins.check(jory, "0000")).toEqual({ type: "wrong", wait_s: 0 });
});

test("a person may be called as what every object has", async () => {
  const pins = pinsIn(folder, () => 0);
  expect(await pins.check("constructor" as PersonId, "4711")).toEqual({ type: "none set" });
  expect(pins.forget("toString" as PersonId)).toBe(false);
});

test("a wall clock that was set back is taken over as it is, and nobody is shut out by it", () => {
  let now = new Date("2026-11-25T10:00:00Z");
  const devices = pairedDevices(folder, () => now);
  const { token, device } = devices.pair("phone");
  expect(devices.holderOf(token)).toBe(device);
  now = new Date("2019-01-01T00:00:00Z");
  expect(devices.holderOf(token)).toBe(device);
  expect(devices.list()).toMatchObject([{ since: "2026-11-25T10:00:00.000Z", lastSeen: "2019-01-01T00:00:00.000Z" }]);
  devices.close();
  expect(pairedDevices(folder, () => now).holderOf(token)).toBe(device);
});
