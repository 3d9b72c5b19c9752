import { createHash, randomBytes } from "node:crypto";
import { join } from "node:path";
import * as z from "zod/mini";
import { instant, label } from "../journal/facts/fields.ts";
import { type DeviceId, deviceId } from "../journal/facts/ids.ts";
import { documentIn } from "./documentFile.ts";
import { newDeviceId } from "./identity.ts";
import { replaceFile } from "./replacedFile.ts";

/** A device that was let in. */
export const pairedDevice = z.strictObject({
  device: deviceId,
  name: label,
  since: instant,
  lastSeen: z.nullable(instant),
  /** When it was shut out, null for one that is let in. */
  revoked: z.nullable(instant),
});

export type PairedDevice = z.infer<typeof pairedDevice>;

/** Of a token only its hash is kept: who reads the file gets in with nothing that stands in it. */
const kept = z.strictObject({ ...pairedDevice.shape, token: z.string().check(z.regex(/^[0-9a-f]{64}$/)) });
type Kept = z.infer<typeof kept>;

const fileIn = (folder: string): string => join(folder, "devices.json");

/** The devices that were ever let in, in the order in which they were. @throws StoreTrouble */
export const pairedDevicesIn = (folder: string): readonly PairedDevice[] => keptIn(folder).map(shown);

/** The devices of a workshop and their tokens. One process holds it: the one that writes into the folder. */
export type PairedDevices = {
  /** Lets a device in. The token is told this once. @throws StoreTrouble */
  pair(name: string): { readonly device: DeviceId; readonly token: string };
  /** The device that a token belongs to, which is seen by that; null for none, or for one that was shut out. */
  holderOf(token: string): DeviceId | null;
  /** Whether a device is let in at the moment. */
  isIn(device: DeviceId): boolean;
  list(): readonly PairedDevice[];
  /** Shuts a device out from now on; false if there is none of that name. @throws StoreTrouble */
  revoke(device: string): boolean;
  /** Keeps when devices were last seen. @throws StoreTrouble */
  close(): void;
};

/** When a device was last seen is kept no finer than this: an append would wait for the disk twice otherwise. */
const SEEN_AGAIN_ms = 60_000;

/** The paired devices of a data folder, by the wall clock `now`. @throws StoreTrouble */
export function pairedDevices(folder: string, now: () => Date): PairedDevices {
  let devices = keptIn(folder);
  const moment = (): string => now().toISOString();
  const keep = (changed: readonly Kept[]): void => {
    replaceFile(fileIn(folder), `${JSON.stringify(changed, null, 2)}\n`);
    devices = changed;
  };
  const withChanged = (device: string, change: Partial<Kept>): readonly Kept[] =>
    devices.map((it) => (it.device === device ? { ...it, ...change } : it));

  return {
    pair(name) {
      const token = randomBytes(32).toString("base64url");
      const device = newDeviceId();
      keep([...devices, { device, name, since: moment(), lastSeen: null, revoked: null, token: hashOf(token) }]);
      return { device, token };
    },
    holderOf(token) {
      const hash = hashOf(token);
      const holder = devices.find((it) => it.token === hash);
      if (!holder || holder.revoked !== null) return null;
      // Away from it on either side: a clock that was set back is taken over as it is.
      const away_ms = holder.lastSeen === null ? Infinity : Math.abs(now().getTime() - Date.parse(holder.lastSeen));
      if (away_ms > SEEN_AGAIN_ms) devices = withChanged(holder.device, { lastSeen: moment() });
      return holder.device;
    },
    isIn: (device) => devices.some((it) => it.device === device && it.revoked === null),
    list: () => devices.map(shown),
    revoke(device) {
      const known = devices.find((it) => it.device === device);
      if (!known) return false;
      if (known.revoked === null) keep(withChanged(device, { revoked: moment() }));
      return true;
    },
    close: () => {
      if (devices.length > 0) keep(devices);
    },
  };
}

const hashOf = (token: string): string => createHash("sha256").update(token).digest("hex");

const shown = ({ token: _, ...device }: Kept): PairedDevice => device;

const keptIn = (folder: string): readonly Kept[] => documentIn(fileIn(folder), z.array(kept)) ?? [];
