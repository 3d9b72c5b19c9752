import type { BrowserPhotos } from "../../../stores/browser/photos.ts";
import { Refused, type Workshop } from "./workshopAt.ts";

/**
 * Brings the photos that entries of this browser name to the workshop, one after the other. One that the workshop refuses stays
 * here and does not stand in the way of the others; gives what was said of it. @throws StoreTrouble where the workshop is out of reach
 */
export async function photosSent(here: BrowserPhotos, workshop: Workshop): Promise<Refused | null> {
  let refused: Refused | null = null;
  for (const name of await here.toSend()) {
    const bytes = await here.bytes(name);
    if (!bytes) continue;
    try {
      await workshop.putPhoto(name, bytes);
    } catch (fault) {
      if (!(fault instanceof Refused)) throw fault;
      refused = fault;
      continue;
    }
    await here.sent(name);
  }
  return refused;
}
