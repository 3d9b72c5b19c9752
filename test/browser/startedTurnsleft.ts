import { type ChildProcess, spawn } from "node:child_process";

const root = new URL("../..", import.meta.url).pathname;

/** `turnsleft start` as a process of its own, once it has printed `until`. */
export type Started = {
  readonly process: ChildProcess;
  readonly printed: string;
  /** What it has said on standard error until now. */
  readonly complained: () => string;
  /** Its exit code, or the signal that killed it. */
  readonly ended: Promise<number | NodeJS.Signals | null>;
};

/** Runs a program at the root of the checkout without a terminal. @throws if it ends before it has printed `until`. */
export function started(program: string, options: readonly string[], until: RegExp): Promise<Started> {
  const child = spawn(program, options, { cwd: root, stdio: ["ignore", "pipe", "pipe"] });
  const ended = new Promise<number | NodeJS.Signals | null>((resolve) =>
    child.once("exit", (code, signal) => resolve(code ?? signal)),
  );
  return new Promise((resolve, reject) => {
    let [printed, complained] = ["", ""];
    child.stderr.on("data", (it) => {
      complained += it;
    });
    child.stdout.on("data", (it) => {
      printed += it;
      if (until.test(printed)) resolve({ process: child, printed, complained: () => complained, ended });
    });
    ended.then((code) => reject(new Error(`ended with ${code}: ${printed}${complained}`)));
  });
}
