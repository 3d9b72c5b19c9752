import type { Trouble } from "../../journal/storeTrouble.ts";

/** What stands between a journal and its file, in one sentence, and what can be done. */
export const troubleSentence = (trouble: Trouble, place: string): string => `${place}: ${sentences[trouble]}`;

const sentences: Readonly<Record<Trouble, string>> = {
  "in use": "another Turnsleft is working with these data; end it, or name another folder with --data.",
  "read-only": "it may be read and not written; allow writing there, or name another folder with --data.",
  full: "the disk is full; what was kept before is safe, and nothing of this was kept.",
  damaged:
    "it is damaged, or no journal of Turnsleft; nothing in it was changed. Restore the last backup into a new folder.",
  "of a newer Turnsleft": "a newer Turnsleft wrote it; this one does not read it, and has changed nothing.",
  "of another workshop": "it is the journal of another workshop; name another folder with --data.",
  "not there": "there is no journal of Turnsleft.",
  "already there": "something is there already, and nothing is overwritten.",
  "not reachable": "it cannot be reached; is the path right, and the disk in?",
  "not let in": "this device is not let in there, or was shut out; pair it with a new code of npx turnsleft pair.",
  "too much at once": "it is too much at once; bring it over in pieces.",
  busy: "it is asked too much at the moment; nothing of this was kept. Try again in a while.",
};
