import { inventedFigures } from "../../mechanics/remedies/inventedFigures.ts";
import { type Leaves, leaves } from "../../mechanics/remedies/leaves.ts";
import { methodOf, type RemedyId, remedyIds } from "../../mechanics/remedies/method.ts";
import { estimateOf } from "../../mechanics/remedies/shopFigures.ts";
import { type JointKind, jointKinds, jointRows } from "../../mechanics/tables/jointKinds.ts";
import { type Caution, methodCautions } from "../../mechanics/tables/methodCautions.ts";
import { type MethodNumber, methodNumbers } from "../../mechanics/tables/methodEstimates.ts";
import { portCell } from "../../mechanics/tables/methodsByPort.ts";
import type { Fit, PortCell } from "../../mechanics/tables/portCells.ts";
import type { Span } from "../../mechanics/tables/shopEstimates.ts";
import { sourceText } from "../../mechanics/tables/source.ts";
import { cautionSentences } from "../words/cautionWords.ts";
import { methodWords } from "../words/methodWords.ts";
import { chipsWords, failureWord, ownerSentences, undoWords } from "../words/ownerWords.ts";
import { remedyNames } from "../words/remedyWords.ts";
import { conditionSentences } from "../words/repairWords.ts";

/** One page on a method, as Markdown, from the tables that the answers come from. `picture` is its file, where it has one. */
export function methodPage(number: MethodNumber, picture: string | null): string {
  const { name, what, rightWhen, needs } = methodWords[number];
  const ids = remedyIds.filter((it) => methodOf[it] === number);
  return [
    `# ${name}`,
    "",
    what,
    "",
    picture ? `![${name}: before and after, in section](${picture})` : (notDrawn[number] ?? ""),
    "",
    `**Right when.** ${rightWhen}`,
    "",
    `**Needs.** ${needs}`,
    "",
    ...sectionsOf(ids),
    "## Mind",
    "",
    ...cautionsOf(number, ids).map((it) => `- ${cautionSentences[it]}`),
    "- What the port closes has its own cautions; the answer to a case says them first.",
    "",
    "## Where",
    "",
    "The list of refusals comes before this table: the six first questions, too few turns, a crack and what the oil reaches may each refuse it in a case.",
    "",
    "| port | how it suits | why |",
    "|---|---|---|",
    ...jointKinds.filter((it) => it !== "other").map((it) => portRow(number, it)),
    "",
    "Every figure is an estimate to help a competent person, not an approval to drive; the maker's figures, local rules and licensed trades come first.",
    "",
  ].join("\n");
}

/** Why there is no picture of a method. */
const notDrawn: Partial<Record<MethodNumber, string>> = {
  R0: "There is no picture: in section nothing is changed.",
  R6: "There is no picture: how deep it cuts hangs on the plug that is bought, and no table of such plugs is at hand.",
  R13: "There is no picture: what closes it hangs on the part.",
  R15: "There is no picture: the plate is made for the part.",
  R16: "There is no picture: what is held by the stud hangs on the part.",
  R18: "There is no picture: nothing is changed.",
};

/** The list of all pages. */
export const methodsPage = (): string =>
  [
    "# What can be done about a torn port",
    "",
    "One page for each method, written from the tables that the answers come from.",
    "",
    ...methodNumbers.map((it) => `- [${methodWords[it].name}](${methodWords[it].file}.md): ${methodWords[it].what}`),
    "",
  ].join("\n");

/** Ways that are told alike stand under one heading. */
function sectionsOf(ids: readonly RemedyId[]): readonly string[] {
  const tables = ids.map((id) => ({ name: remedyNames[id], table: tableOf(id).join("\n") }));
  const told = [...new Set(tables.map(({ table }) => table))];
  return told.flatMap((table) => {
    const names = tables.filter((it) => it.table === table).map(({ name }) => name);
    return [...(told.length > 1 ? [`## ${names.join("; ")}`, ""] : []), table, ""];
  });
}

function tableOf(id: RemedyId): readonly string[] {
  const estimate = estimateOf(id, inventedFigures);
  const { hours, parts, kit, comesBack, until_days, undo, fails, chips } = estimate;
  const rows: readonly (readonly [string, string])[] = [
    ["leaves", leavesText(leaves[id])],
    ["hours besides the service", spanText(hours)],
    ["parts", spanText(parts) + (kit ? `; the tools, where they must be bought, ${spanText(kit)}` : "")],
    [
      "comes back within a year",
      comesBack
        ? `about ${percent(comesBack.likely)}, ${percent(comesBack.low)} to ${percent(comesBack.high)}`
        : "is taken out before",
    ],
    ["chips", chipsWords[chips]],
    ["lasts", until_days === null ? lasts(id) : `${until_days} days at the longest, then it is looked at or replaced`],
    ["undone", undo ? undoWords[undo] : "nothing to undo"],
    ["fails by", fails.map(failureWord).join("; ")],
    ["the owner is told", ownerSentences[id]],
    ["figures", sourceText(estimate.source)],
  ];
  return ["| | |", "|---|---|", ...rows.map(([what, text]) => `| ${what} | ${text} |`)];
}

function cautionsOf(number: MethodNumber, ids: readonly RemedyId[]): readonly Caution[] {
  return [
    ...new Set([...methodCautions[number], ...(ids.includes("lower torque") ? methodCautions["lower torque"] : [])]),
  ];
}

const fitWords: Readonly<Record<Fit, string>> = {
  fit: "fits",
  "with conditions": "with conditions",
  temporary: "for a time",
  refused: "refused",
  "not applicable": "does nothing there",
};

function portRow(number: MethodNumber, joint: JointKind): string {
  const cell = portCell(number, joint);
  if (jointRows[joint].structure && !bookOnly.includes(number))
    return `| ${joint} | refused | Only by the maker's procedure: the list of refusals allows nothing else there. |`;
  return cell ? `| ${joint} | ${fitWords[cell.fit]} | ${whyOf(cell)} |` : "";
}

/** A closure of what is left stays only where the healthy turns are back. */
const lasts = (id: RemedyId): string =>
  /longer plug|other seal/.test(id)
    ? "stays where the healthy turns are back; else it is looked at within a year"
    : "stays";

/** What leaves the thread of a structural joint as its maker made it. */
const bookOnly: readonly MethodNumber[] = ["R0", "R1", "R2", "R17"];

/** The conditions, or the reason where it was decided here. */
function whyOf({ conditions, source }: PortCell): string {
  const decided = source.firmness === "judgement" ? `${source.document} (judgement)` : "";
  return [...conditions.map((it) => conditionSentences[it]), decided].filter((it) => it !== "").join(" ");
}

const leavesText = ({ thread, plug, seal }: Leaves): string => `thread: ${thread}; plug: ${plug}; seal: ${seal}`;

const spanText = ({ low, high }: Span): string => (low === high ? String(low) : `${low} to ${high}`);

const percent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`;
