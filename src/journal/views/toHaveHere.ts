import type { RemedyId } from "../../mechanics/remedies/method.ts";
import type { FactOf } from "../facts/fact.ts";
import type { MachineId } from "../facts/ids.ts";
import type { JobSheet } from "../job/jobSheet.ts";
import type { Machines, PortNoted, UnitNoted } from "../shop/machines.ts";
import { type Passport, passport, type TurnsTrend } from "./passport.ts";

/** What the journal knows of a plug before its machine comes: what to have on the shelf for it. */
export type ToHaveHere = {
  readonly port: PortNoted;
  /** As it was noted or last named. */
  readonly thread: string | null;
  /** What it was last closed with. */
  readonly fitted: FactOf<"PortTorqued">["fitted"] | null;
  readonly turns: TurnsTrend;
  readonly repairs: readonly RemedyId[];
  readonly alike: Alike;
};

/** The other plugs here of the same kind of joint. */
export type Alike = {
  readonly ports: number;
  readonly repaired: number;
  /** Their threads, the commonest first. */
  readonly threads: readonly { readonly thread: string; readonly ports: number }[];
};

/** What to have here for the plugs of a machine, in the order of its units; caps are opened by hand. */
export function toHaveHere(machine: MachineId, machines: Machines, sheets: Iterable<JobSheet>): readonly ToHaveHere[] {
  const all = [...sheets];
  const everywhere = plugsOf(Object.values(machines).flatMap(({ units }) => Object.values(units)));
  const known = everywhere.map((noted): Known => ({ noted, history: passport(noted.port, all) }));
  return plugsOf(Object.values(machines[machine]?.units ?? {})).map((port) => {
    const history = passport(port.port, all);
    const others = known.filter(({ noted }) => noted.joint === port.joint && noted.port !== port.port);
    return {
      port,
      thread: threadOf(port, history),
      fitted: history.visits.findLast(({ fitted }) => fitted)?.fitted ?? null,
      turns: history.turns,
      repairs: repairsOf(history),
      alike: alikeOf(port.joint === "other" ? [] : others),
    };
  });
}

type Known = { readonly noted: PortNoted; readonly history: Passport };

const plugsOf = (units: readonly UnitNoted[]): readonly PortNoted[] =>
  units.flatMap(({ ports }) => ports).filter(({ closedBy }) => closedBy === "plug");

const threadOf = (port: PortNoted, { visits }: Passport): string | null =>
  visits.findLast(({ thread }) => thread)?.thread ?? port.thread ?? null;

const repairsOf = ({ visits }: Passport): readonly RemedyId[] =>
  visits.flatMap(({ repairs }) => repairs.map(({ method }) => method));

function alikeOf(others: readonly Known[]): Alike {
  const counts = new Map<string, number>();
  for (const { noted, history } of others) {
    const thread = threadOf(noted, history);
    if (thread !== null) counts.set(thread, (counts.get(thread) ?? 0) + 1);
  }
  return {
    ports: others.length,
    repaired: others.filter(({ history }) => repairsOf(history).length > 0).length,
    threads: [...counts].map(([thread, ports]) => ({ thread, ports })).sort((a, b) => b.ports - a.ports),
  };
}
