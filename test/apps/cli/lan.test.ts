import { X509Certificate } from "node:crypto";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { request } from "node:https";
import { type AddressInfo, createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { text } from "node:stream/consumers";
import { afterAll, describe, expect, test } from "vitest";
import { newAuthority, newLeaf } from "../../../src/apps/server/lan/authority.ts";
import { localNames } from "../../../src/apps/server/lan/localNames.ts";
import { type Started, started } from "../../browser/startedTurnsleft.ts";
import { nameOf, plainPhoto } from "../../stores/pictures.ts";
import { turnsleft } from "./turnsleft.ts";

const program = "dist/src/apps/cli/main.js";
const scratch = mkdtempSync(join(tmpdir(), "turnsleft-"));
afterAll(() => rmSync(scratch, { recursive: true }));
let folders = 0;
const fresh = (): string => join(scratch, `shop-${folders++}`);

const running = (folder: string, ...options: string[]): Promise<Started> =>
  started(process.execPath, [program, "start", "--port", "0", "--data", folder, "--lan", ...options], /Ctrl-C|\}\n$/);

async function ended(run: Started): Promise<void> {
  run.process.kill("SIGTERM");
  expect(await run.ended).toBe(0);
}

type Asked = { readonly method?: string; readonly headers?: Record<string, string>; readonly body?: Buffer | string };
type Answered = { readonly status: number | undefined; readonly said: string };

/** Asks by HTTPS as a telephone that has installed `ca` and finds `called` at this machine. */
const ask = (ca: string, called: string, port: number, path: string, { method, headers, body }: Asked = {}) =>
  new Promise<Answered>((resolve, reject) => {
    const asked = request(
      {
        host: "127.0.0.1",
        port,
        path,
        servername: called,
        ca,
        agent: false,
        method: method ?? "GET",
        headers: { host: `${called}:${port}`, ...headers },
      },
      (answer) => void text(answer).then((said) => resolve({ status: answer.statusCode, said })),
    );
    asked.on("error", reject);
    asked.end(body);
  });

async function authorityAt(port: number): Promise<string> {
  const answer = await fetch(`http://127.0.0.1:${port}/authority.crt`);
  return new X509Certificate(Buffer.from(await answer.arrayBuffer())).toString();
}

const [called = "localhost"] = localNames().names;

describe("start --lan", () => {
  test("a telephone takes the certificate, compares it, and pairs, writes and brings photos by HTTPS", async () => {
    const folder = fresh();
    const run = await running(folder, "--json");
    const { lan, pairing, address } = JSON.parse(run.printed);
    expect(lan.addresses).toContain(`https://${called}:${lan.port}/`);
    const ca = await authorityAt(lan.port);
    expect(new X509Certificate(ca).fingerprint256).toBe(lan.trust.sha256);
    expect((await ask(ca, called, lan.port, "/")).said).toContain("<title>Turnsleft</title>");
    const json = { "content-type": "application/json" };
    const paired = await ask(ca, called, lan.port, "/api/devices", {
      method: "POST",
      headers: json,
      body: JSON.stringify({ code: pairing.code, name: "phone" }),
    });
    const { token } = JSON.parse(paired.said);
    const headers = { authorization: `Bearer ${token}`, origin: `https://${called}:${lan.port}` };
    // Larger than any buffer on the way, so that the door hands the line on whole.
    const photo = await plainPhoto(2400, 1800);
    const put = await ask(ca, called, lan.port, `/api/photos/${nameOf(photo)}`, {
      method: "PUT",
      headers,
      body: photo,
    });
    expect(JSON.parse(put.said)).toEqual({ sha256: nameOf(photo), bytes: photo.length });
    expect((await ask(ca, called, lan.port, "/api/heads", { headers })).status).toBe(200);
    // The bench of this machine itself goes on by plain HTTP, which a browser trusts there.
    expect((await fetch(`${address}health`)).status).toBe(200);
    await ended(run);
  });

  test("is on again with the same authority, and no key of it leaves its folder", async () => {
    const folder = fresh();
    const first = await running(folder);
    const port = Number(/^https:\/\/\S+:(\d+)\/$/m.exec(first.printed)?.[1]);
    const ca = await authorityAt(port);
    const sha256 = new X509Certificate(ca).fingerprint256;
    expect(first.printed).toContain(`NEW: every telephone has to learn it.`);
    expect(first.printed.replace(/\n {2}(?=[\dA-F]{2}:)/g, ":")).toContain(sha256);
    expect(first.printed).toMatch(/in words: [a-z]+( [a-z]+){7}\n/);
    await expect.poll(() => existsSync(join(folder, "lastBackup.json")), { timeout: 20_000 }).toBe(true);
    await ended(first);
    const second = await running(folder, "--json");
    expect(JSON.parse(second.printed).lan.trust.sha256).toBe(sha256);
    await ended(second);
    const stick = mkdtempSync(join(scratch, "stick-"));
    expect(turnsleft(["export", join(stick, "shop.jsonl"), "--data", folder]).status).toBe(0);
    expect(turnsleft(["backup", join(stick, "shop.backup"), "--data", folder]).status).toBe(0);

    const tls = join(folder, "tls");
    const secrets = readdirSync(tls).map((it) => {
      expect(statSync(join(tls, it)).mode & 0o777).toBe(0o600);
      return /PRIVATE KEY-----\n([^\n]+)/.exec(readFileSync(join(tls, it), "utf8"))?.[1] ?? "";
    });
    expect(secrets.map((it) => it.length)).toEqual([64, 64]);
    const outside = [folder, stick]
      .flatMap((it) => readdirSync(it, { recursive: true, withFileTypes: true }))
      .filter((it) => it.isFile() && it.parentPath !== tls)
      .map((it) => readFileSync(join(it.parentPath, it.name), "latin1"));
    expect(outside.length).toBeGreaterThan(6);
    for (const held of [...outside, first.printed, first.complained(), second.printed, second.complained()])
      for (const secret of [...secrets, "PRIVATE KEY"]) expect(held.includes(secret)).toBe(false);
  });

  test("without --lan nobody but this machine is answered, and there is no authority", async () => {
    const folder = fresh();
    const run = await started(process.execPath, [program, "start", "--port", "0", "--data", folder, "--json"], /\}\n$/);
    const { lan, address } = JSON.parse(run.printed);
    expect([lan, existsSync(join(folder, "tls"))]).toEqual([null, false]);
    for (const path of ["trust", "authority.crt"]) expect((await fetch(address + path)).status).toBe(404);
    await ended(run);
  });
});

describe("the workshop's own certificate", () => {
  const files = async (name: string, from = new Date()) => {
    const authority = await newAuthority("elsewhere", from);
    const { certificate, key } = await newLeaf(authority, { names: ["bench.local"], addresses: [] }, from);
    const [certificateFile, keyFile] = [join(scratch, `${name}.crt`), join(scratch, `${name}.key`)];
    writeFileSync(certificateFile, certificate);
    writeFileSync(keyFile, key);
    return { authority, certificateFile, keyFile };
  };

  test("is shown, its names are answered to, and no authority is made", async () => {
    const folder = fresh();
    const { authority, certificateFile, keyFile } = await files("own");
    const run = await running(folder, "--certificate", certificateFile, "--key", keyFile, "--json");
    const { lan } = JSON.parse(run.printed);
    expect(lan).toMatchObject({ addresses: [`https://bench.local:${lan.port}/`], trust: null });
    expect((await ask(authority.certificate, "bench.local", lan.port, "/health")).status).toBe(200);
    expect(existsSync(join(folder, "tls"))).toBe(false);
    await ended(run);
  });

  const refused = (...options: string[]): string => {
    const folder = fresh();
    const { status, stdout, stderr } = turnsleft(["start", "--port", "0", "--data", folder, ...options]);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr.trim().split("\n")).toHaveLength(1);
    return stderr;
  };

  test("a mistake in it names the file and what is accepted", async () => {
    const own = await files("right");
    const other = await files("other");
    const old = await files("old", new Date(Date.now() - 500 * 86_400_000));
    const coming = await files("coming", new Date(Date.now() + 5 * 86_400_000));
    const pair = (certificate: string, key: string) => refused("--lan", "--certificate", certificate, "--key", key);
    const ofAnother = pair(own.certificateFile, other.keyFile);
    expect(ofAnother).toMatch(/--key: given ".*"; accepted: the key of that certificate/);
    expect(ofAnother).not.toContain("PRIVATE");
    expect(pair(own.keyFile, own.keyFile)).toContain("accepted: a certificate in PEM");
    expect(pair(join(scratch, "nowhere.crt"), own.keyFile)).toContain("accepted: a file that can be read");
    expect(pair(old.certificateFile, old.keyFile)).toMatch(/good now; this one was until \d{4}-\d{2}-\d{2}/);
    expect(pair(coming.certificateFile, coming.keyFile)).toMatch(/good now; this one is from \d{4}-\d{2}-\d{2} on/);
    expect(refused("--lan", "--certificate", own.certificateFile)).toContain(
      "--key: given nothing; accepted: --certificate and --key",
    );
    expect(refused("--certificate", own.certificateFile)).toContain("together with --lan");
    expect(refused("--lan", "--lan-port", "web")).toContain("--lan-port: given");
  }, 180_000);

  test("a port of the local network that is taken is a mistake that names it, and the other is free again", async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, "0.0.0.0", resolve));
    const { port } = other.address() as AddressInfo;
    expect(refused("--lan", "--lan-port", String(port))).toContain(
      `--lan-port: given "${port}"; accepted: a port that no other`,
    );
    other.close();
  });
});
