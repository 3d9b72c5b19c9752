import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, statfsSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** A disk of its own, so small that it can be filled; null where this user may not mount one. */
export type SmallDisk = {
  readonly folder: string;
  /** Fills it to the last block. */
  fill(): void;
  empty(): void;
  /** Lets it be read only, or written again. */
  readOnly(on: boolean): void;
  remove(): void;
};

export function smallDisk(kilobytes: number): SmallDisk | null {
  const folder = mkdtempSync(join(tmpdir(), "turnsleft-disk-"));
  const mount = (...options: string[]): boolean => spawnSync("mount", [...options, folder]).status === 0;
  if (process.platform !== "linux" || !mount("-t", "tmpfs", "-o", `size=${kilobytes}k`, "none")) {
    rmSync(folder, { recursive: true });
    return null;
  }
  const filling = join(folder, "filling");
  return {
    folder,
    fill() {
      const { bavail, bsize } = statfsSync(folder);
      writeFileSync(filling, Buffer.alloc(bavail * bsize));
    },
    empty: () => rmSync(filling, { force: true }),
    readOnly: (on) => {
      if (!mount("-o", `remount,${on ? "ro" : "rw"}`)) throw new Error("it could not be mounted anew");
    },
    remove() {
      spawnSync("umount", ["-l", folder]);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
