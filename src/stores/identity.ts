import { randomBytes } from "node:crypto";
import { join } from "node:path";
import * as z from "zod/mini";
import { type DeviceId, deviceId, type WorkshopId, workshopId } from "../journal/facts/ids.ts";
import { documentIn } from "./documentFile.ts";
import { replaceFile } from "./replacedFile.ts";

/**
 * Which device a data folder is. It lies beside the journal, not in it: a copy of the journal elsewhere becomes another
 * device, and does not number on as this one.
 */
export type Identity = { readonly workshop: WorkshopId; readonly device: DeviceId };

const identity = z.strictObject({ workshop: workshopId, device: deviceId });

const fileIn = (folder: string): string => join(folder, "device.json");

/** The identity of a folder, null in one that has none yet. @throws StoreTrouble */
export const identityIn = (folder: string): Identity | null => documentIn(fileIn(folder), identity) as Identity | null;

/** Makes a folder a device of `workshop`, or of a new workshop. @throws StoreTrouble */
export function newIdentity(folder: string, workshop: WorkshopId | null): Identity {
  const made = { workshop: workshop ?? (`w-${randomName()}` as WorkshopId), device: newDeviceId() };
  replaceFile(fileIn(folder), `${JSON.stringify(made)}\n`);
  return made;
}

/** The name of a device that was not there before. */
export const newDeviceId = (): DeviceId => `d-${randomName()}` as DeviceId;

/** 80 bits: that two devices of a workshop draw the same is not to be feared. */
const randomName = (): string => randomBytes(10).toString("hex");
