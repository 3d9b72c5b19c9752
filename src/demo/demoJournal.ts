import { type Entry, inJournalOrder } from "../journal/entry.ts";
import type { OwnerCard } from "../journal/ownerCards.ts";
import { entryFrom } from "../journal/parse.ts";
import { job0231, job0299 } from "./jobs/healthyPorts.ts";
import { job0244, job0260 } from "./jobs/longerPlugAndBushings.ts";
import { job0301 } from "./jobs/oneStepUp.ts";
import { job0271, job0340 } from "./jobs/sealants.ts";
import { job0288, job0315, job0377 } from "./jobs/testsAndCoils.ts";
import { enquiry, job0229, job0405, job0412, job0413 } from "./jobs/today.ts";
import { machineLines, ownersOfDemo } from "./machines.ts";
import { calendarOf, type Line } from "./script.ts";
import { cures, weigherOf } from "./weighing.ts";
import { workshopLines, workshopOfDemo } from "./workshop.ts";

/**
 * The invented workshop as a journal, as it stands at `now`: thirteen jobs of the last year, three of them open. Torques,
 * windows and cure times that are figures of ours come from the engine, on the day of each job. Nothing in it is real.
 */
export function demoJournal(
  now: string,
  engine: string,
): { readonly entries: readonly Entry[]; readonly cards: readonly OwnerCard[] } {
  const calendar = calendarOf(now);
  const weigh = weigherOf(calendar, engine);
  const lines: readonly Line[] = [
    ...workshopLines(calendar),
    ...machineLines(),
    ...job0229(calendar),
    ...job0231(calendar, weigh),
    ...job0244(calendar, weigh),
    ...job0260(calendar, weigh),
    ...job0271(calendar, weigh, cures),
    ...job0288(calendar, weigh),
    ...job0299(calendar, weigh),
    ...job0301(calendar),
    ...job0315(calendar, weigh),
    ...job0340(calendar, weigh, cures),
    ...job0377(calendar, weigh),
    ...job0405(calendar, weigh),
    ...job0412(calendar, weigh),
    ...job0413(weigh),
    ...enquiry,
  ];
  const timed = lines.map((line, i) => ({ line, at: calendar.instant(line.when), i }));
  timed.sort((a, b) => Date.parse(a.at) - Date.parse(b.at) || a.i - b.i);
  const numbers = new Map<string, number>();
  const entries = timed.map(({ line: { job, device, by, fact }, at }, i) => {
    const number = (numbers.get(device) ?? 0) + 1;
    numbers.set(device, number);
    return entryFrom({ workshop: workshopOfDemo, device, number, clock: i + 1, at, by, job, fact });
  });
  const cards = ownersOfDemo.map(({ owner, name, machine, plate }, i) => ({
    owner,
    name,
    plates: [{ machine, plate }],
    clock: i + 1,
    device: "bench",
  }));
  return { entries: entries.toSorted(inJournalOrder), cards: cards as unknown as readonly OwnerCard[] };
}
