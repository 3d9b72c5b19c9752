import { render } from "preact-render-to-string";
import { type Air, humidityFelt, humidityOfShare } from "../../mechanics/cure/air.ts";
import { type CureClocks, cureClocks } from "../../mechanics/cure/clocks.ts";
import { ordinaryFront } from "../../mechanics/cure/front.ts";
import { cureByFit } from "../../mechanics/cure/inThread.ts";
import { labelChecks } from "../../mechanics/cure/label.ts";
import { valueIn } from "../../mechanics/quantity/quantity.ts";
import { degC } from "../../mechanics/quantity/unit.ts";
import { working } from "../../mechanics/quantity/working.ts";
import { CureClock } from "../drawings/cure/CureClock.tsx";
import {
  anotherTube,
  closedNext,
  comesDown,
  cureSigns,
  goesAway,
  humidityOrFelt,
  longerCounts,
  opensAgain,
  sheetFirst,
  until,
} from "../words/cureBenchWords.ts";
import { clockText, cureNotes, cureWhy, span } from "../words/cureWords.ts";
import { forbidden, labelLines } from "../words/labelWords.ts";
import { withoutOptions } from "../words/withoutOptions.ts";
import { closedAtFromText, isDay } from "./closedAt.ts";
import { cureFields } from "./cureFields.ts";
import { answered, type SumRead } from "./sumAnswer.ts";
import type { SumTexts } from "./sumField.ts";
import { type Typed, typed } from "./typed.ts";

/** When a joint sealed with silicone may come down and when it may go, from what is on the bench on the day `today`. */
export function cureSum(texts: SumTexts, today: string): SumRead {
  const it = typed(texts, cureFields);
  it.want("bead", "temperature");
  const [width, air, closed] = [it.quantity("bead", "w"), airOf(it), closedAt(it, today)];
  const time = it.quantity("label", "t_0");
  const useBy = it.text("useBy");
  if (useBy !== null && !isDay(useBy)) it.refuse("useBy", "a day as 2027-03-31");
  if (it.problems.length > 0 || !width || !air) return { ok: false, problems: it.problems };
  const named = it.chosen("namesFluid", ["yes", "no"]);
  const checks = labelChecks({ namesThisFluid: named && named === "yes", useBy, siliconeType: null }, today);
  const clocks = cureClocks({
    width,
    open: it.text("open") === "both" ? "both edges" : "one edge",
    air,
    front: ordinaryFront,
    label: time && { time, saidFor: "this air" },
  });
  return answerOf(clocks, closed, air, { checks, useBy, silicone: true });
}

function answerOf(clocks: CureClocks, closed: Date | null, air: Air, tube: Parameters<typeof forbidden>[0]): SumRead {
  const { mayBeSplashed, curedThrough, slowness } = clocks;
  const [not] = forbidden(tube);
  const asked = labelLines(tube).map(withoutOptions);
  if (not !== undefined)
    return answered({
      sign: cureSigns.forbidden,
      stop: true,
      sentences: [not],
      because: "",
      next: { sentence: anotherTube, field: "namesFluid" },
      cautions: [...asked, sheetFirst],
    });
  const [splash, through] = [clockText(mayBeSplashed.time, closed), clockText(curedThrough.likely, closed)];
  const [reason = "", ...reasons] = cureWhy(clocks, cureByFit(null, null, air, ordinaryFront));
  const after = clockText(curedThrough.likely, null);
  const figure = /^(\d+) h$/.exec(after)?.[1];
  return answered({
    sign: cureSigns.through,
    figure: { value: figure ?? after, unit: figure ? "h" : "", also: closed ? until(through) : "" },
    sentences: [comesDown(splash, closed !== null), goesAway(through, span(curedThrough), closed !== null)],
    because: reason,
    next: closed ? null : { sentence: closedNext, field: "closed" },
    picture: render(<CureClock clocks={clocks} caption="Sealed joint" splashText={splash} throughText={through} />),
    reasons: [...reasons, ...cureNotes(clocks)],
    cautions: [...asked, longerCounts, opensAgain, sheetFirst],
    working: working(slowness, mayBeSplashed.time, curedThrough.likely),
  });
}

/** The air by its gauge, or by how it feels where there is none. */
function airOf(it: Typed): Air | null {
  const T = it.quantity("temperature", "T");
  if (T && !(valueIn(degC, T) >= LEAST_degC && valueIn(degC, T) <= MOST_degC))
    return it.refuse("temperature", `${LEAST_degC} to ${MOST_degC} °C: the air of a bay`);
  const felt = it.chosen("felt", ["dry", "normal", "damp"]);
  if (it.text("humidity") === null && !felt) it.want("humidity");
  const share = it.quantity("humidity", "RH");
  const RH = share ? humidityOfShare(share, "humidity") : felt && humidityFelt(felt, "felt");
  if (share && !RH) return it.refuse("humidity", humidityOrFelt);
  return T && RH && { T, RH };
}

/** The vapour of air is reckoned within these; a bay is never outside them. */
const LEAST_degC = -40;
const MOST_degC = 60;

function closedAt(it: Typed, today: string): Date | null {
  const text = it.text("closed");
  if (text === null) return null;
  return (
    closedAtFromText(text, today) ?? it.refuse("closed", 'a time as "11:40", or a day and a time as "2026-11-25 11:40"')
  );
}
