import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { getRequestListener } from "@hono/node-server";
import { notUnderstood } from "./app.ts";
import type { PortProblem } from "./port.ts";

/** A server that answers on this machine alone. */
export type Listening = {
  readonly port: number;
  readonly address: string;
  /** Hangs up on everybody and frees the port at once. */
  readonly close: () => Promise<void>;
};

/**
 * Answers on both loopback addresses of this machine at `port`, or at a free one for 0.
 *
 * A machine without IPv6 is served on 127.0.0.1 alone. @throws whatever else the system says.
 */
export async function listen(
  fetch: Parameters<typeof getRequestListener>[0],
  port: number,
): Promise<Listening | PortProblem> {
  const answer = getRequestListener(fetch, { errorHandler: notUnderstood });
  const servers: Server[] = [];
  const close = async (): Promise<void> => {
    await Promise.all(servers.map(closed));
  };
  try {
    const first = await listening(createServer(answer), "127.0.0.1", port);
    servers.push(first);
    const taken = (first.address() as AddressInfo).port;
    try {
      servers.push(await listening(createServer(answer), "::1", taken));
    } catch (fault) {
      if (!["EADDRNOTAVAIL", "EAFNOSUPPORT"].includes(codeOf(fault))) throw fault;
    }
    return { port: taken, address: `http://localhost:${taken}/`, close };
  } catch (fault) {
    await close();
    if (codeOf(fault) === "EADDRINUSE") return "taken";
    if (codeOf(fault) === "EACCES") return "not allowed";
    throw fault;
  }
}

const codeOf = (fault: unknown): string => (fault as NodeJS.ErrnoException).code ?? "";

function listening(server: Server, host: string, port: number): Promise<Server> {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, host, () => {
      server.off("error", reject);
      resolve(server);
    });
  });
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}
