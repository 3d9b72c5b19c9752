import type { Fact } from "../../journal/facts/fact.ts";
import type { RemedyId } from "../../mechanics/remedies/method.ts";
import { list } from "./inCommas.ts";
import type { Names } from "./journalNames.ts";
import { remedyNames } from "./remedyWords.ts";

/** Every fact that names a port, but for those of the arrival. */
export type PortFact = Extract<Fact, { readonly port?: unknown }>;

/** What hands did, read and decided at a port; the port is named before it. */
export function portSentence(fact: PortFact, names: Names): string {
  switch (fact.type) {
    case "PortFoundClosed":
      return list(["found closed and sound", fact.words]);
    case "PortBrokenLoose":
      return list([`broken loose, ${fact.hard}`, fact.torque && `at ${fact.torque}`]);
    case "PortWouldNotOpen":
      return `WOULD NOT OPEN: ${fact.words}`;
    case "PortOpened":
      return "plug out";
    case "WashersOut":
      return list([washers(fact.count, "out"), fact.words]);
    case "WashersIn":
      return list([washers(fact.count, "in"), fact.because]);
    case "PlugJudged":
      return list([fact.belongs ? "plug belongs here" : "plug does NOT belong here", fact.words]);
    case "PortClosedByHand":
      return list(["closed BY HAND", fact.fitted?.plug]);
    case "PortTorqued":
      return list([
        `torqued, set ${fact.set}`,
        fact.reached && `reached ${fact.reached}`,
        fact.wrench ? fact.wrench.instrument : "no wrench named",
        fact.clicked ? "clicked" : "NO click",
        fact.checkedAgain && "checked again",
        `pulled by ${names.person(fact.pulledBy)}`,
        fact.enteredBecause,
        fact.witnessMark && "marked",
        fact.fitted?.plug,
        fact.fitted?.seal,
      ]);
    case "TorqueChecked":
      return list(["looked at by a second pair of eyes", fact.words]);
    case "PortLetGo":
      return list([`LET GO${fact.at ? ` at ${fact.at}` : ""}`, fact.turned && `turned ${fact.turned}`, fact.words]);
    case "CureBegan":
      return list([`bead of ${fact.bead} closed`, fact.sealant, fact.temperature, `${fact.humidity} humidity`]);
    case "PortDryChecked":
      return `${fact.dry ? "seen dry" : "NOT dry"} after ${fact.after}, ${fact.how}`;
    case "PortHeldForNow":
      return list([`held for now by ${fact.by}, until ${fact.until}`, fact.words]);
    case "PortHoldEnded":
      return list(["no longer held for now", fact.words]);
    case "PressureHeld":
      return list([`${fact.from} to ${fact.to} in ${fact.minutes} min: ${fact.verdict}`, fact.words]);
    case "ReadingTaken":
      return list([
        `${readingName(fact.reading)} ${fact.value}`,
        fact.over !== undefined && `over ${fact.over}`,
        fact.how,
        fact.withWasher && "washer on",
      ]);
    case "CatchFelt":
      return list([`catch: ${fact.catch}`, fact.condition]);
    case "SeatJudged":
      return list([`seat ${fact.seat}`, fact.words]);
    case "MaterialJudged":
      return `${fact.material}, ${fact.how}`;
    case "ThreadNamed":
      return list([`thread ${fact.thread}`, fact.how, fact.rival && `not ${fact.rival}`]);
    case "OptionsWeighed":
      return fact.options.length === 0 ? "weighed as found" : `${fact.options.length} ways weighed`;
    case "OptionsOffered":
      return `offered: ${fact.rows.map(({ id }) => remedyNames[id]).join("; ")}`;
    case "OwnerDecided":
      return list([`owner ${decided(fact.decision)}`, `by ${fact.by}`, fact.words]);
    case "PortPrepared":
      return list([
        fact.dry ? "dry" : "NOT dry",
        fact.degreased ? "degreased" : "NOT degreased",
        fact.levelBelow && `level ${fact.levelBelow} below`,
        fact.words,
      ]);
    case "RepairMade":
      return list([
        `${remedyNames[fact.method]}, ${fact.lasting ? "to last" : "make-do"}`,
        fact.until && `until ${fact.until}`,
        fact.sizes,
        fact.chips && `chips ${fact.chips.caught ? "caught" : "NOT caught"}: ${fact.chips.how}`,
      ]);
    case "PortTagged":
      return `tagged: ${fact.lines.join(" / ")}`;
    case "NextHandWarned":
      return `for the next hand: ${fact.words}`;
    default:
      return list([fact.type]);
  }
}

const washers = (count: number, way: "out" | "in"): string =>
  `${count === 0 ? "no washer" : count === 1 ? "1 washer" : `${count} washers`} ${way}`;

const readingName = (reading: string): string =>
  ({ "left.turns": "turns, catch to seat:", healthyTurns: "turns in the sound twin:" })[reading] ??
  `${reading
    .replace(/^\w+\./, "")
    .replaceAll(/([A-Z])/g, " $1")
    .toLowerCase()}:`;

type Decision = Extract<PortFact, { type: "OwnerDecided" }>["decision"];

function decided(decision: Decision): string {
  const named = (id: RemedyId): string => remedyNames[id];
  switch (decision.is) {
    case "chosen":
      return `chose ${named(decision.option)}`;
    case "refused":
      return `refused ${named(decision.option)}${decision.instead ? `, ${named(decision.instead)} instead` : ""}`;
    case "put off":
      return `put it off${decision.until ? ` until ${decision.until}` : ""}`;
    case "left to the workshop":
      return `left it to the workshop up to ${decision.upTo}`;
    default:
      return decision satisfies never;
  }
}
