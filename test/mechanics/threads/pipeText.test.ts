import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { taperPipeSizes } from "../../../src/mechanics/tables/iso7.ts";
import { pipeSizes } from "../../../src/mechanics/tables/iso228.ts";
import { nptSizes } from "../../../src/mechanics/tables/nptSizes.ts";
import { nptThread } from "../../../src/mechanics/threads/nptThread.ts";
import { pipeThreadFromText } from "../../../src/mechanics/threads/pipeText.ts";

describe("pipe threads from text", () => {
  test.each([
    ["G 1/2", "G 1/2", null],
    ["G1/2", "G 1/2", null],
    ['g 1/2"', "G 1/2", null],
    ["G 1/2 A", "G 1/2", "A"],
    ["G1/2B", "G 1/2", "B"],
    ["G 1-1/4", "G 1 1/4", null],
    ["G 1", "G 1", null],
    ["R 1/2", "R 1/2", null],
    ["Rc 1/2", "Rc 1/2", null],
    ["RC1/2", "Rc 1/2", null],
    ["Rp 1/2", "Rp 1/2", null],
    ['RP1/2"', "Rp 1/2", null],
    ["rp 1-1/4", "Rp 1 1/4", null],
    ["1/2-14 NPT", "1/2-14 NPT", null],
    ["1/2 NPT", "1/2-14 NPT", null],
    ["NPT 1/2", "1/2-14 NPT", null],
    ["1-11.5 NPT", "1-11.5 NPT", null],
    ["1-11 1/2 NPT", "1-11.5 NPT", null],
    ["1 1/4 NPT", "1 1/4-11.5 NPT", null],
    ["1-1/4-11.5 npt", "1 1/4-11.5 NPT", null],
  ])("%j is %s of class %s", (text, designation, plugClass) => {
    const read = pipeThreadFromText(text);
    expect(read.ok && [read.thread.designation, read.plugClass]).toEqual([designation, plugClass]);
  });

  test.each([
    "",
    "G",
    "1/2",
    "R 1/2 A",
    "Rp 1/2 A",
    "M20x1.5",
    "1/4-20 UNC",
    "NPT",
    "1/2-14",
    "1/2 NPTF",
    "G 1/2 C",
    "G -1/2",
  ])("%j is no pipe thread", (text) =>
    expect(pipeThreadFromText(text)).toEqual({ ok: false, problem: { type: "not a pipe thread" } }),
  );

  test.each(["R", "Rc", "Rp"])("%s 5/8 names the sizes that threads of ISO 7-1 have", (kind) =>
    expect(pipeThreadFromText(`${kind} 5/8`)).toEqual({
      ok: false,
      problem: { type: "not a standard size", kind, accepted: taperPipeSizes.map(({ size }) => size) },
    }),
  );

  test("G 9/16 and 5/8 NPT are no standard sizes", () => {
    expect(pipeThreadFromText("G 9/16")).toMatchObject({ problem: { type: "not a standard size", kind: "G" } });
    expect(pipeThreadFromText("5/8 NPT")).toMatchObject({ problem: { type: "not a standard size", kind: "NPT" } });
  });

  test("1/2-18 NPT names its true pitch", () =>
    expect(pipeThreadFromText("1/2-18 NPT")).toEqual({
      ok: false,
      problem: { type: "not its pitch", designation: "1/2-14 NPT", threadsPerInch: 14 },
    }));

  test("reads the designation of every size", () => {
    const designations = [
      ...pipeSizes.map(({ size }) => `G ${size}`),
      ...taperPipeSizes.flatMap(({ size }) => [`R ${size}`, `Rc ${size}`, `Rp ${size}`]),
      ...nptSizes.map((it) => nptThread(it).designation),
    ];
    for (const designation of designations) {
      const read = pipeThreadFromText(designation);
      expect(read.ok && read.thread.designation).toBe(designation);
    }
  });

  test("answers any text at all", () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.stringMatching(/^(G|R|Rc|Rp|NPT)? ?\d?[ -]?\d\/?\d{0,2}(-\d\d)? ?(A|NPT)?$/)),
        (text) => {
          const read = pipeThreadFromText(text);
          return read.ok ? read.thread.P.value > 0 : read.problem.type !== undefined;
        },
      ),
    );
  });
});
