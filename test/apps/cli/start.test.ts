import { readFileSync } from "node:fs";
import { createServer } from "node:net";
import { describe, expect, test, vi } from "vitest";
import { started } from "../../browser/startedTurnsleft.ts";
import { documentOf, turnsleft } from "./turnsleft.ts";

const node = process.execPath;
const program = "dist/src/apps/cli/main.js";
const { version } = JSON.parse(readFileSync(new URL("../../../package.json", import.meta.url), "utf8"));

describe("start", () => {
  test.each(["SIGINT", "SIGTERM"] as const)(
    "serves without a terminal until %s, then frees its port",
    async (signal) => {
      const run = await started(node, [program, "start", "--port", "0"], /Ctrl-C stops it/);
      const address = /^(http:\/\/localhost:\d+\/)$/m.exec(run.printed)?.[1] ?? "";
      expect(await (await fetch(`${address}health`)).json()).toEqual({ status: "ok", version });
      expect(await (await fetch(address)).text()).toContain("<title>Turnsleft</title>");
      run.process.kill(signal);
      expect(await run.ended).toBe(0);
      await expect(fetch(address)).rejects.toThrow();
    },
  );

  test("--json tells the address to a program, on one line of its own making", async () => {
    const run = await started(node, [program, "start", "--port", "0", "--json"], /\}\n$/);
    const { engine, address, port } = JSON.parse(run.printed);
    run.process.kill("SIGTERM");
    expect([engine, address]).toEqual([version, `http://localhost:${port}/`]);
    expect(await run.ended).toBe(0);
  });

  test("npm start ends with npm, although the shell between them hands no signal on", async () => {
    const run = await started("npm", ["start", "--", "--port", "0"], /Ctrl-C stops it/);
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
    const { status, stdout, stderr } = turnsleft(["start", "--port", String(port)]);
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
