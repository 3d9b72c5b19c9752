import { choice, measured } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";
import type { ShelfActName } from "../words/actWords.ts";
import { retiredCommon, shelfFieldWords } from "../words/shelfWords.ts";
import { type Act, type Around, actForm, dayIn, ownWords } from "./act.ts";
import { dayField } from "./dayField.ts";
import { identity } from "./named.ts";

/** What comes to the shelf and goes from it, and how the workshop's tools and fingers are kept true. */
export const shelfActs: Readonly<Record<ShelfActName, Act>> = {
  tube: {
    form: () =>
      actForm(
        "tube",
        {
          ...boughtFields,
          labelHours: measured("h", 1, "24"),
          mostGap: measured("mm", 0.05, "0.25"),
        },
        shelfFieldWords,
      ),
    read: (it, around) => {
      const { id, ...bought } = boughtIn(it, around);
      return {
        type: "SealantStocked",
        sealant: id,
        ...bought,
        labelHours: it.reading("labelHours"),
        mostGap: it.reading("mostGap"),
      };
    },
    // Cures and fills go by its name: one that was written wrongly is used up, and written anew.
    texts: () => null,
  },

  drum: {
    form: () => actForm("drum", boughtFields, shelfFieldWords),
    read: (it, around) => {
      const { id, ...bought } = boughtIn(it, around);
      return { type: "FluidStocked", fluid: id, ...bought };
    },
    texts: () => null,
  },

  usedUp: {
    form: (around) => {
      const stock = stockOf(around);
      return actForm("usedUp", { stock: choice(...stock.keys()) }, shelfFieldWords, {
        choiceWords: Object.fromEntries(stock),
      });
    },
    read: (it) => {
      it.want("stock");
      return { type: "StockUsedUp", stock: it.text("stock") };
    },
    texts: (fact) => (fact.type === "StockUsedUp" ? { stock: fact.stock } : null),
  },

  calibrated: {
    form: (around) => {
      const on = dayField(around.today, ["0"]);
      return actForm(
        "calibrated",
        { instrument: choice(...inUse(around, "wrench")), on: on.field, certificate: ownWords },
        shelfFieldWords,
        { choiceWords: on.words, given: { on: around.today } },
      );
    },
    read: (it, { today }) => {
      it.want("instrument", "on");
      const on = dayIn(it, "on");
      if (on !== null && on > today) it.refuse("on", `a day up to ${today}`);
      return {
        type: "InstrumentCalibrated",
        instrument: it.text("instrument"),
        on,
        certificate: it.text("certificate"),
      };
    },
    texts: (fact) =>
      fact.type === "InstrumentCalibrated"
        ? { instrument: fact.instrument, on: fact.on, certificate: fact.certificate ?? "" }
        : null,
  },

  retired: {
    form: (around) =>
      actForm(
        "retired",
        { instrument: choice(...inUse(around, null)), why: { type: "text", common: retiredCommon } },
        shelfFieldWords,
      ),
    read: (it) => {
      it.want("instrument", "why");
      return { type: "InstrumentRetired", instrument: it.text("instrument"), why: it.text("why") };
    },
    texts: (fact) => (fact.type === "InstrumentRetired" ? { instrument: fact.instrument, why: fact.why } : null),
  },

  finger: {
    form: () => actForm("finger", { tipToCrease: measured("mm", 1, "25") }, shelfFieldWords),
    read: (it, { by }) => {
      it.want("tipToCrease");
      return { type: "FingerMeasured", person: by, tipToCrease: it.reading("tipToCrease") };
    },
    texts: (fact) => (fact.type === "FingerMeasured" ? { tipToCrease: fact.tipToCrease } : null),
  },
};

/** What is asked of everything that is bought, and what was. */
const boughtFields = { name: ownWords, batch: ownWords, shelfDate: ownWords } as const;

function boughtIn(it: Typed, around: Around) {
  it.want("name");
  const called = it.text("name") ?? "";
  return { id: identity(called, around), called, batch: it.text("batch"), shelfDate: dayIn(it, "shelfDate") };
}

/** What stands on the shelf by its identity, each with its batch. */
function stockOf({ shop }: Around): ReadonlyMap<string, string> {
  const called = (it: { readonly called: string; readonly batch?: string | undefined }): string =>
    it.batch ? `${it.called}, batch ${it.batch}` : it.called;
  return new Map<string, string>([
    ...Object.values(shop.stock.sealants).map((it) => [it.sealant, called(it)] as const),
    ...Object.values(shop.stock.fluids).map((it) => [it.fluid, called(it)] as const),
  ]);
}

/** The instruments of a kind, or of all kinds, that were not put away. */
const inUse = ({ shop }: Around, kind: "wrench" | null): readonly string[] =>
  Object.values(shop.instruments)
    .filter(({ is, retired }) => is !== null && !retired && (kind === null || is.kind === kind))
    .map(({ instrument }) => instrument);
