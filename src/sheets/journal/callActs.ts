import type { FactOf } from "../../journal/facts/fact.ts";
import type { JobSheet } from "../../journal/job/jobSheet.ts";
import { choice, measured } from "../sums/sumField.ts";
import type { CallActName } from "../words/actWords.ts";
import { adviceCommon, callCommon, callFieldWords, notSaid, seenCommon } from "../words/callWords.ts";
import { type Act, actForm } from "./act.ts";

/** A caller's words with which a job may begin, and what he was told. */
export const callActs: Readonly<Record<CallActName, Act>> = {
  call: {
    form: ({ shop }) => {
      const machines = Object.values(shop.machines);
      return actForm(
        "call",
        {
          words: { type: "text", common: callCommon },
          seenAt: { type: "text", common: seenCommon },
          drops: { type: "number", unit: "", step: 1, start: "5", from: "nothing" },
          within: measured("min", 1, "10"),
          machine: choice(...machines.map(({ machine }) => machine), notSaid),
        },
        callFieldWords,
        {
          choiceWords: Object.fromEntries(machines.map(({ machine, called }) => [machine, called])),
          given: { machine: notSaid, within: "10" },
        },
      );
    },
    read: (it) => {
      it.want("words");
      const machine = it.text("machine");
      const count = it.count("drops", 0, 1000);
      if (count !== null) it.want("within");
      return {
        type: "CallTaken",
        words: it.text("words"),
        seenAt: it.text("seenAt"),
        drops: count === null ? null : { count, within: it.reading("within") },
        machine: machine === notSaid ? null : machine,
      };
    },
    texts: (fact) =>
      fact.type === "CallTaken"
        ? {
            machine: fact.machine ?? notSaid,
            words: fact.words,
            seenAt: fact.seenAt ?? "",
            drops: fact.drops ? String(fact.drops.count) : "",
            within: fact.drops?.within ?? "",
          }
        : null,
  },

  answered: {
    form: () => actForm("answered", { advice: { type: "text", common: adviceCommon } }, callFieldWords),
    read: (it) => {
      it.want("advice");
      return { type: "CallAnswered", advice: it.text("advice") };
    },
    texts: (fact) => (fact.type === "CallAnswered" ? { advice: fact.advice } : null),
  },
};

/** The call that a job began with; null where it began with none. */
export const callOf = ({ log }: JobSheet): FactOf<"CallTaken"> | null =>
  log.flatMap(({ fact }) => (fact.type === "CallTaken" ? [fact] : []))[0] ?? null;

/** A call that nobody has answered yet; null where there is none. */
export const unanswered = (sheet: JobSheet): FactOf<"CallTaken"> | null =>
  sheet.stage === "enquiry" && !sheet.log.some(({ fact }) => fact.type === "CallAnswered") ? callOf(sheet) : null;
