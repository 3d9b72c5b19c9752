import { oddsAt } from "../../mechanics/joint/window.ts";
import type { Remedy } from "../../mechanics/remedies/remedy.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import type { WeighedClosure } from "../../mechanics/remedies/weighedClosure.ts";
import { portLines, windowLines } from "../drawings/window/WindowLine.ts";
import { limitFigure, needFigure, pullFigure, rangeText } from "../words/figures.ts";
import { measureFirstSentence, measurementSentence, nextSentence, sharesText } from "../words/measurementWords.ts";
import { closesWord, stripsWord } from "../words/oddsWords.ts";
import { readingWord } from "../words/readingWords.ts";
import { refusalSentence } from "../words/refusalWords.ts";
import { remedyNames } from "../words/remedyWords.ts";
import { answerSentence, leastOf } from "../words/windowWords.ts";
import type { AnswerDocument } from "./answerDocument.ts";
import { answerFirst } from "./answerFirst.ts";
import { sectionOf, windowOf } from "./pictures.ts";
import { remedyBeside } from "./remedyShown.ts";
import { repairLines } from "./repairLines.ts";
import { width, wrapped } from "./wrapped.ts";

/** The answer for a terminal: the answer first, then the picture, then why, then what is assumed. */
export function answerLines(
  weighed: Weighed,
  document: AnswerDocument,
  at_Nm: readonly number[],
  withWorking: boolean,
): readonly string[] {
  const { asFound, health, book } = weighed;
  const first = answerSentence(asFound);
  const why = document.asFound.because.filter((it) => it !== first).slice(asFound.refused || health.healthy ? 1 : 0);
  const nothingSpecial = health.healthy && book !== null;
  return [
    ...answerFirst(weighed).flatMap((it) => wrapped(it, "")),
    "",
    ...(nothingSpecial ? [] : pictures(weighed)),
    ...section("Why", why),
    ...section("Odds", oddsLines(weighed, at_Nm)),
    ...section("Measure next", measureNextLines(weighed, withWorking)),
    ...remedyLines(weighed, document),
    ...repairLines(weighed, withWorking),
    ...(nothingSpecial ? [] : section("Assumed", assumedLines(document))),
    ...(withWorking ? workingSection(document) : []),
    ...section("Mind", document.cautions),
  ];
}

/** What to measure next; with the working, every reading and where the spread comes from. */
function measureNextLines({ next, missing }: Weighed, withWorking: boolean): readonly string[] {
  const { measurements, shares } = next;
  const sentence = nextSentence(measurements);
  const first = missing.map(measureFirstSentence);
  if (!withWorking) return [...(sentence ? [sentence] : []), ...first.slice(0, 2)];
  const from = shares.length > 0 ? [`The spread of the strip torque comes from: ${sharesText(shares)}.`] : [];
  return [...measurements.map(measurementSentence), ...first, ...from];
}

/** What is drawn, each with its caption: the port as found, and what would be done beside it. */
function shown(weighed: Weighed): readonly (readonly [caption: string, closure: WeighedClosure])[] {
  const beside = remedyBeside(weighed);
  return [["As found", weighed.asFound], ...(beside ? [[remedyNames[beside.id], beside] as const] : [])];
}

function pictures(weighed: Weighed): readonly string[] {
  return shown(weighed).flatMap(([caption, closure]) => {
    const { portCase } = weighed;
    const bar = windowOf(portCase, closure, caption);
    const lines = bar ? windowLines(bar, width).filter((it) => it !== caption) : [];
    return [caption, ...portLines(sectionOf(portCase, closure), width), ...lines, ""];
  });
}

/** The odds at the torques that were asked for, of what is shown. */
function oddsLines(weighed: Weighed, at_Nm: readonly number[]): readonly string[] {
  return shown(weighed).flatMap(([caption, { window }]) =>
    window && at_Nm.length > 0
      ? [
          `${caption}:`,
          ...at_Nm.map(
            (torque_Nm) =>
              `  ${torque_Nm} N·m: ${stripsWord(oddsAt(window.strips, torque_Nm))}, ${closesWord(oddsAt(window.closes, torque_Nm))}`,
          ),
        ]
      : [],
  );
}

function remedyLines({ remedies, asFound }: Weighed, document: AnswerDocument): readonly string[] {
  const others = remedies.flatMap((remedy, i) => (remedy.id === "lower torque" ? [] : [[remedy, i] as const]));
  if (others.every(([{ refused }]) => refused && refused.rule === asFound.refused?.rule)) return [];
  const told = new Set<string>();
  return [
    "Also weighed",
    ...others.flatMap(([remedy, i]) => {
      const checks = (document.remedies[i]?.checks ?? []).filter((it) => !told.has(it));
      for (const check of checks) told.add(check);
      return remedyRow(remedy, checks);
    }),
    "",
  ];
}

function remedyRow(remedy: Remedy, checks: readonly string[]): readonly string[] {
  const row = `  ${remedyNames[remedy.id].padEnd(38)}${remedyVerdict(remedy)}`;
  return [...wrapped(row, " ".repeat(40)), ...checks.flatMap((it) => wrapped(`    - ${it}`, "      "))];
}

function remedyVerdict({ window, advice, refused }: Remedy): string {
  if (refused) return `no: ${refusalSentence(refused.reason)}`;
  if (!window) return "";
  const from = leastOf(window);
  if (!window.open) return `empty: needs ${needFigure(from)}, limit ${limitFigure(window.limit_Nm)} N·m`;
  const range = `${rangeText(from, window.limit_Nm)}${window.narrow ? ", narrow" : ""}`;
  return `${range}: ${advice?.type === "pull" ? `pull ${pullFigure(advice.torque_Nm)}` : "no wrench here"}`;
}

/** Readings whose evidence nobody named stand on one line; every other assumption has its own. */
function assumedLines({ assumed }: AnswerDocument): readonly string[] {
  const ordinary = assumed.filter(({ reading }) => reading.endsWith(".how"));
  const means = [...new Set(ordinary.map(({ value }) => value))].map((means) => {
    const known = ordinary
      .filter(({ value }) => value === means)
      .map(({ reading }) => readingWord(reading.slice(0, -".how".length)));
    return `${known.join(", ")} by ${means}`;
  });
  return [
    ...assumed
      .filter((it) => !ordinary.includes(it))
      .map(({ reading, value, source }) => `${readingWord(reading)}: ${value}; ${source}`),
    ...(means.length > 0 ? [`known as usual: ${means.join("; ")}`] : []),
  ];
}

function workingSection(document: AnswerDocument): readonly string[] {
  return [
    "Working (middle of every range; the window itself convolves the same terms)",
    ...document.working.flatMap(({ formula, substituted, result, source }) => [
      `  ${formula}`,
      `      = ${substituted} = ${result}`,
      `      ${source}`,
    ]),
    "",
  ];
}

const section = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [title, ...lines.flatMap((it) => wrapped(`  ${it}`, "  ")), ""];
