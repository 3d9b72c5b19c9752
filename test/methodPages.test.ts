import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { RemedyId } from "../src/mechanics/remedies/method.ts";
import { weigh } from "../src/mechanics/remedies/weigh.ts";
import { type MethodNumber, methodNumbers } from "../src/mechanics/tables/methodEstimates.ts";
import { methodPage, methodsPage } from "../src/sheets/answer/methodPage.ts";
import { methodSvg, portsSvg } from "../src/sheets/answer/methodSvg.tsx";
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
  R11: "cast thread",
  R12: "expanding bung",
  R14: "welded and re-cut",
  R17: "new part",
};

const deepHole = { case: { threadDepth: "26 mm", thinnestWall: "14 mm", roomBehind: "12 mm" } };
const weighed = weigh(given({ ...deepHole, asked: { alloyTested: "yes" } }));
/** Only the first thread is hurt: seven turns of eight. */
const firstHurt = weigh(given({ ...deepHole, left: { turns: "7" } }));
const pictureOf = (number: MethodNumber): string | null =>
  number === "R1" || drawn[number] ? `${methodWords[number].file}.svg` : null;

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

test("of a thread cast in resin no turn is said to carry", () => {
  const svg = methodSvg(weighed, "cast thread") ?? "";
  const after = svg.slice(svg.lastIndexOf("<g transform"));
  expect([/of resin/.test(after), /carry/.test(after)]).toEqual([true, false]);
});

test("the picture of a new plug is one too short in a sound hole, and one of the right length", () => {
  const sound = { left: { turns: undefined, goodFrom: "0 mm", goodTo: "26 mm", condition: "good", catch: "snug" } };
  const hole = (underHead: string) => weigh(given({ ...deepHole, ...sound, plug: { underHead } }));
  const svg = portsSvg(
    { weighed: hole("7 mm"), caption: "A foreign plug, too short" },
    { weighed: hole("13 mm"), caption: "New plug, the right length" },
  );
  held(`${methodWords.R1.file}.svg`, svg);
});

test.each(methodNumbers)("the page of %s has a picture, or says why not", (number) => {
  const page = methodPage(number, pictureOf(number));
  expect(page.includes("![") !== page.includes("There is no picture")).toBe(true);
});

test("the list names every page once", () => {
  held("README.md", methodsPage());
  const files = methodNumbers.map((it) => methodWords[it].file);
  expect(new Set(files).size).toBe(methodNumbers.length);
});
