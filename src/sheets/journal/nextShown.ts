import type { JobId } from "../../journal/facts/ids.ts";
import type { JobSheet } from "../../journal/job/jobSheet.ts";
import { nextStep } from "../../journal/job/nextStep.ts";
import type { DueThing } from "../../journal/views/fallingDue.ts";
import type { ActName } from "../words/actWords.ts";
import { dueThingSentence } from "../words/dueThingWords.ts";
import type { Names } from "../words/journalNames.ts";
import { stepWords } from "../words/stepWords.ts";
import type { About } from "./act.ts";
import { openLooks } from "./afterActs.ts";
import { unanswered } from "./callActs.ts";
import type { JobOnWall } from "./standingShown.ts";

/** What is to be done next, and the form by which it is written down. */
export type NextShown = { readonly sentence: string; readonly act: ActName; readonly about: About };

/** The next step of a job: of the hand in the bay, else the answer to a caller, else a look that is due; null where only the hand knows. */
export function nextShown(sheet: JobSheet, wall: JobOnWall, names: Names, now: string): NextShown | null {
  const next = nextStep(sheet, now);
  if (next)
    return {
      sentence: wall.next ?? "",
      act: stepWords[next.step].act,
      about: next.port
        ? { type: "port", port: next.port }
        : next.unit
          ? { type: "unit", unit: next.unit }
          : { type: "machine" },
    };
  const today = now.slice(0, 10);
  const due = callDue(sheet, today) ?? lookDue(sheet, today);
  return (
    due && {
      sentence: dueThingSentence(due, sheet, names),
      act: due.type === "follow-up" ? "looked" : "answered",
      about: { type: "machine" },
    }
  );
}

function callDue(sheet: JobSheet, today: string): DueThing | null {
  const call = unanswered(sheet);
  return call && { type: "call to answer", on: today, job: sheet.job as JobId, words: call.words };
}

/** A look that is due, once the machine has gone. */
function lookDue(sheet: JobSheet, today: string): DueThing | null {
  const [look] = sheet.stage === "open" ? [] : openLooks(sheet);
  const on = look?.due ?? look?.on;
  if (!look || !on || on > today) return null;
  const notReached = look.state === "not reached";
  return { type: "follow-up", on, job: sheet.job as JobId, followUp: look.followUp, notReached };
}
