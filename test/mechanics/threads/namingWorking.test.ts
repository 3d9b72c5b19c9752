import { expect, test } from "vitest";
import { standardUncertainty, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { mm } from "../../../src/mechanics/quantity/unit.ts";
import { working } from "../../../src/mechanics/quantity/working.ts";
import type { ThreadEvidence } from "../../../src/mechanics/threads/namingEvidence.ts";
import { lengthExpected, oddsOfFirst, pitchRead } from "../../../src/mechanics/threads/namingWorking.ts";
import { threadCandidates } from "../../../src/mechanics/threads/threadName.ts";
import { agrees } from "../../published.ts";
import { gaps, outside, read, taper } from "./namingReadings.ts";

// Common practice, no source: eight gaps in 12.1 mm are a pitch of 1.51 ± 0.04; 8 of 7/8-14 would reach 14.5.
test("eight gaps in 12.1 mm are a pitch of 1.51 ± 0.04 mm, where 7/8-14 would show 14.5", () => {
  const counted = gaps(8, 12.1);
  const pitch = pitchRead(counted);
  if (!pitch) throw new Error("gaps give a pitch");
  agrees(valueIn(mm, pitch), "1.51");
  agrees(standardUncertainty(pitch) * 1000, "0.04");
  const { candidates } = threadCandidates([outside(21.85), counted]);
  const rival = candidates.find(({ designation }) => designation === "7/8-14 UNF");
  if (!rival) throw new Error("7/8-14 is looked for");
  agrees(valueIn(mm, lengthExpected(counted, rival) ?? pitch), "14.5");
});

test("a taper over 10 mm would read 0.625 on a taper thread and nothing on a parallel one", () => {
  const { candidates } = threadCandidates([outside(20.85), taper(0, 10)]);
  const growth = (designation: string): number => {
    const candidate = candidates.find((it) => it.designation === designation);
    const expected = candidate && lengthExpected(taper(0, 10), candidate);
    return expected ? valueIn(mm, expected) : Number.NaN;
  };
  expect(growth("1/2-14 NPT")).toBeCloseTo(0.625, 12);
  expect(growth("G 1/2")).toBe(0);
});

const hexagon = (plug_mm: number): ThreadEvidence => ({
  type: "hexagon",
  plug: read(plug_mm, 0.05),
  sister: read(24, 0.05),
});

test.each<[string, readonly [ThreadEvidence, ...ThreadEvidence[]]]>([
  ["an outside diameter", [outside(19.9)]],
  ["gaps beside it", [outside(21.85), gaps(8, 12.1)]],
  ["crests counted", [outside(21.85), gaps(8, 10.5)]],
  ["a foreign plug", [outside(15.8), hexagon(27)]],
  ["its own plug", [outside(15.8), hexagon(24)]],
])("the odds worked out are those of the probabilities: %s", (_, evidence) => {
  const naming = threadCandidates(evidence);
  const [first, second] = naming.candidates;
  const ratio = (first?.probability ?? 0) / (second?.probability ?? 0);
  expect(oddsOfFirst(naming).value / ratio).toBeCloseTo(1, 9);
  expect(working(oddsOfFirst(naming))).toHaveLength(1);
});

test("what is no length along the thread gives no pitch", () => {
  expect(pitchRead(outside(20))).toBeNull();
  expect(pitchRead(taper(0, 10))).toBeNull();
});
