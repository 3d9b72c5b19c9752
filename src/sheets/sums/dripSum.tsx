import { render } from "preact-render-to-string";
import { ordinaryDrop } from "../../mechanics/fluid/drop.ts";
import type { Lasting, LeakAnswers, LeakTriage } from "../../mechanics/fluid/leakTriage.ts";
import { stopSigns } from "../../mechanics/fluid/stopSigns.ts";
import { valueIn } from "../../mechanics/quantity/quantity.ts";
import { d } from "../../mechanics/quantity/unit.ts";
import { leakClasses, leakSights } from "../../mechanics/tables/leakClasses.ts";
import { type DaysRange, MarginDays } from "../drawings/MarginDays.tsx";
import type { DripField } from "../words/dripBenchWords.ts";
import { aDay, breatherNext, countLonger, countWanted, dripSign, marginNext } from "../words/dripBenchWords.ts";
import { countedFrom } from "../words/dripCountWords.ts";
import {
  callerText,
  classLines,
  type DripInWords,
  dripMinds,
  isFirst,
  lossFigure,
  lossSentences,
  triageLines,
  uncountedText,
} from "../words/leakWords.ts";
import { withoutOptions } from "../words/withoutOptions.ts";
import { dripFields } from "./dripFields.ts";
import { dripInWords, dripWorking, dropFromLip } from "./dripInWords.ts";
import { answered, type SumAnswer, type SumRead } from "./sumAnswer.ts";
import type { SumTexts } from "./sumField.ts";
import { type Typed, typed } from "./typed.ts";

/** What a drip loses, how long that lasts and what to tell the caller, from what is on the bench. */
export function dripSum(texts: SumTexts): SumRead {
  const it = typed(texts, dripFields);
  const answers = answersOf(it);
  const [drops, time, lip] = [it.count("drops", 0, MOST_DROPS), it.quantity("minutes", "t"), it.quantity("lip", "r")];
  const [aboveLimit, perHeight] = [it.quantity("toLimit", "h"), it.quantity("perMm", "k")];
  const drop = lip ? dropFromLip(lip) : ordinaryDrop;
  if (!drop) it.refuse("lip", "a lip of about 0.5 to 6 mm: outside it the law of drops does not hold");
  const sight = it.chosen("look", leakSights);
  const ends = endsTheTalk(answers, sight);
  const counted = it.text("drops") !== null || it.text("minutes") !== null;
  if (counted || !(ends || sight)) it.want("drops", "minutes");
  if (it.problems.length > 0 || !drop) return { ok: false, problems: it.problems };
  if (drops === null || !time) return answered(uncounted(ends, sight));
  const found = dripInWords({ drops, time, id: "drops", drop, perHeight, aboveLimit, answers });
  const counts = { ...counting(found), because: countedFrom(drops, time, drop) };
  return answered({ ...counts, reasons: sight ? seen(sight) : [] });
}

type Sight = (typeof leakSights)[number];
type Answered = Pick<SumAnswer, "sign" | "sentences" | "because" | "next"> & Partial<SumAnswer>;

function answersOf(it: Typed): LeakAnswers {
  const signs = it.text("signs");
  return {
    stopSigns: signs === null ? null : stopSigns.filter((sign) => signs.split(",").includes(sign)),
    breather: it.chosen("breather", ["free", "blocked", "none"]),
  };
}

/** What ends the talk before anything is counted; null where counting goes on. */
function endsTheTalk({ stopSigns: signs, breather }: LeakAnswers, sight: Sight | null): LeakTriage | null {
  const seen = [...(signs ?? []), ...(sight === "stream" ? (["drops turning to a string"] as const) : [])];
  if (seen.length > 0) return { type: "do not drive", signs: [...new Set(seen)] };
  return breather === "blocked" ? { type: "free the breather first" } : null;
}

/** Without a count: what ends the talk, or what the leak is called by what is seen. */
function uncounted(ends: LeakTriage | null, sight: Sight | null): Answered {
  const [called = "", ...classes] = sight ? seen(sight) : [];
  if (!ends) {
    const calls = sight ? leakClasses[sight].calls : "nothing";
    return {
      sign: calls,
      sentences: [called],
      because: classes[0] ?? "",
      next: countNext,
      cautions: dripMinds.slice(1),
    };
  }
  return {
    sign: dripSign(ends),
    stop: true,
    sentences: triageLines(ends),
    because: classes[0] ?? "",
    next: ends.type === "do not drive" ? null : { sentence: breatherNext, field: "breather" },
    message: uncountedText(ends),
  };
}

function counting(found: DripInWords): Answered {
  const { triage, drops } = found;
  const first = triage !== null && isFirst(triage);
  // A question stands where it is answered, under "next": not twice.
  const act = triage && triage.type !== "ask first" ? triageLines(triage) : [];
  const [loss = "", ...fall] = lossSentences(found);
  return {
    sign: dripSign(triage),
    stop: first,
    figure: { value: lossFigure(found), unit: aDay, also: "" },
    sentences: first ? [...act, loss, ...fall] : [loss, ...fall, ...act],
    because: "",
    next: nextOf(triage, drops),
    picture: triage?.type === "lasts" ? daysPicture(triage) : null,
    message: callerText(found),
    cautions: dripMinds,
    working: dripWorking(found),
  };
}

function daysPicture({ parked, parkedHonest, driven }: Extract<LeakTriage, { type: "lasts" }>): string {
  const days = ({ low, high }: Lasting): DaysRange => ({
    low_d: low && valueIn(d, low),
    high_d: high && valueIn(d, high),
  });
  return render(<MarginDays counted={days(parked)} parked={days(parkedHonest)} driven={days(driven)} />);
}

function nextOf(triage: LeakTriage | null, drops: number): SumAnswer["next"] {
  const at = (sentence: string, field: DripField) => ({ sentence, field });
  switch (triage?.type) {
    case "do not drive":
      return null;
    case "ask first":
      return at(
        withoutOptions(triageLines(triage)[1] ?? "").trim(),
        triage.questions[0] === "breather" ? "breather" : "signs",
      );
    case "free the breather first":
      return at(breatherNext, "breather");
    case "margin used up":
      return null;
    case "lasts":
      return drops < FEW_DROPS ? at(countLonger, "minutes") : null;
    default:
      return at(marginNext, "toLimit");
  }
}

/** More than anybody counts. */
const MOST_DROPS = 999_999;

/** Counts below this leave more doubt than the size of a drop does (judgement: its interval is as wide as its figure). */
const FEW_DROPS = 30;

const countNext = { sentence: countWanted, field: "drops" } as const;

const seen = (sight: Sight): readonly string[] => classLines(sight).map((line) => line.trim());
