import { spawnSync } from "node:child_process";
import { MessageChannel, receiveMessageOnPort, Worker } from "node:worker_threads";

const root = new URL("../../..", import.meta.url).pathname;

export type Run = { readonly status: number | null; readonly stdout: string; readonly stderr: string };

/** Runs the program as it was built (scripts/prepare.mjs), from the root of the checkout, as a process of its own. */
export function turnsleftProcess(options: readonly string[], input = ""): Run {
  const program = `${root}dist/src/apps/cli/main.js`;
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...options], {
    cwd: root,
    input,
    encoding: "utf8",
  });
  return { status, stdout, stderr };
}

/** Commands that keep or serve something, each of which is a process by itself; all others read what they are given and print. */
const keeping: ReadonlySet<string | undefined> = new Set([
  "start",
  "pair",
  "pin",
  "demo",
  "standing",
  "backup",
  "restore",
  "export",
  "import",
  "check",
]);

/** Runs the program as it was built: a command that only prints beside this thread, anything else as a process. */
export function turnsleft(options: readonly string[], input?: string): Run {
  if (input !== undefined || keeping.has(options[0])) return turnsleftProcess(options, input);
  beside ??= startedBeside();
  const { port, done } = beside;
  Atomics.store(done, 0, 0);
  port.postMessage(options);
  if (Atomics.wait(done, 0, 0, 60_000) === "timed-out") throw new Error(`${options.join(" ")}: no answer`);
  return receiveMessageOnPort(port)?.message as Run;
}

let beside: ReturnType<typeof startedBeside> | null = null;

function startedBeside() {
  const { port1: port, port2 } = new MessageChannel();
  const done = new Int32Array(new SharedArrayBuffer(4));
  const worker = new Worker(`${root}dist/test/apps/cli/commandsBeside.js`, {
    workerData: { port: port2, done },
    transferList: [port2],
    execArgv: [],
  });
  worker.unref();
  port.unref();
  return { port, done };
}

/** The one JSON document that a command prints, and nothing else. */
export function documentOf(options: readonly string[], input?: string) {
  const { status, stdout, stderr } = turnsleft([...options, "--json"], input);
  if (status !== 0 || stderr !== "") throw new Error(`${options.join(" ")}: ${status} ${stderr}`);
  return JSON.parse(stdout);
}

/** What was typed, with quoted parts as one. */
export const typed = (line: string): string[] =>
  [...line.matchAll(/"([^"]*)"|(\S+)/g)].map((match) => match[1] ?? match[2] ?? "");
