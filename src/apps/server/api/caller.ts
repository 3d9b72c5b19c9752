import { createHash, timingSafeEqual } from "node:crypto";
import type { DeviceId } from "../../../journal/facts/ids.ts";
import type { PairedDevices } from "../../../stores/pairedDevices.ts";

/** Who asks: somebody with no token that counts, a paired device, or the workshop's own screen. */
export type Caller =
  | { readonly type: "anybody" }
  | { readonly type: "device"; readonly device: DeviceId }
  | { readonly type: "workshop" };

/** Whether a caller may use what is for `who`: each may what those before it may. */
export const mayUse = ({ type }: Caller, who: Caller["type"]): boolean => rank[type] >= rank[who];

const rank: Readonly<Record<Caller["type"], number>> = { anybody: 0, device: 1, workshop: 2 };

/** Who an Authorization header belongs to. `key` is that of the workshop's own screen. */
export function callerOf(header: string | undefined, devices: PairedDevices, key: string): Caller {
  const token = /^Bearer ([\w-]{20,100})$/i.exec(header ?? "")?.[1];
  if (token === undefined) return { type: "anybody" };
  if (timingSafeEqual(digest(token), digest(key))) return { type: "workshop" };
  const device = devices.holderOf(token);
  return device === null ? { type: "anybody" } : { type: "device", device };
}

const digest = (text: string): Buffer => createHash("sha256").update(text).digest();
