import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { BackupTaken } from "./dailyBackups.ts";

/**
 * Backs up a folder in a process of its own, by the command that a person would type: to read a long journal back takes seconds
 * in which this process would answer nobody. `stop` breaks it off.
 */
export function takenApart(folder: string): { take(file: string): Promise<BackupTaken>; stop(): void } {
  const program = fileURLToPath(new URL("main.js", import.meta.url));
  let running: ReturnType<typeof spawn> | null = null;
  return {
    take: (file) =>
      new Promise((resolve, reject) => {
        const child = spawn(process.execPath, [program, "backup", file, "--data", folder, "--json"], {
          stdio: ["ignore", "pipe", "pipe"],
        });
        running = child;
        let [printed, said] = ["", ""];
        child.stdout.on("data", (it) => {
          printed += it;
        });
        child.stderr.on("data", (it) => {
          said += it;
        });
        child.once("error", reject);
        child.once("close", (status) => {
          running = null;
          resolve(takenFrom(status, printed, said));
        });
      }),
    stop: () => running?.kill("SIGTERM"),
  };
}

function takenFrom(status: number | null, printed: string, said: string): BackupTaken {
  if (status === 0) return { made: true, trouble: null };
  const sentence = said.trim().replace(/^turnsleft: /, "");
  if (printed === "") return { made: false, trouble: sentence || "it was broken off." };
  const { photosDamaged } = JSON.parse(printed) as { readonly photosDamaged: readonly string[] };
  return {
    made: true,
    trouble: `${photosDamaged.length} photos are damaged and not in it; npx turnsleft check names them.`,
  };
}
