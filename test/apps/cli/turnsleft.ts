import { spawnSync } from "node:child_process";

const root = new URL("../../..", import.meta.url).pathname;

export type Run = { readonly status: number | null; readonly stdout: string; readonly stderr: string };

/** Runs the program as it was built (scripts/prepare.mjs), from the root of the checkout. */
export function turnsleft(options: readonly string[], input = ""): Run {
  const program = `${root}dist/src/apps/cli/main.js`;
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...options], {
    cwd: root,
    input,
    encoding: "utf8",
  });
  return { status, stdout, stderr };
}

/** The one JSON document that a command prints, and nothing else. */
export function documentOf(options: readonly string[], input = "") {
  const { status, stdout, stderr } = turnsleft([...options, "--json"], input);
  if (status !== 0 || stderr !== "") throw new Error(`${options.join(" ")}: ${status} ${stderr}`);
  return JSON.parse(stdout);
}

/** What was typed, with quoted parts as one. */
export const typed = (line: string): string[] =>
  [...line.matchAll(/"([^"]*)"|(\S+)/g)].map((match) => match[1] ?? match[2] ?? "");
