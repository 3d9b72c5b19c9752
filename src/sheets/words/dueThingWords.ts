import type { JobSheet } from "../../journal/job/jobSheet.ts";
import type { DueThing } from "../../journal/views/fallingDue.ts";
import { dueLines } from "./dueWords.ts";
import type { Names } from "./journalNames.ts";

/** What is to be done, in one sentence; day and machine stand beside it. */
export function dueThingSentence(thing: DueThing, sheet: JobSheet | null, names: Names): string {
  switch (thing.type) {
    case "follow-up": {
      const planned = sheet?.followUps.find(({ followUp }) => followUp === thing.followUp);
      const what = planned
        ? { call: "Call", message: "Write", look: "Look", service: "Look at the service" }[planned.way]
        : "Look";
      const about = planned?.port ? `${what} about ${names.port(planned.port)}` : what;
      return `${about}: is it dry?${thing.notReached ? " Not reached before." : ""}`;
    }
    case "make-do ends":
      return `${names.port(thing.port)}: the make-do ends; look at it or replace it.`;
    case "held for now":
      return `${names.port(thing.port)}: what holds it for now comes out; until then it does not run.`;
    case "calibration":
      return `${thing.instrument}: calibrate it; after this day it may tighten, it may not claim.`;
    case "shelf date":
      return `${thing.called}: shelf date.`;
    case "part arrives":
      return `Arrives: ${thing.words}`;
    case "also noticed":
      return `Also noticed: ${thing.words}`;
    case "promised":
      return thing.here ? "Promised to be ready." : "Promised to be ready, and not here yet.";
    case "call to answer":
      return `Answer the caller: ${thing.words}`;
    case "service":
      return `${names.unit(thing.unit)}: next service. ${dueLines(thing.due, null, { severe: null, looks: [] })[0] ?? ""}`.trim();
    default:
      return thing satisfies never;
  }
}
