import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type ServedUnit,
  type ServiceFinding,
  serviceClassesFromText,
  serviceFindings,
} from "../../../src/mechanics/fluid/serviceClass.ts";
import { type ServiceClass, serviceClasses } from "../../../src/mechanics/tables/apiClasses.ts";

const plain: ServedUnit = { hypoid: "no", yellowMetal: "no", limitedSlip: "no", makerAllows: [], inCase: null };
const unit = (known: Partial<ServedUnit>): ServedUnit => ({ ...plain, ...known });
const said = (found: readonly ServiceFinding[]) => found.map(({ level, reason }) => `${level}: ${reason}`);

// API 1560 as quoted; the blocks are judgement on it.
describe("service class against the unit", () => {
  test.each<[ServiceClass[], Partial<ServedUnit>, string[]]>([
    [["GL-5"], { yellowMetal: "yes" }, ["block: GL-5 on yellow metal"]],
    [["GL-5"], { yellowMetal: "yes", makerAllows: ["GL-5"] }, ["warn: GL-5 on yellow metal, allowed by the maker"]],
    [["GL-5"], { yellowMetal: "unknown" }, ["warn: yellow metal not known"]],
    [["GL-5"], { hypoid: "yes" }, []],
    [["GL-4"], { yellowMetal: "yes" }, ["note: class no longer verifiable"]],
    [["GL-4"], { hypoid: "yes" }, ["block: less than GL-5 on a hypoid", "note: class no longer verifiable"]],
    [
      ["GL-4"],
      { hypoid: "yes", makerAllows: ["GL-4"] },
      ["warn: less than GL-5 on a hypoid, allowed by the maker", "note: class no longer verifiable"],
    ],
    [["MT-1"], { hypoid: "yes" }, ["block: less than GL-5 on a hypoid"]],
    [["GL-1"], { hypoid: "unknown" }, ["warn: hypoid not known"]],
    [["GL-4", "GL-5"], {}, ["warn: both GL-4 and GL-5 claimed", "note: class no longer verifiable"]],
    [["GL-3"], {}, ["warn: class not in current use"]],
    [["GL-5"], { makerAllows: ["MT-1"] }, ["warn: none of the maker's classes"]],
    [[], {}, ["warn: no class on the label"]],
    [["GL-5"], { inCase: ["GL-5"] }, []],
    [["GL-5"], { inCase: ["MT-1"] }, ["warn: other class in the case"]],
    [["GL-5"], { inCase: [] }, ["warn: other class in the case"]],
    [["GL-5"], { hypoid: "yes", limitedSlip: "yes" }, ["warn: limited-slip additive is the axle maker's"]],
    [["GL-5"], { hypoid: "yes", limitedSlip: "unknown" }, ["note: limited slip not known"]],
  ])("%j in %j", (label, known, findings) => expect(said(serviceFindings(label, unit(known)))).toEqual(findings));

  test("with yellow metal and a hypoid every class is blocked until the maker decides", () => {
    for (const it of serviceClasses) {
      const found = serviceFindings([it], unit({ hypoid: "yes", yellowMetal: "yes" }));
      expect(said(found)).toContain("block: yellow metal and hypoid: the maker decides");
    }
  });

  test("what the maker allows is never blocked", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...serviceClasses),
        fc.constantFrom("yes", "no", "unknown" as const),
        fc.constantFrom("yes", "no", "unknown" as const),
        (it, hypoid, yellowMetal) => {
          const found = serviceFindings(
            [it],
            unit({ hypoid: hypoid as "yes", yellowMetal: yellowMetal as "yes", makerAllows: [it] }),
          );
          return found.every(({ level }) => level !== "block");
        },
      ),
    );
  });
});

describe("classes from text", () => {
  test.each([
    ["API GL-4/GL-5", ["GL-4", "GL-5"]],
    ["gl5", ["GL-5"]],
    ["GL-5, MT-1", ["GL-5", "MT-1"]],
    ["GL-5 and GL-5", ["GL-5"]],
    ["", []],
  ])("%j", (text, classes) => expect(serviceClassesFromText(text)).toEqual({ ok: true, classes }));

  test.each(["GL-4+", "GL-7", "LS", "GL"])("%j is no class", (given) =>
    expect(serviceClassesFromText(`GL-5 ${given}`)).toEqual({
      ok: false,
      problem: { type: "NoSuchClass", given, accepted: serviceClasses },
    }),
  );
});
