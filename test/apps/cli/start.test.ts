import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test, vi } from "vitest";
import { started } from "../../browser/startedTurnsleft.ts";
import { documentOf, turnsleft } from "./turnsleft.ts";

const node = process.execPath;
const program = "dist/src/apps/cli/main.js";
const { version } = JSON.parse(readFileSync(new URL("../../../package.json", import.meta.url), "utf8"));

const scratch = mkdtempSync(join(tmpdir(), "turnsleft-"));
afterAll(() => rmSync(scratch, { recursive: true }));
let folders = 0;
const fresh = (): string => join(scratch, `workshop-${folders++}`);

describe("start", () => {
  test.each(["SIGINT", "SIGTERM"] as const)(
    "serves without a terminal until %s, then frees its port",
    async (signal) => {
      const run = await started(node, [program, "start", "--port", "0", "--data", fresh()], /Ctrl-C stops it/);
      const address = /^(http:\/\/localhost:\d+\/)$/m.exec(run.printed)?.[1] ?? "";
      expect(await (await fetch(`${address}health`)).json()).toMatchObject({ status: "ok", version });
      expect(await (await fetch(address)).text()).toContain("<title>Turnsleft</title>");
      run.process.kill(signal);
      expect(await run.ended).toBe(0);
      await expect(fetch(address)).rejects.toThrow();
    },
  );

  test("--json tells the address to a program, on one line of its own making", async () => {
    const run = await started(node, [program, "start", "--port", "0", "--data", fresh(), "--json"], /\}\n$/);
    const { engine, address, port } = JSON.parse(run.printed);
    run.process.kill("SIGTERM");
    expect([engine, address]).toEqual([version, `http://localhost:${port}/`]);
    expect(await run.ended).toBe(0);
  });

  test("npm start ends with npm, although the shell between them hands no signal on", async () => {
    const run = await started("npm", ["start", "--", "--port", "0", "--data", fresh()], /Ctrl-C stops it/);
    const address = /^(http:\/\/localhost:\d+\/)$/m.exec(run.printed)?.[1] ?? "";
    expect((await fetch(address)).status).toBe(200);
    run.process.kill("SIGTERM");
    await run.ended;
    await vi.waitFor(() => expect(fetch(address)).rejects.toThrow(), { timeout: 20_000 });
  });

  test("a port that another program holds is a mistake that names --port", async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve));
    const port = (other.address() as { port: number }).port;
    const { status, stdout, stderr } = turnsleft(["start", "--port", String(port), "--data", fresh()]);
    other.close();
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toBe(
      `turnsleft: --port: given "${port}"; accepted: a port that no other program holds, as --port ${port + 1}, or --port 0 for any free one\n`,
    );
  });

  test.each(["web", "-1", "65536", "80.5", "8e3", "0x50", ""])("--port %s is none", (port) => {
    const { status, stdout, stderr } = turnsleft(["start", "--port", port]);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(/^turnsleft: --port: given "[^"]*"; accepted: a whole number from 0 to 65535, as \d+\n$/);
  });
});

describe("the workshop that start serves", () => {
  test("is made in an empty folder, found again in it, and let go at the end", async () => {
    const folder = fresh();
    const serve = () => started(node, [program, "start", "--port", "0", "--data", folder, "--json"], /\}\n$/);
    const first = await serve();
    const told = JSON.parse(first.printed);
    expect(told).toMatchObject({ folder, pairing: { code: expect.stringMatching(/^\d{6}$/), seconds: 600 } });
    expect(told.workshop).toMatch(/^w-[0-9a-f]{20}$/);
    const { status, stdout, stderr } = turnsleft(["start", "--port", "0", "--data", folder]);
    expect([status, stdout]).toEqual([3, ""]);
    expect(stderr).toBe(
      `turnsleft: ${folder}: another Turnsleft is working with these data; end it, or name another folder with --data.\n`,
    );
    expect((await fetch(told.address)).status).toBe(200);
    first.process.kill("SIGTERM");
    expect(await first.ended).toBe(0);
    expect(existsSync(join(folder, "server.json"))).toBe(false);
    const again = await serve();
    expect(JSON.parse(again.printed).workshop).toBe(told.workshop);
    again.process.kill("SIGTERM");
    await again.ended;
  });

  test("is opened again after its server was killed, and lies in the usual place unless told", async () => {
    const usual = { XDG_DATA_HOME: fresh(), HOME: fresh(), LOCALAPPDATA: fresh() };
    const serve = () =>
      started(
        "env",
        [...Object.entries(usual).map((it) => it.join("=")), node, program, "start", "--port", "0", "--json"],
        /\}\n$/,
      );
    const first = await serve();
    const { folder, workshop } = JSON.parse(first.printed);
    expect(Object.values(usual).some((it) => folder.startsWith(it))).toBe(true);
    first.process.kill("SIGKILL");
    await first.ended;
    const again = await serve();
    expect(JSON.parse(again.printed).workshop).toBe(workshop);
    again.process.kill("SIGTERM");
    expect(await again.ended).toBe(0);
  });

  test("prints its address on a line of its own, then the pairing code, and nothing else of a secret", async () => {
    const folder = fresh();
    const run = await started(node, [program, "start", "--port", "0", "--data", folder], /Ctrl-C stops it/);
    const lines = run.printed.split("\n").filter((it) => it !== "");
    expect(lines[1]).toMatch(/^http:\/\/localhost:\d+\/$/);
    expect(lines[2]).toMatch(/^Pairing code \d{6}: /);
    const { key } = JSON.parse(readFileSync(join(folder, "server.json"), "utf8"));
    expect(run.printed).not.toContain(key);
    run.process.kill("SIGTERM");
    await run.ended;
  });

  test("is served also where nothing can be left beside its journal, and stops: it stayed for ever, 2026-11", async () => {
    const folder = fresh();
    for (const name of ["server.json.part", "devices.json.part"]) mkdirSync(join(folder, name), { recursive: true });
    const run = await started(node, [program, "start", "--port", "0", "--data", folder, "--json"], /\}\n$/);
    expect((await fetch(JSON.parse(run.printed).address)).status).toBe(200);
    expect(turnsleft(["pair", "--data", folder]).status).toBe(2);
    run.process.kill("SIGTERM");
    expect(await run.ended).toBe(0);
  });

  test("a place that cannot be one is told", () => {
    const file = fresh();
    writeFileSync(file, "a letter");
    const { status, stderr } = turnsleft(["start", "--port", "0", "--data", file]);
    expect([status, stderr]).toEqual([
      3,
      `turnsleft: ${file}: something is there already, and nothing is overwritten.\n`,
    ]);
  });
});

describe("start --example", () => {
  test("prints the worked example and how to go on, and ends", () => {
    const { status, stdout, stderr } = turnsleft(["start", "--example"]);
    expect([status, stderr]).toEqual([0, ""]);
    const weighed = turnsleft(["weigh", "examples/chain-case-level.json"]).stdout.trimEnd();
    expect(stdout).toContain(weighed);
    expect(stdout).toContain("npx turnsleft weigh --template");
  });

  test("--json is the document of the same case", () => {
    expect(documentOf(["start", "--example"])).toEqual(documentOf(["weigh", "examples/chain-case-level.json"]));
  });
});
