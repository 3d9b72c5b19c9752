import type { Remedy } from "../../mechanics/remedies/remedy.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import type { WeighedClosure } from "../../mechanics/remedies/weighedClosure.ts";
import { portLines, windowLines } from "../drawings/WindowLine.ts";
import { limitFigure, needFigure, rangeText, torqueFigure } from "../words/figures.ts";
import { allowedInstead, refusalSentence } from "../words/refusalWords.ts";
import { remedyNames } from "../words/remedyWords.ts";
import { answerSentence, leastOf, pullText } from "../words/windowWords.ts";
import type { AnswerDocument } from "./answerDocument.ts";
import { bestRemedy, sectionOf, windowOf } from "./pictures.ts";

const width = 76;

/** The answer for a terminal: the answer first, then the picture, then why, then what is assumed. */
export function answerLines(weighed: Weighed, document: AnswerDocument, withWorking: boolean): readonly string[] {
  const { asFound } = weighed;
  return [
    ...answerFirst(weighed),
    "",
    ...pictures(weighed),
    ...section("Why", document.asFound.because.slice(asFound.refused ? 1 : 0)),
    ...remedyLines(weighed, document),
    ...section("Assumed", assumedLines(document)),
    ...(withWorking ? workingSection(document) : []),
    ...section("Mind", document.cautions),
  ];
}

/** Two or three lines that may be read from under the lift. */
function answerFirst(weighed: Weighed): readonly string[] {
  const { asFound, health, book } = weighed;
  if (asFound.refused) return refusalLines(asFound);
  if (health.healthy) return [healthyLine(weighed, book !== null)];
  const best = bestRemedy(weighed);
  const found = answerSentence(asFound);
  if (!best) return wrapped(found, "");
  if (best.id === "lower torque") return [...wrapped(found, ""), ...roomierLine(weighed)];
  const pull = best.advice?.type === "pull" ? ` Pull to ${pullText(best.advice)}.` : "";
  return [...wrapped(`As found: ${found}`, ""), ...wrapped(`Would do: ${lowered(remedyNames[best.id])}.${pull}`, "")];
}

/** What has more room where the window as found is narrow. */
function roomierLine({ asFound, remedies }: Weighed): readonly string[] {
  const roomier =
    asFound.window?.narrow && remedies.find(({ window, advice }) => advice?.type === "pull" && !window?.narrow);
  if (!roomier || !roomier.window) return [];
  const range = rangeText(leastOf(roomier.window), roomier.window.limit_Nm);
  return wrapped(`That window is narrow. More room: ${lowered(remedyNames[roomier.id])}, ${range}.`, "");
}

function healthyLine({ asFound }: Weighed, hasBook: boolean): string {
  const pull = asFound.advice?.type === "pull" ? `: ${pullText(asFound.advice)}` : "";
  return hasBook ? `Healthy. Nothing special: the book figure${pull}.` : `Healthy. No book figure was given${pull}.`;
}

function refusalLines({ refused }: WeighedClosure): readonly string[] {
  if (!refused) return [];
  return [
    ...wrapped(`No make-do here: ${refusalSentence(refused.reason)}`, ""),
    ...wrapped(`Allowed instead: ${allowedInstead(refused).join("; ")}.`, ""),
    `Rule ${refused.rule}; override: ${refused.override}.`,
    ...(refused.overridden
      ? wrapped(
          `Taken on by ${refused.overridden.by}: ${refused.overridden.reason}. The figure is his, none of ours is given.`,
          "",
        )
      : []),
  ];
}

function pictures(weighed: Weighed): readonly string[] {
  const { portCase, asFound } = weighed;
  const best = bestRemedy(weighed);
  const shown: readonly (readonly [string, WeighedClosure])[] = [
    ["as found", asFound],
    ...(best && best.id !== "lower torque" ? [[lowered(remedyNames[best.id]), best] as const] : []),
  ];
  return shown.flatMap(([caption, closure]) => {
    const bar = windowOf(portCase, closure, caption);
    return [caption, ...portLines(sectionOf(portCase, closure), width), ...(bar ? windowLines(bar, width) : []), ""];
  });
}

function remedyLines({ remedies, asFound }: Weighed, document: AnswerDocument): readonly string[] {
  if (remedies.length === 0) return [];
  const allRefused = remedies.every(({ refused }) => refused && refused.rule === asFound.refused?.rule);
  if (allRefused) return [];
  const rows = remedies.flatMap((remedy, i) =>
    remedy.id === "lower torque" ? [] : remedyRow(remedy, document.remedies[i]?.checks ?? []),
  );
  return ["Also weighed", ...rows, ""];
}

function remedyRow(remedy: Remedy, checks: readonly string[]): readonly string[] {
  const name = `  ${remedyNames[remedy.id].padEnd(38)}`;
  const { window, advice, refused } = remedy;
  if (refused) return wrapped(`${name}no: ${refusalSentence(refused.reason)}`, " ".repeat(40));
  if (!window) return [name];
  const from = leastOf(window);
  if (!window.open) return [`${name}empty: needs ${needFigure(from)}, limit ${limitFigure(window.limit_Nm)} N·m`];
  const range = `${rangeText(from, window.limit_Nm)}${window.narrow ? ", narrow" : ""}`;
  const pull = advice?.type === "pull" ? `pull ${torqueFigure(advice.torque_Nm)}` : "no wrench here sets this";
  const row = `${name}${range}: ${pull}`;
  return [row, ...checks.flatMap((it) => wrapped(`    - ${it}`, "      "))];
}

/** Readings whose evidence nobody named stand on one line; every other assumption has its own. */
function assumedLines({ assumed }: AnswerDocument): readonly string[] {
  const ordinary = assumed.filter(({ reading }) => reading.endsWith(".how"));
  const means = [...new Set(ordinary.map(({ value }) => value))].map((means) => {
    const known = ordinary
      .filter(({ value }) => value === means)
      .map(({ reading }) => reading.slice(0, -".how".length));
    return `${known.join(", ")} by ${means}`;
  });
  return [
    ...assumed
      .filter((it) => !ordinary.includes(it))
      .map(({ reading, value, source }) => `${reading}: ${value} (${source})`),
    ...(means.length > 0 ? [`known by their ordinary means: ${means.join("; ")}`] : []),
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

const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

const section = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [title, ...lines.flatMap((it) => wrapped(`  ${it}`, "  ")), ""];

/** Broken at blanks to the width of the page, later lines indented. */
function wrapped(text: string, indent: string): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/(?<=\S)\s/)) {
    if (line !== "" && line.length + 1 + word.length > width) {
      lines.push(line);
      line = indent + word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return [...lines, line];
}
