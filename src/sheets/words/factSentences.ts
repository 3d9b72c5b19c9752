import type { Fact } from "../../journal/facts/fact.ts";
import { type ArrivalFact, arrivalSentence } from "./arrivalSentences.ts";
import { list } from "./inCommas.ts";
import type { Names } from "./journalNames.ts";
import { type PortFact, portSentence } from "./portSentences.ts";

/** What an entry of a job says, as one line of the log; ports and units are named before it by `aboutWhat`. */
export function factSentence(fact: Fact, names: Names): string {
  switch (fact.type) {
    case "NoteWritten":
      return fact.words;
    case "EntryWithdrawn":
      return `withdrew an entry: ${fact.reason}`;
    case "EntryCorrected":
      return `put an entry right: ${fact.reason}`;
    case "UnitDrained":
      return list([
        `drained${fact.out ? `, ${fact.out} out` : ", not measured"}`,
        fact.how && `by ${fact.how}`,
        fact.temperature,
        fact.colour,
        fact.metal && `metal: ${fact.metal}`,
        fact.water && `water: ${fact.water}`,
      ]);
    case "LevelDrawnDown":
      return list([`${fact.out} drawn out`, fact.fell && `level fell by ${fact.fell}`]);
    case "UnitFlushed":
      return list([`flushed: ${fact.poured} in, ${fact.caught} caught`, fact.words]);
    case "UnitFilled":
      return list([`filled, ${fact.volume} in`, fact.called, fact.how && `by ${fact.how}`, fact.temperature]);
    case "LevelChecked":
      return list([
        fact.right ? "level right" : "level NOT right",
        fact.belowLip && `${fact.belowLip} below the lip`,
        fact.how,
        fact.temperature,
        fact.tilt && `tilted ${fact.tilt}`,
        fact.words,
      ]);
    case "MeterRead":
      return `meter ${"distance" in fact.meter ? fact.meter.distance : fact.meter.hours}`;
    case "PaperIssued":
      return list([`${fact.paper} made`, fact.to && `for the ${fact.to}`]);
    case "MachineReleased":
      return list(["released", fact.words]);
    case "MachineLeftNotRunning":
      return list(["left not running", fact.carriedBy, fact.signedFor ? "signed for" : "not signed for"]);
    case "JobClosed":
      return list(["job closed", fact.words]);
    case "ServiceLaidDown":
      return list([
        "next service",
        fact.every.distance && `every ${fact.every.distance}`,
        fact.every.hours && `every ${fact.every.hours}`,
        fact.every.months && `every ${fact.every.months} months`,
        fact.source,
      ]);
    case "FollowUpPlanned":
      return `look again on ${fact.on}, ${fact.way}`;
    case "FollowUpDone":
      return list([`looked again: ${fact.found}`, fact.words]);
    case "FollowUpNotReached":
      return list(["not reached", fact.again && `again on ${fact.again}`]);
    case "CameBack":
      return `came back: ${fact.how}; ${fact.cause}`;
    case "AlsoNoticed":
      return `also noticed: ${fact.words}`;
    case "NoticeSettled":
      return `settled: ${fact.words}`;
    case "NearMiss":
      return `near miss: ${fact.words}`;
    case "JobFollows":
      return list([`follows job ${fact.earlier}`, fact.words]);
    case "RuleOverridden":
      return `TOOK ON HIMSELF: ${fact.rule}; ${fact.reason}`;
    case "PartsOrdered":
      return list([`ordered: ${fact.words}`, fact.arrives && `arrives ${fact.arrives}`]);
    case "CostsSettled":
      return `cost ${fact.amount}, borne by ${fact.borneBy}: ${fact.words}`;
    default:
      return isOfPort(fact) ? portSentence(fact, names) : isOfArrival(fact) ? arrivalSentence(fact, names) : fact.type;
  }
}

/** The port or unit that a fact is about, by its name; null for the machine as a whole. */
export function aboutWhat(fact: Fact, names: Names): string | null {
  if ("port" in fact && fact.port !== undefined) return names.port(fact.port);
  if ("unit" in fact) return names.unit(fact.unit);
  return fact.type === "UnitIdentified" ? fact.is.called : null;
}

const arrival = new Set<Fact["type"]>([
  "CallTaken",
  "CallAnswered",
  "JobBooked",
  "JobOpened",
  "ScopeAgreed",
  "ConditionFound",
  "WetnessWatched",
  "QuestionsAnswered",
  "LevelFound",
  "UnitIdentified",
]);
const isOfArrival = (fact: Fact): fact is ArrivalFact => arrival.has(fact.type);
const isOfPort = (fact: Fact): fact is PortFact => "port" in fact && !arrival.has(fact.type);
