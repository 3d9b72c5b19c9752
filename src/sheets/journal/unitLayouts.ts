import type { JointKind } from "../../mechanics/tables/jointKinds.ts";

type PortLaid = {
  readonly id: string;
  readonly called: string;
  readonly roles: readonly string[];
  readonly closedBy: "plug" | "cap";
  readonly joint: JointKind;
};

const cap: PortLaid = { id: "cap", called: "Filler cap", roles: ["fill"], closedBy: "cap", joint: "other" };
const plug = (id: string, called: string, roles: readonly string[], joint: JointKind): PortLaid => ({
  id,
  called,
  roles,
  closedBy: "plug",
  joint,
});

/** How the ports of a unit commonly lie: common practice, no source. Whatever lies otherwise is noted in the words of a job. */
const layouts = {
  "engine: cap and sump plug": {
    called: "Engine",
    ports: [cap, plug("drain", "Sump drain", ["drain"], "engine sump")],
  },
  "motorcycle engine: cap and sump plug": {
    called: "Engine",
    ports: [cap, plug("drain", "Sump drain", ["drain"], "motorcycle sump")],
  },
  "gear case: fill and level plug, drain plug": {
    called: "Gear case",
    ports: [
      plug("fill", "Fill and level", ["fill", "level"], "gear case level"),
      plug("drain", "Drain", ["drain"], "gear case drain"),
    ],
  },
  "gear case: fill, level and drain plug": {
    called: "Gear case",
    ports: [
      plug("fill", "Fill", ["fill"], "gear case fill"),
      plug("level", "Level", ["level"], "gear case level"),
      plug("drain", "Drain", ["drain"], "gear case drain"),
    ],
  },
  "gear case: one plug": {
    called: "Gear case",
    ports: [plug("fill", "Fill and level", ["fill", "level"], "gear case fill")],
  },
  "hub reduction: one plug": {
    called: "Hub reduction",
    ports: [plug("plug", "Plug", ["fill", "level", "drain"], "hub reduction")],
  },
  "cooling system: cap and drain plug": {
    called: "Cooling system",
    ports: [cap, plug("drain", "Block drain", ["drain"], "coolant drain")],
  },
  "outboard lower unit: vent and drain": {
    called: "Lower unit",
    ports: [
      plug("vent", "Vent and level", ["level", "breather"], "outboard lower unit"),
      plug("drain", "Drain, filled from below", ["fill", "drain"], "outboard lower unit"),
    ],
  },
} as const;

export type LayoutName = keyof typeof layouts;
export const layoutNames = Object.keys(layouts) as readonly LayoutName[];

type Known = { readonly expected: string | null; readonly drain: string | null; readonly fill: string | null };

/** A unit of a machine with its ports, as the journal notes it. */
export function unitOfLayout(name: LayoutName, machine: string, { expected, drain, fill }: Known) {
  const { called, ports } = layouts[name];
  return {
    unit: `${machine}.unit`,
    called,
    holdsFluid: true,
    ...(expected === null ? {} : { expected }),
    ports: ports.map(({ id, roles, ...port }: PortLaid) => {
      const thread = roles.includes("drain") ? drain : fill;
      return {
        port: `${machine}.${id}`,
        ...port,
        roles,
        ...(thread === null || port.closedBy === "cap" ? {} : { thread }),
      };
    }),
  };
}
