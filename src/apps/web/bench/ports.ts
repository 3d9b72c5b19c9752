import { batch, signal } from "@preact/signals";
import { keep, kept } from "../kit/saved.ts";
import { changed, rest } from "./benchState.ts";
import { asKept, keepNow } from "./keptPort.ts";
import { example, fields, type LaidPort, laid, onBench, opened, text, tried, way } from "./laidTexts.ts";

const empty: LaidPort = { texts: {}, open: ["left"], way: null };

/** Lays a port on the bench in place of what lies there. */
export function lay(port: LaidPort): void {
  batch(() => {
    for (const field of fields.values()) field.value = "";
    for (const [name, value] of Object.entries(port.texts)) text(name).value = value;
    way.value = port.way;
    opened.value = new Set(port.open);
    tried.value = null;
    rest.value = null;
    laid.value++;
  });
  changed();
}

/** The port that waits beside the worked example, whatever the browser keeps. */
let aside: LaidPort | null = null;

/** Whether the worked example could not be fetched when it was asked for. */
export const exampleLost = signal(false);

/** Lays the worked example on the bench. It is fetched by the tap: most who open the bench have a port of their own. */
export async function showExample(): Promise<void> {
  const fetched = await import("./exampleTexts.ts").catch(() => null);
  exampleLost.value = fetched === null;
  if (!fetched || example.value) return;
  keepNow();
  aside = onBench();
  example.value = fetched.exampleDay;
  lay({ ...aside, texts: fetched.exampleTexts(), way: null });
}

export function backToPort(): void {
  example.value = null;
  lay(aside ?? empty);
  aside = null;
  // It was kept when it was laid aside.
  asKept();
}

/** The port that lay here before a new one was started: it can be taken back. */
export const before = signal(kept<LaidPort>("portBefore"));

export function startAnew(): void {
  if (!example.value) {
    before.value = onBench();
    keep("portBefore", before.value);
  }
  example.value = null;
  lay(empty);
  keepNow();
}

export function takeBack(): void {
  if (before.value) lay(before.value);
  before.value = null;
  keep("portBefore", null);
  keepNow();
}
