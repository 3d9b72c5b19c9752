import type { FollowUp, JobSheet } from "../../journal/job/jobSheet.ts";
import { choice } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";
import type { AfterActName } from "../words/actWords.ts";
import { afterFieldWords, everywhere, lookedCommon, notPlanned, plannedLook } from "../words/afterWords.ts";
import { namesIn } from "../words/journalNames.ts";
import { type Act, type ActForm, type Around, actForm, dayIn, photosIn, photosText } from "./act.ts";
import { cameBackAct } from "./cameBackAct.ts";
import { dayField } from "./dayField.ts";
import { meterFields, meterIn, meterTexts } from "./meterFields.ts";

const looks = ["dry", "weeps", "drips", "failed"] as const;
const ways = ["call", "message", "look", "service"] as const;

/** What is written after the machine has gone: looks that were planned, what they found, and what came back. */
export const afterActs: Readonly<Record<AfterActName, Act>> = {
  looked: {
    form: lookedForm,
    read: (it, around) => {
      it.want("found", ...(openLooks(around.sheet).length > 0 ? ["followUp"] : []));
      const followUp = plannedIn(it);
      const planned = around.sheet.followUps.find((known) => known.followUp === followUp);
      const at = it.text("at");
      return {
        type: "FollowUpDone",
        // Null says that nobody had planned it.
        followUp,
        port: planned?.port ?? (at === everywhere ? null : at),
        found: it.chosen("found", looks),
        meter: meterIn(it),
        words: it.text("words"),
        photos: photosIn(it),
      };
    },
    texts: (fact) =>
      fact.type === "FollowUpDone"
        ? {
            followUp: fact.followUp ?? notPlanned,
            at: fact.port ?? "",
            found: fact.found,
            words: fact.words ?? "",
            photos: photosText(fact.photos),
            ...meterTexts(fact.meter),
          }
        : null,
  },

  notReached: {
    form: (around) => {
      const again = dayField(around.today, ["1", "7", "14"]);
      const { field, words, given } = lookChoice(around, []);
      return actForm("notReached", { followUp: field, again: again.field }, afterFieldWords, {
        choiceWords: { ...words, ...again.words },
        given,
      });
    },
    read: (it) => {
      it.want("followUp");
      return { type: "FollowUpNotReached", followUp: plannedIn(it), again: dayIn(it, "again") };
    },
    texts: (fact) => (fact.type === "FollowUpNotReached" ? { followUp: fact.followUp, again: fact.again ?? "" } : null),
  },

  planned: {
    form: ({ sheet, shop, today }) => {
      const on = dayField(today, ["1", "14", "30", "182", "365"]);
      const names = namesIn(shop, sheet);
      const ports = Object.keys(sheet.ports);
      const repaired = Object.values(sheet.ports).filter(({ repairs }) => repairs.length > 0);
      const [only] = repaired.length === 1 ? repaired : [];
      return actForm(
        "planned",
        { at: choice(...ports, everywhere), on: on.field, way: choice(...ways) },
        afterFieldWords,
        {
          choiceWords: { ...on.words, ...Object.fromEntries(ports.map((it) => [it, names.port(it)])) },
          given: { at: only?.port ?? everywhere, way: "call" },
        },
      );
    },
    read: (it, { fresh }) => {
      it.want("at", "on", "way");
      const at = it.text("at");
      return {
        type: "FollowUpPlanned",
        followUp: `look-${fresh}`,
        port: at === everywhere ? null : at,
        on: dayIn(it, "on"),
        way: it.chosen("way", ways),
      };
    },
    // A look that was planned wrongly is withdrawn: its own name goes with it.
    texts: () => null,
  },

  cameBack: cameBackAct,
};

/** Looks that still wait, the earliest first. */
export const openLooks = ({ followUps }: JobSheet): readonly FollowUp[] =>
  followUps
    .filter(({ state, due }) => state === "open" || (state === "not reached" && due !== null))
    .toSorted((a, b) => ((a.due ?? a.on) < (b.due ?? b.on) ? -1 : 1));

const plannedIn = (it: Typed): string | null => {
  const followUp = it.text("followUp");
  return followUp === notPlanned ? null : followUp;
};

/** Which of the planned looks it is; where there is one alone it stands there. */
function lookChoice({ sheet, shop }: Around, further: readonly string[]) {
  const names = namesIn(shop, sheet);
  const open = openLooks(sheet);
  const [only] = open.length === 1 ? open : [];
  return {
    field: choice(...open.map(({ followUp }) => followUp), ...further),
    words: Object.fromEntries(
      open.map(({ followUp, way, port, due, on }) => [
        followUp,
        plannedLook(way, port ? names.port(port) : null, due ?? on),
      ]),
    ),
    given: only ? { followUp: String(only.followUp) } : ({} as Readonly<Record<string, string>>),
  };
}

function lookedForm(around: Around): ActForm {
  const { sheet, shop } = around;
  const names = namesIn(shop, sheet);
  const ports = Object.keys(sheet.ports);
  const { field, words, given } = lookChoice(around, [notPlanned]);
  const planned = openLooks(sheet).length > 0;
  return actForm(
    "looked",
    {
      ...(planned ? { followUp: field } : {}),
      found: choice(...looks),
      at: choice(...ports, everywhere),
      words: { type: "text", common: lookedCommon },
      ...meterFields,
    },
    afterFieldWords,
    {
      choiceWords: { ...words, ...Object.fromEntries(ports.map((it) => [it, names.port(it)])) },
      given,
      folded: Object.keys(meterFields),
      photos: "last",
    },
  );
}
