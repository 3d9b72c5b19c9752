import type { ThreadNaming } from "../../mechanics/threads/threadName.ts";
import type { FieldWords } from "./fieldWords.ts";

/** How the thread bench asks for its readings. */
export const threadFieldWords = {
  outside: { label: "Outside diameter", hint: "Caliper over the middle threads of the good plug." },
  crests: { label: "The crests there are" },
  gaps: { label: "Gaps on a rule", hint: 'Light behind. 0 on a crest; the next crest is "one".' },
  along: { label: "They reach to" },
  counted: { label: "What was counted?", hint: "Crests are one more than gaps." },
  photoPitch: { label: "Pitch in the photo" },
  photoSpread: { label: "Give or take", hint: "19 times of 20." },
  seats: { label: "Gauge leaf that seats", hint: 'No light under its teeth. In mm, or as "18/in".' },
  seatsNot: { label: "Leaf that does not seat", hint: "Light under its teeth." },
  bore: { label: "Hole, across its mouth", hint: "Inside jaws, the narrowest." },
  turns: { label: "Turns of travel" },
  travel: { label: "It goes in by" },
  grown: { label: "Diameter grows by", hint: "Two caliper readings along the plug; 0 where it is the same." },
  grownOver: { label: "Over a length of" },
  narrows: { label: "Hole narrows by", hint: "Inside jaws past its first turn and deeper; 0 where it is the same." },
  narrowsOver: { label: "Over a depth of" },
  turned: { label: "What was turned in by hand?" },
  felt: { label: "It goes", hint: "Stop where it binds: force tells nothing more." },
  meshTurns: { label: "After so many turns", hint: "From the first catch." },
  meshIn: { label: "The known thread", hint: "Empty where the plug was turned into the hole it was found in." },
  hexagon: { label: "Hexagon of this plug" },
  sister: { label: "Hexagon of its sister", hint: "The plug in a sound port of the same machine." },
} as const satisfies Readonly<Record<string, FieldWords>>;
export type ThreadField = keyof typeof threadFieldWords;

export const threadParts = {
  plug: "Plug on caliper and rule",
  photo: "From a photo",
  gauge: "Pitch gauge",
  hand: "Turned in by hand",
  hole: "Hole and travel",
  taper: "Does it taper?",
  foreign: "Does it belong here?",
} as const;

export const threadChoiceWords: Readonly<Record<string, string>> = {
  clean: "clean",
  worn: "worn or dirty",
  gaps: "gaps",
  crests: "crests",
  plug: "this plug",
  known: "a known plug, into this hole",
  tight: "tight",
  free: "free all the way",
};

/** The word over the name of a thread. */
export function namingSign({ warnings, showTwo }: Pick<ThreadNaming, "warnings" | "showTwo">): string {
  if (warnings.includes("binds: stop turning")) return "Stop turning";
  if (warnings.includes("nothing fits")) return "Measure again";
  if (warnings.includes("counted crests")) return "Crests counted?";
  return showTwo ? "One of two" : "Most likely";
}

/** Two clean names, or a name that needs no second. */
export const orSecond = (designation: string): string => `or ${designation}`;

export const threadStart =
  "Measure the good plug: its outside, and gaps along a rule. One of the two is enough to begin.";

export const sayWhatWasCounted = "Count again and say what was counted: 0 on a crest, the next crest is one gap.";
