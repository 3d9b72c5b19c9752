import { type IncomingHttpHeaders, request as plainRequest } from "node:http";
import { request } from "node:https";
import { connect as plainConnect } from "node:net";
import { buffer } from "node:stream/consumers";
import { afterEach, beforeAll, describe, expect, test } from "vitest";
import { serverApp } from "../../../../src/apps/server/app.ts";
import { builtFiles } from "../../../../src/apps/server/builtFiles.ts";
import { type KeyedCertificate, newAuthority, newLeaf } from "../../../../src/apps/server/lan/authority.ts";
import { lanSide, NEW_AUTHORITY, type OpenLan } from "../../../../src/apps/server/lan/lanSide.ts";
import type { Shown } from "../../../../src/apps/server/lan/shown.ts";
import { builtFolder } from "../builtFolder.ts";

const names = { names: ["bench.local"], addresses: ["192.168.1.20"] };
let authority: KeyedCertificate;
let shown: Shown;
const signed = async (): Promise<Shown> => ({
  ...(await newLeaf(authority, names, new Date())),
  authority: authority.certificate,
  newAuthority: false,
});
beforeAll(async () => {
  authority = await newAuthority("bench", new Date());
  shown = await signed();
});

const open: OpenLan[] = [];
afterEach(async () => {
  for (const it of open.splice(0)) await it.close();
});

async function opened(current = async () => shown, tell: (fault: unknown) => void = () => {}): Promise<OpenLan> {
  const lan = await lanSide(current, tell);
  const app = serverApp({ files: builtFiles(builtFolder()), version: "1", lan });
  const served = await lan.open(app, 0);
  if (typeof served !== "object") throw new Error(served);
  open.push(served);
  return served;
}

type Answer = {
  readonly status: number | undefined;
  readonly headers: IncomingHttpHeaders;
  readonly body: Buffer;
  readonly serial: string;
};

/** Asks by HTTPS, knowing the authority alone, whatever the name leads to elsewhere. */
function ask(port: number, path: string, called = "bench.local", host = `${called}:${port}`): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const asked = request(
      { host: "127.0.0.1", port, path, servername: called, ca: authority.certificate, headers: { host }, agent: false },
      (answer) => {
        const socket = answer.socket as import("node:tls").TLSSocket;
        const serial = socket.getPeerCertificate().serialNumber;
        void buffer(answer).then((body) =>
          resolve({
            status: answer.statusCode,
            headers: answer.headers,
            body,
            serial,
          }),
        );
      },
    );
    asked.on("error", reject);
    asked.end();
  });
}

function askPlainly(port: number, path: string): Promise<Omit<Answer, "serial">> {
  return new Promise((resolve, reject) => {
    const asked = plainRequest({ host: "127.0.0.1", port, path, agent: false }, (answer) => {
      void buffer(answer).then((body) => resolve({ status: answer.statusCode, headers: answer.headers, body }));
    });
    asked.on("error", reject);
    asked.end();
  });
}

describe("a server that the local network sees", () => {
  test("answers by HTTPS under the names of its certificate, with the strict headers", async () => {
    const { port, addresses } = await opened();
    expect(addresses).toEqual([`https://bench.local:${port}/`, `https://192.168.1.20:${port}/`]);
    const answer = await ask(port, "/");
    expect([answer.status, answer.body.toString()]).toEqual([200, "<!doctype html><title>bench</title>"]);
    expect(answer.headers["content-security-policy"]).toContain("default-src 'none'");
    expect((await ask(port, "/health", "bench.local", `192.168.1.20:${port}`)).status).toBe(200);
  });

  test.each(["evil.example", "bench.local.evil.example", "other.local", "192.168.1.21", "bench.local@evil.example"])(
    "does not answer to %s",
    async (host) => {
      const { port } = await opened();
      const answer = await ask(port, "/", "bench.local", host);
      expect(answer.status === 403 || answer.status === 400).toBe(true);
    },
  );

  test("is not believed by who does not know the authority", async () => {
    const { port } = await opened();
    await expect(fetch(`https://localhost:${port}/`)).rejects.toMatchObject({
      cause: { code: "UNABLE_TO_VERIFY_LEAF_SIGNATURE" },
    });
  });

  test("says to those who come plainly how to come, and nothing else", async () => {
    const { port } = await opened();
    for (const path of ["/", "/health", "/api/heads", "/index.html"]) {
      const { status, headers, body } = await askPlainly(port, path);
      expect([status, headers.location, body.length]).toEqual([303, "/trust", 0]);
    }
    const page = await askPlainly(port, "/trust");
    expect(page.status).toBe(200);
    expect(page.headers["content-security-policy"]).toContain("default-src 'none'");
    expect(page.body.toString()).toContain(`<a href="https://bench.local:${port}/">`);
  });

  test("hands out the authority's certificate on either side, and its key nowhere", async () => {
    const { port, trust } = await opened();
    for (const { status, headers, body } of [
      await askPlainly(port, "/authority.crt"),
      await ask(port, "/authority.crt"),
    ]) {
      expect([status, headers["content-type"]]).toEqual([200, "application/x-x509-ca-cert"]);
      const pem = `-----BEGIN CERTIFICATE-----\n${body
        .toString("base64")
        .match(/.{1,64}/g)
        ?.join("\n")}\n-----END CERTIFICATE-----`;
      expect(pem).toBe(authority.certificate.trim());
    }
    const page = (await askPlainly(port, "/trust")).body.toString();
    expect(page.replaceAll("<wbr>", "")).toContain(trust?.fingerprint.sha256);
    expect(page).toContain(trust?.fingerprint.words.join(" "));
    expect(page).not.toContain("PRIVATE");
  });

  test("shows a renewed certificate to the next who comes, without a pause; keeps the one before where that fails", async () => {
    const told: unknown[] = [];
    let next: () => Promise<Shown> = async () => shown;
    const lan = await opened(
      () => next(),
      (fault) => told.push(fault),
    );
    const before = (await ask(lan.port, "/health")).serial;
    const renewed = await signed();
    next = async () => renewed;
    await lan.renew();
    const after = (await ask(lan.port, "/health")).serial;
    expect(after).not.toBe(before);
    next = () => Promise.reject(new Error("no disk"));
    await lan.renew();
    expect((await ask(lan.port, "/health")).serial).toBe(after);
    next = async () => ({ ...renewed, newAuthority: true });
    await lan.renew();
    expect(told).toEqual([new Error("no disk"), NEW_AUTHORITY]);
  });

  test("with a certificate that everybody knows hands out none of its own", async () => {
    const { port, trust } = await opened(async () => ({ ...shown, authority: null }));
    expect(trust).toBeNull();
    expect((await askPlainly(port, "/authority.crt")).status).toBe(404);
    expect((await askPlainly(port, "/trust")).body.toString()).toContain("There is nothing to install.");
  });

  test("says so where the port is taken", async () => {
    const { port } = await opened();
    const lan = await lanSide(
      async () => shown,
      () => {},
    );
    expect(await lan.open(serverApp({ files: new Map(), version: "1", lan }), port)).toBe("taken");
  });

  test("hangs up at once, also on those who say nothing, or nonsense", async () => {
    const lan = await opened();
    const silent = plainConnect(lan.port, "127.0.0.1");
    const nonsense = plainConnect(lan.port, "127.0.0.1");
    for (const it of [silent, nonsense]) it.on("error", () => {});
    await new Promise((resolve) => silent.once("connect", resolve));
    nonsense.write(Buffer.from([22, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]));
    const hungUp = Promise.all([silent, nonsense].map((it) => new Promise((resolve) => it.once("close", resolve))));
    expect((await ask(lan.port, "/health")).status).toBe(200);
    await lan.close();
    await hungUp;
    await expect(ask(lan.port, "/health")).rejects.toThrow();
  });
});
