import { type Entry, entryId } from "../../journal/entry.ts";
import type { Fact } from "../../journal/facts/fact.ts";
import type { PortId } from "../../journal/facts/ids.ts";
import { gates } from "../../journal/job/gates.ts";
import type { JobSheet } from "../../journal/job/jobSheet.ts";
import type { OwnerCard } from "../../journal/ownerCards.ts";
import { photosNamed } from "../../journal/photosNamed.ts";
import { type Instruments, torqueEvidence } from "../../journal/shop/instruments.ts";
import type { PortNoted } from "../../journal/shop/machines.ts";
import type { Shop } from "../../journal/shop/shop.ts";
import { standingOf } from "../../journal/views/standing.ts";
import { levelsWith } from "../../mechanics/tables/levels.ts";
import { type ActName, actTitles, groupTitles } from "../words/actWords.ts";
import { evidenceWords } from "../words/evidenceWords.ts";
import { aboutWhat, factSentence } from "../words/factSentences.ts";
import { type Names, namesIn } from "../words/journalNames.ts";
import { stillNoticed } from "../words/noticeWords.ts";
import type { About } from "./act.ts";
import { actOf, offered } from "./acts.ts";
import { type NextShown, nextShown } from "./nextShown.ts";
import { openNotices } from "./noticeActs.ts";
import { gateSentence, type JobOnWall, jobOnWall, type PortOnWall } from "./standingShown.ts";

/** A tap that opens the form of one act; `shut` is why a gate forbids it now. */
export type ActTap = { readonly act: ActName; readonly word: string; readonly shut: string | null };

/** Something that facts are written about, with its taps. */
export type Subject = {
  readonly about: About;
  readonly called: string;
  readonly also: string | null;
  readonly wall: PortOnWall | null;
  readonly state: string | null;
  readonly first: readonly ActTap[];
  readonly more: readonly { readonly title: string; readonly taps: readonly ActTap[] }[];
  /** Whether it can be weighed, and where that is tapped: beside what comes first, behind it, or not at all. */
  readonly weigh: "first" | "behind" | null;
};

/** A line of the log. */
export type LogShown = {
  readonly entry: string;
  readonly who: string;
  readonly at: string;
  readonly about: string | null;
  readonly sentence: string;
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

export type JobShown = {
  readonly wall: JobOnWall;
  /** Whether the machine is or was in the workshop: of one that somebody called about nothing is known. */
  readonly here: boolean;
  readonly cameFor: string | null;
  /** Whose it is, from the card beside the journal; null where there is none. */
  readonly owner: { readonly name: string; readonly telephone: string | null; readonly plate: string | null } | null;
  readonly next: NextShown | null;
  readonly subjects: readonly Subject[];
  readonly log: readonly LogShown[];
};

/** One job with all that can be written about it, and its log, the latest first. `entries` are those of the job, in journal order. */
export function jobShown(
  sheet: JobSheet,
  entries: readonly Entry[],
  shop: Shop,
  now: string,
  card: OwnerCard | null = null,
): JobShown {
  const names = namesIn(shop, sheet);
  const wall = jobOnWall(standingOf(sheet, now), sheet, shop, now);
  const job: Job = { sheet, wall, names, now };
  const here = sheet.stage !== "enquiry" && sheet.stage !== "booked";
  const gone = here && sheet.stage !== "open";
  const open = openNotices(sheet).length;
  const whole = subject(
    job,
    machine,
    wall.machine,
    open > 0 ? stillNoticed(open) : null,
    gone ? "gone" : sheet.stage === "enquiry" ? "enquiry" : null,
  );
  // Of a machine that has gone nothing is done at a port before it is looked at.
  const subjects = gone ? [whole, ...subjectsOf(job)] : [...subjectsOf(job), whole];
  return {
    wall,
    here,
    cameFor: sheet.cameFor,
    owner: card && {
      name: card.name,
      telephone: card.telephone ?? null,
      plate: card.plates.find((it) => it.machine === sheet.machine)?.plate ?? null,
    },
    next: nextShown(sheet, wall, names, now),
    subjects: subjects.toSorted((a, b) => placeOf(a) - placeOf(b)),
    log: logShown(entries, shop, names),
  };
}

const machine: About = { type: "machine" };
const ofUnit = (unit: string): About => ({ type: "unit", unit });

/** What nobody may walk away from is under the thumb first, and what asks for nothing last. */
const placeOf = ({ wall, first }: Subject): number => (wall?.alarm ? 0 : first.length > 0 ? 1 : 2);

type Job = { readonly sheet: JobSheet; readonly wall: JobOnWall; readonly names: Names; readonly now: string };

/** Units with their ports above them, then ports that belong to no unit that was named. */
function subjectsOf(job: Job): readonly Subject[] {
  const units = Object.values(job.sheet.units);
  const known = units.flatMap(({ is }) => is?.ports ?? []);
  const strays = Object.keys(job.sheet.ports).filter((id) => !known.some(({ port }) => port === id));
  return [
    ...units.flatMap(({ unit, is, fluid }): Subject[] => [
      ...(is?.ports ?? []).map((it) => portSubject(job, it.port, it)),
      ...(is?.holdsFluid === false
        ? []
        : [
            subject(job, ofUnit(unit), job.names.unit(unit), is?.expected ? `should hold ${is.expected}` : null, fluid),
          ]),
    ]),
    ...strays.map((it) => portSubject(job, it, null)),
  ];
}

function portSubject(job: Job, port: string, is: PortNoted | null): Subject {
  const { state = "unknown", heldForNow = null } = job.sheet.ports[port as PortId] ?? {};
  return subject(
    job,
    { type: "port", port },
    job.names.port(port),
    is?.thread ?? null,
    heldForNow ? "held for now" : is?.closedBy === "cap" ? "cap" : state,
  );
}

function subject(
  job: Job,
  about: About,
  called: string,
  also: string | null,
  state: Parameters<typeof offered>[1],
): Subject {
  const { first, more } = offered(about.type, state);
  const tap = (act: ActName): ActTap => ({ act, word: actTitles[act], shut: shut(job, act, about) });
  const { ports, units } = job.wall;
  const unit = about.type === "unit" ? units.find((it) => it.unit === about.unit) : undefined;
  return {
    about,
    called,
    also,
    wall: (about.type === "port" && ports.find(({ port }) => port === about.port)) || null,
    state: unit ? `${unit.state}${unit.stop ? `; STOP: ${unit.stop}` : ""}` : null,
    first: first.map(tap),
    more: more.map(({ group, acts }) => ({ title: groupTitles[group], taps: acts.map(tap) })),
    // What was only just counted is what is weighed.
    weigh: about.type !== "port" || state === "cap" ? null : first.includes("turns") ? "first" : "behind",
  };
}

/** Why a gate would stop this act as things stand; asked where nothing that is typed can change it. */
function shut({ sheet, names, now }: Job, act: ActName, about: About): string | null {
  const fact =
    act === "drained" && about.type === "unit"
      ? { type: "UnitDrained", unit: about.unit }
      : act === "filled" && about.type === "unit"
        ? { type: "UnitFilled", unit: about.unit }
        : act === "released"
          ? { type: "MachineReleased" }
          : null;
  if (!fact) return null;
  const refusals = gates(sheet, fact as unknown as Fact, { by: "" as never, at: now });
  return refusals.length === 0 ? null : refusals.map((it) => gateSentence(it, names)).join("; ");
}

function logShown(entries: readonly Entry[], { instruments }: Shop, names: Names): readonly LogShown[] {
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
        ? ofUnit(fact.unit)
        : machine;
  return { ...found, about };
}
