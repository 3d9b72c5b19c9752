import { spawnSync } from "node:child_process";

export const program = "dist/src/apps/cli/main.js";

/** Runs a command of the program and gives what it printed. @throws what it complained of */
export function ran(...options: readonly string[]): string {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...options], { encoding: "utf8" });
  if (status !== 0) throw new Error(`${options.join(" ")}: ${stderr}`);
  return stdout;
}
