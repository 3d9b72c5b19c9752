import type { NeedOf } from "./fitNeed.ts";
import type { RemedyId } from "./method.ts";
import type { NotOffered } from "./remedy.ts";
import type { Repair } from "./repair.ts";

/** A length nobody has measured, and what cannot be judged without it. */
export type MeasureFirst = { readonly reading: LengthReading; readonly decides: readonly RemedyId[] };

export type LengthReading = "plug.underHead" | "case.threadDepth" | "case.thinnestWall" | "case.roomBehind";

/** The lengths that are missing, the one that decides most first. */
export function measureFirst(notOffered: readonly NotOffered[], repairs: readonly Repair[]): readonly MeasureFirst[] {
  const waits: readonly (readonly [LengthReading | null, RemedyId])[] = [
    ...notOffered.map(({ id, reason }) => [lengthOfReason[reason] ?? null, id] as const),
    ...repairs
      .filter(({ stands }) => stands === "measure first")
      .flatMap(({ id, needs }) =>
        needs.filter(({ state }) => state === "not known").map(({ what }) => [lengthOfNeed[what] ?? null, id] as const),
      ),
  ];
  return readings
    .map((reading) => ({ reading, decides: [...new Set(waits.flatMap(([it, id]) => (it === reading ? [id] : [])))] }))
    .filter(({ decides }) => decides.length > 0)
    .toSorted((a, b) => b.decides.length - a.decides.length);
}

const readings: readonly LengthReading[] = [
  "case.threadDepth",
  "case.thinnestWall",
  "case.roomBehind",
  "plug.underHead",
];

const lengthOfReason: { readonly [reason in NotOffered["reason"]]?: LengthReading } = {
  "plug length not measured": "plug.underHead",
  "depth not measured": "case.threadDepth",
};

const lengthOfNeed: { readonly [need in NeedOf]?: LengthReading } = {
  depth: "case.threadDepth",
  "wall left": "case.thinnestWall",
  "room behind for the tap": "case.roomBehind",
};
