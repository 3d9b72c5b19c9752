import { randomBytes } from "node:crypto";
import { closeSync, fsyncSync, openSync, readFileSync, renameSync, writeSync } from "node:fs";
import { join } from "node:path";
import * as z from "zod/mini";
import { type DeviceId, deviceId, type WorkshopId, workshopId } from "../journal/facts/ids.ts";
import { StoreTrouble } from "../journal/storeTrouble.ts";
import { fileTroubleOf } from "./fileTrouble.ts";

/**
 * Which device a data folder is. It lies beside the journal, not in it: a copy of the journal elsewhere becomes another
 * device, and does not number on as this one.
 */
export type Identity = { readonly workshop: WorkshopId; readonly device: DeviceId };

const identity = z.strictObject({ workshop: workshopId, device: deviceId });

const fileIn = (folder: string): string => join(folder, "device.json");

/** The identity of a folder, null in one that has none yet. @throws StoreTrouble */
export function identityIn(folder: string): Identity | null {
  let text: string;
  try {
    text = readFileSync(fileIn(folder), "utf8");
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === "ENOENT") return null;
    throw fileTroubleOf(fileIn(folder), cause);
  }
  try {
    return identity.parse(JSON.parse(text)) as Identity;
  } catch (cause) {
    throw new StoreTrouble("damaged", fileIn(folder), cause);
  }
}

/** Makes a folder a device of `workshop`, or of a new workshop. @throws StoreTrouble */
export function newIdentity(folder: string, workshop: WorkshopId | null): Identity {
  const made = { workshop: workshop ?? (`w-${randomName()}` as WorkshopId), device: `d-${randomName()}` as DeviceId };
  const part = `${fileIn(folder)}.part`;
  try {
    const file = openSync(part, "w", 0o600);
    writeSync(file, `${JSON.stringify(made)}\n`);
    fsyncSync(file);
    closeSync(file);
    renameSync(part, fileIn(folder));
  } catch (cause) {
    throw fileTroubleOf(fileIn(folder), cause);
  }
  return made;
}

/** 80 bits: that two devices of a workshop draw the same is not to be feared. */
const randomName = (): string => randomBytes(10).toString("hex");
