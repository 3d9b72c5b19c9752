import type { Quantity } from "../../mechanics/quantity/quantity.ts";
import { estimate } from "../../mechanics/quantity/working.ts";
import type { PortCase } from "../../mechanics/remedies/portCase.ts";
import { oneOfEach } from "../../mechanics/remedies/ranking.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import { refusalSentence } from "../words/refusalWords.ts";
import { remedyNames, sealWord } from "../words/remedyWords.ts";
import { answerSentence } from "../words/windowWords.ts";
import { notOffered, offeredVerdict } from "./repairLines.ts";
import { wrapped } from "./wrapped.ts";

/** How many offers a colleague is asked about. */
const most = 4;

/**
 * One page to ask a colleague: the port as measured, what was reckoned, what would be done. No owner, no machine, no names:
 * neither wrenches nor sources of figures nor who took a refusal on himself.
 */
export function casePageLines(weighed: Weighed): readonly string[] {
  const { portCase, asFound, health, ranking } = weighed;
  const found = asFound.refused
    ? `Refused: ${refusalSentence(asFound.refused.reason)}`
    : answerSentence({ ...asFound, advice: withoutWrench(asFound.advice) });
  return [
    "A port to look at",
    "",
    ...section("What it is", whatItIs(portCase)),
    ...section("What is left", whatIsLeft(portCase)),
    ...section("First questions", firstAnswers(portCase)),
    ...section("Reckoned", [health.healthy ? "Healthy: the book figure." : found]),
    ...section(
      "Would do, in this order",
      oneOfEach(ranking)
        .slice(0, most)
        .map(({ id }) => `${remedyNames[id]}: ${offeredVerdict(id, weighed)}`),
    ),
    ...section("Not offered", notOffered(weighed)),
    ...wrapped("What would you do, and what have you seen fail here?", ""),
    ...wrapped(
      "An estimate to help a competent person, not an approval to drive; the maker's figures, local rules and licensed trades come first.",
      "",
    ),
  ];
}

function whatItIs({ joint, port, asFound }: PortCase): readonly string[] {
  const { seal, plug, surface } = asFound;
  return [
    `${joint}, ${port.thread.designation} in ${port.material}, ${surface}`,
    `hole ${lengthOf(port.threadDepth)} deep, wall ${lengthOf(port.thinnestWall)}, room behind ${lengthOf(port.roomBehind)}`,
    `plug ${plug.propertyClass}, ${lengthOf(plug.underHead)} under the head${plug.original ? "" : ", not its own"}`,
    `${sealWord(seal)} ${estimate(seal.outside)} / ${estimate(seal.inside)} / ${estimate(seal.thickness)}${seal.chamfer ? `, in a chamfer ${estimate(seal.chamfer)} deep` : ""}`,
  ];
}

function whatIsLeft({ port }: PortCase): readonly string[] {
  const { left, healthy } = port;
  const counted = left.turns ? `${estimate(left.turns)} counted ${left.counting}` : "turns not counted";
  return [
    `${counted}${left.withWasher ? ", washer on" : ""}; ${left.condition}, catches: ${left.catch}`,
    healthy ? `a sound twin hole has ${estimate(healthy.turns)}` : "no sound twin hole counted",
  ];
}

function firstAnswers({ asked }: PortCase): readonly string[] {
  const { crack, pressure, reaches, people, repairedBefore, breather } = asked;
  const said = (value: string | null): string => value ?? "not asked";
  return [
    `crack: ${said(crack)}; pressure: ${pressure === null || typeof pressure === "string" ? said(pressure) : estimate(pressure)}`,
    `reaches: ${reaches === null ? "not asked" : reaches.length === 0 ? "nothing" : reaches.join(", ")}; people: ${said(people)}`,
    `repaired before: ${repairedBefore === null || repairedBefore === "no" ? said(repairedBefore) : repairedBefore.method}; breather: ${said(breather)}`,
  ];
}

/** A wrench has a name in its workshop, and the colleague has his own. */
function withoutWrench(advice: Weighed["asFound"]["advice"]): Weighed["asFound"]["advice"] {
  return advice?.type === "pull" ? { ...advice, wrench: null, evidence: null, set_Nm: advice.torque_Nm } : advice;
}

const lengthOf = (length: Quantity | null): string => (length ? estimate(length) : "not measured");

const section = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [title, ...lines.flatMap((it) => wrapped(`  ${it}`, "    ")), ""];
