import { standardUncertainty, valueIn } from "../../mechanics/quantity/quantity.ts";
import { mm } from "../../mechanics/quantity/unit.ts";
import type { PhotoAgain, PhotoAnswer, PhotoTold } from "../../mechanics/silhouette/photoPitch.ts";
import type { ThreadNaming } from "../../mechanics/threads/threadName.ts";
import { leafMarked, separatingSentence } from "./separatingWords.ts";
import { candidateReasons, candidatesBeside, namingSentence, spinFirst } from "./threadWords.ts";

/** How far this has been tried. */
export const photoTested = "Tested on rendered photos, not yet on photos of known parts: hold a pitch gauge to it.";

/** The answer first (`byDiameter` names by the diameter alone), then what was read, what else fits, and what to mind. */
export function photoLines(answer: PhotoAnswer, byDiameter: ThreadNaming): readonly string[] {
  const checks = ["", "Pitch gauge, of threads of this diameter", ...gaugeChecks(byDiameter).map((it) => `  ${it}`)];
  if (answer.verdict === "again")
    return [
      "Take another photo.",
      ...photoReasons(answer).map((it) => `  ${it}`),
      ...checks,
      "",
      "Mind",
      `  ${photoTested}`,
    ];
  const { naming, evidence } = answer;
  const shown = candidatesBeside(naming);
  const width = Math.max(...shown.map(({ designation }) => designation.length));
  return [
    `${verdictWord(answer)}: ${namingSentence(naming)}`,
    photoPitchSentence(answer),
    ...photoReasons(answer),
    ...alsoSeen(answer),
    "",
    "Why",
    ...shown.map((it) => `  ${it.designation.padEnd(width)}  ${candidateReasons(it, evidence)}`),
    "",
    "Next",
    `  ${separatingSentence(naming)}`,
    ...checks,
    "",
    "Mind",
    `  ${photoTested}`,
    ...spinFirst.map((it) => `  ${it}`),
  ];
}

export const verdictWord = ({ verdict }: PhotoAnswer): string =>
  ({ certain: "Certain, as far as a photo goes", likely: "Likely", again: "Take another photo" })[verdict];

/** "Pitch in the photo: 1.51 ± 0.02 mm." The figure after ± is two standard uncertainties. */
export const photoPitchSentence = ({ pitch }: PhotoTold): string =>
  `Pitch in the photo: ${valueIn(mm, pitch).toFixed(2)} ± ${(2000 * standardUncertainty(pitch)).toFixed(2)} mm.`;

/** What speaks against the reading, each with what would help. */
export const photoReasons = ({ reasons }: PhotoAnswer): readonly string[] => reasons.map((it) => reasonWords[it]);

/** Which way it turns and whether it tapers, where the photo shows it. */
export function alsoSeen({ hand, tapers }: PhotoTold): readonly string[] {
  return [
    ...(hand === "left" ? ["Its lines run like those of a left-hand thread: look before you turn it."] : []),
    ...(tapers
      ? ["Its crests are not parallel: a taper thread, or not seen from the side. Caliper it at two places."]
      : []),
  ];
}

/**
 * The pitches that threads of a diameter have, likeliest first, each with the leaf that would sit; `naming` is by the
 * diameter alone.
 */
export function gaugeChecks({ candidates }: ThreadNaming): readonly string[] {
  const fits = candidates.filter(({ pieces }) => pieces.every(({ explainedBy }) => explainedBy === "thread"));
  const pitches = [...new Set(fits.map(({ thread }) => leafMarked(thread.P_mm)))].slice(0, 6);
  return pitches.map((leaf) => {
    const names = fits.filter(({ thread }) => leafMarked(thread.P_mm) === leaf).map(({ designation }) => designation);
    return `leaf ${leaf} sits without light: ${names.slice(0, 3).join(" or ")}`;
  });
}

const reasonWords: Readonly<Record<PhotoAgain["reasons"][number], string>> = {
  "no thread seen":
    "No thread was found: one part, in the middle, before a bright even surface; or draw a line along the thread.",
  "fits no thread":
    "No thread of that diameter has this pitch: check the caliper reading, and that the lines lie on the crests.",
  "thread small in the picture":
    "The thread is small in the picture: go closer or use 2x zoom, until it fills a quarter.",
  "few turns": "Too few turns are seen: show four free turns at least.",
  "not side-on": "It is not seen from the side: the end face must look like a straight line. Prop up the tip.",
  "thread seen shallow": "The thread looks shallower than it is: look exactly from the side, with the rim sharp.",
  "sides differ":
    "The two sides do not show the same pitch: one of them is hidden or in shadow. Put a light page behind it.",
  "sides out of step":
    "The crests of the two sides are not half a turn apart: put a light page behind it, without a shadow.",
  "crests unsteady":
    "The crests do not follow each other evenly: clean the thread, and keep fingers and shadow off it.",
  "edge unsteady": "The rim is not straight: something covers it or lies beside it. Show the thread free.",
  "rim covered": "Along most of one side the crests are covered: hold it by the head and show the thread free.",
  "edge faint": "The rim hardly stands out: put a light page behind a dark part, a dark mat behind a bright one.",
  "edge blurred": "The rim is blurred: focus on it and hold still, 15 to 30 cm away.",
  "edge doubtful": "Where the crests end is doubtful: no flash, no sun, a light page behind it.",
  "outline not seen": "Part and background are too alike: put a light page behind it, or a dark mat.",
  "hardly repeats": "The turns are hardly alike: clean the thread, or choose a part of it that is sound.",
  "finer than any thread":
    "That is finer than any thread of such a diameter: check the diameter, or draw a line along the thread.",
};
