import type { ToHaveHere } from "../../journal/views/toHaveHere.ts";
import type { FieldWords } from "./fieldWords.ts";
import { lowered } from "./firstLetter.ts";
import { list } from "./inCommas.ts";
import { remedyNames } from "./remedyWords.ts";

export const bookedFieldWords = {
  bay: { label: "Where will it stand?" },
  readyOn: { label: "Ready on which day?", hint: "As 2026-06-01. A bead that cures holds the place overnight." },
  readyFrom: { label: "Not before", hint: "As 16:00." },
  readyTo: { label: "At the latest", hint: "As 18:00. The promise is a range." },
} as const satisfies Readonly<Record<string, FieldWords>>;

/** Hours at which machines are fetched, by trade practice, no source. */
export const readyFromCommon = ["10:00", "12:00", "16:00"];
export const readyToCommon = ["12:00", "16:00", "18:00"];

/** What is accepted as a time of the day, and as the end of a range. */
export const clockAccepted = "a time of the day, as 16:00";
export const notEarlier = "a time that is not before the earliest";

/** "Drain: M14x1.5; closed with flat washer, copper; turns 8, 7, 6, they fall: have a longer plug and an insert kit, too." */
export function shelfSentence({ port, thread, fitted, turns, repairs, alike }: ToHaveHere): string {
  const counts = turns.counts.map((it) => it.turns).join(", ");
  const said = [
    thread ?? alikeSentence(alike, port.joint),
    fitted && `closed with ${list([fitted.seal, fitted.material])}`,
    counts !== "" && `turns ${counts}${turns.falling ? ", they fall: have a longer plug and an insert kit, too" : ""}`,
    repairs.length > 0 && `repaired: ${list(repairs.map((it) => lowered(remedyNames[it])))}`,
    alike.repaired > 0 && `repaired here: ${alike.repaired} of ${alike.ports} others of its kind`,
  ].filter((it) => it);
  return `${port.called}: ${said.length === 0 ? "nothing is known of it yet" : said.join("; ")}.`;
}

/** What the others of its kind have, where nobody noted its own thread. */
function alikeSentence({ threads }: ToHaveHere["alike"], joint: string): string | null {
  const [most] = threads;
  if (!most) return null;
  const known = threads.reduce((sum, { ports }) => sum + ports, 0);
  return `thread not known; ${most.ports} of ${known} others here (${joint}) had ${most.thread}`;
}
