import type { Step } from "../../mechanics/quantity/working.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import { readingWord } from "../words/readingWords.ts";
import type { AnswerDocument } from "./answerDocument.ts";
import { casePageLines } from "./casePageLines.ts";
import { ownerLines } from "./ownerLines.ts";

/** A paper as paragraphs: each with its heading, if any, and its lines whole. */
export type Paragraph = { readonly heading: string | null; readonly lines: readonly string[] };

/** What stands one tap behind the answer. */
export type BenchPapers = {
  readonly owner: readonly Paragraph[];
  readonly casePage: readonly Paragraph[];
  readonly working: readonly Step[];
  readonly assumed: readonly { readonly reading: string; readonly value: string; readonly source: string }[];
};

export const benchPapers = (weighed: Weighed, { working, assumed }: AnswerDocument): BenchPapers => ({
  owner: paragraphs(ownerLines(weighed)),
  casePage: paragraphs(casePageLines(weighed)),
  working,
  assumed: assumed.map(({ reading, value, source }) => ({
    reading: reading.endsWith(".how")
      ? `${readingWord(reading.slice(0, -".how".length))}, known by`
      : readingWord(reading),
    value,
    source,
  })),
});

/**
 * The paragraphs of a paper that was broken into lines for a terminal. A line that stands further in than its heading belongs
 * to it; one still further in, or in a row's own indent, goes on with the line before.
 */
function paragraphs(lines: readonly string[]): readonly Paragraph[] {
  return blocks(lines).map((block) => {
    const [first = "", ...rest] = block;
    if (rest.length === 0 || !rest.every((it) => it.startsWith("  ")))
      return { heading: null, lines: [block.join(" ")] };
    const goesOn = rest[0]?.startsWith("   ") ? "   " : "    ";
    const whole: string[] = [];
    for (const line of rest) {
      if (whole.length > 0 && line.startsWith(goesOn)) whole.push(`${whole.pop()} ${line.trim()}`);
      else whole.push(line.trim());
    }
    return { heading: first, lines: whole };
  });
}

function blocks(lines: readonly string[]): readonly (readonly string[])[] {
  const found: string[][] = [[]];
  for (const line of lines) {
    if (line === "") found.push([]);
    else found.at(-1)?.push(line);
  }
  return found.filter((it) => it.length > 0);
}
