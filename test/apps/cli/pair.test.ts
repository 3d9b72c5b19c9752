import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Started, started } from "../../browser/startedTurnsleft.ts";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

const scratch = mkdtempSync(join(tmpdir(), "turnsleft-"));
const folder = join(scratch, "hollin-reach");
const data = ["--data", folder];
let server: Started;
let address: string;

beforeAll(async () => {
  const program = ["dist/src/apps/cli/main.js", "start", "--port", "0", "--json", ...data];
  server = await started(process.execPath, program, /\}\n$/);
  ({ address } = JSON.parse(server.printed));
});
afterAll(async () => {
  server.process.kill("SIGKILL");
  await server.ended;
  rmSync(scratch, { recursive: true });
});

const letIn = async (code: string, name: string) => {
  const init = {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ code, name }),
  };
  const ask = () => fetch(`${address}api/devices`, init);
  return (await (await ask().catch(ask)).json()) as { device: string; token: string };
};
/** A line that stood idle while a command ran was hung up on, and this process could not hear it: it asks again. */
const heads = (token: string) => {
  const ask = () => fetch(`${address}api/heads`, { headers: { authorization: `Bearer ${token}` } });
  return ask().catch(ask);
};

test.each([
  ["pair", /^Pairing code \d{6}: lets one device in within 10 minutes; /],
  ["pin", /^Nobody has set a PIN; overrides need none\.$/m],
])("%s --help shows an example that runs, and it stands in the list of the program", (command, answer) => {
  const { status, stdout } = turnsleft([command, "--help"]);
  expect(status).toBe(0);
  const line = /Example:\n {2}turnsleft (.+)\n/.exec(stdout)?.[1] ?? "";
  const run = turnsleft(typed(line.replace("hollin-reach", folder)));
  expect([run.status, run.stderr]).toEqual([0, ""]);
  expect(run.stdout).toMatch(answer);
  expect(turnsleft(["--help"]).stdout).toMatch(new RegExp(`^ {2}${command} `, "m"));
});

test("pin tells who has one, and forgets it", async () => {
  const { token } = await letIn(documentOf(["pair", ...data]).code, "phone of A");
  const headers = { "content-type": "application/json", authorization: `Bearer ${token}` };
  const body = JSON.stringify({ person: "jory", pin: "4711" });
  expect((await fetch(`${address}api/pin`, { method: "POST", headers, body })).status).toBe(204);
  expect(documentOf(["pin", ...data])).toEqual({ folder, persons: ["jory"] });
  expect(turnsleft(["pin", "--forget", "sefa", ...data])).toMatchObject({
    status: 2,
    stderr: 'turnsleft: --forget: given "sefa"; accepted: one of: jory\n',
  });
  expect(documentOf(["pin", "--forget", "jory", ...data])).toEqual({ folder, forgotten: "jory" });
  expect(documentOf(["pin", ...data]).persons).toEqual([]);
});

describe("pair", () => {
  test("gives a code that lets one device in, and takes the place of the one before", async () => {
    const before = documentOf(["pair", ...data]).code;
    const { code, seconds } = documentOf(["pair", ...data]);
    expect(seconds).toBe(600);
    if (before !== code) expect(await letIn(before, "too late")).toMatchObject({ error: "wrong code" });
    const { token } = await letIn(code, "phone of A");
    expect((await heads(token)).status).toBe(200);
  });

  test("--list tells who is let in, --revoke shuts one out", async () => {
    const { device, token } = await letIn(documentOf(["pair", ...data]).code, "lost phone");
    const listed = () =>
      documentOf(["pair", "--list", ...data]).devices.find((it: { device: string }) => it.device === device);
    expect(listed()).toMatchObject({ name: "lost phone", revoked: null });
    expect(turnsleft(["pair", "--list", ...data]).stdout).toMatch(
      new RegExp(`^${device}  lost phone, let in \\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d UTC, not seen yet$`, "m"),
    );
    expect((await heads(token)).status).toBe(200);
    expect(documentOf(["pair", "--revoke", device, ...data])).toEqual({ folder, revoked: device });
    expect((await heads(token)).status).toBe(401);
    expect(listed().revoked).toMatch(/Z$/);
    expect(turnsleft(["pair", "--list", ...data]).stdout).toContain("lost phone, let in");
  });

  test("a mistake names what was given and what is accepted", () => {
    const { status, stderr } = turnsleft(["pair", "--revoke", "nobody", ...data]);
    expect(status).toBe(2);
    expect(stderr).toMatch(/^turnsleft: --revoke: given "nobody"; accepted: one of: d-[0-9a-f]{20}/);
    expect(turnsleft(["pair", "--list", "--revoke", "x", ...data])).toMatchObject({ status: 2 });
  });

  test("where no server runs there is no code, and the list is read from the folder", async () => {
    const nowhere = join(scratch, "nowhere");
    expect(turnsleft(["pair", "--data", nowhere])).toMatchObject({
      status: 2,
      stderr: `turnsleft: --data: given "${nowhere}"; accepted: a folder that is served at the moment: npx turnsleft start with the same --data\n`,
    });
    expect(documentOf(["pair", "--list", "--data", nowhere]).devices).toEqual([]);
    const running = documentOf(["pair", "--list", ...data]).devices.map((it: { device: string }) => it.device);
    server.process.kill("SIGKILL");
    await server.ended;
    expect(turnsleft(["pair", ...data]).status).toBe(2);
    expect(documentOf(["pair", "--list", ...data]).devices.map((it: { device: string }) => it.device)).toEqual(running);
  });
});
