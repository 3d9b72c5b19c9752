import { type MessagePort, workerData } from "node:worker_threads";
import { ranCommand } from "../../../src/apps/cli/ranCommand.ts";

/**
 * Runs one command after the other for a file of tests, in a thread that loads the program once: most of a process's time goes
 * into its start. What a command prints is handed back with its exit code.
 */
const { port, done } = workerData as { readonly port: MessagePort; readonly done: Int32Array };

let [stdout, stderr] = ["", ""];
process.stdout.write = ((text: string) => {
  stdout += text;
  return true;
}) as typeof process.stdout.write;
process.stderr.write = ((text: string) => {
  stderr += text;
  return true;
}) as typeof process.stderr.write;

port.on("message", async (options: readonly string[]) => {
  [stdout, stderr] = ["", ""];
  const status = await ranCommand(options);
  port.postMessage({ status, stdout, stderr });
  Atomics.store(done, 0, 1);
  Atomics.notify(done, 0);
});
