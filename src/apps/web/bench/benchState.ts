import { batch, computed, type Signal, signal } from "@preact/signals";
import type { RemedyId } from "../../../mechanics/remedies/method.ts";
import { type InputProblem, mistakeSentence } from "../../../sheets/words/problemWords.ts";
import { startedEngine } from "../engine/engine.ts";
import type { DrawnAnswer, EngineReply, EngineRest } from "../engine/messages.ts";
import { today } from "../kit/clock.ts";
import { keep, kept } from "../kit/saved.ts";
import { type ListName, placesOf, type Texts } from "./benchTexts.ts";
import { exampleDay, exampleTexts } from "./exampleTexts.ts";

/** What is kept of the bench between two openings: every text as it was typed, and what stood open. */
type KeptBench = { readonly texts: Texts; readonly open: readonly string[]; readonly way: RemedyId | null };

const fields = new Map<string, Signal<string>>();
const keptBench = kept<KeptBench>("port");

/** Which fields there are: changes when a list grows or shrinks, or another port is laid on the bench. */
export const laid = signal(0);
/** Whether anything stands on the bench. */
export const started = signal(Object.keys(keptBench?.texts ?? {}).length > 0);
export const example = signal(false);
export const opened = signal<ReadonlySet<string>>(new Set(keptBench?.open ?? ["left"]));
/** Whether every way is drawn, or the first few of them. */
export const allWays = signal(false);
export const way = signal<RemedyId | null>(keptBench?.way ?? null);
/** The torque at which the odds are asked; null for the one that lies nearest. */
export const tried = signal<string | null>(null);

const answer = signal<DrawnAnswer | null>(null);
export const answered = computed(() => answer.value !== null);
/** One part of the answer: it changes only where the part does, so that what shows it stays as it is. */
export const sentences = partOf("sentences");
export const because = partOf("because");
export const next = partOf("next");
export const cautions = partOf("cautions");
export const reasons = partOf("reasons");
export const sign = partOf("sign");
export const narrow = partOf("narrow");
export const figure = partOf("figure");
export const strip = partOf("strip");
export const pictures = partOf("pictures");

function partOf<K extends keyof DrawnAnswer>(key: K) {
  return computed((): DrawnAnswer[K] | null => answer.value?.[key] ?? null);
}

export const rest = signal<EngineRest | null>(null);
/** No problem. It is always the same, so that an answer that follows an answer rouses no field. */
const allRead: readonly InputProblem[] = [];
const problems = signal(allRead);
export const fault = signal<string | null>(null);
/** The answer as the engine last handed it over, which then hands over what of it changes. */
let handed: DrawnAnswer | null = null;

/** The text of a field; fields are made when they are first asked for. */
export function text(name: string): Signal<string> {
  const known = fields.get(name);
  if (known) return known;
  const made = signal("");
  fields.set(name, made);
  return made;
}

function texts(): Texts {
  const given: Record<string, string> = {};
  for (const [name, field] of fields) if (field.peek() !== "") given[name] = field.peek();
  return given;
}

/** Sets a field and weighs again. */
export function give(name: string, value: string): void {
  const field = text(name);
  if (field.value === value) return;
  field.value = value;
  changed();
}

/** Fields that could not be read, by name, with what is accepted there. */
export const mistakes = computed((): ReadonlyMap<string, string> => {
  const unread = problems.value.filter(({ given }) => given !== "nothing");
  return new Map(unread.map((it) => [it.field, mistakeSentence(it)]));
});

/** Fields without which nothing is weighed, and that are still empty. */
export const wanted = computed((): readonly string[] =>
  problems.value.filter(({ given }) => given === "nothing").map(({ field }) => field),
);

const ask = startedEngine(hear);
let settling: ReturnType<typeof setTimeout> | undefined;
let keeping: ReturnType<typeof setTimeout> | undefined;
/** Whether something here is newer than what was kept: only then is it written, for another page may have kept more since. */
let unkept = false;

/** Weighs what is on the bench now, and keeps it when the hand rests. */
function changed(): void {
  weighNow();
  keepSoon();
}

/** Weighs what is on the bench now. What stands behind the answer follows when the hand rests. */
export function weighNow(): void {
  const given = texts();
  started.value = Object.keys(given).length > 0;
  ask({
    part: "answer",
    texts: given,
    today: example.value ? exampleDay : today(),
    tried: tried.value,
    pictures: picturesInView,
  });
  clearTimeout(settling);
}

function keepSoon(): void {
  unkept = true;
  clearTimeout(keeping);
  keeping = setTimeout(keepNow, keepAfter_ms);
}

/** Whether the pictures of the answer are in view. */
let picturesInView = false;

export function lookAtPictures(inView: boolean): void {
  picturesInView = inView;
  if (inView && answer.value && answer.value.pictures === null) weighNow();
}

/** Whether what stands behind the answer is in view: until then nobody waits for it. */
let behindInView = false;

/** Asks for the ways and papers behind the answer, as far as they are looked at. */
export function settle(): void {
  if (behindInView && answer.value) ask({ part: "rest", open: way.value, all: allWays.value });
}

export function lookBehind(inView: boolean): void {
  behindInView = inView;
  settle();
}

function hear(reply: EngineReply): void {
  batch(() => {
    switch (reply.part) {
      case "answer":
        fault.value = null;
        problems.value = allRead;
        handed = { ...(handed as DrawnAnswer), ...reply.changed };
        answer.value = handed;
        // Nobody looks at it now; whoever comes to it must not find the papers of an answer before.
        if (!behindInView) rest.value = null;
        clearTimeout(settling);
        settling = setTimeout(settle, quiet_ms);
        break;
      case "unread":
        fault.value = null;
        problems.value = reply.problems;
        answer.value = null;
        rest.value = null;
        break;
      case "rest":
        rest.value = reply.rest;
        break;
      case "fault":
        fault.value = reply.message;
        answer.value = null;
        rest.value = null;
        break;
      default:
        reply satisfies never;
    }
  });
}

/** How long a hand rests before what is behind the answer is drawn, and before the port is kept. */
const quiet_ms = 200;
const keepAfter_ms = 1200;

/** Keeps the port on the bench as it is typed. The worked example is nobody's port. */
function keepNow(): void {
  clearTimeout(keeping);
  if (example.value || !unkept) return;
  unkept = false;
  keep("port", onBench());
}

/** Lays a port on the bench in place of what lies there. */
function lay(port: Texts): void {
  batch(() => {
    for (const field of fields.values()) field.value = "";
    for (const [name, value] of Object.entries(port)) text(name).value = value;
    way.value = null;
    tried.value = null;
    rest.value = null;
    laid.value++;
  });
  changed();
}

/** The port that waits beside the worked example, whatever the browser keeps. */
let aside: KeptBench | null = null;

const onBench = (): KeptBench => ({ texts: texts(), open: [...opened.value], way: way.value });

export function showExample(): void {
  if (example.value) return;
  keepNow();
  aside = onBench();
  example.value = true;
  lay(exampleTexts());
}

export function backToPort(): void {
  example.value = false;
  lay(aside?.texts ?? {});
  way.value = aside?.way ?? null;
  aside = null;
  // It was kept when it was laid aside.
  unkept = false;
}

export function startAnew(): void {
  example.value = false;
  fields.forEach((field) => {
    field.value = "";
  });
  lay({});
  keepNow();
}

/** The elements of a list on the bench. */
export function elements(list: ListName): readonly number[] {
  laid.value;
  return placesOf(list, texts());
}

export function addElement(list: ListName): void {
  const at = Math.max(-1, ...elements(list)) + 1;
  const [first, second] = list === "wrenches" ? ["name", `W-${at + 1}`] : ["source", "service sheet"];
  text(`${list}.${at}.${first}`).value = second ?? "";
  laid.value++;
  changed();
}

export function removeElement(list: ListName, at: number): void {
  for (const [name, field] of fields) if (name.startsWith(`${list}.${at}.`)) field.value = "";
  laid.value++;
  changed();
}

for (const [name, value] of Object.entries(keptBench?.texts ?? {})) text(name).value = value;
for (const shown of [opened, way]) shown.subscribe(keepSoon);
// What was only just read is kept already.
unkept = false;
addEventListener("pagehide", keepNow);
document.addEventListener("visibilitychange", () => document.visibilityState === "hidden" && keepNow());
