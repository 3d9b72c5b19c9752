import type { Trouble } from "../../journal/storeTrouble.ts";

/** A browser that keeps nothing for a page. */
export const keepsNothing =
  "This browser keeps nothing for this page: a private window, storage that is shut off, or another tab with a newer Turnsleft. Load the page again or use another browser.";

/** A file from which no photo can be made. */
export const noPicture =
  "This is no picture that this browser can open, or it has more than 60 megapixels; nothing of it was kept. Take it again, or choose a JPEG, PNG or WebP.";

/** What stands between a journal and the browser that keeps it, in one sentence, and what can be done. */
export const browserTroubleSentence = (trouble: Trouble): string => sentences[trouble];

const sentences: Readonly<Record<Trouble, string>> = {
  "in use": "Another Turnsleft works with this journal; close the other tab.",
  "read-only": "This browser lets nothing be written; nothing of this was kept.",
  full: "This device is full: nothing of this was kept, and what was kept before is safe. Make room, then write it again.",
  damaged: "The journal in this browser cannot be read; what was brought to the workshop is safe there.",
  "of a newer Turnsleft": "A newer Turnsleft wrote this journal: load this page again.",
  "of another workshop":
    "This browser keeps the journal of another workshop; use another browser or profile for this one.",
  "not there": "There is no journal in this browser.",
  "already there": "Something is there already, and nothing is overwritten.",
  "not reachable": "The workshop cannot be reached now.",
  "not let in": "The workshop does not let this device in any more: what is written here is kept. Pair it again.",
  "too much at once": "The workshop was sent too much at once; it is tried again in smaller pieces.",
  busy: "The workshop is busy; it is tried again in a moment.",
};

export const pinSentence = "An override waits for a PIN, and what was written after it waits with it.";

export const forkSentence =
  "Two copies of this device wrote under the same numbers. What is here stays here and does not reach the workshop: write it down again on another device.";
