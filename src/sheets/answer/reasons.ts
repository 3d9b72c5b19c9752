import { valueIn } from "../../mechanics/quantity/quantity.ts";
import { degC, turn } from "../../mechanics/quantity/unit.ts";
import { estimate } from "../../mechanics/quantity/working.ts";
import type { Assumption } from "../../mechanics/remedies/givenCase.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import type { WeighedClosure } from "../../mechanics/remedies/weighedClosure.ts";
import { materialRows } from "../../mechanics/tables/materials.ts";
import { sourceText } from "../../mechanics/tables/source.ts";
import { torqueFigure, turnsWord } from "../words/figures.ts";
import { refusalSentence } from "../words/refusalWords.ts";
import { notOfferedSentences } from "../words/remedyWords.ts";
import { answerSentence, bookSentence, turnsRemarkSentences, windowReasons } from "../words/windowWords.ts";

/** Why a closure is answered as it is, the answer itself first. */
export function reasons(closure: WeighedClosure, weighed: Weighed, books_Nm: readonly number[]): readonly string[] {
  const found = closure === weighed.asFound;
  if (closure.refused) return [refusalSentence(closure.refused.reason)];
  return [
    ...(found && weighed.health.healthy ? healthySentences(weighed) : []),
    ...[answerSentence(closure)].filter((it) => it !== ""),
    ...turnsSentences(closure),
    ...(closure.window ? windowReasons(closure.window, books_Nm) : []),
    ...stopSentences(closure),
    ...(found ? bookSentences(weighed) : []),
    ...(found ? weighed.notOffered.map(({ reason }) => notOfferedSentences[reason]).filter(unique) : []),
  ];
}

/** One row of what was taken because nobody gave it. */
export const assumedRow = ({ reading, value, source }: Assumption) => ({
  reading,
  value: typeof value === "string" ? value : estimate(value),
  source: sourceText(source),
});

/** The cautions that belong to this answer, each where it stands, none as a wall. */
export function cautions({ portCase, remedies, asFound }: Weighed): readonly string[] {
  const { port, asked } = portCase;
  const shown = [asFound, ...remedies].filter((it) => it.window?.open);
  const { lightAlloy } = materialRows[port.material];
  const hot = port.temperature !== null && valueIn(degC, port.temperature) > 60;
  return [
    ...(hot ? ["Oil above 60 °C scalds, and hot alloy strips sooner: let it cool to hand-warm."] : []),
    ...(shown.some((it) => it.closure.heldOtherwise)
      ? [
          "A bare flange loses its clamp to embedding and heat: the sealant and a lock hold such a joint, not its clamp. Never tighten it again after the first heat.",
          "Sealant: thin bead, skin and eyes, ventilation; keep it off sensors and out of galleries.",
        ]
      : []),
    ...(lightAlloy && asked.alloyTested !== "yes"
      ? ["Light alloy not tested: no welding or grinding before the magnesium question is answered."]
      : []),
    ...(port.roomBehind === null ? ["Nobody has measured what stands behind the hole."] : []),
    "Clean-catching thread, static, at room temperature: porosity, heat history and a casting that has already yielded are not known here.",
    "An estimate to help a competent person, not an approval to drive; the maker's figures, local rules and licensed trades come first.",
  ];
}

function healthySentences({ portCase, book }: Weighed): readonly string[] {
  const figure = book ? "the book figure" : "no book figure was given";
  const { left, healthy } = portCase.port;
  const turns =
    left.turns && healthy
      ? `${turnsWord(valueIn(turn, left.turns))} of ${turnsWord(valueIn(turn, healthy.turns))}: `
      : "";
  return [`${turns}nothing special, ${figure}.`];
}

function turnsSentences({ turns, closure }: WeighedClosure): readonly string[] {
  if (!turns) return [];
  const caught = valueIn(turn, turns.caught);
  const lead = turns.passesThrough
    ? "the plug passes right through, so its lead-in wastes none"
    : "up to 0.8 of them is lead-in";
  const ring = valueIn(turn, turns.caught) > 0 && closure.seal.thickness.value > 0 ? " with this ring" : "";
  return [`${turnsWord(caught)} caught${ring}; ${lead}.`, ...turns.remarks.map((it) => turnsRemarkSentences[it])];
}

function stopSentences({ stop }: WeighedClosure): readonly string[] {
  if (!stop) return [];
  const { expected_deg, stop_deg, steps_Nm } = stop;
  const steps = steps_Nm.map(torqueFigure).join(", ");
  return [
    `Pull in steps: ${steps} N·m. From snug expect ${Math.round(expected_deg.least)} to ${Math.round(expected_deg.most)}°; stop if it turns past ${Math.round(stop_deg)}° or the torque stops rising.`,
  ];
}

function bookSentences({ book }: Weighed): readonly string[] {
  const sentence = book && bookSentence(book);
  return sentence ? [sentence] : [];
}

const unique = (it: string, i: number, all: readonly string[]): boolean => all.indexOf(it) === i;
