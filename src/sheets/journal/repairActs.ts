import type { FactOf } from "../../journal/facts/fact.ts";
import { choice, measured } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";
import type { RepairActName } from "../words/actWords.ts";
import { remedyNames } from "../words/remedyWords.ts";
import { chipsMade, repairFieldWords, warningCommon } from "../words/repairActWords.ts";
import {
  type Act,
  type ActForm,
  type Around,
  actForm,
  answerTo,
  dayIn,
  ownWords,
  type PlainFact,
  photosIn,
  photosText,
  portOf,
  saidYes,
  yesNo,
} from "./act.ts";
import { isMakeDo } from "./asked.ts";
import { dayField } from "./dayField.ts";
import { fittedFields, fittedIn, fittedTexts } from "./fittedFields.ts";
import { portSheetOf, wayIn, waysOpen } from "./methodChoice.ts";
import { tagAct } from "./tagAct.ts";

/** What was prepared, cut, sealed and marked at a port. */
export const repairActs: Readonly<Record<RepairActName, Act>> = {
  prepared: {
    form: () =>
      actForm(
        "prepared",
        { dry: yesNo, degreased: yesNo, levelBelow: measured("mm", 1, "10"), words: ownWords },
        repairFieldWords,
        { folded: ["levelBelow"] },
      ),
    read: (it, around) => {
      it.want("dry", "degreased");
      return {
        type: "PortPrepared",
        port: portOf(around),
        dry: answerTo(it, "dry"),
        degreased: answerTo(it, "degreased"),
        levelBelow: it.reading("levelBelow"),
        words: it.text("words"),
      };
    },
    texts: (fact) =>
      fact.type === "PortPrepared"
        ? {
            dry: saidYes(fact.dry),
            degreased: saidYes(fact.degreased),
            levelBelow: fact.levelBelow ?? "",
            words: fact.words ?? "",
          }
        : null,
  },

  repaired: {
    form: repairedForm,
    read: repaired,
    texts: (fact) => (fact.type === "RepairMade" ? repairTexts(fact) : null),
  },

  tagged: tagAct,

  warned: {
    form: () =>
      actForm("warned", { warning: { type: "text", common: warningCommon }, plate: ownWords }, repairFieldWords, {
        folded: ["plate"],
      }),
    read: (it, around) => {
      it.want("warning");
      return { type: "NextHandWarned", port: portOf(around), words: it.text("warning"), plate: it.text("plate") };
    },
    texts: (fact) => (fact.type === "NextHandWarned" ? { warning: fact.words, plate: fact.plate ?? "" } : null),
  },
};

function repairedForm(around: Around): ActForm {
  const sealants = Object.values(around.shop.stock.sealants);
  const until = dayField(around.today, ["7", "14", "90", "182", "365"]);
  const decision = portSheetOf(around)?.decided?.decision;
  const agreed =
    decision?.is === "chosen" ? decision.option : decision?.is === "refused" ? decision.instead : undefined;
  const { plug, seal, material, underHead, surface } = fittedFields;
  return actForm(
    "repaired",
    {
      method: choice(...waysOpen(around)),
      lasts: choice("to last", "make-do"),
      until: until.field,
      plug,
      seal,
      material,
      chips: choice(...chipsMade),
      ...(sealants.length > 0 ? { sealant: choice(...sealants.map(({ sealant }) => sealant)) } : {}),
      sizes: ownWords,
      underHead,
      surface,
      wallLeft: measured("mm", 0.5, "3"),
    },
    repairFieldWords,
    {
      choiceWords: {
        ...remedyNames,
        ...Object.fromEntries(sealants.map(({ sealant, called }) => [sealant, called])),
        ...until.words,
      },
      given: agreed ? { method: agreed } : {},
      folded: ["sizes", "underHead", "surface", "wallLeft"],
      photos: "last",
    },
  );
}

function repaired(it: Typed, around: Around): PlainFact {
  const method = wayIn(it, "method");
  const makeDo = (method !== null && isMakeDo(method)) || it.text("lasts") === "make-do";
  it.want("method", "chips");
  if (method !== null && !isMakeDo(method)) it.want("lasts");
  if (makeDo) it.want("until");
  const chips = it.chosen("chips", chipsMade);
  return {
    type: "RepairMade",
    port: portOf(around),
    method,
    lasting: !makeDo,
    until: makeDo ? dayIn(it, "until") : null,
    sizes: it.text("sizes"),
    sealant: it.text("sealant"),
    chips: chips === null || chips === "none made" ? null : { caught: chips !== "not all caught", how: chips },
    wallLeft: it.reading("wallLeft"),
    leaves: fittedIn(it),
    photos: photosIn(it),
  };
}

function repairTexts(fact: FactOf<"RepairMade">): Readonly<Record<string, string>> | null {
  const { chips, leaves } = fact;
  const made = chips === undefined ? "none made" : chipsMade.find((it) => it === chips.how);
  // Chips that were told in other words than these keep them: such an entry is withdrawn and written anew.
  if (made === undefined || chips?.caught === (made === "not all caught")) return null;
  return {
    method: fact.method,
    lasts: isMakeDo(fact.method) ? "" : fact.lasting ? "to last" : "make-do",
    until: fact.until ?? "",
    ...fittedTexts(leaves),
    chips: made,
    sealant: fact.sealant ?? "",
    sizes: fact.sizes ?? "",
    wallLeft: fact.wallLeft ?? "",
    photos: photosText(fact.photos),
  };
}
