import { batch, computed, effect, signal } from "@preact/signals";
import { type InputProblem, mistakeSentence } from "../../../sheets/words/problemWords.ts";
import { startedEngine } from "../engine/engine.ts";
import type { DrawnAnswer, EngineReply, EngineRest, More } from "../engine/messages.ts";
import { today } from "../kit/clock.ts";
import { nextFrame } from "../kit/nextFrame.ts";
import { type ListName, placesOf } from "./benchTexts.ts";
import { keepSoon } from "./keptPort.ts";
import { allWays, example, fields, laid, started, text, texts, tried, way } from "./laidTexts.ts";

const answer = signal<DrawnAnswer | null>(null);
export const answered = computed(() => answer.value !== null);
/** The answer as far as it is written out: what of it is in view comes with the frame after that of the figure, which waits for nothing. */
const said = signal<DrawnAnswer | null>(null);

/** One part of the answer: it changes only where the part does, so that what shows it stays as it is. */
export const sign = partOf(answer, "sign");
export const narrow = partOf(answer, "narrow");
export const figure = partOf(answer, "figure");
export const strip = partOf(answer, "strip");
export const sentences = partOf(said, "sentences");
export const because = partOf(said, "because");
export const next = partOf(said, "next");
export const cautions = partOf(said, "cautions");
export const reasons = partOf(said, "reasons");
export const pictures = partOf(said, "pictures");

function partOf<K extends keyof DrawnAnswer>(from: typeof answer, key: K) {
  return computed((): DrawnAnswer[K] | null => from.value?.[key] ?? null);
}

/** Whether the words and the pictures of the answer are in view. */
let wordsInView = false;
let picturesInView = false;

effect(() => {
  const now = answer.value;
  if (now !== null && said.peek() !== null && (wordsInView || picturesInView)) nextFrame(sayAll);
  else said.value = now;
});

function sayAll(): void {
  said.value = answer.value;
}
// A sheet of paper has one frame.
addEventListener("beforeprint", sayAll);

/** Whether what can be done about the port has been weighed too. */
export const more = signal<More>("all here");
export const rest = signal<EngineRest | null>(null);
/** No problem. It is always the same, so that an answer that follows an answer rouses no field. */
const allRead: readonly InputProblem[] = [];
const problems = signal(allRead);
export const fault = signal<string | null>(null);
/** The answer as the engine last handed it over, which then hands over what of it changes. */
let handed: DrawnAnswer | null = null;

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

/** Weighs what is on the bench now, and keeps it when the hand rests. */
export function changed(): void {
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
    today: example.value ?? today(),
    tried: tried.value,
    pictures: picturesInView,
  });
  clearTimeout(settling);
}

export function lookAtWords(inView: boolean): void {
  wordsInView = inView;
}

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
        more.value = reply.more;
        // Nobody looks at it now; whoever comes to it must not find the papers of an answer before.
        if (!behindInView) rest.value = null;
        clearTimeout(settling);
        if (behindInView && reply.more === "all here") settling = setTimeout(settle, quiet_ms);
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

/** How long a hand rests before what is behind the answer is drawn. */
const quiet_ms = 200;

/** The elements of a list on the bench. */
export function elements(list: ListName): readonly number[] {
  laid.value;
  return placesOf(list, texts());
}

/** One more, and the name of its first field. */
export function addElement(list: ListName): string {
  const at = Math.max(-1, ...elements(list)) + 1;
  const [first, second] = list === "wrenches" ? ["name", `W-${at + 1}`] : ["source", "service sheet"];
  text(`${list}.${at}.${first}`).value = second ?? "";
  laid.value++;
  changed();
  return `${list}.${at}.${list === "wrenches" ? "name" : "torque"}`;
}

export function removeElement(list: ListName, at: number): void {
  for (const [name, field] of fields) if (name.startsWith(`${list}.${at}.`)) field.value = "";
  laid.value++;
  changed();
}
