import type { JobSheet } from "../../journal/job/jobSheet.ts";
import type { PortNoted } from "../../journal/shop/machines.ts";
import type { Shop } from "../../journal/shop/shop.ts";

/** What people call what the journal knows by identities; where nobody gave a name the identity stands. */
export type Names = {
  readonly person: (id: string) => string;
  readonly machine: (id: string) => string;
  readonly unit: (id: string) => string;
  readonly port: (id: string) => string;
  readonly noted: (port: string) => PortNoted | null;
};

/** The names of a workshop, and of the units that were identified on one job. */
export function namesIn(shop: Shop, sheet: JobSheet | null): Names {
  const units = [
    ...Object.values(sheet?.units ?? {}).flatMap(({ is }) => (is ? [is] : [])),
    ...Object.values(shop.machines).flatMap((machine) => Object.values(machine.units)),
  ];
  const noted = (id: string): PortNoted | null =>
    units.flatMap(({ ports }) => ports).find(({ port }) => port === id) ?? null;
  return {
    person: (id) => shop.people.persons[id as never]?.called ?? id,
    machine: (id) => shop.machines[id as never]?.called ?? id,
    unit: (id) => units.find(({ unit }) => unit === id)?.called ?? id,
    port: (id) => noted(id)?.called ?? id,
    noted,
  };
}
