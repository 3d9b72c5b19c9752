import type { GivenPort } from "./givenPort.ts";

/**
 * The check runs of the method: 4 million draws of exactly the reference ranges by two programs written apart from this
 * one. Torques in N·m. The M18 rows are check values only.
 */
export type CheckRun = {
  readonly name: string;
  readonly given: GivenPort;
  /** Torque at which 1 %, 5 % and half strip, as printed. */
  readonly strips: readonly [string, string, string];
  readonly odds: readonly (readonly [torque_Nm: number, probability: string])[];
  /** Torque at which half and 95 % close. */
  readonly closes: readonly [string, string];
  readonly thirdRule: string;
};

const sealant = { seal: "sealant, metal to metal", washer: null } as const;
const flat = (washer: "aluminium" | "copper" | "fibre") => ({ seal: "flat washer", washer }) as const;
const ring = (outside_mm: number, inside_mm: number) => ({ outside_mm, inside_mm });
const dot = { counting: "with a dot" } as const;
const good = { condition: "good", surface: "oiled" } as const;
const doubtfulSealed = { condition: "doubtful", surface: "wet sealant" } as const;

const run = (
  name: string,
  given: GivenPort,
  strips: CheckRun["strips"],
  odds: CheckRun["odds"],
  closes: CheckRun["closes"],
  thirdRule: string,
): CheckRun => ({ name, given, strips, odds, closes, thirdRule });

const chainCase = {
  thread: "M20x1.5",
  material: "cast aluminium",
  turns: 3.5,
  ...doubtfulSealed,
  ...sealant,
  ...ring(27, 20),
} as const;

export const checkRuns: readonly CheckRun[] = [
  run(
    "M20x1.5 in cast aluminium, 3.5 turns with a dot, doubtful, sealed",
    { ...chainCase, ...dot },
    ["22.5", "28.8", "51.7"],
    [
      [20, "0.0040"],
      [25, "0.021"],
      [30, "0.063"],
      [40, "0.234"],
      [50, "0.463"],
    ],
    ["3.1", "4.6"],
    "33",
  ),
  run(
    "the same counted by eye",
    { ...chainCase, counting: "by eye" },
    ["21.9", "28.2", "51.5"],
    [
      [20, "0.0052"],
      [25, "0.025"],
      [30, "0.070"],
      [40, "0.244"],
      [50, "0.469"],
    ],
    ["3.1", "4.6"],
    "33",
  ),
  run(
    "M22x1.5 in EN AC-46000, 1.5 turns by eye, doubtful, flat aluminium",
    {
      thread: "M22x1.5",
      material: "EN AC-46000",
      turns: 1.5,
      counting: "by eye",
      condition: "doubtful",
      surface: "oiled",
      ...flat("aluminium"),
      ...ring(28, 22),
    },
    ["5.15", "10.1", "26.8"],
    [
      [8, "0.027"],
      [10, "0.048"],
      [15, "0.142"],
      [20, "0.284"],
      [30, "0.591"],
      [40, "0.804"],
      [50, "0.916"],
    ],
    ["33.3", "49.7"],
    "18",
  ),
  run(
    "M14x1.5 in EN AC-46000, 3 turns with a dot, good, flat copper",
    { thread: "M14x1.5", material: "EN AC-46000", turns: 3, ...dot, ...good, ...flat("copper"), ...ring(20, 14) },
    ["16.1", "20.0", "34.0"],
    [
      [15, "0.0054"],
      [20, "0.051"],
      [25, "0.173"],
      [30, "0.350"],
      [40, "0.693"],
      [50, "0.887"],
    ],
    ["22.5", "33.4"],
    "17.5",
  ),
  run(
    "M24x1.5 in EN-GJL-200, 6 turns with a dot, good, flat aluminium",
    { thread: "M24x1.5", material: "EN-GJL-200", turns: 6, ...dot, ...good, ...flat("aluminium"), ...ring(29, 24) },
    ["120", "148", "247"],
    [
      [80, "0.000089"],
      [100, "0.0015"],
      [120, "0.0097"],
      [150, "0.055"],
    ],
    ["31.6", "47.1"],
    "148",
  ),
  run(
    "M12x1.5 in AZ91D, 4 turns with a dot, good, bonded seal",
    {
      thread: "M12x1.5",
      material: "AZ91D",
      turns: 4,
      ...dot,
      ...good,
      seal: "bonded seal",
      washer: null,
      ...ring(18, 12),
    },
    ["16.1", "19.8", "33.1"],
    [
      [15, "0.0052"],
      [20, "0.054"],
      [25, "0.186"],
      [30, "0.378"],
      [40, "0.730"],
    ],
    ["3.1", "5.3"],
    "17",
  ),
  run(
    "M16x1.5 in A356-T6, 5 turns with a dot, good, dry, fibre",
    {
      thread: "M16x1.5",
      material: "A356-T6",
      turns: 5,
      ...dot,
      condition: "good",
      surface: "dry",
      ...flat("fibre"),
      ...ring(22, 16),
    },
    ["65.2", "80.5", "139"],
    [
      [40, "0.00003"],
      [60, "0.0046"],
      [80, "0.048"],
      [100, "0.164"],
    ],
    ["7.6", "14.1"],
    "76",
  ),
  run(
    "M18x1.5 in EN AC-46000, 7 turns with a dot, good, flat aluminium",
    { thread: "M18x1.5", material: "EN AC-46000", turns: 7, ...dot, ...good, ...flat("aluminium"), ...ring(24, 18) },
    ["58.8", "72.4", "122"],
    [
      [39, "0.0001"],
      [60, "0.012"],
      [80, "0.093"],
    ],
    ["23.5", "34.9"],
    "72",
  ),
  run(
    "M18x1.5 in EN AC-46000, 2 turns with a dot, doubtful, sealed",
    { thread: "M18x1.5", material: "EN AC-46000", turns: 2, ...dot, ...doubtfulSealed, ...sealant, ...ring(24, 18) },
    ["10.9", "14.1", "26.3"],
    [
      [8, "0.0009"],
      [10, "0.0055"],
      [12, "0.019"],
      [15, "0.069"],
      [20, "0.232"],
      [25, "0.446"],
      [39, "0.862"],
    ],
    ["2.5", "3.7"],
    "17",
  ),
];
