import type { Entry } from "../../journal/entry.ts";
import type { Fact } from "../../journal/facts/fact.ts";
import type { PortId } from "../../journal/facts/ids.ts";
import { gates } from "../../journal/job/gates.ts";
import type { JobSheet } from "../../journal/job/jobSheet.ts";
import type { OwnerCard } from "../../journal/ownerCards.ts";
import type { PortNoted } from "../../journal/shop/machines.ts";
import type { Shop } from "../../journal/shop/shop.ts";
import { standingOf } from "../../journal/views/standing.ts";
import { toHaveHere } from "../../journal/views/toHaveHere.ts";
import { type ActName, actTitles, groupTitles } from "../words/actWords.ts";
import { shelfSentence } from "../words/bookedWords.ts";
import { type Names, namesIn } from "../words/journalNames.ts";
import { stillNoticed } from "../words/noticeWords.ts";
import type { About } from "./act.ts";
import { offered } from "./acts.ts";
import { type LogShown, logShown } from "./logShown.ts";
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

export type JobShown = {
  readonly wall: JobOnWall;
  /** Whether the machine is or was in the workshop: of one that somebody called about nothing is known. */
  readonly here: boolean;
  readonly cameFor: string | null;
  /** Whose it is, from the card beside the journal; null where there is none. */
  readonly owner: { readonly name: string; readonly telephone: string | null; readonly plate: string | null } | null;
  /** The job that this one follows. */
  readonly follows: string | null;
  /** What to have on the shelf before it comes; none once it is here. */
  readonly toHaveHere: readonly string[];
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
  earlier: Iterable<JobSheet> = [],
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
    gone ? "gone" : sheet.stage === "open" ? null : sheet.stage,
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
    follows: sheet.follows,
    toHaveHere:
      here || !sheet.machine ? [] : toHaveHere(sheet.machine, shop.machines, earlier).map((it) => shelfSentence(it)),
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
