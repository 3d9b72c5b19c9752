import { randomBytes } from "node:crypto";
import { rmSync } from "node:fs";
import { join } from "node:path";
import * as z from "zod/mini";
import { documentIn } from "../../stores/documentFile.ts";
import { replaceFile } from "../../stores/replacedFile.ts";

/** Where a data folder is served at the moment, and the key by which the workshop's own screen is known there. */
export type RunningServer = { readonly address: string; readonly key: string };

const running = z.strictObject({ address: z.string(), key: z.string() });

const fileIn = (folder: string): string => join(folder, "server.json");

/** A key that no one has guessed, new at every start. */
export const newKey = (): string => randomBytes(32).toString("base64url");

/**
 * Leaves word in the data folder of where it is served, for those alone who may read the journal anyway, and gives what takes
 * the word back. After a kill it stays, and leads nowhere. @throws StoreTrouble
 */
export function announce(folder: string, server: RunningServer): () => void {
  replaceFile(fileIn(folder), `${JSON.stringify(server)}\n`);
  return () => rmSync(fileIn(folder), { force: true });
}

/** The word that a server left in a data folder, null for none. @throws StoreTrouble */
export const announcedIn = (folder: string): RunningServer | null => documentIn(fileIn(folder), running);
