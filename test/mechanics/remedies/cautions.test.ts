import { describe, expect, test } from "vitest";
import { cautionsOf } from "../../../src/mechanics/remedies/cautionsOf.ts";
import { methodOf, type RemedyId, remedyIds } from "../../../src/mechanics/remedies/method.ts";
import { jointKinds } from "../../../src/mechanics/tables/jointKinds.ts";
import { beforeLoosening, cautionNames, methodCautions } from "../../../src/mechanics/tables/methodCautions.ts";
import { cautionSentences } from "../../../src/sheets/words/cautionWords.ts";
import { type Changes, documentOf, sound, weighed } from "./changedCase.ts";

const of = (id: RemedyId, changes: Changes) => cautionsOf(id, weighed(changes).portCase);

// Common practice of the trade, no source: each caution at the step where it hurts.
const atTheStep: readonly (readonly [step: string, id: RemedyId, changes: Changes, words: RegExp])[] = [
  [
    "before loosening: engine off, key away, hybrid",
    "other seal: fibre",
    {},
    /Engine off and the key with you.*hybrid/,
  ],
  ["before loosening: lift or stands", "longer plug", {}, /stands in, never on a jack/],
  ["before loosening: hot oil", "longer plug", { joint: { kind: "engine sump" } }, /above 60 °C scalds/],
  ["before loosening: cooling system", "new part", { joint: { kind: "coolant drain" } }, /cold, and the cap off first/],
  ["before loosening: hub", "solid bushing", { joint: { kind: "hub reduction" } }, /Chocks.*wheel held.*two people/],
  ["before loosening: outboard", "solid bushing", { joint: { kind: "outboard lower unit" } }, /propeller/],
  [
    "draining: waste oil",
    "longer plug",
    { joint: { kind: "gear case drain" } },
    /pan large enough.*none to drain, ground/,
  ],
  ["drilling: eyes and swarf", "wire coil", {}, /Eyes covered.*never blown.*flushed/],
  ["drilling: what moves behind", "next size", {}, /Turn what runs behind/],
  ["drilling: cylinder", "solid bushing", { joint: { kind: "spark plug" } }, /cylinder/],
  ["drilling: fuel and vapour", "solid bushing", {}, /Fuel, solvent and vapour away/],
  [
    "light alloy unknown",
    "solid bushing",
    { case: { material: "unknown light alloy" } },
    /Magnesium.*test.*never water/,
  ],
  ["welding: battery", "welded and re-cut", {}, /Battery off/],
  ["welding: alloy", "welded and re-cut", {}, /before the alloy is known/],
  ["welding: chlorinated cleaner", "welded and re-cut", {}, /chlorinated.*toxic/],
  ["sealant: skin and air", "sealant, no washer", {}, /off skin and eyes, with air/],
  ["sealant: sensors", "sealant, no washer", {}, /sensor, a strainer/],
  ["sealant: solvent", "sealant, no washer", {}, /no mist of it near anything hot/],
  ["cure: down, tilt, drive", "sealant, no washer", {}, /Neither filled, tilted, started nor driven/],
  ["resin", "cast thread", {}, /Resin.*off skin and eyes/],
  ["old fibre rings", "other seal: bonded seal", {}, /asbestos/],
  ["standing with a bung", "expanding bung", {}, /DO NOT START/],
  ["air and vacuum test", "solid bushing", { joint: { kind: "outboard lower unit" } }, /limited at the pump/],
  ["oil on the road", "left and watched", {}, /offence.*riders/],
  ["paper", "sealant, no washer", {}, /tag at the plug/],
];

describe("each caution stands where it belongs", () => {
  test.each(atTheStep)("%s: %s", (_, id, changes, words) => {
    expect(
      of(id, changes)
        .map((it) => cautionSentences[it])
        .join("\n"),
    ).toMatch(words);
  });

  test("every caution belongs to some method or port, and has its sentence", () => {
    const used = new Set([
      ...Object.values(methodCautions).flat(),
      ...jointKinds.flatMap((it) => beforeLoosening(it)),
      ...of("solid bushing", { joint: { kind: "outboard lower unit" } }),
    ]);
    expect([...used].toSorted()).toEqual([...cautionNames].toSorted());
    for (const name of cautionNames) expect(cautionSentences[name]).toMatch(/\.$/);
  });

  test("every method that makes chips in the unit says eyes and swarf, and every make-do tells the next man or the road", () => {
    const { remedies } = documentOf({ case: { threadDepth: "26 mm", thinnestWall: "14 mm", roomBehind: "20 mm" } });
    for (const { id, chips, lasting, refused } of remedies) {
      const own = methodCautions[id === "lower torque" ? id : methodOf[id as RemedyId]];
      if (chips && /inside|trace/.test(chips)) expect(own, id).toContain("eyes and swarf");
      if (!lasting && !refused && id !== "left and watched") expect(own, id).toContain("next man told");
    }
  });

  test("magnesium is left out where the metal is iron or was tested, and stays where it is magnesium", () => {
    expect(of("solid bushing", { case: { material: "EN-GJL-250" } })).not.toContain("magnesium burns");
    expect(of("solid bushing", { asked: { alloyTested: "yes" } })).not.toContain("magnesium burns");
    expect(of("solid bushing", { asked: { alloyTested: "yes" }, case: { material: "AZ91D" } })).toContain(
      "magnesium burns",
    );
  });

  test("no wall: no method has more than ten, a refused one none, a healthy port only those of loosening", () => {
    for (const kind of jointKinds)
      for (const { refused, cautions } of documentOf({ joint: { kind } }).remedies) {
        if (refused) expect(cautions).toEqual([]);
        expect(cautions.length).toBeLessThanOrEqual(10);
      }
    for (const id of remedyIds) expect(of(id, {}).length).toBeGreaterThan(1);
    expect(documentOf({ left: sound }).cautions.length).toBeLessThanOrEqual(6);
  });
});
