import type { FactOf } from "../journal/facts/fact.ts";
import type { JointKind } from "../mechanics/tables/jointKinds.ts";
import { type Line, on, type Told, telling } from "./script.ts";

type Unit = Extract<Told, { type: "UnitIdentified" }>["is"];
type Port = Unit["ports"][number];
type Role = FactOf<"UnitIdentified">["is"]["ports"][number]["roles"][number];

const port = (
  id: string,
  called: string,
  roles: readonly Role[],
  joint: JointKind,
  thread: string,
  closedBy: "plug" | "cap" = "plug",
): Port => ({ port: id, called, roles, closedBy, joint, thread });

const oil = (unit: string, called: string, expected: string, ...ports: readonly Port[]): Unit => ({
  unit,
  called,
  holdsFluid: true,
  expected,
  ports,
});

/** The units that the demo's jobs are about, by the machine they sit in. */
export const unitsOfDemo = {
  van: oil(
    "van-gearbox",
    "Gearbox",
    "2.40 L",
    port("van-fill", "Fill and level", ["fill", "level"], "gear case fill", "M22x1.5"),
    port("van-drain", "Drain", ["drain"], "gear case drain", "M22x1.5"),
  ),
  hatchback: oil(
    "hatchback-engine",
    "Engine",
    "3.60 L",
    port("hatchback-cap", "Filler cap", ["fill"], "other", "cap", "cap"),
    port("hatchback-sump", "Sump drain", ["drain"], "engine sump", "M14x1.5"),
  ),
  outboard: oil(
    "outboard-lower",
    "Lower unit",
    "0.50 L",
    port("outboard-vent", "Vent and level", ["level", "breather"], "outboard lower unit", "M8x1.25"),
    port("outboard-drain", "Drain, filled from below", ["fill", "drain"], "outboard lower unit", "M8x1.25"),
  ),
  camper: oil(
    "camper-drive",
    "Final drive",
    "1.10 L",
    port("camper-fill", "Fill and level", ["fill", "level"], "gear case fill", "M24x1.5"),
  ),
  estate: {
    unit: "estate-head",
    called: "Cylinder head",
    holdsFluid: false,
    ports: [port("estate-hole-3", "Spark-plug hole 3", ["hole"], "spark plug", "M14x1.25")],
  },
  combineLeft: oil(
    "combine-hub-left",
    "Front hub reduction, left",
    "3.90 L",
    port("combine-left", "Plug at 3 o'clock", ["fill", "level", "drain"], "hub reduction", "M20x1.5"),
  ),
  combineRight: oil(
    "combine-hub-right",
    "Front hub reduction, right",
    "3.90 L",
    port("combine-right", "Plug at 3 o'clock", ["fill", "level", "drain"], "hub reduction", "M20x1.5"),
  ),
  deliveryVan: oil(
    "delivery-block",
    "Engine block, coolant",
    "7.0 L",
    port("delivery-cap", "Filler cap", ["fill", "level"], "other", "cap", "cap"),
    port("delivery-drain", "Block drain", ["drain"], "coolant drain", "M16x1.5"),
  ),
  loader: oil(
    "loader-chaincase",
    "Chain case",
    "6.0 L",
    port("loader-cap", "Filler cap", ["fill"], "other", "cap", "cap"),
    port("loader-level", "Level", ["level"], "gear case level", "M20x1.5"),
  ),
  motorcycle: oil(
    "motorcycle-engine",
    "Engine",
    "2.10 L",
    port("motorcycle-cap", "Filler cap", ["fill"], "other", "cap", "cap"),
    port("motorcycle-sump", "Sump drain", ["drain"], "motorcycle sump", "M12x1.5"),
  ),
  tractor: oil(
    "tractor-axle",
    "Rear axle",
    "14.0 L",
    port("tractor-cap", "Filler cap", ["fill"], "other", "cap", "cap"),
    port("tractor-level", "Level", ["level"], "gear case level", "G 1/2"),
  ),
  chipper: oil(
    "chipper-box",
    "Angle-gear box",
    "2.40 L",
    port("chipper-level", "Fill and level", ["fill", "level"], "gear case level", "M20x1.5"),
    port("chipper-drain", "Drain", ["drain"], "gear case drain", "M20x1.5"),
  ),
  familyCar: oil(
    "family-engine",
    "Engine",
    "4.30 L",
    port("family-cap", "Filler cap", ["fill"], "other", "cap", "cap"),
    port("family-sump", "Sump drain", ["drain"], "engine sump", "M14x1.5"),
  ),
} as const satisfies Record<string, Unit>;

const machines: readonly (readonly [machine: string, called: string, ...units: readonly Unit[]])[] = [
  ["van", "Panel van", unitsOfDemo.van],
  ["hatchback", "Small hatchback", unitsOfDemo.hatchback],
  ["outboard", "Outboard, 40 hp", unitsOfDemo.outboard],
  ["camper", "Camper", unitsOfDemo.camper],
  ["estate", "Estate car, petrol", unitsOfDemo.estate],
  ["combine", "Combine", unitsOfDemo.combineLeft, unitsOfDemo.combineRight],
  ["delivery-van", "Delivery van, diesel", unitsOfDemo.deliveryVan],
  ["loader", "Compact loader", unitsOfDemo.loader],
  ["motorcycle", "Motorcycle, 650", unitsOfDemo.motorcycle],
  ["tractor", "Tractor, 85 hp", unitsOfDemo.tractor],
  ["chipper", "Wood chipper", unitsOfDemo.chipper],
  ["family-car", "Family car", unitsOfDemo.familyCar],
];

/** The owners by their machines; the names are invented. */
export const ownersOfDemo: readonly {
  readonly owner: string;
  readonly name: string;
  readonly machine: string;
  readonly plate: string;
}[] = [
  ["Idris Fenwick-Lowe", "van"],
  ["Nell Harrowby", "hatchback"],
  ["Oskar Teal", "outboard"],
  ["Bram and Ottilie Quist", "camper"],
  ["Ruth Marlpit", "estate"],
  ["Low Meadow Farm", "combine"],
  ["Kettle Lane Bakery", "delivery-van"],
  ["Stone & Hedge Yard", "loader"],
  ["Piet Calloway", "motorcycle"],
  ["Upper Sike Farm", "tractor"],
  ["Ferry Hire Yard", "chipper"],
  ["Anneke Sorrel", "family-car"],
].map(([name = "", machine = ""], i) => ({ owner: `owner-${i + 1}`, name, machine, plate: `FICT ${i + 1}` }));

export const ownerOf = (machine: string): string => ownersOfDemo.find((it) => it.machine === machine)?.owner ?? "";

/** Machines and owners as they were met, and the workshop's own figures for their ports. */
export function machineLines(): readonly Line[] {
  const at = telling(null, "maud");
  return [
    ...at(on(-399, "08:00"), ...ownersOfDemo.map(({ owner }): Told => ({ type: "OwnerMet", owner }))),
    ...at(
      on(-399, "08:30"),
      ...machines.map(
        ([machine, called, ...units]): Told => ({
          type: "MachineMet",
          machine,
          called,
          owner: ownerOf(machine),
          units,
        }),
      ),
    ),
    ...at(on(-399, "09:00"), ...book),
  ];
}

const figure = (id: string, of: string, source: string, more: object): Told =>
  ({ type: "BookFigureNoted", is: { figure: id, port: of, source, ...more } }) as Told;

const book: readonly Told[] = [
  figure("b-1", "van-fill", "service sheet, beside a fibre washer", {
    torque: "35 N·m",
    seal: "fibre",
    volume: "2.40 L",
  }),
  figure("b-2", "van-fill", "parts label, beside flat aluminium", { torque: "48 N·m", seal: "aluminium" }),
  figure("b-3", "van-drain", "service sheet", { torque: "48 N·m", seal: "aluminium" }),
  figure("b-4", "hatchback-sump", "service sheet", {
    torque: "34 N·m",
    seal: "copper",
    every: { distance: "15000 km", months: 12 },
  }),
  figure("b-5", "outboard-drain", "lower-unit plate", { torque: "6 N·m", seal: "fibre" }),
  figure("b-6", "combine-left", "hub plate", { torque: "70 N·m", seal: "copper", every: { hours: "500 h" } }),
  figure("b-7", "combine-right", "hub plate", { torque: "70 N·m", seal: "copper", every: { hours: "500 h" } }),
  figure("b-8", "motorcycle-sump", "owner's book", { torque: "20 N·m", seal: "aluminium" }),
  figure("b-9", "chipper-level", "service sheet", { torque: "46 N·m" }),
  figure("b-10", "family-sump", "service sheet", {
    torque: "34 N·m",
    seal: "copper",
    every: { distance: "20000 km", months: 12 },
  }),
  figure("b-11", "estate-hole-3", "plug maker's box", { torque: "25 N·m" }),
  figure("b-12", "camper-fill", "service sheet", { torque: "45 N·m", seal: "aluminium" }),
];
