import type { WrittenCase } from "../sheets/caseForm/caseSchema.ts";
import { type CaseName, casesOfDemo } from "./cases.ts";
import { counted, measured } from "./hands.ts";
import type { Told } from "./script.ts";

/** The readings of a case as they were taken at its port, before it was weighed. */
export function readingsOf(name: CaseName, port: string): readonly Told[] {
  const { left, case: housing, plug }: Pick<WrittenCase, "left" | "case" | "plug"> = casesOfDemo[name];
  const lengths = [
    ["case.threadDepth", housing.threadDepth, "wire hook"],
    ["case.thinnestWall", housing.thinnestWall, "caliper"],
    ["case.roomBehind", housing.roomBehind, "blunt wire"],
    ["plug.underHead", plug?.underHead, "caliper"],
  ] as const;
  return [
    counted(port, String(left.turns), left.counted, left.withWasher),
    { type: "CatchFelt", port, catch: left.catch ?? "snug", condition: left.condition ?? "good" },
    ...lengths.flatMap(([reading, given, ordinary]) => {
      if (typeof given === "string") return [measured(port, reading, given, ordinary)];
      return given && typeof given === "object" && "value" in given
        ? [measured(port, reading, String(given.value), given.how ?? ordinary)]
        : [];
    }),
  ];
}
