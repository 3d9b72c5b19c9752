import type { Pairing } from "../../../stores/browser/pairing.ts";
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
