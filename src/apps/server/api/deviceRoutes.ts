import * as z from "zod/mini";
import { label } from "../../../journal/facts/fields.ts";
import { deviceId, workshopId } from "../../../journal/facts/ids.ts";
import { pairedDevice } from "../../../stores/pairedDevices.ts";
import { refused } from "./refusals.ts";
import { type Route, route } from "./route.ts";
import type { ServedWorkshop } from "./servedWorkshop.ts";

const sixDigits = z
  .string({ error: "the six digits on the workshop's screen" })
  .check(z.regex(/^\d{6}$/, { error: "the six digits on the workshop's screen" }));

/** Letting devices in, listing them and shutting them out. */
export function deviceRoutes({ workshop, devices, code, store }: ServedWorkshop): readonly Route[] {
  return [
    route({
      method: "post",
      path: "/pairing",
      title: "A new code by which one device is let in",
      who: "workshop",
      body: null,
      status: 201,
      answer: z.strictObject({ code: sixDigits, seconds: z.int() }),
      refusals: [],
      run: ({ c }) => c.json(code.open(), 201),
    }),
    route({
      method: "post",
      path: "/devices",
      title: "Lets a device in by a code; the token is told this once",
      who: "anybody",
      body: z.strictObject({ code: sixDigits, name: label }),
      status: 201,
      answer: z.strictObject({ token: z.string(), device: deviceId, workshop: workshopId }),
      refusals: ["no code", "wrong code", "full", "read-only"],
      run: ({ c, body }) => {
        const tried = code.take(body.code);
        if (tried.type === "none open") return refused("no code");
        if (tried.type === "wrong") return refused("wrong code", { triesLeft: tried.triesLeft });
        return c.json({ ...devices.pair(body.name), workshop }, 201);
      },
    }),
    route({
      method: "get",
      path: "/devices",
      title: "The devices that were ever let in",
      who: "device",
      body: null,
      status: 200,
      answer: z.strictObject({ devices: z.array(pairedDevice) }),
      refusals: [],
      run: ({ c }) => c.json({ devices: devices.list() }),
    }),
    route({
      method: "delete",
      path: "/devices/:device",
      title: "Shuts a device out from now on; what it wrote stays",
      who: "device",
      body: null,
      status: 204,
      answer: null,
      refusals: ["not there", "full", "read-only"],
      run: ({ c, named }) => {
        if (!devices.revoke(named("device"))) return refused("not there");
        store.wake();
        return c.body(null, 204);
      },
    }),
  ];
}
