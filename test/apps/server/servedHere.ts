import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Rates, usualRates } from "../../../src/apps/server/api/api.ts";
import { serverApp } from "../../../src/apps/server/app.ts";
import { listen } from "../../../src/apps/server/listen.ts";
import { announcedIn } from "../../../src/apps/server/runningServer.ts";
import { servedFolder } from "../../../src/apps/server/servedFolder.ts";
import type { DeviceId, WorkshopId } from "../../../src/journal/facts/ids.ts";

/** What a request was answered with. */
export type Told = {
  readonly status: number;
  readonly headers: Headers;
  /** The JSON of the answer, null for none. */
  // biome-ignore lint/suspicious/noExplicitAny: what is told differs from address to address, and the test says what it expects.
  readonly body: any;
};

/** A new workshop behind a real socket, on a file of SQLite. */
export type ServedHere = {
  readonly folder: string;
  /** With a slash at its end. */
  readonly address: string;
  readonly workshop: WorkshopId;
  /** How the workshop's own screen is known. */
  readonly key: string;
  /** A new code, as the workshop's screen shows it. */
  readonly newCode: () => string;
  /** Lets a device in. */
  readonly paired: (name?: string) => Promise<{ readonly token: string; readonly device: DeviceId }>;
  readonly ask: (method: string, path: string, token?: string | null, body?: unknown) => Promise<Told>;
  readonly close: () => Promise<void>;
};

export async function servedHere(
  rates: Rates = usualRates,
  folder = mkdtempSync(join(tmpdir(), "turnsleft-served-")),
): Promise<ServedHere> {
  const served = servedFolder(folder, rates);
  const heard = await listen(serverApp({ files: new Map(), version: "1" }, served.api).fetch, 0);
  if (typeof heard !== "object") throw new Error(heard);
  const { address } = heard;
  served.announce(address);
  const key = announcedIn(folder)?.key ?? "";
  const newCode = () => served.code.open().code;
  const ask: ServedHere["ask"] = (method, path, token, body) => asked(`${address}api${path}`, method, token, body);
  return {
    folder,
    address,
    workshop: served.workshop,
    key,
    newCode,
    ask,
    async paired(name = "phone") {
      const { body } = await ask("POST", "/devices", null, { code: newCode(), name });
      return body;
    },
    async close() {
      await heard.close();
      await served.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function asked(url: string, method: string, token: string | null = null, body?: unknown): Promise<Told> {
  const answer = await fetch(url, {
    method,
    headers: {
      ...(token === null ? {} : { authorization: `Bearer ${token}` }),
      ...(body === undefined ? {} : { "content-type": "application/json" }),
    },
    ...(body === undefined ? {} : { body: typeof body === "string" ? body : JSON.stringify(body) }),
  });
  const text = await answer.text();
  return { status: answer.status, headers: answer.headers, body: text === "" ? null : JSON.parse(text) };
}

/** What lies in a file of a data folder. */
export const textIn = (folder: string, name: string): string => readFileSync(join(folder, name), "utf8");
