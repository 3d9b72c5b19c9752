import { statSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { pairingCode } from "../../../src/apps/server/api/pairingCode.ts";
import { type ServedHere, servedHere, textIn } from "./servedHere.ts";

let here: ServedHere;
beforeAll(async () => {
  here = await servedHere({ device: { atOnce: 1000, perSecond: 1000 }, stranger: { atOnce: 1000, perSecond: 1000 } });
});
afterAll(() => here.close());

const pair = (code: string, name: unknown = "phone of A") => here.ask("POST", "/devices", null, { code, name });

describe("a device is let in", () => {
  test("by the code on the workshop's screen, once", async () => {
    const code = here.newCode();
    const { status, body } = await pair(code);
    expect(status).toBe(201);
    expect(body).toEqual({
      token: expect.stringMatching(/^[\w-]{43}$/),
      device: expect.stringMatching(/^d-[0-9a-f]{20}$/),
      workshop: here.workshop,
    });
    expect((await here.ask("GET", "/heads", body.token)).status).toBe(200);
    expect(await pair(code)).toMatchObject({ status: 403, body: { error: "no code" } });
  });

  test("and each by a token of its own, of which the folder holds no more than a hash", async () => {
    const [one, two] = [await here.paired(), await here.paired()];
    expect(one.token).not.toBe(two.token);
    expect(one.device).not.toBe(two.device);
    const kept = textIn(here.folder, "devices.json");
    expect(kept).toContain(one.device);
    expect(kept).not.toContain(one.token);
    for (const name of ["devices.json", "server.json"])
      expect(statSync(join(here.folder, name)).mode & 0o777).toBe(0o600);
  });

  test("not by a code that was guessed: five tries, then that code is void", async () => {
    const code = here.newCode();
    const wrong = code === "000000" ? "000001" : "000000";
    for (const triesLeft of [4, 3, 2, 1, 0])
      expect(await pair(wrong)).toMatchObject({ status: 403, body: { error: "wrong code", triesLeft } });
    expect(await pair(code)).toMatchObject({ status: 403, body: { error: "no code" } });
    expect((await pair(here.newCode())).status).toBe(201);
  });

  test("not by a code that another has taken the place of", async () => {
    const [old, fresh] = [here.newCode(), here.newCode()];
    if (old !== fresh) expect((await pair(old)).body.error).toBe("wrong code");
    expect((await pair(fresh)).status).toBe(201);
  });

  test("not by a code of ten minutes ago", () => {
    let now = 0;
    const codes = pairingCode(() => now);
    const { code, seconds } = codes.open();
    expect(seconds).toBe(600);
    now = 599_999;
    const again = codes.open();
    now += 599_999;
    expect(codes.take(again.code)).toEqual({ type: "right" });
    const late = codes.open();
    now += 600_000;
    expect(codes.take(late.code)).toEqual({ type: "none open" });
    expect(codes.take(code)).toEqual({ type: "none open" });
  });

  test.each([
    [{ code: "12345", name: "a" }, "code", "the six digits on the workshop's screen"],
    [{ code: 123456, name: "a" }, "code", "the six digits on the workshop's screen"],
    [{ code: "123456" }, "name", "a text of one line"],
    [{ code: "123456", name: "two\nlines" }, "name", "one line of 1 to 120 characters"],
    [{ code: "123456", name: "a", device: "bench" }, "device", expect.stringContaining("no such field")],
  ])("what is not as it has to be is named: %j", async (body, field, accepted) => {
    expect(await here.ask("POST", "/devices", null, body)).toMatchObject({
      status: 400,
      body: { error: "malformed", problems: [{ field, accepted }] },
    });
  });
});

describe("who is let in", () => {
  test("is listed by its name, with when it was let in and last seen", async () => {
    const before = new Date().toISOString();
    const { token, device } = await here.paired("tablet");
    const { devices } = (await here.ask("GET", "/devices", token)).body;
    const { since, lastSeen, ...told } = devices.find((it: { device: string }) => it.device === device);
    expect(told).toEqual({ device, name: "tablet", revoked: null });
    const order = [before, since, lastSeen, new Date().toISOString()];
    expect(order).toEqual(order.toSorted());
  });

  test("may shut another one out, which is not answered from then on, and stays in the list", async () => {
    const [lost, other] = [await here.paired("lost"), await here.paired()];
    expect((await here.ask("DELETE", `/devices/${lost.device}`, other.token)).status).toBe(204);
    expect((await here.ask("DELETE", `/devices/${lost.device}`, other.token)).status).toBe(204);
    expect(await here.ask("GET", "/heads", lost.token)).toMatchObject({ status: 401, body: { error: "not paired" } });
    const { devices } = (await here.ask("GET", "/devices", other.token)).body;
    expect(devices.find((it: { device: string }) => it.device === lost.device).revoked).toMatch(/Z$/);
    expect((await here.ask("DELETE", "/devices/nobody", other.token)).status).toBe(404);
  });

  test("stays let in when the server is started again; only a code does not outlast it", async () => {
    const rates = { device: { atOnce: 100, perSecond: 100 }, stranger: { atOnce: 100, perSecond: 100 } };
    const first = await servedHere(rates);
    const { token } = await first.paired();
    const kept = textIn(first.folder, "devices.json");
    await first.close();
    const { mkdirSync, writeFileSync } = await import("node:fs");
    mkdirSync(first.folder);
    writeFileSync(join(first.folder, "devices.json"), kept);
    const again = await servedHere(rates, first.folder);
    expect((await again.ask("GET", "/heads", token)).status).toBe(200);
    expect((await again.ask("POST", "/devices", null, { code: "123456", name: "a" })).body.error).toBe("no code");
    await again.close();
  });
});

describe("who is not let in", () => {
  test.each([
    ["nothing", undefined],
    ["another scheme", "Basic dXNlcjpwYXNz"],
    ["no token", "Bearer "],
    ["a token of nobody", `Bearer ${"A".repeat(43)}`],
    ["a device's name", "Bearer d-00000000000000000000"],
    ["a hash instead of a token", `Bearer ${"0".repeat(64)}`],
  ])("%s", async (_, authorization) => {
    const paths = ["heads", "ownerCards", "devices", "changes", "jobs/0412"];
    for (const path of paths) {
      const answer = await fetch(`${here.address}api/${path}`, authorization ? { headers: { authorization } } : {});
      expect([answer.status, answer.headers.get("www-authenticate")]).toEqual([401, "Bearer"]);
      expect(await answer.json()).toEqual({ error: "not paired", sentence: expect.stringContaining("not paired") });
    }
  });

  test("the hash that stands in the folder opens nothing", async () => {
    await here.paired();
    const [{ token: hash }] = JSON.parse(textIn(here.folder, "devices.json"));
    expect((await here.ask("GET", "/heads", hash)).status).toBe(401);
  });

  test("a paired device makes no codes; the workshop's own screen does", async () => {
    const { token } = await here.paired();
    expect(await here.ask("POST", "/pairing", token)).toMatchObject({ status: 403, body: { error: "not allowed" } });
    const made = await here.ask("POST", "/pairing", here.key);
    expect(made).toMatchObject({ status: 201, body: { code: expect.stringMatching(/^\d{6}$/), seconds: 600 } });
    expect((await pair(made.body.code)).status).toBe(201);
  });
});
