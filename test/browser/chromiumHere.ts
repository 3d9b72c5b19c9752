import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { delimiter } from "node:path";
import { chromium } from "playwright-core";
import { findChromium, type Installation, type Machine } from "./chromium.ts";

const { env, platform } = process;

/** The path of a Chromium on this machine; what it has to install for that, it says. @throws a plain sentence if there is none. */
export function chromiumHere(): string {
  const finding = findChromium(thisMachine());
  if (finding.type === "found") return finding.path;
  if (finding.type === "wrong") throw new Error(finding.sentence);
  for (const installation of finding.installations) {
    console.log(installation.announcement);
    if (!installed(installation)) continue;
    const again = findChromium(thisMachine());
    if (again.type === "found") return again.path;
  }
  throw new Error(
    "No Chromium was found on this machine and none could be installed. Install one, or name one: TURNSLEFT_BROWSER=/path/to/chromium",
  );
}

function thisMachine(): Machine {
  const programs = [env["PROGRAMFILES"], env["PROGRAMFILES(X86)"], env["LOCALAPPDATA"]];
  return {
    platform,
    named: env["TURNSLEFT_BROWSER"],
    folders: (platform === "win32" ? programs : (env["PATH"] ?? "").split(delimiter)).filter((it) => it !== undefined),
    downloaded: chromium.executablePath(),
    distribution: distribution(),
    isRoot: process.getuid?.() === 0,
    runs,
  };
}

function runs(path: string): boolean {
  if (!existsSync(path)) return false;
  // There a browser does not tell its version but opens a window.
  if (platform === "win32") return true;
  return spawnSync(path, ["--version"], { timeout: 30_000 }).status === 0;
}

function distribution(): string | null {
  try {
    return /^ID="?([^"\n]+)"?$/m.exec(readFileSync("/etc/os-release", "utf8"))?.[1] ?? null;
  } catch {
    return null;
  }
}

function installed({ commands }: Installation): boolean {
  const options = { stdio: "inherit", env: { ...env, DEBIAN_FRONTEND: "noninteractive" } } as const;
  return commands.every(
    ([program, ...rest]) => spawnSync(program === "node" ? process.execPath : program, rest, options).status === 0,
  );
}
