import { readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { Distribution } from "../src/mechanics/quantity/distribution.ts";
import { referenceLevels } from "../src/mechanics/tables/levels.ts";
import { referenceRanges } from "../src/mechanics/tables/referenceRanges.ts";
import { sourceText } from "../src/mechanics/tables/source.ts";
import { writtenRange } from "../src/sheets/caseForm/overrides.ts";

const path = new URL("../docs/method.md", import.meta.url);

/** The document's table must be the tables of the code; UPDATE_DOCS=1 writes it. */
function held(name: string, rows: readonly string[]): void {
  const [before = "", rest = ""] = readFileSync(path, "utf8").split(`<!-- ${name} -->\n`);
  const [table, after = ""] = rest.split(`<!-- /${name} -->`);
  const wanted = `\n${rows.join("\n")}\n\n`;
  if (process.env["UPDATE_DOCS"] === "1")
    writeFileSync(path, `${before}<!-- ${name} -->\n${wanted}<!-- /${name} -->${after}`);
  else expect(table).toBe(wanted);
}

test("docs/method.md lists every reference range as it is", () => {
  const rows = Object.entries(referenceRanges).map(
    ([name, { distribution, unit, source }]) =>
      `| ${name} | ${inWords(distribution)} | ${unit.symbol || "1"} | ${sourceText(source)} |`,
  );
  held("ranges", ["| name | distribution | unit | why |", "|---|---|---|---|", ...rows]);
});

test("docs/method.md lists every level as it is", () => {
  const rows = Object.entries(referenceLevels).map(
    ([name, { value, source }]) => `| ${name} | ${value} | ${sourceText(source)} |`,
  );
  held("levels", ["| name | value | why |", "|---|---|---|", ...rows]);
});

function inWords(distribution: Distribution): string {
  const kind = distribution.type === "cut" ? `${distribution.of.type}, cut` : distribution.type;
  const figures = Object.entries(writtenRange(distribution)).map(
    ([key, value]) => `${key} ${Number(Number(value).toPrecision(4))}`,
  );
  return `${kind}: ${figures.join(", ")}`;
}
