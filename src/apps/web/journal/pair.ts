import type { Pairing } from "../../../stores/browser/pairing.ts";
import type { Request } from "./messages.ts";
import { asked } from "./workshopAt.ts";

/** Pairs this browser with the workshop by the six digits on its screen. @throws StoreTrouble, Refused */
export async function paired(code: string, name: string): Promise<Pairing> {
  const answer = await asked("/api/devices", {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ code, name }),
  });
  const { token, device, workshop } = (await answer.json()) as Omit<Pairing, "name">;
  return { token, device, workshop, name };
}

type PinTyped = Pick<Extract<Request, { ask: "pin" }>, "person" | "pin" | "set" | "was">;

/** What shows the workshop for so many seconds that a person typed his PIN here. */
export type PinProof = { readonly proof: string; readonly seconds: number };

/** Proves a person's PIN to the workshop, or sets it first; gives the proof. @throws StoreTrouble, Refused */
export async function pinProof(token: string, { person, pin, set, was }: PinTyped): Promise<PinProof> {
  const posted = (path: string, body: object): Promise<Response> =>
    asked(path, {
      method: "POST",
      headers: { authorization: `Bearer ${token}`, "content-type": "application/json" },
      body: JSON.stringify(body),
    });
  if (set) await posted("/api/pin", { person, pin, ...(was === null ? {} : { was }) });
  return (await (await posted("/api/pin/proof", { person, pin })).json()) as PinProof;
}

/** Long enough for a slow network, short enough that nobody waits for one that is away. Judgement. */
const HERE_ms = 3000;

/** Who has a PIN, by the workshop; null where it is not to be asked now. */
export async function personsWithPin(token: string): Promise<readonly string[] | null> {
  try {
    const headers = { authorization: `Bearer ${token}` };
    const answer = await asked("/api/pin", { headers, signal: AbortSignal.timeout(HERE_ms) });
    return ((await answer.json()) as { persons: readonly string[] }).persons;
  } catch {
    return null;
  }
}
