import { fork } from "node:child_process";
import { once } from "node:events";
import { Agent, type IncomingMessage, request } from "node:http";
import { connect } from "node:net";
import { built } from "./killRounds.ts";
import { type Known, type RandomRequest, randomRequest } from "./randomRequest.ts";

/** What came of random requests to a served workshop. */
export type FuzzReport = {
  readonly requests: number;
  /** How many were answered with each status; 0 for a line that either side hung up on. */
  readonly statuses: Readonly<Record<number, number>>;
  /** Answers that no request may get: a fault of the server, or something of its inside. */
  readonly faults: readonly string[];
  /** Memory in MB after collecting: at a tenth of the requests and at the end. */
  readonly held_MB: readonly [number, number];
  readonly rss_MB: readonly [number, number];
};

type Served = { readonly folder: string; readonly port: number; readonly workshop: string; readonly key: string };

/** Sends `count` random requests over real sockets, several at a time, to a server in a process of its own. */
export async function fuzzRounds(count: number, random: () => number): Promise<FuzzReport> {
  const server = fork(built("test/torture/fuzzServer.js"), { execArgv: ["--expose-gc"] });
  const told = async <Told>(): Promise<Told> => (await once(server, "message"))[0] as Told;
  const memory = async () => {
    server.send("memory");
    return told<{ rss: number; held: number }>();
  };
  const served = await told<Served>();
  const agent = new Agent({ keepAlive: true, maxSockets: 16 });
  const known = await letIn(served, agent);
  const statuses: Record<number, number> = {};
  const faults: string[] = [];
  const halfway = Math.floor(count / 10);

  let sent = 0;
  const sendUntil = async (end: number): Promise<void> => {
    while (sent < end) {
      const i = sent++;
      // Some bytes are no request at all; no client library would send them.
      if (i % 50 === 49) await noise(served.port, random);
      else {
        const asked = randomRequest(random, known);
        const { status, text } = await answered(served, agent, asked);
        statuses[status] = (statuses[status] ?? 0) + 1;
        if (status >= 500 || text.includes(served.folder) || text.includes(served.key))
          faults.push(
            `${status} to ${asked.method} ${asked.path} ${asked.body.toString("latin1").slice(0, 300)}: ${text.slice(0, 200)}`,
          );
        if (status === 200 && asked.path === "/api/entries" && asked.method === "POST") numbered(known, text);
      }
    }
  };
  const many = (end: number) => Promise.all(Array.from({ length: 16 }, () => sendUntil(end)));
  await many(halfway);
  const first = await memory();
  await many(count);
  const last = await memory();
  agent.destroy();
  server.send("end");
  await once(server, "exit");
  const MB = (bytes: number): number => bytes / 1024 / 1024;
  return {
    requests: count,
    statuses,
    faults,
    held_MB: [MB(first.held), MB(last.held)],
    rss_MB: [MB(first.rss), MB(last.rss)],
  };
}

async function letIn(served: Served, agent: Agent): Promise<Known> {
  const ask = async (path: string, headers: Record<string, string>, body: object) => {
    const asked = { method: "POST", path, headers, body: Buffer.from(JSON.stringify(body)) };
    return JSON.parse((await answered(served, agent, asked)).text);
  };
  const paired: { token: string; device: string }[] = [];
  for (let i = 0; i < 4; i++) {
    const { code } = await ask("/api/pairing", { authorization: `Bearer ${served.key}` }, {});
    paired.push(await ask("/api/devices", { "content-type": "application/json" }, { code, name: "fuzz" }));
  }
  const tokens = [...paired.map(({ token }) => token), served.key, "A".repeat(43)];
  return { workshop: served.workshop, tokens, devices: paired.map(({ device }) => device), next: new Map() };
}

/** What a writer goes on from. */
function numbered({ next }: Known, text: string): void {
  for (const [device, last] of Object.entries<number>(JSON.parse(text).heads)) next.set(device, last + 1);
}

function answered({ port }: Served, agent: Agent, asked: RandomRequest): Promise<{ status: number; text: string }> {
  return new Promise((resolve) => {
    const gone = () => resolve({ status: 0, text: "" });
    try {
      const { method, path, headers, body } = asked;
      const length = body.length > 0 ? { "content-length": body.length } : {};
      const line = request({
        port,
        host: "127.0.0.1",
        agent,
        method,
        path,
        headers: { host: "localhost", ...headers, ...length },
      });
      line.on("error", gone);
      line.on("response", (answer: IncomingMessage) => {
        let text = "";
        answer.setEncoding("utf8");
        answer.on("data", (piece) => {
          text += piece;
          // A stream does not end by itself.
          if (answer.headers["content-type"] === "text/event-stream") line.destroy();
        });
        answer.on("error", gone);
        answer.on("close", () => resolve({ status: answer.statusCode ?? 0, text }));
      });
      line.end(body);
    } catch {
      gone();
    }
  });
}

/** Bytes, now and then with the look of a request, on a line that is cut somewhere. */
function noise(port: number, random: () => number): Promise<void> {
  return new Promise((resolve) => {
    const begin = [
      "",
      "GET / HTTP/1.1\r\n",
      "POST /api/entries HTTP/1.1\r\nHost: localhost\r\nContent-Length: 50\r\n\r\n",
    ];
    const socket = connect(port, "127.0.0.1", () => {
      const bytes = Uint8Array.from({ length: Math.floor(random() * 300) }, () => random() * 256);
      socket.write(begin[Math.floor(random() * begin.length)] ?? "");
      socket.end(bytes);
      setTimeout(() => socket.destroy(), 20 * random());
    });
    socket.on("error", () => {});
    socket.on("data", () => {});
    socket.on("close", () => resolve());
  });
}
