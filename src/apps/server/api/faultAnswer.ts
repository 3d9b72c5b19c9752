import {
  ForeignEntry,
  JournalDisorder,
  JournalFork,
  JournalGap,
  MalformedEntry,
  PinNeeded,
} from "../../../journal/refusals.ts";
import { StoreTrouble, type Trouble } from "../../../journal/storeTrouble.ts";
import { type RefusalKind, refused } from "./refusals.ts";

/** What a journal refuses, and what the world does not let it do, as an answer; null for a fault of ours. */
export function faultAnswer(fault: unknown): Response | null {
  if (fault instanceof MalformedEntry) return refused("malformed", { place: fault.place, problems: fault.problems });
  if (fault instanceof ForeignEntry)
    return refused("foreign", { ...fault.place, workshop: fault.workshop, here: fault.here });
  if (fault instanceof JournalFork) return refused("fork", fault.place);
  if (fault instanceof JournalGap) return refused("gap", { ...fault.place, expected: fault.expected });
  if (fault instanceof JournalDisorder) return refused("disorder", fault.place);
  if (fault instanceof PinNeeded) return refused("pin needed", { persons: fault.persons });
  // Where it stands on the disk is nobody's business but the workshop's.
  if (fault instanceof StoreTrouble) return refused(kinds[fault.trouble] ?? "fault");
  return null;
}

const kinds: Partial<Readonly<Record<Trouble, RefusalKind>>> = {
  full: "full",
  "read-only": "read-only",
  "in use": "in use",
  damaged: "damaged",
  "not reachable": "not reachable",
  "not there": "not reachable",
};
