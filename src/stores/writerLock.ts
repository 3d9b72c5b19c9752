import { DatabaseSync } from "@photostructure/sqlite";
import { StoreTrouble } from "../journal/storeTrouble.ts";
import { troubleOf } from "./sqliteFile.ts";

/** A lock that nobody refers to is collected, and with it goes the lock: found when a second writer got in. */
const held = new Set<object>();

/** The right to write into a folder, until it is given back or the process ends in whatever way. */
export type WriterLock = { release(): void };

/**
 * Takes the right to write into `folder`. It is a lock of the operating system on a file of its own, so that a process that
 * was killed leaves none behind, and readers of the journal are not in its way.
 * @throws StoreTrouble "in use" if another process has it
 */
export function writerLock(folder: string, path: string): WriterLock {
  try {
    const file = new DatabaseSync(path, { timeout: 0 });
    try {
      file.exec("begin exclusive");
    } catch (cause) {
      file.close();
      throw cause;
    }
    held.add(file);
    return {
      release() {
        held.delete(file);
        file.close();
      },
    };
  } catch (cause) {
    const fault = troubleOf(path, cause);
    throw fault instanceof StoreTrouble ? new StoreTrouble(fault.trouble, folder, cause) : fault;
  }
}
