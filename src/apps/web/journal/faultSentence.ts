import { JournalFork, PinNeeded } from "../../../journal/refusals.ts";
import { StoreTrouble } from "../../../journal/storeTrouble.ts";
import {
  browserTroubleSentence,
  forkSentence,
  keepsNothing,
  pinSentence,
} from "../../../sheets/words/browserStoreWords.ts";
import { place } from "./place.ts";
import { Refused } from "./workshopAt.ts";

/** What went wrong, as one sentence for people. */
export function faultSentence(fault: unknown): string {
  if (fault instanceof StoreTrouble)
    return fault.trouble === "not reachable" && fault.place === place
      ? keepsNothing
      : browserTroubleSentence(fault.trouble);
  if (fault instanceof Refused) return fault.message;
  if (fault instanceof JournalFork) return forkSentence;
  if (fault instanceof PinNeeded) return pinSentence;
  return fault instanceof Error ? fault.message : String(fault);
}
