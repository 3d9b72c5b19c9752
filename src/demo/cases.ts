import type { WrittenCase } from "../sheets/caseForm/caseSchema.ts";

/** A port as it was measured on its day; wrenches and the day come from the calendar. */
type Case = Omit<WrittenCase, "wrenches" | "today">;

const harmless: NonNullable<Case["asked"]> = {
  crack: "no",
  pressure: "none",
  reaches: [],
  people: "no",
  repairedBefore: "no",
};
/** The oil side of a case whose breather is free. */
const breathing: NonNullable<Case["asked"]> = { ...harmless, breather: "free" };
/** Where no breather is. */
const closed: NonNullable<Case["asked"]> = { ...harmless, breather: "none" };

type Metal = "aluminium" | "copper" | "fibre";

const ring = (material: Metal, outside: string, inside: string, thickness: string) =>
  ({ kind: "flat washer", material, outside, inside, thickness, original: true }) as const;
const plug = (underHead: string, headDiameter: string, chamfer = "1 mm") =>
  ({ underHead, headDiameter, chamfer, original: true }) as const;
const byRod = (value: string) => ({ value, how: "depth rod" }) as const;
const good = (turns: string) =>
  ({ turns, counted: "with a dot", condition: "good", catch: "snug", withWasher: true }) as const;

const camper: Omit<Case, "asked" | "left"> = {
  joint: { kind: "gear case fill" },
  thread: "M24x1.5",
  case: { material: "cast aluminium", threadDepth: byRod("13 mm"), thinnestWall: "6.1 mm", roomBehind: "14 mm" },
  plug: plug("16 mm", "30 mm"),
  seal: ring("fibre", "30 mm", "24.4 mm", "2 mm"),
  healthyTurns: "8",
  healthyWithWasher: false,
  surface: "oiled",
  bookFigures: [{ torque: "45 N·m", source: "service sheet", seal: "fibre", surface: "oiled" }],
};

const loader: Omit<Case, "asked"> = {
  joint: { kind: "gear case level" },
  thread: "M20x1.5",
  case: { material: "cast aluminium", threadDepth: "15 mm", thinnestWall: "8 mm", roomBehind: "11 mm" },
  plug: plug("13 mm", "27 mm"),
  seal: ring("aluminium", "26 mm", "20.4 mm", "1.5 mm"),
  left: { turns: "2.8", counted: "with a dot", condition: "doubtful", catch: "gritty", withWasher: false },
  healthyTurns: "8",
  healthyWithWasher: false,
  surface: "oiled",
  temperature: "9 °C",
  air: { temperature: "9 °C", humidity: "70 %" },
};

/** The ports of the workshop's jobs, each as it was measured when it was weighed. */
export const casesOfDemo = {
  van: {
    joint: { kind: "gear case fill" },
    asked: breathing,
    thread: "M22x1.5",
    case: { material: "EN AC-46000" },
    plug: plug("15 mm", "28 mm"),
    seal: ring("aluminium", "28 mm", "22 mm", "1.5 mm"),
    left: good("8"),
    healthyTurns: "8",
    healthyWithWasher: true,
    surface: "oiled",
    bookFigures: [
      { torque: "35 N·m", source: "service sheet, beside a fibre washer", seal: "fibre", surface: "oiled" },
      { torque: "48 N·m", source: "parts label, beside flat aluminium", seal: "aluminium", surface: "oiled" },
    ],
  },
  hatchback: {
    joint: { kind: "engine sump" },
    asked: breathing,
    thread: "M14x1.5",
    case: { material: "EN AC-46000", threadDepth: byRod("17 mm"), thinnestWall: "6 mm", roomBehind: "20 mm" },
    plug: plug("13 mm", "20 mm"),
    seal: ring("copper", "20 mm", "14 mm", "1.5 mm"),
    left: { turns: "3", counted: "with a dot", condition: "good", catch: "gritty", withWasher: true },
    healthyTurns: "7",
    healthyWithWasher: true,
    surface: "oiled",
    bookFigures: [{ torque: "34 N·m", source: "service sheet", seal: "copper", surface: "oiled" }],
  },
  outboard: {
    joint: { kind: "outboard lower unit" },
    asked: { ...closed, reaches: ["water"], waterTest: "not done", alloyTested: "yes" },
    thread: "M8x1.25",
    case: { material: "cast aluminium", threadDepth: "12 mm", thinnestWall: "6 mm", roomBehind: "9 mm" },
    plug: plug("11 mm", "13 mm", "0.5 mm"),
    seal: ring("fibre", "13 mm", "8.4 mm", "1 mm"),
    left: { turns: "2.5", counted: "by eye", condition: "doubtful", catch: "gritty", withWasher: true },
    healthyTurns: "7",
    healthyWithWasher: true,
    surface: "oiled",
  },
  camper: {
    ...camper,
    asked: {
      ...breathing,
      overrides: [{ rule: "7 too little", by: "M.T.", reason: "the owner refused the bushing and wants it sealed" }],
    },
    left: { turns: "1.7", counted: "by eye", condition: "doubtful", catch: "gritty", withWasher: false },
    temperature: "15 °C",
    air: { temperature: "15 °C", humidity: "60 %" },
  },
  camperAgain: {
    ...camper,
    asked: {
      ...breathing,
      repairedBefore: { method: "sealant, no washer", cause: "too few turns; released early" },
      alloyTested: "yes",
    },
    left: { turns: "1", counted: "by eye", condition: "poor", catch: "gritty", withWasher: false },
    wish: { afterRepair: true },
  },
  estate: {
    joint: { kind: "spark plug" },
    asked: { ...closed, alloyTested: "yes" },
    thread: "M14x1.25",
    case: { material: "A356-T6", threadDepth: byRod("19 mm"), thinnestWall: "9 mm", roomBehind: "25 mm" },
    plug: plug("20.5 mm", "20 mm", "0.5 mm"),
    seal: { kind: "crush ring", outside: "19 mm", inside: "14.3 mm", thickness: "1.5 mm", original: true },
    left: { turns: "2", counted: "by eye", condition: "poor", catch: "gritty", withWasher: true },
    healthyTurns: "14",
    healthyWithWasher: true,
    surface: "dry",
  },
  combine: {
    joint: { kind: "hub reduction" },
    asked: breathing,
    thread: "M20x1.5",
    case: { material: "EN-GJS-400-15" },
    plug: plug("16 mm", "27 mm"),
    seal: ring("copper", "26 mm", "20.4 mm", "1.5 mm"),
    left: good("8"),
    healthyTurns: "8.5",
    healthyWithWasher: true,
    surface: "oiled",
    bookFigures: [{ torque: "70 N·m", source: "hub plate", seal: "copper", surface: "oiled" }],
  },
  deliveryVan: {
    joint: { kind: "coolant drain" },
    asked: { ...closed, pressure: "1.2 bar" },
    thread: "M16x1.5",
    case: { material: "EN-GJL-250", threadDepth: "16 mm", thinnestWall: "9 mm" },
    plug: plug("14 mm", "22 mm"),
    seal: ring("copper", "22 mm", "16 mm", "1.5 mm"),
    left: { turns: "5", counted: "with a dot", condition: "doubtful", catch: "gritty", withWasher: true },
    healthyTurns: "7.5",
    healthyWithWasher: true,
    surface: "oiled",
  },
  loader: { ...loader, asked: { ...breathing, alloyTested: "yes" } },
  loaderAgain: {
    ...loader,
    asked: {
      ...breathing,
      repairedBefore: { method: "sealant, no washer", cause: "collected after 55 minutes, before it had cured" },
      alloyTested: "yes",
    },
  },
  motorcycle: {
    joint: { kind: "motorcycle sump" },
    asked: { ...breathing, reaches: ["tyre"], alloyTested: "yes" },
    thread: "M12x1.5",
    case: { material: "AZ91D", threadDepth: byRod("22 mm"), thinnestWall: "7 mm", roomBehind: "12 mm" },
    plug: plug("15 mm", "17 mm"),
    seal: ring("aluminium", "17 mm", "12 mm", "1.5 mm"),
    left: { turns: "2", counted: "with a dot", condition: "doubtful", catch: "gritty", withWasher: true },
    healthyTurns: "8",
    healthyWithWasher: true,
    surface: "oiled",
    wish: { opensAgain: true },
  },
  /** Weighed for the right plug and its seal, which are on their way; the forced one tore the first turns. */
  tractor: {
    joint: { kind: "gear case level" },
    asked: breathing,
    thread: "G 1/2",
    case: { material: "EN-GJL-250", threadDepth: byRod("18 mm"), thinnestWall: "9 mm", roomBehind: "20 mm" },
    plug: plug("14 mm", "26 mm"),
    seal: { kind: "bonded seal", outside: "28.6 mm", inside: "21.5 mm", thickness: "2.5 mm", original: true },
    left: { condition: "doubtful", catch: "gritty", goodFrom: "3 mm", goodTo: "18 mm" },
    surface: "oiled",
  },
  chipper: {
    joint: { kind: "gear case drain" },
    asked: { ...breathing, alloyTested: "yes" },
    thread: "M20x1.5",
    case: { material: "cast aluminium", threadDepth: byRod("19.5 mm"), thinnestWall: "7.6 mm", roomBehind: "11 mm" },
    plug: plug("16 mm", "27 mm"),
    seal: ring("copper", "26 mm", "20.4 mm", "1.5 mm"),
    left: { turns: "3.5", counted: "with a dot", condition: "doubtful", catch: "gritty", withWasher: true },
    healthyTurns: "9",
    healthyWithWasher: true,
    surface: "oiled",
    temperature: "12 °C",
    air: { temperature: "12 °C", humidity: "65 %" },
  },
  familyCar: {
    joint: { kind: "engine sump" },
    asked: breathing,
    thread: "M14x1.5",
    case: { material: "EN AC-46000" },
    plug: plug("13 mm", "20 mm"),
    seal: ring("copper", "20 mm", "14 mm", "1.5 mm"),
    left: good("7"),
    healthyTurns: "7",
    healthyWithWasher: true,
    surface: "oiled",
    bookFigures: [{ torque: "34 N·m", source: "service sheet", seal: "copper", surface: "oiled" }],
  },
} satisfies Record<string, Case>;

export type CaseName = keyof typeof casesOfDemo;
