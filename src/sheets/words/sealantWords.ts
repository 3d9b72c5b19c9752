import type { AnaerobicCure, AnaerobicHindrance } from "../../mechanics/cure/anaerobic.ts";
import type { LabelCheck, Reopening } from "../../mechanics/cure/label.ts";
import type { SealingChoice, SealingMeans, SealingRow } from "../../mechanics/cure/sealantChoice.ts";
import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { h } from "../../mechanics/quantity/unit.ts";
import type { AnaerobicStrength } from "../../mechanics/tables/cureData.ts";
import { type Source, sourceText } from "../../mechanics/tables/source.ts";
import { capital } from "./firstLetter.ts";
import { forbidden, labelLines } from "./labelWords.ts";

/** The torque that breaks each class of anaerobic loose on a thread. */
export type BreakawayInWords = {
  readonly thread: string;
  readonly classes: readonly {
    readonly strength: AnaerobicStrength;
    readonly low: Quantity;
    readonly high: Quantity;
    readonly low_Nm: number;
    readonly high_Nm: number;
  }[];
};

type MeansInWords = {
  readonly means: SealingMeans;
  readonly heat: { readonly verdict: "bears it" | "too hot"; readonly room_K: number; readonly source: Source } | null;
  readonly anaerobic: AnaerobicCure | null;
  readonly undone: Reopening | null;
  readonly fluid: {
    readonly verdict: "bears it" | "ask the label" | "does not bear it";
    readonly source: Source;
  } | null;
};

/** Which class of sealant, what it bears, and what is asked of its label. */
export type SealantFound = Pick<SealingChoice, "row" | "avoid" | "first" | "because"> & {
  /** Best first, those that do not stand here last. */
  readonly means: readonly MeansInWords[];
  readonly hottest: string | null;
  readonly fluid: string | null;
  readonly breakaway: BreakawayInWords | null;
  readonly label: readonly LabelCheck[];
  readonly useBy: string | null;
};

/** The class of sealant first, then each means with its heat, its cure and its undoing, then what to leave and to ask. */
export function sealantLines(it: SealantFound): readonly string[] {
  const { row, means, avoid, first, because, breakaway, label, useBy } = it;
  const good = means.filter((one) => !fault(one, it));
  const sealed = good.some((one) => one.undone !== null);
  const tube = { checks: label, useBy, silicone: good.some((one) => one.means.includes("silicone")) };
  return [
    ...(sealed ? forbidden(tube) : []),
    good[0] ? `${capital(good[0].means)}.` : "Nothing of this table stands here: another seal, or a thread repair.",
    ...means.filter((one) => one !== good[0]).map((one) => otherLine(one, it)),
    ...(first.length > 0 ? [`First: ${first.map((step) => firstWords[step]).join(", ")}.`] : []),
    "",
    "Why",
    `  ${capital(rowWords[row])}.`,
    "  The table is judgement on the limits of each class.",
    ...because.map((it) => `  ${becauseWords[it]}`),
    ...good.flatMap((one) => meansLines(one, it)).map((line) => `  ${line}`),
    ...(avoid.length > 0 ? [`  Not: ${avoid.join(", ")}.`] : []),
    ...(breakaway ? breakawayLines(breakaway).map((line) => `  ${line}`) : []),
    ...(sealed ? ["", "Ask the label", ...labelLines(tube).map((line) => `  ${line}`)] : []),
    "",
    "Mind",
    ...(sealed
      ? [
          "  Uncured sealant that is pushed inward stays loose in the oil: thin on the seat, none on the first inner turn.",
        ]
      : []),
    "  An estimate to help a competent person; the maker's sheet of the sealant comes first.",
  ];
}

type Service = Pick<SealantFound, "hottest" | "fluid">;

const otherLine = (one: MeansInWords, service: Service): string => {
  const why = fault(one, service);
  return why ? `Not ${one.means}: ${why}.` : `Or: ${one.means}.`;
};

/** Why a means does not stand here; null where it does. */
function fault({ heat, fluid, anaerobic }: MeansInWords, service: Service): string | null {
  const why = [
    ...(heat?.verdict === "too hot" ? [`${service.hottest} is more than it bears`] : []),
    ...(fluid?.verdict === "does not bear it" ? [`it does not bear ${service.fluid}`] : []),
    ...(anaerobic?.type === "does not cure" ? anaerobic.hindrances.map((it) => hindranceWords[it]) : []),
  ];
  return why.length > 0 ? why.join(", and ") : null;
}

function meansLines({ means, heat, fluid, anaerobic, undone }: MeansInWords, service: Service): readonly string[] {
  const said = [
    ...(anaerobic?.type === "cures"
      ? [`full strength in about ${Number(Math.ceil(valueIn(h, anaerobic.full)).toPrecision(2))} h here`]
      : means.includes("anaerobic")
        ? ["whether it cures here: give --metals and --temperature"]
        : []),
    ...(heat ? [`bears ${service.hottest}, with ${Math.floor(heat.room_K)} K to spare`] : []),
    ...(fluid ? [fluidText(fluid, service.fluid ?? "")] : []),
    ...(undone ? [`undone by ${undoneText(undone)}`] : []),
  ];
  return said.length > 0 ? [`${capital(means)}:`, ...said.map((line) => `  ${line}`)] : [];
}

const fluidText = ({ verdict, source }: NonNullable<MeansInWords["fluid"]>, fluid: string): string =>
  `${verdict === "bears it" ? `bears ${fluid}` : `only its label can say that it bears ${fluid}`}; ${sourceText(source)}`;

function undoneText({ by, heatTo_degC, caution }: Reopening): string {
  const heat = heatTo_degC === null ? "" : ` (it softens at about ${heatTo_degC} °C; mind seals, fluid and fire)`;
  return `${by}${heat}${caution ? `; it ${caution}` : ""}`;
}

function breakawayLines({ thread, classes }: BreakawayInWords): readonly string[] {
  const each = classes.map(({ strength, low_Nm, high_Nm }) => `${strength} ${low_Nm} to ${high_Nm}`);
  return [
    `To break it loose on ${thread}, N·m: ${each.join(", ")} (shear strengths from memory).`,
    "High strength on a weak boss strips it at the next opening.",
  ];
}

const rowWords: Readonly<Record<SealingRow, string>> = {
  "taper thread": "a taper thread seals on its flanks",
  "thread torn or gap too wide":
    "the thread is torn, the gap too wide, or the plug takes no snug pull: no sealant mends that",
  "sound thread, good seat": "thread and seat are sound: a washer seals, paste only gets inside",
  "sound thread, scored seat": "the thread is sound and the seat lightly scored",
  "scored too deep": "the seat is scored deeper than 0.1 mm: a lip does not follow it",
  "worn thread, narrow gap": "the thread is worn, its gap narrow enough for an anaerobic",
  "worn thread, middling gap": "the thread is worn, its gap too wide for a locker",
  "worn thread, gap not known": "the thread is worn, and nobody knows its gap (--gap)",
};
const becauseWords: Readonly<Record<SealingChoice["because"][number], string>> = {
  "opened often": "It is opened often: a gasket is used again, an anaerobic has to be broken loose each time.",
  "less than a day": "It has less than a day: an anaerobic and the bead of a silicone need more.",
};
const firstWords: Readonly<Record<SealingChoice["first"][number], string>> = {
  "clean to bare metal": "clean both sides to bare, dry metal, for nothing bonds on oil",
  "measure the gap": "measure the gap: rock the plug",
  "dress the seat": "dress the seat flat",
};
const hindranceWords: Readonly<Record<AnaerobicHindrance, string>> = {
  "gap above what cures at all": "so wide a gap never cures (0.76 mm)",
  "gap above what any grade is used for": "the gap is wider than any grade is used for (0.5 mm)",
  "oil on the metal": "it does not bond on oil",
  "colder than it cures reliably": "it does not cure reliably below 5 °C",
  "needs activator": "one of the metals does not start it without an activator",
};
