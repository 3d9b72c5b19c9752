import type { Hono } from "hono";
import type { OnLan } from "../app.ts";
import type { PortProblem } from "../port.ts";
import { type Fingerprint, fingerprint } from "./fingerprint.ts";
import { listenOnLan } from "./listenOnLan.ts";
import { goodUntil, isCalled, openedBy, type Shown } from "./shown.ts";
import { plainApp, type Trust, trustRoutes } from "./trustRoutes.ts";

/** The side of a server that the local network sees: what it is called there, and how it is opened. */
export type LanSide = OnLan & {
  /** Answers there with `app`. */
  open(app: Hono, port: number): Promise<OpenLan | PortProblem>;
};

/** The same once it answers. */
export type OpenLan = {
  readonly port: number;
  readonly addresses: readonly string[];
  /** What a telephone is to know, and the page that tells it how; null where it needs nothing of ours. */
  readonly trust: { readonly address: string; readonly fingerprint: Fingerprint; readonly isNew: boolean } | null;
  readonly goodUntil: Date;
  /** Looks whether another certificate is to be shown, and shows it. It never throws: the one before it is shown on. */
  renew(): Promise<void>;
  close(): Promise<void>;
};

export const NEW_AUTHORITY = "new authority";

/** Names, addresses and days change slowly: an hour is soon enough. Judgement. */
const LOOK_ms = 3_600_000;

/**
 * A side that shows what `current` gives: now, and anew every hour; where that fails later, `tell` is told what it threw, and
 * `NEW_AUTHORITY` where telephones have to learn another.
 * @throws what `current` throws now
 */
export async function lanSide(current: () => Promise<Shown>, tell: (what: unknown) => void): Promise<LanSide> {
  let shown = await current();
  let addressOf: (host: string) => string = (host) => `https://${host}/`;
  const trust: Trust = () => ({ authority: shown.authority, addresses: openedBy(shown).map((it) => addressOf(it)) });

  return {
    isCalled: (host) => isCalled(shown, host),
    trust: trustRoutes(trust),
    async open(app, port) {
      const lan = await listenOnLan({ secure: app.fetch, plain: plainApp(trust).fetch }, shown, port);
      if (typeof lan !== "object") return lan;
      addressOf = (host) => `https://${host}:${lan.port}/`;
      const renew = async (): Promise<void> => {
        try {
          const next = await current();
          if (next.certificate !== shown.certificate) lan.show(next);
          if (next.newAuthority) tell(NEW_AUTHORITY);
          shown = next;
        } catch (fault) {
          tell(fault);
        }
      };
      const timer = setInterval(() => void renew(), LOOK_ms);
      timer.unref();
      const names = openedBy(shown);
      return {
        port: lan.port,
        addresses: names.map(addressOf),
        trust: shown.authority === null ? null : trustOf(shown.authority, shown.newAuthority, names.at(-1), lan.port),
        goodUntil: goodUntil(shown),
        renew,
        close() {
          clearInterval(timer);
          return lan.close();
        },
      };
    },
  };
}

const trustOf = (authority: string, isNew: boolean, host: string | undefined, port: number) => ({
  address: `http://${host ?? "localhost"}:${port}/trust`,
  fingerprint: fingerprint(authority),
  isNew,
});
