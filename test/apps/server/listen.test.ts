import { createServer, type Server } from "node:http";
import { type AddressInfo, connect } from "node:net";
import { networkInterfaces } from "node:os";
import { afterEach, describe, expect, test } from "vitest";
import { serverApp } from "../../../src/apps/server/app.ts";
import { builtFiles } from "../../../src/apps/server/builtFiles.ts";
import { type Listening, listen } from "../../../src/apps/server/listen.ts";
import { builtFolder } from "./builtFolder.ts";

const app = serverApp({ files: builtFiles(builtFolder()), version: "1" });
const open: Listening[] = [];

afterEach(async () => {
  for (const it of open.splice(0)) await it.close();
});

async function serving(port = 0): Promise<Listening> {
  const served = await listen((request) => app.fetch(request), port);
  if (typeof served !== "object") throw new Error(served);
  open.push(served);
  return served;
}

/** What a server says to these very bytes. */
function said(port: number, bytes: string): Promise<string> {
  return new Promise((resolve, reject) => {
    let heard = "";
    const socket = connect(port, "127.0.0.1", () => socket.end(bytes));
    socket.on("data", (it) => {
      heard += it.toString("latin1");
    });
    socket.on("close", () => resolve(heard));
    socket.on("error", reject);
  });
}

describe("a server on this machine alone", () => {
  test("answers at the address it names, and on 127.0.0.1", async () => {
    const { port, address } = await serving();
    expect(address).toBe(`http://localhost:${port}/`);
    for (const at of [address, `http://127.0.0.1:${port}/`]) expect((await fetch(at)).status).toBe(200);
  });

  test("cannot be reached by the addresses this machine has in a network", async () => {
    const { port } = await serving();
    const others = Object.values(networkInterfaces())
      .flatMap((it) => it ?? [])
      .filter(({ internal, family }) => !internal && family === "IPv4");
    for (const { address } of others) await expect(fetch(`http://${address}:${port}/`)).rejects.toThrow();
  });

  test("says so where the port is taken, and leaves it to whoever has it", async () => {
    const { port, address } = await serving();
    expect(await listen(() => new Response("another"), port)).toBe("taken");
    expect(await (await fetch(address)).text()).toContain("bench");
  });

  test("says so where only the second of its two addresses is taken, and frees the first", async () => {
    const other: Server = createServer();
    const bound = await new Promise<boolean>((resolve) => {
      other.once("error", () => resolve(false)).listen(0, "::1", () => resolve(true));
    });
    if (!bound) return;
    const { port } = other.address() as AddressInfo;
    expect(await listen(() => new Response(""), port)).toBe("taken");
    other.close();
    expect((await serving(port)).port).toBe(port);
  });

  test("hangs up at once, also on those who keep the line open", async () => {
    const served = await serving();
    await (await fetch(served.address)).text();
    const idle = connect(served.port, "127.0.0.1");
    await new Promise((resolve) => idle.once("connect", resolve));
    const hungUp = new Promise((resolve) => idle.once("close", resolve));
    idle.on("error", () => {});
    await served.close();
    await hungUp;
    await expect(fetch(served.address)).rejects.toThrow();
  });
});

describe("bytes that no browser sends", () => {
  test.each([
    ["a path that climbs", "GET /../../secret.txt HTTP/1.1\r\nHost: localhost\r\n\r\n", 404],
    ["a path that climbs on Windows", "GET /..\\..\\secret.txt HTTP/1.1\r\nHost: localhost\r\n\r\n", 400],
    ["a foreign address with our name", "GET http://evil.example/ HTTP/1.1\r\nHost: localhost\r\n\r\n", 403],
    ["our address with a foreign name", "GET http://localhost/ HTTP/1.1\r\nHost: evil.example\r\n\r\n", 403],
    ["a file address", "GET file:///etc/passwd HTTP/1.1\r\nHost: localhost\r\n\r\n", 400],
    ["a name that is none", "GET / HTTP/1.1\r\nHost: local host/..\r\n\r\n", 400],
    ["no name at all", "GET / HTTP/1.0\r\n\r\n", 400],
    ["TRACE", "TRACE / HTTP/1.1\r\nHost: localhost\r\n\r\n", 405],
  ])("%s", async (_, bytes, status) => {
    const { port } = await serving();
    const answer = await said(port, bytes.replace("\r\n\r\n", "\r\nConnection: close\r\n\r\n"));
    expect(answer).toMatch(new RegExp(`^HTTP/1\\.1 ${status} `));
    expect(answer.toLowerCase()).toContain("content-security-policy: default-src 'none'; script-src 'self'");
    expect(answer).not.toMatch(/secret|root:/);
  });
});
