import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { RemedyId } from "../src/mechanics/remedies/method.ts";
import { weigh } from "../src/mechanics/remedies/weigh.ts";
import { type MethodNumber, methodNumbers } from "../src/mechanics/tables/methodEstimates.ts";
import { methodPage, methodsPage } from "../src/sheets/answer/methodPage.ts";
import { methodSvg } from "../src/sheets/answer/methodSvg.tsx";
import { methodWords } from "../src/sheets/words/methodWords.ts";
import { given } from "./mechanics/remedies/changedCase.ts";

/** The page as committed must be what the tables say; UPDATE_DOCS=1 writes it. Look at a changed picture first. */
function held(file: string, wanted: string): void {
  const path = new URL(`../docs/methods/${file}`, import.meta.url);
  if (process.env["UPDATE_DOCS"] === "1") {
    mkdirSync(new URL(".", path), { recursive: true });
    writeFileSync(path, wanted);
  } else expect(readFileSync(path, "utf8")).toBe(wanted);
}

/** The methods whose port can be drawn with a plug in it, each by the remedy that shows it best. */
const drawn: Partial<Record<MethodNumber, RemedyId>> = {
  R2: "first thread cleaned",
  R3: "longer plug",
  R4: "other seal: bonded seal",
  R5: "sealant, no washer",
  R7: "next size",
  R8: "wire coil",
  R9: "solid bushing",
  R10: "bonded bush",
  R14: "welded and re-cut",
};

const deepHole = { case: { threadDepth: "26 mm", thinnestWall: "14 mm", roomBehind: "12 mm" } };
const weighed = weigh(given({ ...deepHole, asked: { alloyTested: "yes" } }));
/** Only the first thread is hurt: seven turns of eight. */
const firstHurt = weigh(given({ ...deepHole, left: { turns: "7" } }));
const pictureOf = (number: MethodNumber): string | null => (drawn[number] ? `${methodWords[number].file}.svg` : null);

test.each(methodNumbers)(
  "the page of %s is what the tables say, and shows no number of a list and no key of the code",
  (number) => {
    const page = methodPage(number, pictureOf(number));
    held(`${methodWords[number].file}.md`, page);
    expect(page).not.toMatch(/\bR\d+\b|_Nm|null|undefined|\[object/);
    expect(page).toContain("not an approval to drive");
    const ofBrakes = page.split("\n").find((it) => it.startsWith("| brake")) ?? "";
    if (!["R0", "R1", "R17"].includes(number)) expect(ofBrakes).toMatch(/refused|does nothing there/);
  },
);

test.each(Object.entries(drawn))("the picture of %s is drawn from its sums", (number, id) => {
  const svg = methodSvg(number === "R2" ? firstHurt : weighed, id);
  expect(svg).not.toBeNull();
  held(`${methodWords[number as MethodNumber].file}.svg`, svg ?? "");
});

test("the list names every page once", () => {
  held("README.md", methodsPage());
  const files = methodNumbers.map((it) => methodWords[it].file);
  expect(new Set(files).size).toBe(methodNumbers.length);
});
