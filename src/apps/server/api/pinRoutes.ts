import * as z from "zod/mini";
import { type PersonId, personId } from "../../../journal/facts/ids.ts";
import type { PinTried } from "../../../stores/pins.ts";
import { refused, refusedFor } from "./refusals.ts";
import { type Route, route } from "./route.ts";
import type { ServedWorkshop } from "./servedWorkshop.ts";

const digits = z
  .string({ error: "four to twelve digits" })
  .check(z.regex(/^\d{4,12}$/, { error: "four to twelve digits" }));

/** The PINs by which persons answer for what they take on themselves. */
export function pinRoutes({ pins, proofs }: ServedWorkshop): readonly Route[] {
  return [
    route({
      method: "get",
      path: "/pin",
      title: "Who has a PIN; once anybody has, every override needs the PIN of who takes it on himself",
      who: "device",
      body: null,
      status: 200,
      answer: z.strictObject({ persons: z.array(personId) }),
      refusals: [],
      run: ({ c }) => c.json({ persons: pins.persons() }),
    }),
    route({
      method: "post",
      path: "/pin",
      title: "Sets a person's PIN: the first one freely, another only with the one before",
      who: "device",
      body: z.strictObject({ person: personId, pin: digits, was: z.optional(digits) }),
      status: 204,
      answer: null,
      refusals: ["wrong pin", "pin waits", "full", "read-only"],
      run: async ({ c, body }) =>
        notRight(await pins.set(body.person as PersonId, body.pin, body.was ?? null)) ?? c.body(null, 204),
    }),
    route({
      method: "post",
      path: "/pin/proof",
      title: "Checks a person's PIN and proves it, on this device, for overrides that are sent in the next minutes",
      who: "device",
      body: z.strictObject({ person: personId, pin: digits }),
      status: 201,
      answer: z.strictObject({ proof: z.string(), seconds: z.int() }),
      refusals: ["no pin", "wrong pin", "pin waits", "full", "read-only"],
      run: async ({ c, caller, body }) =>
        notRight(await pins.check(body.person as PersonId, body.pin)) ??
        c.json(proofs.give(body.person as PersonId, caller), 201),
    }),
    route({
      method: "delete",
      path: "/pin/:person",
      title: "Forgets a person's PIN, who may then set another one",
      who: "workshop",
      body: null,
      status: 204,
      answer: null,
      refusals: ["not there", "full", "read-only"],
      run: ({ c, named }) => (pins.forget(named("person") as PersonId) ? c.body(null, 204) : refused("not there")),
    }),
  ];
}

/** Why a PIN is not the right one, null if it is. */
function notRight(tried: PinTried): Response | null {
  switch (tried.type) {
    case "right":
      return null;
    case "none set":
      return refused("no pin");
    case "wrong":
      return refused("wrong pin", { wait_s: Math.ceil(tried.wait_s) });
    case "too soon":
      return refusedFor("pin waits", tried.wait_s);
    default:
      return tried satisfies never;
  }
}
