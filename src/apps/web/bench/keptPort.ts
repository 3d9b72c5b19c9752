import { keep } from "../kit/saved.ts";
import { example, onBench, opened, way } from "./laidTexts.ts";

let keeping: ReturnType<typeof setTimeout> | undefined;
/** Whether something here is newer than what was kept: only then is it written, for another page may have kept more since. */
let unkept = false;

/** How long a hand rests before the port is kept: that takes a while, and a stepper is held. */
const keepAfter_ms = 1200;

/** Keeps the port when the hand rests: a timer that goes is not set again for every tap. */
export function keepSoon(): void {
  unkept = true;
  touched_ms = performance.now();
  keeping ??= setTimeout(keepRested, keepAfter_ms);
}

let touched_ms = 0;

function keepRested(): void {
  const rest_ms = touched_ms + keepAfter_ms - performance.now();
  if (rest_ms > 0) keeping = setTimeout(keepRested, rest_ms);
  else keepNow();
}

/** Keeps the port on the bench as it is typed. The worked example is nobody's port. */
export function keepNow(): void {
  clearTimeout(keeping);
  keeping = undefined;
  if (example.value || !unkept) return;
  unkept = false;
  keep("port", onBench());
}

/** Says that what lies on the bench is what was kept. */
export function asKept(): void {
  unkept = false;
}

for (const shown of [opened, way]) shown.subscribe(keepSoon);
// What was only just read is kept already.
asKept();
addEventListener("pagehide", keepNow);
document.addEventListener("visibilitychange", () => document.visibilityState === "hidden" && keepNow());
