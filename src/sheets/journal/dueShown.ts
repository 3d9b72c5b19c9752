import type { JobSheet } from "../../journal/job/jobSheet.ts";
import type { Shop } from "../../journal/shop/shop.ts";
import { type DayOf, type DueThing, fallingDue } from "../../journal/views/fallingDue.ts";
import { levelsWith } from "../../mechanics/tables/levels.ts";
import { dueThingSentence } from "../words/dueThingWords.ts";
import { namesIn } from "../words/journalNames.ts";

/** One thing that falls due, in words. */
export type DueShown = {
  readonly on: string;
  readonly when: "overdue" | "today" | "to come";
  readonly machine: string | null;
  readonly sentence: string;
  /** The job that it comes from; null for tools and shelves. */
  readonly job: string | null;
};

/** What falls due, the earliest first. */
export function dueShown(sheets: Iterable<JobSheet>, shop: Shop, today: string, dayOf: DayOf): readonly DueShown[] {
  const all = [...sheets];
  const byJob = new Map(all.map((it) => [it.job, it]));
  return fallingDue(shop, all, today, dayOf, levelsWith({})).map((thing) => {
    const job = jobOf(thing);
    const sheet = byJob.get(job as never) ?? null;
    return {
      on: thing.on,
      when: thing.on < today ? "overdue" : thing.on === today ? "today" : "to come",
      machine: sheet?.machine ? namesIn(shop, sheet).machine(sheet.machine) : null,
      sentence: dueThingSentence(thing, sheet, namesIn(shop, sheet)),
      job,
    };
  });
}

const jobOf = (thing: DueThing): string | null => ("job" in thing ? thing.job : null);
