import { createServer as plainServer } from "node:http";
import { createServer as secureServer } from "node:https";
import { type AddressInfo, createServer as doorOf, type Server, type Socket } from "node:net";
import { getRequestListener } from "@hono/node-server";
import { notUnderstood } from "../app.ts";
import type { PortProblem } from "../port.ts";
import type { KeyedCertificate } from "./authority.ts";
import { isLocalAddress } from "./localNames.ts";

/** A server that answers in the local network. */
export type Lan = {
  readonly port: number;
  /** Shows another certificate from the next line on. */
  show(certificate: KeyedCertificate): void;
  /** Hangs up on everybody and frees the port at once. */
  close(): Promise<void>;
};

type Fetch = Parameters<typeof getRequestListener>[0];

/** What is answered to those who come by HTTPS, and what to those who do not yet. */
export type Answers = { readonly secure: Fetch; readonly plain: Fetch };

/** As many lines as a workshop has screens, with room; and how long one may stand without a word. Judgement. */
const MOST_LINES = 500;
const FIRST_WORD_ms = 10_000;
/** How long one may stand still later on; a page that listens is told something every fifteen seconds. Judgement. */
const STILL_ms = 120_000;
/** The first byte of a handshake. Source: RFC 8446, 5.1: ContentType handshake(22). */
const HANDSHAKE = 22;

/**
 * Answers at one port on every address of IPv4: with HTTPS, and plainly to say how to come by HTTPS. Whoever does not come from
 * a local network is not answered, whatever a router hands on. @throws whatever else the system says
 */
export async function listenOnLan(
  { secure, plain }: Answers,
  shown: KeyedCertificate,
  port: number,
): Promise<Lan | PortProblem> {
  const options = { errorHandler: notUnderstood };
  const behind = {
    secure: secureServer({ cert: shown.certificate, key: shown.key }, getRequestListener(secure, options)),
    plain: plainServer(getRequestListener(plain, options)),
  };
  // These two do not listen themselves, so that Node's own limits on slow requests do not run.
  for (const it of Object.values(behind)) it.timeout = STILL_ms;
  const lines = new Set<Socket>();
  const door = doorOf((line) => {
    line.on("error", () => line.destroy());
    if (!isLocalAddress(line.remoteAddress)) return line.destroy();
    lines.add(line);
    line.once("close", () => lines.delete(line));
    line.setTimeout(FIRST_WORD_ms, () => line.destroy());
    line.once("data", (first) => {
      line.setTimeout(0);
      line.removeAllListeners("timeout");
      // Handed on with what was read of it: whoever takes it over reads it as if nothing had been.
      line.pause();
      line.unshift(first);
      process.nextTick(() => line.resume());
      behind[first[0] === HANDSHAKE ? "secure" : "plain"].emit("connection", line);
    });
    return undefined;
  });
  door.maxConnections = MOST_LINES;

  try {
    await opened(door, port);
  } catch (fault) {
    const { code } = fault as NodeJS.ErrnoException;
    if (code === "EADDRINUSE") return "taken";
    if (code === "EACCES") return "not allowed";
    throw fault;
  }
  return {
    port: (door.address() as AddressInfo).port,
    show: ({ certificate, key }) => behind.secure.setSecureContext({ cert: certificate, key }),
    close: () =>
      new Promise((resolve) => {
        door.close(() => resolve());
        for (const line of lines) line.destroy();
      }),
  };
}

const opened = (door: Server, port: number): Promise<void> =>
  new Promise((resolve, reject) => {
    door.once("error", reject);
    door.listen(port, "0.0.0.0", () => {
      door.off("error", reject);
      resolve();
    });
  });
