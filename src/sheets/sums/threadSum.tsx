import { render } from "preact-render-to-string";
import { normal } from "../../mechanics/quantity/distribution.ts";
import { type Quantity, reading, valueIn } from "../../mechanics/quantity/quantity.ts";
import { mm } from "../../mechanics/quantity/unit.ts";
import { knownDesignation } from "../../mechanics/threads/namingCandidates.ts";
import type { ThreadEvidence } from "../../mechanics/threads/namingEvidence.ts";
import {
  boreRead,
  gapsRead,
  hexagonsRead,
  holeTaperRead,
  leafRead,
  MOST_COUNTED,
  ordinaryWear,
  outsideRead,
  taperRead,
  threadsPerInchFromText,
  travelRead,
} from "../../mechanics/threads/namingReadings.ts";
import type { SeparatingMeasurement } from "../../mechanics/threads/namingSeparate.ts";
import { threadCandidates } from "../../mechanics/threads/threadName.ts";
import { separatingSentence } from "../words/separatingWords.ts";
import type { ThreadField } from "../words/threadBenchWords.ts";
import { namingSign, orSecond, sayWhatWasCounted } from "../words/threadBenchWords.ts";
import {
  candidateReasons,
  candidatesBeside,
  namingSentence,
  pitchSentences,
  spinFirst,
  warningSentence,
} from "../words/threadWords.ts";
import { namedOnRule } from "./namedOnRule.tsx";
import { answered, type SumRead } from "./sumAnswer.ts";
import type { SumTexts } from "./sumField.ts";
import { threadFields } from "./threadFields.ts";
import { threadWorking } from "./threadWorking.ts";
import { type Typed, typed } from "./typed.ts";

/** Which thread it is, from what is on the bench. */
export function threadSum(texts: SumTexts): SumRead {
  const it = typed(texts, threadFields);
  const [first, ...more] = evidenceOf(it);
  if (it.problems.length === 0 && !first) it.want("outside", "gaps");
  if (it.problems.length > 0 || !first) return { ok: false, problems: it.problems };
  return answerOf([first, ...more]);
}

function answerOf(evidence: readonly [ThreadEvidence, ...ThreadEvidence[]]): SumRead {
  const naming = threadCandidates(evidence);
  const { candidates, showTwo, warnings, separateBy } = naming;
  const [first, second] = candidates;
  const shown = candidatesBeside(naming);
  const [reason = "", ...reasons] = shown.map((it) => `${it.designation}: ${candidateReasons(it, evidence)}.`);
  return answered({
    sign: namingSign(naming),
    stop: warnings.includes("binds: stop turning"),
    figure: first
      ? { value: first.designation, unit: "", also: showTwo && second ? orSecond(second.designation) : "" }
      : null,
    sentences: [...warnings.map((it) => warningSentence(it, evidence)), namingSentence(naming)],
    because: reason,
    next: warnings.includes("counted crests")
      ? { sentence: sayWhatWasCounted, field: "counted" }
      : { sentence: separatingSentence(naming), field: separateBy && fieldOf[separateBy.type] },
    picture: render(namedOnRule(naming, evidence)),
    threads: shown.map(({ designation }) => designation),
    reasons: [...reasons, ...pitchSentences(evidence).map((it) => `${it.replace(/^p/, "P")}.`)],
    cautions: spinFirst,
    working: threadWorking(naming, evidence),
  });
}

/** The fields that the separating measurement is read into. */
const fieldOf: Readonly<Record<SeparatingMeasurement["type"], ThreadField>> = {
  gaps: "gaps",
  "outside diameter": "outside",
  "two diameters": "grown",
  "spin a known plug": "turned",
  "pitch gauge": "seats",
  bore: "bore",
  "two bores": "narrows",
};

/** Every reading that is whole; of those that take two, the one that is still wanted is noted. */
function evidenceOf(it: Typed): readonly ThreadEvidence[] {
  const length = (name: ThreadField, symbol: string) => {
    const read = it.quantity(name, symbol);
    return read && { length: read, id: name };
  };
  const [outside, along, bore] = [length("outside", "d"), length("along", "l"), length("bore", "D_1")];
  const [gaps, turns] = [gapsCounted(it), turnsOf(it)];
  const [travel, grown, over] = [length("travel", "l"), length("grown", "dd"), length("grownOver", "l")];
  const [narrows, depth] = [length("narrows", "dD"), length("narrowsOver", "l")];
  const [hexagon, sister] = [length("hexagon", "s"), length("sister", "s")];
  const [seats, seatsNot, mesh] = [leaf(it, "seats"), leaf(it, "seatsNot"), meshFelt(it)];
  const [pitch, spread] = [length("photoPitch", "P"), length("photoSpread", "U")];
  both(it, "photoPitch", "photoSpread");
  both(it, "gaps", "along");
  both(it, "turns", "travel");
  both(it, "grown", "grownOver");
  both(it, "narrows", "narrowsOver");
  both(it, "hexagon", "sister");
  return [
    outside && outsideRead(outside, it.text("crests") === "worn", ordinaryWear),
    gaps && along && gapsRead(gaps, along),
    pitch && spread && { type: "pitch" as const, pitch: pitchOf(pitch.length, spread.length) },
    seats && leafRead(seats, true),
    seatsNot && leafRead(seatsNot, false),
    bore && boreRead(bore),
    turns && travel && travelRead(turns, travel),
    grown && over && taperRead(grown, over),
    narrows && depth && holeTaperRead(narrows, depth),
    mesh,
    hexagon && sister && hexagonsRead(hexagon, sister),
  ].filter((piece) => piece != null && piece !== 0);
}

/** A pitch from a photo with its expanded uncertainty, of two standard ones. */
const pitchOf = (pitch: Quantity, spread: Quantity): Quantity =>
  reading("P", normal(valueIn(mm, pitch), valueIn(mm, spread) / 2), mm, "photoPitch", "a photo");

/** Where one of two that belong together is given, the other is wanted. */
function both(it: Typed, ...names: readonly [ThreadField, ThreadField]): void {
  if (names.some((name) => it.text(name) !== null)) it.want(...names);
}

/** Who counted crests counted one more than there are gaps. */
function gapsCounted(it: Typed): number | null {
  if (it.text("counted") !== "crests") return it.count("gaps", 1, MOST_COUNTED);
  const crests = it.count("gaps", 2, MOST_COUNTED);
  return crests && crests - 1;
}

/** Turns of travel, by halves and quarters as they are counted. */
function turnsOf(it: Typed): number | null {
  const turns = it.quantity("turns", "N");
  if (turns && turns.value > MOST_COUNTED) return it.refuse("turns", `up to ${MOST_COUNTED} turns, as "5"`);
  return turns ? turns.value : null;
}

function leaf(it: Typed, name: ThreadField): Quantity | null {
  return threadsPerInchFromText(it.text(name) ?? "") ?? it.quantity(name, "P");
}

function meshFelt(it: Typed): ThreadEvidence | null {
  both(it, "felt", "meshTurns");
  const unknown = it.text("turned") === "known" ? "hole" : "plug";
  // A known plug that is not named would be taken for this one.
  if (unknown === "hole") it.want("meshIn", "felt", "meshTurns");
  const [felt, turns] = [it.chosen("felt", ["tight", "free"]), it.quantity("meshTurns", "n")];
  const named = it.text("meshIn");
  const known = named === null ? null : knownDesignation(named);
  if (named !== null && known === null) return it.refuse("meshIn", "a thread that is known here, as M22x1.5");
  return felt && turns && { type: "mesh", unknown, known, turns: turns.value, felt };
}
