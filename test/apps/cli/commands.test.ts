import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import * as z from "zod/mini";
import { caseSchema } from "../../../src/sheets/caseForm/caseSchema.ts";
import { exampleCase } from "../../../src/sheets/caseForm/exampleCase.ts";
import { caseTemplate } from "../../../src/sheets/caseForm/template.ts";
import { changedCase } from "../../mechanics/remedies/changedCase.ts";
import { documentOf, turnsleft, turnsleftProcess, typed } from "./turnsleft.ts";

const example = "examples/chain-case-level.json";
const commands = ["weigh", "photo", "limits", "strip", "torque", "convert", "start"];
const scratch = mkdtempSync(join(tmpdir(), "turnsleft-"));
afterAll(() => rmSync(scratch, { recursive: true }));

describe("every command", () => {
  test.each(commands)("%s --help shows an example that runs, plainly and as JSON", (command) => {
    const { status, stdout, stderr } = turnsleft([command, "--help"]);
    expect([status, stderr]).toEqual([0, ""]);
    const line = /Example:\n {2}turnsleft (.+)\n/.exec(stdout)?.[1] ?? "";
    expect(line).toMatch(new RegExp(`^${command}`));
    const plain = turnsleftProcess(typed(line));
    expect([plain.status, plain.stderr]).toEqual([0, ""]);
    expect(plain.stdout.trim()).not.toBe("");
    expect(documentOf(typed(line))).toBeTypeOf("object");
  });

  test("the program itself has one, and says its version", () => {
    const { status, stdout } = turnsleft(["--help"]);
    expect(status).toBe(0);
    const line = /Example:\n {2}turnsleft (.+)\n/.exec(stdout)?.[1] ?? "";
    expect(turnsleft(typed(line)).status).toBe(0);
    const { version } = JSON.parse(readFileSync(new URL("../../../package.json", import.meta.url), "utf8"));
    expect(turnsleft(["--version"]).stdout.trim()).toBe(version);
    expect(documentOf(["weigh", example]).engine).toBe(version);
  });

  test("stands in the list of the program", () => {
    const { stdout } = turnsleft(["--help"]);
    for (const command of commands) expect(stdout).toMatch(new RegExp(`^  ${command} `, "m"));
  });
});

describe("weigh", () => {
  test("prints the same bytes for the same case, from a file and from standard input", () => {
    const [file, again] = [turnsleft(["weigh", example, "--json"]), turnsleft(["weigh", example, "--json"])];
    const piped = turnsleft(["weigh", "-", "--json"], JSON.stringify(exampleCase));
    expect(again.stdout).toBe(file.stdout);
    expect(piped.stdout).toBe(file.stdout);
  });

  test("a refusal is an answer: exit 0, and no torque in the text", () => {
    const refused = JSON.stringify(changedCase({ joint: { kind: "spark plug" } }));
    const { status, stdout, stderr } = turnsleft(["weigh", "-", "--working", "--at", "10"], refused);
    expect([status, stderr]).toEqual([0, ""]);
    expect(stdout).toMatch(/^Refused\. /);
    expect(stdout).not.toMatch(/N·m|lbf/);
  });

  test("--at adds its torques to the ladder, in the document and in the text", () => {
    const { strips } = documentOf(["weigh", example, "--at", "7.5,33"]).asFound.window;
    const torques = strips.map((it: { torque_Nm: number }) => it.torque_Nm);
    const ladder = documentOf(["weigh", example]).asFound.window.strips.map(
      (it: { torque_Nm: number }) => it.torque_Nm,
    );
    expect(torques.filter((it: number) => !ladder.includes(it))).toEqual([7.5, 33]);
    expect(turnsleft(["weigh", example, "--at", "7.5,33"]).stdout).toContain("7.5 N·m: ");
  });

  test("--working prints formulas with their sources", () => {
    expect(turnsleft(["weigh", example, "--working"]).stdout).toContain("FED-STD-H28/2B");
    expect(turnsleft(["weigh", example]).stdout).not.toContain("FED-STD-H28/2B");
  });

  test("--svg writes the picture beside the answer, which stays one JSON document", () => {
    const file = join(scratch, "port.svg");
    const { asFound } = documentOf(["weigh", example, "--svg", file]);
    expect(asFound.window.open).toBe(true);
    const svg = readFileSync(file, "utf8");
    expect(svg).toMatch(/^<svg [\s\S]*<\/svg>\s*$/);
    expect(svg).toContain('xmlns="http://www.w3.org/2000/svg"');
  });

  test("--template prints the empty case, --schema its JSON Schema", () => {
    expect(JSON.parse(turnsleft(["weigh", "--template"]).stdout)).toEqual(caseTemplate);
    expect(documentOf(["weigh", "--template"])).toEqual(caseTemplate);
    expect(JSON.parse(turnsleft(["weigh", "--schema"]).stdout)).toEqual(z.toJSONSchema(caseSchema));
  });

  test("a template filled in with no more than is required is weighed", () => {
    const form = JSON.parse(turnsleft(["weigh", "--template"]).stdout);
    form.joint.kind = "gear case level";
    form.thread = "M20x1.5";
    form.case.material = "cast aluminium";
    form.left.turns = "4";
    const { asFound, assumed } = documentOf(["weigh", "-"], JSON.stringify(form));
    expect(asFound.refused.rule).toBe("13 not asked");
    form.asked = exampleCase.asked;
    const answered = documentOf(["weigh", "-"], JSON.stringify(form));
    expect(answered.asFound.refused).toBeNull();
    expect(answered.assumed.length).toBe(assumed.length);
    expect(answered.assumed.map((it: { reading: string }) => it.reading)).toContain("seal.kind");
  });

  test("a case without a day takes the clock's, and says so where a calibration hangs on it", () => {
    const readings = (changes: Record<string, unknown>): string[] =>
      documentOf(["weigh", "-"], JSON.stringify(changedCase(changes))).assumed.map(
        (it: { reading: string }) => it.reading,
      );
    expect(readings({ today: undefined })).toContain("today");
    expect(readings({ today: undefined, wrenches: [] })).not.toContain("today");
    expect(readings({})).not.toContain("today");
  });
});
