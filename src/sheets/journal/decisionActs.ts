import type { FactOf } from "../../journal/facts/fact.ts";
import { choice, type SumFields } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";
import type { DecisionActName } from "../words/actWords.ts";
import { ownerSentences } from "../words/ownerWords.ts";
import { remedyNames } from "../words/remedyWords.ts";
import {
  decisionWords,
  notBelow,
  otherThanBefore,
  readyCommon,
  repairFieldWords,
  saidCommon,
} from "../words/repairActWords.ts";
import { type Act, type ActForm, type Around, actForm, dayIn, ownWords, type PlainFact, portOf } from "./act.ts";
import { dayField } from "./dayField.ts";
import { portSheetOf, wayIn, waysOpen } from "./methodChoice.ts";
import { moneyField, moneyIn } from "./money.ts";

const decisions = ["chosen", "refused", "put off", "left to the workshop"] as const;
const heardBy = ["at the counter", "telephone", "message", "signature"] as const;
const places = ["first", "second", "third"] as const;

/** What the owner was offered, and what he decided. */
export const decisionActs: Readonly<Record<DecisionActName, Act>> = {
  offered: {
    form: offeredForm,
    read: offered,
    // The form has room for three: more of them are withdrawn and written anew.
    texts: (fact) => (fact.type === "OptionsOffered" && fact.rows.length <= 3 ? rowTexts(fact) : null),
  },
  decided: {
    form: decidedForm,
    read: decided,
    texts: (fact) => (fact.type === "OwnerDecided" ? decisionTexts(fact) : null),
  },
};

const withCurrency = (words: ActForm["words"], fields: readonly string[], { shop }: Around): ActForm["words"] => ({
  ...words,
  ...Object.fromEntries(
    fields.map((it) => [it, { label: words[it]?.label ?? it, hint: shop.people.workshop?.currency ?? "" }]),
  ),
});

function offeredForm(around: Around): ActForm {
  const ways = waysOpen(around);
  const rows = [1, 2, 3].map(
    (row): SumFields => ({
      [`way${row}`]: choice(...ways),
      [`low${row}`]: moneyField(5, "80"),
      [`high${row}`]: moneyField(5, "110"),
      [`ready${row}`]: { type: "text", common: readyCommon },
      [`told${row}`]: ownWords,
    }),
  );
  return actForm(
    "offered",
    { ...rows[0], ...rows[1], ...rows[2], recommended: choice(...places) },
    withCurrency(repairFieldWords, ["low1", "low2", "low3"], around),
    { choiceWords: remedyNames, folded: ["told1", "told2", "told3"] },
  );
}

function offered(it: Typed, around: Around): PlainFact {
  it.want("way1");
  const rows = [1, 2, 3].flatMap((row) => {
    const id = wayIn(it, `way${row}`);
    if (!id) return [];
    // A way twice would be offered at two prices. A list has no place to say so: its row of readiness does.
    const before = [1, 2, 3].slice(0, row - 1).some((other) => it.text(`way${other}`) === id);
    if (before) it.refuse(`ready${row}`, otherThanBefore);
    const ready = it.text(`ready${row}`);
    const price = priceIn(it, row) ?? weighedPrice(around, id);
    return [
      {
        id,
        inHisWords: it.text(`told${row}`) ?? ownerSentences[id],
        ...(price ? { price } : {}),
        ...(ready ? { ready } : {}),
      },
    ];
  });
  const place = places.indexOf(it.text("recommended") as (typeof places)[number]);
  if (place >= rows.length) it.want(`way${place + 1}`);
  return { type: "OptionsOffered", port: portOf(around), rows, recommended: rows[place]?.id ?? null };
}

/** One price where only one was typed. */
function priceIn(it: Typed, row: number): { readonly low: number; readonly high: number } | null {
  const [low, high] = [moneyIn(it, `low${row}`), moneyIn(it, `high${row}`)];
  if (low === null && high === null) return null;
  if (low !== null && high !== null && high < low) it.refuse(`high${row}`, notBelow(low));
  return { low: low ?? high ?? 0, high: high ?? low ?? 0 };
}

const weighedPrice = (around: Around, id: string) =>
  portSheetOf(around)?.weighed?.options.find((it) => it.id === id)?.price ?? null;

const rowTexts = ({ rows, recommended }: FactOf<"OptionsOffered">): Readonly<Record<string, string>> => ({
  ...Object.fromEntries(
    rows.flatMap(({ id, price, ready = "", inHisWords }, i) => [
      [`way${i + 1}`, id],
      [`low${i + 1}`, price ? String(price.low) : ""],
      [`high${i + 1}`, price ? String(price.high) : ""],
      [`ready${i + 1}`, ready],
      [`told${i + 1}`, inHisWords === ownerSentences[id] ? "" : inHisWords],
    ]),
  ),
  recommended: places[rows.findIndex(({ id }) => id === recommended)] ?? "",
});

/** Of what was offered one is chosen; where nothing was offered, of what is open. */
function decidedForm(around: Around): ActForm {
  const rows = portSheetOf(around)?.offered?.rows.map(({ id }) => id) ?? [];
  const ways = rows.length > 0 ? rows : waysOpen(around);
  const putOff = dayField(around.today, ["1", "7", "30"]);
  return actForm(
    "decided",
    {
      decision: choice(...decisions),
      option: choice(...ways),
      instead: choice(...waysOpen(around)),
      putOffUntil: putOff.field,
      upTo: moneyField(10, "200"),
      notBeyond: choice(...waysOpen(around)),
      said: { type: "text", common: saidCommon },
      by: choice(...heardBy),
    },
    withCurrency(repairFieldWords, ["upTo"], around),
    { choiceWords: { ...remedyNames, ...decisionWords, ...putOff.words } },
  );
}

function decided(it: Typed, around: Around): PlainFact {
  it.want("decision", "said", "by");
  const said = { port: portOf(around), words: it.text("said"), by: it.chosen("by", heardBy) };
  return { type: "OwnerDecided", ...said, decision: decisionIn(it) };
}

function decisionIn(it: Typed): Readonly<Record<string, unknown>> | null {
  const is = it.chosen("decision", decisions);
  const optional = (name: string, value: unknown) => (value === null ? {} : { [name]: value });
  switch (is) {
    case "chosen":
      it.want("option");
      return { is, option: wayIn(it, "option") };
    case "refused":
      it.want("option");
      return { is, option: wayIn(it, "option"), ...optional("instead", wayIn(it, "instead")) };
    case "put off":
      return { is, ...optional("until", dayIn(it, "putOffUntil")) };
    case "left to the workshop": {
      it.want("upTo");
      const beyond = wayIn(it, "notBeyond");
      return { is, upTo: moneyIn(it, "upTo"), notBeyond: beyond === null ? [] : [beyond] };
    }
    case null:
      return null;
    default:
      return is satisfies never;
  }
}

function decisionTexts({ decision, words, by }: FactOf<"OwnerDecided">): Readonly<Record<string, string>> | null {
  const said = { decision: decision.is, said: words, by };
  switch (decision.is) {
    case "chosen":
      return { ...said, option: decision.option };
    case "refused":
      return { ...said, option: decision.option, instead: decision.instead ?? "" };
    case "put off":
      return { ...said, putOffUntil: decision.until ?? "" };
    case "left to the workshop":
      // The form has room for one: more of them are withdrawn and written anew.
      return decision.notBeyond.length > 1
        ? null
        : { ...said, upTo: String(decision.upTo), notBeyond: decision.notBeyond[0] ?? "" };
    default:
      return decision satisfies never;
  }
}
