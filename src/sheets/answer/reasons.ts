import { bookTorque_Nm, isForSeal } from "../../mechanics/joint/bookFigures.ts";
import { leadIn } from "../../mechanics/joint/carryingTurns.ts";
import { support } from "../../mechanics/quantity/distribution.ts";
import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { degC, Nm, turn } from "../../mechanics/quantity/unit.ts";
import { estimate } from "../../mechanics/quantity/working.ts";
import type { Assumption } from "../../mechanics/remedies/givenCase.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import type { WeighedClosure } from "../../mechanics/remedies/weighedClosure.ts";
import { materialRows } from "../../mechanics/tables/materials.ts";
import { beforeLoosening } from "../../mechanics/tables/methodCautions.ts";
import type { Ranges } from "../../mechanics/tables/referenceRanges.ts";
import { sourceText } from "../../mechanics/tables/source.ts";
import { cautionSentences } from "../words/cautionWords.ts";
import { torqueFigure, turnsText, turnsWord } from "../words/figures.ts";
import { refusalSentence } from "../words/refusalWords.ts";
import { notOfferedSentences } from "../words/remedyWords.ts";
import { answerSentence, bookRemark, bookSentence, turnsRemarkSentences, windowReasons } from "../words/windowWords.ts";

/** Why the port as found is answered as it is, the answer itself first; on a healthy port as little as will do. */
export function foundReasons(weighed: Weighed): readonly string[] {
  const { asFound, health, book, notOffered, portCase } = weighed;
  if (asFound.refused) return [refusalSentence(asFound.refused.reason)];
  if (health.healthy) return healthyReasons(weighed);
  const books_Nm = portCase.bookFigures.map(({ torque }) => valueIn(Nm, torque));
  return [
    ...closureReasons(asFound, portCase.ranges, books_Nm),
    ...[book && bookSentence(book)].filter((it) => it !== null),
    ...notOffered.map(({ reason }) => notOfferedSentences[reason]).filter(unique),
  ];
}

/** Why a remedy is answered as it is. */
export const remedyReasons = (remedy: WeighedClosure, { portCase }: Weighed): readonly string[] =>
  remedy.refused ? [refusalSentence(remedy.refused.reason)] : closureReasons(remedy, portCase.ranges, []);

/** One row of what was taken because nobody gave it. */
export const assumedRow = ({ reading, value, source }: Assumption) => ({
  reading,
  value: typeof value === "string" ? value : estimate(value),
  source: sourceText(source),
});

/** A caution, and where it belongs: to the port itself, to a joint that sealant holds, to the laying of its bead, or to what is cut. */
export type Caution = { readonly where: "port" | "sealant" | "bead" | "cutting"; readonly text: string };

/** The cautions that belong to this answer, each where it stands, none as a wall. */
export const cautions = (weighed: Weighed): readonly string[] => cautionsByPlace(weighed).map(({ text }) => text);

export function cautionsByPlace({ portCase, remedies, repairs, asFound, health }: Weighed): readonly Caution[] {
  const { port, asked, prevailing } = portCase;
  const shown = [asFound, ...remedies].filter((it) => it.window?.open);
  const { lightAlloy } = materialRows[port.material];
  const hot = port.temperature !== null && valueIn(degC, port.temperature) > 60;
  const hurt = !health.healthy;
  const cuts = repairs.some(({ checks }) => checks.some(({ type }) => type === "drill"));
  const rows: Caution[] = [];
  const say = (where: Caution["where"], text: string): void => {
    rows.push({ where, text });
  };
  const loosening = hurt ? beforeLoosening(portCase.joint) : [];
  for (const it of loosening.filter((it) => !(hot && it === "hot oil"))) say("port", cautionSentences[it]);
  if (hot) say("port", "Oil above 60 °C scalds, and hot alloy strips sooner: let it cool to hand-warm.");
  if (asked.breather === "blocked" && !hurt)
    say("port", "The breather is blocked: free it, it pushes oil past any seal.");
  if (prevailing && shown.length > 0)
    say(
      "port",
      `The plug already turns at ${torqueFigure(valueIn(Nm, prevailing))} N·m before it is seated: that much is added. If it rises as you turn, the thread is galling: stop.`,
    );
  if (shown.some((it) => it.closure.heldOtherwise)) {
    say(
      "sealant",
      "With sealant: the flange loses its clamp to embedding and heat, so the sealant and a lock hold the joint. Never tighten it again after the first heat.",
    );
    say("bead", "With sealant: thin bead, skin and eyes, ventilation; keep it off sensors and out of galleries.");
  }
  if (hurt && cuts)
    say(
      "cutting",
      "Before drilling: eyes covered, gears and cylinders covered, fuel and vapour away; keep the chips out and count them.",
    );
  if (hurt && lightAlloy && asked.alloyTested !== "yes")
    say("cutting", "Light alloy not tested: no welding or grinding before the magnesium question is answered.");
  if (hurt && shown.length > 0 && port.roomBehind === null)
    say("port", "Nobody has measured what stands behind the hole.");
  if (hurt && shown.length > 0)
    say(
      "port",
      "Clean-catching thread, static, at room temperature: porosity, heat history and a casting that has already yielded are not known here.",
    );
  say(
    "port",
    "An estimate to help a competent person, not an approval to drive; the maker's figures, local rules and licensed trades come first.",
  );
  return rows;
}

function closureReasons(closure: WeighedClosure, ranges: Ranges, books_Nm: readonly number[]): readonly string[] {
  return [
    ...[answerSentence(closure)].filter((it) => it !== ""),
    ...turnsSentences(closure, ranges),
    ...(closure.window ? windowReasons(closure.window, books_Nm) : []),
    ...stopSentences(closure),
  ];
}

/** "8 of 8 turns". */
export function countedOfHealthy({ portCase }: Weighed): string {
  const { left, healthy } = portCase.port;
  const figure = (it: Quantity | null | undefined): number => (it ? valueIn(turn, it) : 0);
  return `${turnsText(figure(left.turns))} of ${turnsWord(figure(healthy?.turns))}`;
}

/** The book's figure and nothing more, unless it lies outside the window or there is none. */
function healthyReasons(weighed: Weighed): readonly string[] {
  const { asFound, book } = weighed;
  const counted = countedOfHealthy(weighed);
  if (!book)
    return [
      `${counted}: healthy, and no book figure was given.`,
      ...[answerSentence(asFound)].filter((it) => it !== ""),
      ...(asFound.window ? windowReasons(asFound.window, []) : []),
    ];
  const meantFor =
    book.type === "one figure" && !isForSeal(book.figure, asFound.closure.seal) ? book.figure.seal : null;
  return [
    `${counted}: nothing special, the book figure.`,
    ...[bookRemark(bookTorque_Nm(book), asFound.window, meantFor), bookSentence(book)].filter((it) => it !== null),
  ];
}

function turnsSentences({ turns, closure }: WeighedClosure, ranges: Ranges): readonly string[] {
  if (!turns) return [];
  const caught = Math.max(0, valueIn(turn, turns.caught));
  const [, wasted] = support(leadIn(turns, ranges));
  const lead = turns.passesThrough
    ? "the plug passes right through, so its lead-in wastes none"
    : `up to ${wasted.toFixed(1)} of them is lead-in`;
  const ring = caught > 0 && closure.seal.thickness.value > 0 ? " with this ring" : "";
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

const unique = (it: string, i: number, all: readonly string[]): boolean => all.indexOf(it) === i;
