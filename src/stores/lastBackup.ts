import { existsSync } from "node:fs";
import { join } from "node:path";
import * as z from "zod/mini";
import { instant } from "../journal/facts/fields.ts";
import { StoreTrouble } from "../journal/storeTrouble.ts";
import { documentIn } from "./documentFile.ts";
import { replaceFile } from "./replacedFile.ts";

/** The last daily backup of a data folder. */
export type LastBackup = { readonly at: string; readonly file: string };

const lastBackup = z.strictObject({ at: instant, file: z.string() });

const fileIn = (folder: string): string => join(folder, "lastBackup.json");

/** The last daily backup, null where none was made or it is no longer where it was put. @throws StoreTrouble */
export function lastBackupOf(folder: string): LastBackup | null {
  const last = noted(folder);
  return last && existsSync(last.file) ? last : null;
}

/** It is a note and no record: one that cannot be read is none, and the next backup writes it anew. */
function noted(folder: string): LastBackup | null {
  try {
    return documentIn(fileIn(folder), lastBackup);
  } catch (fault) {
    if (fault instanceof StoreTrouble && fault.trouble === "damaged") return null;
    throw fault;
  }
}

/** Notes a backup that was read back. @throws StoreTrouble */
export const noteBackup = (folder: string, last: LastBackup): void =>
  replaceFile(fileIn(folder), `${JSON.stringify(last)}\n`);

/** The moment of a backup, and its age in hours to a tenth. */
export type BackupAge = { readonly at: string; readonly age_h: number };

/** How old the last daily backup of a folder is at `now`, in hours to a tenth; null where there is none. @throws StoreTrouble */
export function backupAge(folder: string, now: string): BackupAge | null {
  const last = lastBackupOf(folder);
  if (!last) return null;
  const age_h = (Date.parse(now) - Date.parse(last.at)) / 3_600_000;
  return { at: last.at, age_h: Math.max(0, Math.round(age_h * 10) / 10) };
}
