import type { Typed } from "../sums/typed.ts";
import { plainLine, repairFieldWords, tagBegins } from "../words/repairActWords.ts";
import {
  type Act,
  type ActForm,
  type Around,
  actForm,
  ownWords,
  type PlainFact,
  photosIn,
  photosText,
  portOf,
} from "./act.ts";
import { portSheetOf } from "./methodChoice.ts";

const lines = ["line1", "line2", "line3", "line4", "line5"] as const;

/** The tag that hangs at the port: five lines that everybody can read, begun with what is known. */
export const tagAct: Act = {
  form: tagForm,
  read: tagged,
  texts: (fact) =>
    fact.type === "PortTagged"
      ? {
          ...Object.fromEntries(lines.map((name, i) => [name, fact.lines[i] ?? ""])),
          photos: photosText(fact.photos),
        }
      : null,
};

function tagForm(around: Around): ActForm {
  return actForm("tagged", Object.fromEntries(lines.map((it) => [it, ownWords])), repairFieldWords, {
    given: Object.fromEntries(knownLines(around).map((text, i) => [lines[i] ?? "", text])),
    photos: "last",
  });
}

/** What is known without asking: the thread with its plug, the pull, the seal, and where to ask. */
function knownLines(around: Around): readonly string[] {
  const sheet = portSheetOf(around);
  const units = Object.values(around.sheet.units).flatMap(({ is }) => is?.ports ?? []);
  const noted = units.find(({ port }) => port === sheet?.port)?.thread;
  const leaves = sheet?.torqued?.fitted ?? sheet?.repairs.at(-1)?.leaves;
  const set = sheet?.torqued?.set.replace("N·m", "Nm");
  return [
    tagBegins,
    [sheet?.thread?.thread ?? noted, leaves?.plug],
    [set && `SET ${set}`, leaves?.seal],
    [around.sheet.job],
  ]
    .map((it) =>
      [it]
        .flat()
        .filter((part) => part)
        .join(", "),
    )
    .map((it) =>
      it
        .normalize("NFKD")
        .replace("×", "x")
        .replaceAll(/[^ -~]/g, "")
        .slice(0, MOST)
        .trim(),
    )
    .filter((it) => it !== "");
}

/** A line of the tag is no longer, or it is not read at arm's length. */
const MOST = 28;

function tagged(it: Typed, around: Around): PlainFact {
  it.want("line1");
  const written = lines.flatMap((name) => {
    const line = it.text(name);
    if (line !== null && !/^[ -~]{1,28}$/.test(line)) it.refuse(name, plainLine);
    return line === null ? [] : [line];
  });
  return { type: "PortTagged", port: portOf(around), lines: written, photos: photosIn(it) };
}
