import type { PortId } from "../../journal/facts/ids.ts";
import { choice } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";
import { afterFieldWords, commonCauses } from "../words/afterWords.ts";
import { type Act, type ActForm, type Around, actForm, dayIn, type PlainFact, portOf } from "./act.ts";
import { dayField } from "./dayField.ts";
import { meterFields, meterIn, meterTexts } from "./meterFields.ts";
import { moneyField, moneyIn } from "./money.ts";

const ways = ["weep", "drip", "spun", "fell out", "seal", "other"] as const;

/** A repair of this job that came back: when, how, and the cause that is named. */
export const cameBackAct: Act = {
  form: cameBackForm,
  read: cameBack,
  texts: (fact) =>
    fact.type === "CameBack"
      ? {
          how: fact.how,
          cause: fact.cause,
          foundOn: dayOr(fact.foundAt),
          heldUntil: dayOr(fact.heldUntil ?? ""),
          turnsNow: fact.turnsNow ?? "",
          cost: fact.cost === undefined ? "" : String(fact.cost),
          ...meterTexts(fact.meter),
        }
      : null,
};

function cameBackForm({ shop, today }: Around): ActForm {
  const foundOn = dayField(today, ["0", "-1"]);
  return actForm(
    "cameBack",
    {
      how: choice(...ways),
      cause: { type: "text", common: commonCauses },
      foundOn: foundOn.field,
      turnsNow: { type: "number", unit: "turns", step: 0.25, start: "3", from: "nothing" },
      cost: moneyField(10, "90"),
      heldUntil: { type: "text", common: [] },
      ...meterFields,
    },
    { ...afterFieldWords, cost: { ...afterFieldWords.cost, hint: shop.people.workshop?.currency ?? "" } },
    {
      choiceWords: foundOn.words,
      given: { foundOn: today },
      folded: ["heldUntil", ...Object.keys(meterFields)],
    },
  );
}

function cameBack(it: Typed, { sheet, about, now, today }: Around): PlainFact {
  it.want("how", "cause", "foundOn");
  const [foundAt, heldUntil] = [momentIn(it, "foundOn"), momentIn(it, "heldUntil")];
  const port = portOf({ about });
  const madeOn = sheet.ports[port as PortId]?.repairs.at(-1)?.at.slice(0, 10) ?? null;
  const foundOn = foundAt?.slice(0, 10);
  if (foundOn && foundOn > today) it.refuse("foundOn", `a day up to ${today}`);
  if (foundOn && madeOn && foundOn < madeOn) it.refuse("foundOn", `a day from ${madeOn} on, when it was repaired`);
  if (foundAt && heldUntil && heldUntil > foundAt) it.refuse("heldUntil", `a day up to ${foundOn}`);
  return {
    type: "CameBack",
    port,
    foundAt: foundAt === noonOf(today) ? now : foundAt,
    heldUntil,
    how: it.chosen("how", ways),
    cause: it.text("cause"),
    turnsNow: it.reading("turnsNow") && it.text("turnsNow"),
    meter: meterIn(it),
    cost: moneyIn(it, "cost"),
  };
}

/** A day of which nobody knows the hour. */
const noonOf = (day: string): string => `${day}T12:00:00Z`;

/** A moment as the day that it stands for, or as it is where its hour is known. */
const dayOr = (moment: string): string => (moment.endsWith("T12:00:00Z") ? moment.slice(0, 10) : moment);

/** A day that was typed or tapped, or a moment of an earlier entry as it was. */
function momentIn(it: Typed, name: string): string | null {
  const text = it.text(name);
  if (text?.endsWith("Z") && Number.isFinite(Date.parse(text))) return text;
  const day = dayIn(it, name);
  return day && noonOf(day);
}
