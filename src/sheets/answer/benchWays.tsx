import { render } from "preact-render-to-string";
import type { Step } from "../../mechanics/quantity/working.ts";
import type { RemedyId } from "../../mechanics/remedies/method.ts";
import { oneOfEach } from "../../mechanics/remedies/ranking.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import type { WeighedClosure } from "../../mechanics/remedies/weighedClosure.ts";
import { BeforeAfter } from "../drawings/section/BeforeAfter.tsx";
import { commonView, SmallSection } from "../drawings/section/SmallSection.tsx";
import { commonTorque, WindowStrip } from "../drawings/window/WindowStrip.tsx";
import { WindowsCompared } from "../drawings/window/WindowsCompared.tsx";
import type { WindowProps } from "../drawings/window/windowProps.ts";
import { pullFigure } from "../words/figures.ts";
import { breakEvenSentence, comesBackText, ownerNames, priceText } from "../words/ownerWords.ts";
import { readyWords, standingWords } from "../words/wayWords.ts";
import type { AnswerDocument, RemedyDocument } from "./answerDocument.ts";
import { cautionsByPlace } from "./cautions.ts";
import { sectionAfter, sectionOf, windowOf } from "./pictures.ts";

/** One way of closing or repairing the port, as a card of the row. */
export type Way = {
  readonly id: RemedyId;
  readonly name: string;
  /** Its place in the order of what may be offered, of each method the best, from 1; null for the rest. */
  readonly place: number | null;
  readonly stands: "open" | "narrow" | "empty" | "refused" | "no window" | "not here";
  /** In a few words what it comes to. */
  readonly verdict: string;
  readonly price: string | null;
  readonly ready: string | null;
  readonly section: string | null;
  readonly strip: string | null;
};

/** What a card opens to. */
export type WayDetails = {
  readonly id: RemedyId;
  readonly name: string;
  readonly owner: string;
  readonly beforeAfter: string | null;
  readonly windows: string | null;
  readonly rows: readonly { readonly name: string; readonly lines: readonly string[] }[];
  readonly sums: readonly Step[];
};

type Drawn = { readonly closure: WeighedClosure | null; readonly document: RemedyDocument };

/** The row: what may be offered in the engine's order, of each method its best; the rest where somebody asks for all. */
export type WaysRow = {
  readonly ways: readonly Way[];
  /** How many ways there are, with those that the row leaves out. */
  readonly count: number;
};

/** The first of what may be offered, and the one that is open; or all ways, those that are not offered last. */
export function benchWays(
  weighed: Weighed,
  document: AnswerDocument,
  shown: { readonly open: RemedyId | null; readonly all: boolean },
): WaysRow {
  const { portCase, ranking } = weighed;
  const drawn = drawnWays(weighed, document);
  const offered: readonly string[] = oneOfEach(ranking).map(({ id }) => id);
  // What is another kind of a method that is in the row already comes after the row, before what is not offered.
  const order: readonly string[] = [...new Set([...offered, ...ranking.map(({ id }) => id)])];
  const after = (id: string): number => (order.includes(id) ? order.indexOf(id) : order.length);
  const row = drawn
    .toSorted((a, b) => after(a.document.id) - after(b.document.id))
    .filter(({ document: { id } }) => shown.all || id === shown.open || offered.slice(0, first).includes(id));
  const sections = new Map(drawn.map(({ document: { id } }) => [id, sectionAfter(id as RemedyId, weighed)]));
  const view = commonView([...sections.values()].filter((it) => it !== null));
  const windows = drawn.flatMap(({ closure, document: { name } }) => {
    const window = closure && windowOf(portCase, closure, name);
    return window ? [window] : [];
  });
  const to_Nm = commonTorque(windows.filter(({ need_Nm, limit_Nm }) => limit_Nm >= need_Nm));
  return { ways: row.map(card), count: drawn.length };

  function card({ closure, document: it }: Drawn): Way {
    const ranked = ranking.find(({ id }) => id === it.id);
    const section = sections.get(it.id) ?? null;
    const window = closure && windowOf(portCase, closure, it.name);
    const place = offered.indexOf(it.id);
    return {
      id: it.id as RemedyId,
      name: it.name,
      place: place < 0 ? null : place + 1,
      stands: standsOf(it),
      verdict: standingWords(it),
      price: ranked ? priceText(ranked) : null,
      ready: it.refused ? null : readyWords(it.readyAfter_h),
      section: section && render(<SmallSection section={section} view={view} caption={it.name} />),
      strip: window && render(<WindowStrip window={window} to_Nm={Math.max(to_Nm, shownTo(window))} />),
    };
  }
}

/** How many offers are drawn before somebody asks for all. */
const first = 6;

/** A card opened: the port before and after, what it needs, and what it costs. Null where there is no such way. */
export function wayDetails(id: RemedyId, weighed: Weighed, document: AnswerDocument): WayDetails | null {
  const { portCase, asFound } = weighed;
  const way = drawnWays(weighed, document).find((it) => it.document.id === id);
  if (!way) return null;
  const { closure, document: it } = way;
  const section = sectionAfter(id, weighed);
  const found = windowOf(portCase, asFound, "As found");
  const after = closure && windowOf(portCase, closure, it.name);
  const before = { caption: "As found", section: sectionOf(portCase, asFound) };
  return {
    id,
    name: it.name,
    owner: `${ownerNames[id]}. ${it.owner}`,
    beforeAfter: section && render(<BeforeAfter before={before} after={{ caption: it.name, section }} />),
    windows: after && found ? render(<WindowsCompared before={found} after={after} />) : null,
    rows: detailRows(id, weighed, it),
    sums: it.sums,
  };
}

function detailRows(id: RemedyId, weighed: Weighed, it: RemedyDocument): WayDetails["rows"] {
  const ranked = weighed.ranking.find((other) => other.id === id);
  const even = weighed.asFound.refused ? undefined : weighed.breakEvens.find((other) => other.id === id);
  const rows: readonly (readonly [string, readonly string[]])[] = [
    ["Comes to", [standingWords(it), ...(it.until ? [`Make-do, until ${it.until} at the longest.`] : [])]],
    ["Refused", it.refused ? [it.refused.reason, `Instead: ${it.refused.instead.join("; ")}.`] : []],
    ["Mind", mindOf(id, weighed, it)],
    ["Look first", it.checks],
    ["Has to hold", it.conditions],
    ["Needs", it.needs],
    ["Because", it.refused ? [] : it.because],
    ["Price (estimate)", [...(ranked ? [priceText(ranked)] : []), ...(even ? [breakEvenSentence(even)] : [])]],
    ["Time", it.hours ? [`${span(it.hours)} hours of work`, readyWords(it.readyAfter_h)] : []],
    ["Comes back", ranked && !weighed.asFound.refused ? [comesBackText(ranked)].filter((text) => text !== "") : []],
    ["Fails by", it.fails],
    ["Undone", it.undone ? [it.undone] : []],
    ["Chips", it.chips ? [it.chips] : []],
  ];
  return rows.filter(([, lines]) => lines.length > 0).map(([name, lines]) => ({ name, lines }));
}

/** The cautions that this way brings with it, besides those that stand with the answer. */
function mindOf(id: RemedyId, weighed: Weighed, { cautions }: RemedyDocument): readonly string[] {
  const remedy = weighed.remedies.find((it) => it.id === id);
  const sealed = remedy?.closure.heldOtherwise === true && remedy.window !== null;
  const all = cautionsByPlace(weighed);
  const said = all.filter(({ where }) => where === "port").map(({ text }) => text);
  const held = sealed ? all.filter(({ where }) => where === "sealant").map(({ text }) => text) : [];
  return [...held, ...cautions.filter((it) => !said.includes(it))];
}

/** Every remedy and repair with its closure, where it has one that was weighed. */
function drawnWays(weighed: Weighed, document: AnswerDocument): readonly Drawn[] {
  return document.remedies.map((it) => ({
    document: it,
    closure:
      weighed.remedies.find(({ id }) => id === it.id) ?? weighed.repairs.find(({ id }) => id === it.id)?.closed ?? null,
  }));
}

function standsOf({ refused, window, stands }: RemedyDocument): Way["stands"] {
  if (refused) return "refused";
  if (window) return window.open ? (window.narrow ? "narrow" : "open") : "empty";
  return stands === "does not apply" || stands === "does not fit" ? "not here" : "no window";
}

const shownTo = ({ need_Nm, limit_Nm }: WindowProps): number => (need_Nm > limit_Nm ? need_Nm : 0);

const span = ({ low, high }: { readonly low: number; readonly high: number }): string =>
  low === high ? pullFigure(low) : `${pullFigure(low)} to ${pullFigure(high)}`;
