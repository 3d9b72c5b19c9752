import { type Entry, entryId } from "../../journal/entry.ts";
import type { Fact } from "../../journal/facts/fact.ts";
import { photosNamed } from "../../journal/photosNamed.ts";
import { type Instruments, torqueEvidence } from "../../journal/shop/instruments.ts";
import type { Shop } from "../../journal/shop/shop.ts";
import { levelsWith } from "../../mechanics/tables/levels.ts";
import type { ActName } from "../words/actWords.ts";
import { evidenceWords } from "../words/evidenceWords.ts";
import { aboutWhat, factSentence } from "../words/factSentences.ts";
import type { Names } from "../words/journalNames.ts";
import type { About } from "./act.ts";
import { actOf } from "./acts.ts";

/** A line of the log. */
export type LogShown = {
  readonly entry: string;
  readonly who: string;
  readonly at: string;
  readonly about: string | null;
  readonly sentence: string;
  /** The range that it promised, in UTC. */
  readonly promise: { readonly from: string; readonly to: string } | null;
  /** Its photos by name, those of what was put in its place for a correction. */
  readonly photos: readonly string[];
  /** Why it counts no more; null while it stands. */
  readonly struck: string | null;
  /** The form by which it may be put right; null where it can only be withdrawn. */
  readonly corrects: {
    readonly act: ActName;
    readonly about: About;
    readonly texts: Readonly<Record<string, string>>;
  } | null;
};

/** The log of a job, the latest first. `entries` are those of the job, in journal order. */
export function logShown(entries: readonly Entry[], { instruments }: Shop, names: Names): readonly LogShown[] {
  const struck = new Map<string, string>();
  for (const { fact, by } of entries)
    if (fact.type === "EntryWithdrawn") struck.set(fact.entry, `withdrawn by ${names.person(by)}: ${fact.reason}`);
    else if (fact.type === "EntryCorrected")
      struck.set(
        fact.entry,
        `put right by ${names.person(by)}, ${factSentence(fact.is as Fact, names)}: ${fact.reason}`,
      );
  return entries.toReversed().map((entry) => ({
    entry: entryId(entry),
    who: names.person(entry.by),
    at: entry.at,
    about: aboutWhat(entry.fact, names),
    sentence: `${factSentence(entry.fact, names)}${claimed(entry, instruments)}`,
    promise: entry.fact.type === "JobBooked" ? { from: entry.fact.readyFrom, to: entry.fact.readyTo } : null,
    photos: photosNamed(entry.fact),
    struck: struck.get(entryId(entry)) ?? null,
    corrects: correctable(entry.fact),
  }));
}

/** What a pull is worth as evidence, where it is worth less than the figure says. */
function claimed({ fact, at }: Entry, instruments: Instruments): string {
  if (fact.type !== "PortTorqued") return "";
  const claims = torqueEvidence(fact, at.slice(0, 10), instruments, levelsWith({}));
  return claims === "in range and in date" || claims === "no wrench named" ? "" : ` (${evidenceWords[claims]})`;
}

function correctable(fact: Fact): LogShown["corrects"] {
  const found = actOf(fact);
  if (!found) return null;
  const about: About =
    "port" in fact && fact.port !== undefined
      ? { type: "port", port: fact.port }
      : "unit" in fact
        ? { type: "unit", unit: fact.unit }
        : { type: "machine" };
  return { ...found, about };
}
