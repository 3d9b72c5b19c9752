import { valueIn } from "../../mechanics/quantity/quantity.ts";
import { degC, Nm } from "../../mechanics/quantity/unit.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import { materialRows } from "../../mechanics/tables/materialRows.ts";
import { beforeLoosening } from "../../mechanics/tables/methodCautions.ts";
import { cautionSentences } from "../words/cautionWords.ts";
import { torqueFigure } from "../words/figures.ts";

/** A caution, and where it belongs: to the port itself, to a joint that sealant holds, to the laying of its bead, or to what is cut. */
export type Caution = { readonly where: "port" | "sealant" | "bead" | "cutting"; readonly text: string };

/** The cautions that belong to this answer, each where it stands, none as a wall. */
export const cautions = (weighed: Weighed): readonly string[] => cautionsByPlace(weighed).map(({ text }) => text);

/** The same with their places. */
export function cautionsByPlace({ portCase, remedies, repairs, asFound, health }: Weighed): readonly Caution[] {
  const { port, asked, prevailing } = portCase;
  const shown = [asFound, ...remedies].filter((it) => it.window?.open);
  const cuts = repairs.some(({ checks }) => checks.some(({ type }) => type === "drill"));
  const { lightAlloy } = materialRows[port.material];
  const hot = port.temperature !== null && valueIn(degC, port.temperature) > 60;
  const hurt = !health.healthy;
  const rows: Caution[] = [];
  const say = (where: Caution["where"], text: string): void => {
    rows.push({ where, text });
  };
  const loosening = hurt ? beforeLoosening(portCase.joint) : [];
  for (const it of loosening.filter((it) => !(hot && it === "hot oil"))) say("port", cautionSentences[it]);
  if (hot) say("port", "Oil above 60 °C scalds, and hot alloy strips sooner: let it cool to hand-warm.");
  if (asked.breather === "blocked" && !hurt)
    say("port", "The breather is blocked: free it, it pushes oil past any seal.");
  if (prevailing && shown.length > 0)
    say(
      "port",
      `The plug already turns at ${torqueFigure(valueIn(Nm, prevailing))} N·m before it is seated: that much is added. If it rises as you turn, the thread is galling: stop.`,
    );
  if (shown.some((it) => it.closure.heldOtherwise)) {
    say(
      "sealant",
      "With sealant: the flange loses its clamp to embedding and heat, so the sealant and a lock hold the joint. Never tighten it again after the first heat.",
    );
    say("bead", "With sealant: thin bead, skin and eyes, ventilation; keep it off sensors and out of galleries.");
  }
  if (hurt && cuts)
    say(
      "cutting",
      "Before drilling: eyes covered, gears and cylinders covered, fuel and vapour away; keep the chips out and count them.",
    );
  if (hurt && lightAlloy && asked.alloyTested !== "yes")
    say("cutting", "Light alloy not tested: no welding or grinding before the magnesium question is answered.");
  if (hurt && shown.length > 0 && port.roomBehind === null)
    say("port", "Nobody has measured what stands behind the hole.");
  if (hurt && shown.length > 0)
    say(
      "port",
      "Clean-catching thread, static, at room temperature: porosity, heat history and a casting that has already yielded are not known here.",
    );
  say(
    "port",
    "An estimate to help a competent person, not an approval to drive; the maker's figures, local rules and licensed trades come first.",
  );
  return rows;
}
