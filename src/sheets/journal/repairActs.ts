import type { FactOf } from "../../journal/facts/fact.ts";
import { sealKinds, surfaces, washerMaterials } from "../../mechanics/joint/port.ts";
import { choice, measured } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";
import type { RepairActName } from "../words/actWords.ts";
import { remedyNames } from "../words/remedyWords.ts";
import { chipsMade, plugCommon, repairFieldWords, warningCommon } from "../words/repairActWords.ts";
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
  return actForm(
    "repaired",
    {
      method: choice(...waysOpen(around)),
      lasts: choice("to last", "make-do"),
      until: until.field,
      plug: { type: "text", common: plugCommon },
      seal: choice(...sealKinds),
      material: choice(...washerMaterials),
      chips: choice(...chipsMade),
      ...(sealants.length > 0 ? { sealant: choice(...sealants.map(({ sealant }) => sealant)) } : {}),
      sizes: ownWords,
      underHead: measured("mm", 0.5, "16"),
      surface: choice(...surfaces),
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

/** The plug that is in now with its seal; a plug alone is half of it, and so is a seal. */
function fittedIn(it: Typed): Readonly<Record<string, unknown>> | null {
  const [plug, seal] = [it.text("plug"), it.chosen("seal", sealKinds)];
  if (plug === null && seal === null) return null;
  it.want("plug", "seal");
  const further = {
    underHead: it.reading("underHead"),
    material: seal === "flat washer" ? it.chosen("material", washerMaterials) : null,
    surface: it.chosen("surface", surfaces),
  };
  return { plug, seal, ...Object.fromEntries(Object.entries(further).filter(([, value]) => value !== null)) };
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
    plug: leaves?.plug ?? "",
    seal: leaves?.seal ?? "",
    material: leaves?.material ?? "",
    surface: leaves?.surface ?? "",
    underHead: leaves?.underHead ?? "",
    chips: made,
    sealant: fact.sealant ?? "",
    sizes: fact.sizes ?? "",
    wallLeft: fact.wallLeft ?? "",
    photos: photosText(fact.photos),
  };
}
