import { valueIn } from "../../mechanics/quantity/quantity.ts";
import { turn } from "../../mechanics/quantity/unit.ts";
import type { RemedyId } from "../../mechanics/remedies/method.ts";
import { readyAfter_h } from "../../mechanics/remedies/offers.ts";
import { oneOfEach, type Ranked } from "../../mechanics/remedies/ranking.ts";
import { endsAfter_days, estimateOf } from "../../mechanics/remedies/shopFigures.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import { dayAfter } from "../../mechanics/service/dueDate.ts";
import { jointRows } from "../../mechanics/tables/jointKinds.ts";
import { turnsText } from "../words/figures.ts";
import { ownerRefusal } from "../words/ownerRefusals.ts";
import { ownerNames, ownerSentences, priceText } from "../words/ownerWords.ts";
import { wrapped } from "./wrapped.ts";

const rows = 3;

/** The owner's version: what was found, up to three ways with price, time and chance, and what it is. No word of the trade. */
export function ownerLines(weighed: Weighed): readonly string[] {
  const { asFound, health, portCase } = weighed;
  const { left, healthy } = portCase.port;
  const count =
    left.turns && healthy
      ? `Of ${turnsText(valueIn(turn, healthy.turns))} turns of thread in the hole ${turnsText(valueIn(turn, left.turns))} are left.`
      : "The thread in the hole is hurt.";
  if (health.healthy) return wrapped("The bolt and its thread are sound: normal service.", "");
  const offered = oneOfEach(weighed.ranking).slice(0, rows);
  return [
    ...wrapped(count, ""),
    ...(asFound.refused ? wrapped(`It cannot stay as it is. ${ownerRefusal(asFound.refused.reason)}`, "") : []),
    "",
    ...offered.flatMap((row, i) => ownerRow(row, i, weighed)),
    ...wrapped(
      "Prices, times and chances are estimates. Drops on the ground, oil on a tyre, a brake or the exhaust, or a new noise: stop and call.",
      "",
    ),
    ...wrapped(
      "An estimate to help a competent person, not an approval to drive; the maker's figures, local rules and licensed trades come first.",
      "",
    ),
  ];
}

function ownerRow(row: Ranked, i: number, weighed: Weighed): readonly string[] {
  return [
    `${i + 1}  ${called(ownerNames[row.id], weighed)}`,
    ...wrapped(`   ${called(ownerSentences[row.id], weighed)}`, "   "),
    ...wrapped(
      `   Price ${priceText(row)}. ${when(row.id, weighed)}. ${[chance(row), limitOf(row.id, weighed)].filter((it) => it !== "").join(" ")}`,
      "   ",
    ),
    "",
  ];
}

/** What closes a spark plug hole is a spark plug, not a bolt. */
const called = (text: string, { portCase }: Weighed): string =>
  jointRows[portCase.joint].combustion ? text.replaceAll("bolt", "spark plug") : text;

function when(id: RemedyId, weighed: Weighed): string {
  const remedy = weighed.remedies.find((it) => it.id === id);
  const hours = remedy ? readyAfter_h(remedy, weighed.portCase) : estimateOf(id, weighed.portCase.shop).readyAfter_h;
  if (hours === null) return "Ready when we have looked, not today";
  if (hours === 0) return "Ready the same day, once the parts are here";
  return hours <= 24 ? "Ready the next day" : `Ready after ${Math.ceil(hours / 24)} days`;
}

function chance({ comesBack }: Ranked): string {
  if (!comesBack) return "";
  if (comesBack.likely < 0.0095) return "Hardly ever comes back.";
  const own = comesBack.basis === "estimate" ? "" : ` (${comesBack.cameBack} of our own ${comesBack.cases} did)`;
  return `About 1 in ${Math.max(1, Math.round(1 / comesBack.likely))} comes back within a year${own}.`;
}

function limitOf(id: RemedyId, weighed: Weighed): string {
  const lasting = [...weighed.remedies, ...weighed.repairs].find((it) => it.id === id)?.lasting ?? false;
  const { today, shop } = weighed.portCase;
  const ends_days = endsAfter_days(estimateOf(id, shop), lasting);
  if (ends_days === null) return "It stays.";
  return today
    ? `We look at it again by ${dayAfter(today, ends_days)}.`
    : `We look at it again within ${ends_days} days.`;
}
