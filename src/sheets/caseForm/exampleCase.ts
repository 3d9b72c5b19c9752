/** The example of the house: the level port of a compact loader's chain case, hurt, with its fibre washer. */
export const exampleCase = {
  joint: { kind: "gear case level" },
  asked: {
    crack: "no",
    pressure: "none",
    reaches: [],
    people: "no",
    repairedBefore: "no",
    breather: "free",
  },
  thread: "M20x1.5",
  case: { material: "cast aluminium", threadDepth: "16 mm", thinnestWall: "7 mm", roomBehind: "11 mm" },
  plug: { propertyClass: "5.8", underHead: "13 mm", headDiameter: "27 mm", chamfer: "1 mm", original: true },
  seal: {
    kind: "flat washer",
    material: "fibre",
    outside: "26 mm",
    inside: "20.4 mm",
    thickness: "2 mm",
    original: true,
  },
  left: { turns: "3.5", counted: "with a dot", condition: "doubtful", catch: "snug", withWasher: false },
  healthyTurns: "8",
  surface: "oiled",
  bookFigures: [{ torque: "46 N·m", source: "service sheet, page 12", seal: "fibre", surface: "oiled" }],
  wrenches: [
    { name: "W-1", kind: "click", least: "5 N·m", most: "25 N·m", step: "1 N·m", calibrated: "2026-06-01" },
    { name: "W-2", kind: "click", least: "20 N·m", most: "100 N·m", step: "2 N·m", calibrated: "2026-03-01" },
  ],
  today: "2026-11-25",
} as const;
