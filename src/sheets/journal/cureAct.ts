import { asRead } from "../../journal/shop/instruments.ts";
import { humidityOfShare } from "../../mechanics/cure/air.ts";
import { cureClocks } from "../../mechanics/cure/clocks.ts";
import { ordinaryFront } from "../../mechanics/cure/front.ts";
import { valueIn } from "../../mechanics/quantity/quantity.ts";
import { degC, h, min } from "../../mechanics/quantity/unit.ts";
import { cureFields } from "../sums/cureFields.ts";
import { choice } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";
import { portFieldWords } from "../words/actWords.ts";
import { cureChoiceWords, cureFieldWords, humidityOrFelt } from "../words/cureBenchWords.ts";
import { type Act, type ActForm, type Around, actForm, type PlainFact, portOf } from "./act.ts";

/** A bead of silicone that was closed: both its clocks are frozen as they are shown now. */
export const cureAct: Act = {
  form: cureForm,
  read: cureBegan,
  // The clocks of that moment are part of the fact: what was wrong in it is withdrawn and written anew.
  texts: () => null,
};

function cureForm({ shop }: Around): ActForm {
  const sealants = Object.values(shop.stock.sealants);
  const { bead, open, temperature, humidity } = cureFields;
  return actForm(
    "cure",
    {
      sealant: choice(...sealants.map(({ sealant }) => sealant)),
      bead,
      open,
      temperature,
      humidity,
      ago: { type: "number", unit: "min", step: 5, start: "5", from: "nothing" },
    },
    { ...cureFieldWords, ...portFieldWords },
    {
      choiceWords: {
        ...cureChoiceWords,
        ...Object.fromEntries(
          sealants.map(({ sealant, called, batch }) => [sealant, batch ? `${called}, batch ${batch}` : called]),
        ),
      },
      folded: ["ago"],
    },
  );
}

function cureBegan(it: Typed, { about, shop, now }: Around): PlainFact | null {
  it.want("sealant", "bead", "open", "temperature", "humidity");
  const [width, T, share] = [it.quantity("bead", "w"), it.quantity("temperature", "T"), it.quantity("humidity", "RH")];
  const ago = it.quantity("ago", "t");
  if (T && !(valueIn(degC, T) >= LEAST_degC && valueIn(degC, T) <= MOST_degC))
    it.refuse("temperature", `${LEAST_degC} to ${MOST_degC} °C: the air of a bay`);
  const RH = share && humidityOfShare(share, "humidity");
  if (share && !RH) it.refuse("humidity", humidityOrFelt);
  const open = it.chosen("open", ["one", "both"]);
  if (it.problems.length > 0 || !width || !T || !RH || !open) return null;
  const sealant = it.text("sealant");
  const labelHours = shop.stock.sealants[sealant as never]?.labelHours;
  const label = labelHours === undefined ? null : asRead("t_0", labelHours, "time");
  const { mayBeSplashed, curedThrough } = cureClocks({
    width,
    open: open === "one" ? "one edge" : "both edges",
    air: { T, RH },
    front: ordinaryFront,
    label: label && { time: label, saidFor: "this air" },
  });
  const through_h = valueIn(h, curedThrough.likely);
  const closedAt = Date.parse(now) - (ago ? valueIn(min, ago) * 60_000 : 0);
  const after = (hours: number): string => new Date(closedAt + hours * 3_600_000).toISOString();
  return {
    type: "CureBegan",
    port: portOf({ about }),
    sealant,
    bead: it.reading("bead"),
    temperature: it.reading("temperature"),
    humidity: it.reading("humidity"),
    closedAt: after(0),
    splashFrom: after(valueIn(h, mayBeSplashed.time)),
    earliest: after(Math.max(through_h, label ? valueIn(h, label) : 0)),
    curedThrough_h: through_h,
  };
}

/** The vapour of air is reckoned within these; a bay is never outside them. */
const LEAST_degC = -40;
const MOST_degC = 60;
