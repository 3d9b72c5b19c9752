import type { Step } from "../../journal/job/nextStep.ts";
import type { ActName } from "./actWords.ts";

/** The next step as a sentence, and the form that writes it down once it is done. */
export const stepWords: Readonly<Record<Step, { readonly sentence: (at: string) => string; readonly act: ActName }>> = {
  "count the turns": { sentence: (at) => `${at} let go: count the turns that are left.`, act: "turns" },
  tighten: { sentence: (at) => `${at} stands by hand: tighten it.`, act: "torqued" },
  "hear the owner": { sentence: (at) => `${at}: ways were offered; wait for the owner's word.`, act: "decided" },
  "break the fill loose": {
    sentence: (at) => `Break ${at} loose first: drained, with a fill that will not open, it is stranded.`,
    act: "loose",
  },
  "take the plug out": { sentence: (at) => `${at} is loose: take the plug out, or tighten it again.`, act: "out" },
  "understand the volume": {
    sentence: (at) => `${at}: understand what came out before anything goes in.`,
    act: "note",
  },
  "count washers out": {
    sentence: (at) => `${at} is out: count the washers, one may be stuck on the case.`,
    act: "washersOut",
  },
  "count washers in": { sentence: (at) => `${at}: a new washer on, and count it.`, act: "washersIn" },
  "close by hand": { sentence: (at) => `${at}: turn the plug in by hand.`, act: "byHand" },
  fill: { sentence: (at) => `${at} is empty: fill it.`, act: "filled" },
  "check the level": { sentence: (at) => `${at} is filled: check the level.`, act: "level" },
  "look for drips": { sentence: (at) => `${at}: wipe it dry, wait, and look.`, act: "dry" },
  "make the owner's sheet": { sentence: () => "Make the owner's sheet.", act: "paper" },
  release: { sentence: () => "Nothing stands against its leaving.", act: "released" },
};
