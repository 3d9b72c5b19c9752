import { weigh } from "../../mechanics/remedies/weigh.ts";
import { answerDocument } from "../../sheets/answer/answerDocument.ts";
import { answerLines } from "../../sheets/answer/answerLines.ts";
import { readCase } from "../../sheets/caseForm/caseDocument.ts";
import { exampleCase } from "../../sheets/caseForm/exampleCase.ts";
import { print } from "./print.ts";
import { engine } from "./version.ts";

/** Prints the answer for the example of the house, and how to go on from there. */
export function printExample(json: boolean): void {
  const read = readCase(exampleCase, null);
  if (!read.ok) throw new Error("the example does not read");
  const weighed = weigh(read.given);
  const document = answerDocument(weighed, read.ordinary, exampleCase, [], engine);
  print(json, document, [
    "A worked example: the level port of a compact loader's chain case, M20x1.5, hurt.",
    "",
    ...answerLines(weighed, document, [], false),
    "",
    ...howToGoOn,
  ]);
}

const howToGoOn = [
  "Your own port:",
  "  npx turnsleft weigh --template > port.json     an empty case with its questions",
  "  npx turnsleft weigh port.json                  what is left, what it carries, what can be done",
  "  npx turnsleft weigh port.json --working        how every figure was got",
  "  npx turnsleft weigh port.json --svg port.svg   the picture",
  "  npx turnsleft --help                           thread, limits, level, leak, cure, held and more",
];
