import { batch, signal } from "@preact/signals";
import { photoBenchWords } from "../../../sheets/words/photoBenchWords.ts";
import { beside } from "../kit/beside.ts";
import { sumState } from "../sums/sumState.ts";
import type { PhotoRead, PhotoReply, PhotoRequest } from "./photoMessages.ts";

/** What goes on with the photo, in words; null where nothing does. */
export const step = signal<string | null>(null);
export const trouble = signal<string | null>(null);
export const read = signal<PhotoRead | null>(null);
/** The line along the thread as typed or tapped. */
export const line = signal("");
/** What the person said of the crests. */
export const confirmed = signal<"yes" | "no" | null>(null);

const ask = beside<PhotoRequest, PhotoReply>({
  start: () => new Worker(new URL("./photoWorker.ts", import.meta.url), { type: "module" }),
  hear,
  isLast: ({ part }) => part !== "step",
  kindOf: () => 0,
  failed: (_, message) => hear({ part: "fault", message: message || "its script did not load" }),
});

/** Reads a photo that was taken or chosen. */
export function open(file: Blob): void {
  batch(() => {
    line.value = "";
    read.value = null;
  });
  send({ file, outside: outside(), line: null });
}

/** Reads the same photo along the line. */
export function readAlong(): void {
  const ends = endsOf(line.value);
  if (ends) send({ file: null, outside: outside(), line: ends });
}

/** The two ends that a text names, if it names two. */
export function endsOf(text: string): readonly [number, number, number, number] | null {
  const given = text.split(",").map((it) => it.trim());
  const [a, b, c, d] = given.map(Number);
  if (given.length !== 4 || given.some((it) => !/^\d+(\.\d+)?$/.test(it))) return null;
  return [a as number, b as number, c as number, d as number];
}

/** The pitch goes on the bench, beside the other readings. */
export function confirm(): void {
  const pitch = read.value?.pitch;
  confirmed.value = "yes";
  if (!pitch) return;
  const bench = sumState("thread");
  batch(() => {
    bench.give("photoPitch", pitch.pitch_mm);
    bench.give("photoSpread", pitch.spread_mm);
  });
}

/** The diameter as it stands on the bench: a bare number is in mm there. */
function outside(): string {
  const text = sumState("thread").text("outside").value.trim();
  return /^[\d.,]+$/.test(text) ? `${text} mm` : text;
}

function send(request: PhotoRequest): void {
  batch(() => {
    trouble.value = null;
    step.value = request.file ? photoBenchWords.opening : photoBenchWords.looking;
  });
  ask(request);
}

function hear(reply: PhotoReply): void {
  batch(() => {
    step.value = reply.part === "step" ? photoBenchWords[reply.step] : null;
    if (reply.part === "refused") trouble.value = photoBenchWords[reply.why];
    if (reply.part === "fault") trouble.value = photoBenchWords.failed(reply.message);
    if (reply.part !== "read") return;
    read.value = reply.read;
    // What was said of the crests was said of the reading before.
    confirmed.value = null;
  });
}
