import type { FactOf } from "../../journal/facts/fact.ts";
import { list } from "./inCommas.ts";
import type { Names } from "./journalNames.ts";

export type ArrivalFact = FactOf<
  | "CallTaken"
  | "CallAnswered"
  | "JobBooked"
  | "JobOpened"
  | "ScopeAgreed"
  | "ConditionFound"
  | "WetnessWatched"
  | "QuestionsAnswered"
  | "LevelFound"
  | "UnitIdentified"
>;

/** What was said, found and asked before anybody turned a plug. */
export function arrivalSentence(fact: ArrivalFact, names: Names): string {
  switch (fact.type) {
    case "CallTaken":
      return list([
        `call: ${fact.words}`,
        fact.seenAt,
        fact.drops && `${fact.drops.count} drops in ${fact.drops.within}`,
      ]);
    case "CallAnswered":
      return `answered: ${fact.advice}`;
    case "JobBooked":
      return list([`booked: ${names.machine(fact.machine)}`, fact.bay]);
    case "JobOpened":
      return list([
        `job opened: ${names.machine(fact.machine)}`,
        fact.cameFor,
        fact.bay,
        fact.meter && ("distance" in fact.meter ? fact.meter.distance : fact.meter.hours),
      ]);
    case "ScopeAgreed":
      return list([`agreed: ${fact.words}`, fact.upTo !== undefined && `up to ${fact.upTo}`]);
    case "ConditionFound":
      return `found: ${fact.words}`;
    case "WetnessWatched":
      return `watched ${fact.minutes} min: ${fact.found}`;
    case "QuestionsAnswered":
      return list([
        "asked first",
        fact.crack && `crack ${fact.crack}`,
        fact.pressure && `pressure ${fact.pressure}`,
        fact.reaches && `reaches ${fact.reaches.length > 0 ? fact.reaches.join(" and ") : "nothing"}`,
        fact.people && `people ${fact.people}`,
        fact.repairedBefore &&
          `repaired before ${fact.repairedBefore === "no" ? "no" : `by ${fact.repairedBefore.method}`}`,
        fact.breather && `breather ${fact.breather}`,
        fact.waterTest && `water test ${fact.waterTest}`,
        fact.alloyTested && `alloy tested ${fact.alloyTested}`,
      ]);
    case "LevelFound":
      return list([
        `level found ${fact.belowLip} below the lip`,
        fact.how,
        `oil ${fact.oil}`,
        !fact.standsLevel && "not standing level",
      ]);
    case "UnitIdentified":
      return list([
        `worked on, ${fact.is.ports.map(({ called }) => called).join(" and ")}`,
        fact.is.expected && `should hold ${fact.is.expected}`,
      ]);
    default:
      return fact satisfies never;
  }
}
