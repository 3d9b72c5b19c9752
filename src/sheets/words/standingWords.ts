import type { PersonId } from "../../journal/facts/ids.ts";
import type { GateRefusal } from "../../journal/job/gate.ts";
import { portIn } from "../../journal/shop/machines.ts";
import type { Shop } from "../../journal/shop/shop.ts";
import type { Standing, StandingPort } from "../../journal/views/standing.ts";
import { fluidStateWords, gateWords, portStateWords } from "./gateWords.ts";

/** What stands in the workshop, as the wall shows it: what must not be started first. */
export function standingLines(standing: readonly Standing[], shop: Shop): readonly string[] {
  if (standing.length === 0) return ["Nothing stands open."];
  return standing.flatMap((it) => [headLine(it, shop), ...bodyLines(it, shop), ""]);
}

function headLine({ job, machine, bay, stage, notStarted }: Standing, { machines }: Shop): string {
  const called = machine === null ? "machine not named" : (machines[machine]?.called ?? machine);
  const where = stage === "released" ? "ALREADY GONE" : (bay ?? "");
  return `${notStarted.length > 0 ? "DO NOT START  " : ""}${job}  ${called}${where ? `, ${where}` : ""}`;
}

function bodyLines({ ports, units, notLeaving, breaches }: Standing, shop: Shop): readonly string[] {
  const reasons = notLeaving.filter(({ gate }) => gate !== "port not tight" && gate !== "level unchecked");
  return [
    ...units
      .filter(({ fluid }) => fluid !== "unknown")
      .map(
        (it) => `  ${it.called}: ${fluidStateWords[it.fluid]}${it.stop ? `; STOP: ${gateWords["volume stop"]}` : ""}`,
      ),
    ...ports.map((it) => `  ${portLine(it, shop)}`),
    ...(reasons.length > 0 ? [`  before it leaves: ${reasons.map((it) => gateLine(it, shop)).join("; ")}`] : []),
    ...breaches.map((it) => `  WENT PAST: ${gateLine(it, shop)} (${nameOf(it.by, shop)})`),
  ];
}

function portLine({ port, state, minutes, by, until }: StandingPort, shop: Shop): string {
  const since = minutes === null ? "" : `, ${spanWords(minutes)}`;
  const hand = by === null ? "" : `, ${nameOf(by, shop)}`;
  return `${portName(port, shop)}: ${portStateWords[state]}${since}${hand}${until ? `, until ${momentWords(until)}` : ""}`;
}

const gateLine = ({ gate, port }: GateRefusal, shop: Shop): string =>
  port === null ? gateWords[gate] : `${portName(port, shop)}, ${gateWords[gate]}`;

const portName = (port: StandingPort["port"], { machines }: Shop): string =>
  portIn(machines, port)?.port.called ?? port;

const nameOf = (person: PersonId, { people }: Shop): string => people.persons[person]?.called ?? person;

/** "12 min", "2 h 30 min", "6 d": finer than that nobody acts on. */
export function spanWords(minutes: number): string {
  if (minutes < 60) return `${minutes} min`;
  if (minutes < 2880) return `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
  return `${Math.floor(minutes / 1440)} d`;
}

const momentWords = (until: string): string => until.slice(0, 16).replace("T", " ");
