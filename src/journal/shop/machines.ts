import type { FactOf } from "../facts/fact.ts";
import type { MachineId, OwnerId, PortId, UnitId } from "../facts/ids.ts";
import type { Projection } from "../projection.ts";

export type UnitNoted = FactOf<"UnitNoted">["is"];
export type PortNoted = UnitNoted["ports"][number];

export type Machine = {
  readonly machine: MachineId;
  readonly called: string;
  readonly owner: OwnerId | null;
  readonly units: Readonly<Record<UnitId, UnitNoted>>;
};

export type Machines = Readonly<Record<MachineId, Machine>>;

/** The machines that were here, with their units and ports. */
export const machines: Projection<Machines> = {
  empty: {},

  apply(state, { fact }) {
    switch (fact.type) {
      case "MachineMet": {
        const { machine, called, owner = null, units } = fact;
        const known = Object.fromEntries(units.map((it) => [it.unit, it]));
        return { ...state, [machine]: { machine, called, owner, units: { ...state[machine]?.units, ...known } } };
      }
      case "UnitNoted": {
        const { machine, is } = fact;
        const known = state[machine] ?? { machine, called: machine, owner: null, units: {} };
        return { ...state, [machine]: { ...known, units: { ...known.units, [is.unit]: is } } };
      }
      case "MachineChangedHands": {
        const known = state[fact.machine];
        return known ? { ...state, [fact.machine]: { ...known, owner: fact.owner } } : state;
      }
      default:
        return state;
    }
  },
};

/** A port of the workshop's machines, with where it lies; null if nobody noted it. */
export function portIn(known: Machines, port: PortId): { machine: Machine; unit: UnitNoted; port: PortNoted } | null {
  for (const machine of Object.values(known))
    for (const unit of Object.values(machine.units)) {
      const found = unit.ports.find((it) => it.port === port);
      if (found) return { machine, unit, port: found };
    }
  return null;
}
