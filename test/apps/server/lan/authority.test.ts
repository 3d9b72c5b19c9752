import { spawnSync } from "node:child_process";
import { X509Certificate } from "node:crypto";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { createServer } from "node:https";
import { type AddressInfo, isIP } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { connect } from "node:tls";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type KeyedCertificate, newAuthority, newLeaf } from "../../../../src/apps/server/lan/authority.ts";
import { certificateIn } from "../../../../src/apps/server/lan/certificateFolder.ts";
import { fingerprint } from "../../../../src/apps/server/lan/fingerprint.ts";
import { isLocalAddress, localNames } from "../../../../src/apps/server/lan/localNames.ts";

const scratch = mkdtempSync(join(tmpdir(), "turnsleft-"));
afterAll(() => rmSync(scratch, { recursive: true }));
const now = new Date();
const names = { names: ["bench.local"], addresses: ["192.168.1.20"] };
const days = (from: string, to: string): number => (Date.parse(to) - Date.parse(from)) / 86_400_000;

let authority: KeyedCertificate;
let leaf: KeyedCertificate;
beforeAll(async () => {
  authority = await newAuthority("bench", now);
  leaf = await newLeaf(authority, names, now);
});

/** What a client that knows the authority alone says to a server with this certificate that is called so. */
async function handshake(shown: KeyedCertificate, called: string): Promise<string> {
  const server = createServer({ cert: shown.certificate, key: shown.key });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  const said = await new Promise<string>((resolve) => {
    const isName = isIP(called) === 0;
    const line = connect({
      port,
      host: "127.0.0.1",
      ca: authority.certificate,
      ...(isName ? { servername: called } : { host: "127.0.0.1" }),
      checkServerIdentity: (_, certificate) => {
        const read = new X509Certificate(certificate.raw);
        const own = isName ? read.checkHost(called) : read.checkIP(called);
        return own === undefined ? new Error("another name") : undefined;
      },
    });
    line.once("secureConnect", () => resolve("accepted"));
    line.once("error", ({ message }) => resolve(message));
    line.once("close", () => resolve("closed"));
  });
  server.close();
  server.closeAllConnections();
  return said;
}

describe("the authority of a workshop", () => {
  test.each(["localhost", "bench.local", "127.0.0.1", "192.168.1.20"])("is believed for %s", async (called) => {
    expect(await handshake(leaf, called)).toBe("accepted");
  });

  test.each([
    ["a site", { names: ["www.example.com"], addresses: [] }],
    ["a site that ends alike", { names: ["bench.local.example.com"], addresses: [] }],
    ["a top name that ends alike", { names: ["notlocal"], addresses: [] }],
    ["an address of the whole world", { names: [], addresses: ["203.0.113.7"] }],
    ["one just outside 172.16/12", { names: [], addresses: ["172.32.0.1"] }],
    ["an address of IPv6 of the whole world", { names: [], addresses: ["2001:db8::1"] }],
  ])("is not believed for %s, although it signed it", async (_, outside) => {
    const signed = await newLeaf(authority, outside, now);
    const [called = ""] = [...outside.names, ...outside.addresses];
    expect(await handshake(signed, called)).toBe("permitted subtree violation");
    // Nor for its own names, as long as one of them lies outside.
    expect(await handshake(signed, "localhost")).toBe("permitted subtree violation");
  });

  test("cannot make another authority that is believed", async () => {
    const [below, other] = [await newAuthority("below", now), await newAuthority("elsewhere", now)];
    expect(await handshake(await newLeaf(other, names, now), "localhost")).not.toBe("accepted");
    expect(await handshake(await newLeaf(below, names, now), "localhost")).not.toBe("accepted");
  });

  test("signs for 397 days at most, starting before now", () => {
    const { validFrom, validTo } = new X509Certificate(leaf.certificate);
    expect(days(validFrom, validTo)).toBeLessThan(397);
    expect(days(validFrom, validTo)).toBeGreaterThan(396.9);
    expect(Date.parse(validFrom)).toBeLessThan(now.getTime());
  });
});

// The independent check: OpenSSL builds the chain by RFC 5280 on its own.
describe.skipIf(spawnSync("openssl", ["version"]).status !== 0)("openssl", () => {
  const verify = (certificate: string, ...options: string[]) => {
    writeFileSync(join(scratch, "authority.crt"), `${authority.certificate}\n`);
    writeFileSync(join(scratch, "leaf.crt"), `${certificate}\n`);
    const { status, stdout, stderr } = spawnSync(
      "openssl",
      ["verify", "-x509_strict", "-purpose", "sslserver", "-CAfile", "authority.crt", ...options, "leaf.crt"],
      { cwd: scratch, encoding: "utf8" },
    );
    return { status, said: stdout + stderr };
  };

  test("verifies the right names strictly, and no other name", () => {
    expect(verify(leaf.certificate, "-verify_hostname", "bench.local")).toEqual({ status: 0, said: "leaf.crt: OK\n" });
    expect(verify(leaf.certificate, "-verify_ip", "192.168.1.20").status).toBe(0);
    expect(verify(leaf.certificate, "-verify_hostname", "other.local").said).toContain("hostname mismatch");
  });

  test("finds a name outside the constraint", async () => {
    const outside = await newLeaf(authority, { names: ["www.example.com"], addresses: [] }, now);
    const { status, said } = verify(outside.certificate);
    expect(status).not.toBe(0);
    expect(said).toContain("permitted subtree violation");
  });

  test("prints the constraint as RFC 5280 has it, and critical", () => {
    const file = join(scratch, "printed.crt");
    writeFileSync(file, `${authority.certificate}\n`);
    const { stdout } = spawnSync("openssl", ["x509", "-in", file, "-noout", "-text"], { encoding: "utf8" });
    expect(stdout).toMatch(
      /X509v3 Name Constraints: critical\s+Permitted:\s+DNS:localhost\s+DNS:local\s+IP:127\.0\.0\.0\/255\.0\.0\.0/,
    );
    expect(stdout).toContain("IP:172.16.0.0/255.240.0.0");
    expect(stdout).toContain("IP:FC00:0:0:0:0:0:0:0/FE00:0:0:0:0:0:0:0");
    expect(stdout).toMatch(/Basic Constraints: critical\s+CA:TRUE, pathlen:0/);
  });
});

describe("in a data folder", () => {
  const later = (count: number): Date => new Date(now.getTime() + count * 86_400_000);
  const serialOf = (certificate: string): string => new X509Certificate(certificate).serialNumber;

  test("the authority stays, its key is its owner's alone, and the server's certificate is renewed in time", async () => {
    const folder = join(scratch, "kept");
    const first = await certificateIn(folder, names, now);
    expect(first.newAuthority).toBe(true);
    for (const name of readdirSync(join(folder, "tls")))
      expect([name, statSync(join(folder, "tls", name)).mode & 0o777]).toEqual([name, 0o600]);
    expect(statSync(join(folder, "tls")).mode & 0o777).toBe(0o700);
    const at366 = await certificateIn(folder, names, later(366));
    expect(at366).toEqual({ ...first, newAuthority: false });
    const at368 = await certificateIn(folder, names, later(368));
    expect(at368.authority).toBe(first.authority);
    expect(serialOf(at368.certificate)).not.toBe(serialOf(first.certificate));
    expect(new X509Certificate(at368.certificate).verify(new X509Certificate(first.authority ?? "").publicKey)).toBe(
      true,
    );
    expect(Date.parse(new X509Certificate(at368.certificate).validTo)).toBeGreaterThan(later(700).getTime());
  });

  test("another address, another authority, a clock that was set back: a new one; one name less: the same", async () => {
    const folder = join(scratch, "changed");
    const first = await certificateIn(folder, names, now);
    const moved = await certificateIn(folder, { ...names, addresses: ["192.168.1.31"] }, now);
    expect(new X509Certificate(moved.certificate).checkIP("192.168.1.31")).toBe("192.168.1.31");
    expect(await certificateIn(folder, { names: [], addresses: [] }, now)).toEqual(moved);
    const before = await certificateIn(folder, names, later(-3));
    expect(serialOf(before.certificate)).not.toBe(serialOf(moved.certificate));
    expect(before.authority).toBe(first.authority);
  });

  test("an authority that nears its end, or cannot be read, gives way to another, and that is told", async () => {
    const folder = join(scratch, "ended");
    const first = await certificateIn(folder, names, now);
    const ending = await certificateIn(folder, names, later(3653 - 420));
    expect([ending.newAuthority, ending.authority === first.authority]).toEqual([true, false]);
    writeFileSync(
      join(folder, "tls", "authority.pem"),
      readFileSync(join(folder, "tls", "server.pem")).subarray(0, 300),
    );
    const again = await certificateIn(folder, names, later(3653 - 420));
    expect(again.newAuthority).toBe(true);
    expect(new X509Certificate(again.certificate).verify(new X509Certificate(again.authority ?? "").publicKey)).toBe(
      true,
    );
  });

  test("a place that cannot hold it is a trouble of the disk", async () => {
    const folder = join(scratch, "taken");
    mkdirSync(folder);
    writeFileSync(join(folder, "tls"), "a file");
    await expect(certificateIn(folder, names, now)).rejects.toMatchObject({ name: "StoreTrouble" });
  });
});

test("a fingerprint is that of OpenSSL, and its words are its first 88 bits", () => {
  const { sha256, words } = fingerprint(authority.certificate);
  expect(sha256).toBe(new X509Certificate(authority.certificate).fingerprint256);
  expect(words).toHaveLength(8);
  expect(fingerprint(authority.certificate).words).toEqual(words);
  expect(words.every((it) => /^[a-z]{3,8}$/.test(it))).toBe(true);
});

describe("a local network", () => {
  test.each([
    "127.0.0.1",
    "10.255.0.1",
    "172.16.0.1",
    "172.31.255.254",
    "192.168.0.9",
    "169.254.3.4",
    "::1",
    "fd12::3",
    "fe80::1%eth0",
    "::ffff:192.168.1.20",
  ])("%s is in one", (address) => expect(isLocalAddress(address)).toBe(true));
  test.each([
    "172.32.0.1",
    "172.15.255.255",
    "11.0.0.1",
    "8.8.8.8",
    "192.169.0.1",
    "2001:db8::1",
    "::ffff:8.8.8.8",
    "",
    undefined,
  ])("%s is not", (address) => expect(isLocalAddress(address)).toBe(false));

  test.each([
    ["Bench-PC", ["bench-pc.local"]],
    ["bench.fritz.example", ["bench.local"]],
    ["Jory's bench", ["jory-s-bench.local"]],
    ["", []],
  ])("a machine called %s is found as %s", (called, expected) => {
    expect(localNames(called, {}).names).toEqual(expected);
  });

  test("only addresses of local networks are shown to it", () => {
    const at = (address: string, internal = false) => ({ address, family: "IPv4", internal }) as never;
    expect(
      localNames("bench", { lo: [at("127.0.0.1", true)], eth0: [at("203.0.113.7"), at("192.168.1.20")] }).addresses,
    ).toEqual(["192.168.1.20"]);
  });
});
