import { signal } from "@preact/signals";
import type { ActForm } from "../../../sheets/journal/act.ts";
import type { PortBrought } from "../bench/broughtPort.ts";
import { keep, kept } from "../kit/saved.ts";
import {
  notPaired,
  type Outcome,
  type PortOfJob,
  type Reply,
  type Request,
  type Shown,
  type Status,
  type View,
} from "./messages.ts";

/** How this device stands to the workshop; null until the journal beside the page has said so. */
export const status = signal<Status | null>(null);

/** What the journal showed last, and of which view. */
const shown = signal<{ readonly view: View; readonly shown: Shown[keyof Shown] } | null>(null);

/** Who writes: the name that was tapped last on this device. Every button that writes says it. */
export const by = signal(kept<string>("journal.by") ?? "");

export function tapName(person: string): void {
  by.value = person;
  keep("journal.by", person);
}

const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
const waiting = new Map<number, (reply: Reply) => void>();
let asked = 0;

worker.addEventListener("message", ({ data }: MessageEvent<Reply>) => {
  switch (data.about) {
    case "status":
      status.value = data.status;
      return;
    case "view":
      shown.value = data;
      return;
    case "form":
    case "outcome":
    case "brought":
    case "taken":
    case "picture":
      waiting.get(data.id)?.(data);
      waiting.delete(data.id);
      return;
    default:
      data satisfies never;
  }
});
worker.addEventListener("error", ({ message }) => {
  const fault = message || "its script did not load";
  status.value = { ...(status.peek() ?? notPaired), trouble: `The journal fell: ${fault}. Load the page again.` };
  for (const [id, hear] of waiting) hear({ about: "outcome", id, outcome: { type: "trouble", sentence: fault } });
  waiting.clear();
});

const wake = (): void => worker.postMessage({ ask: "wake" } satisfies Request);
document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && wake());
// Not every browser tells a worker of a network that came back, and none in every case.
addEventListener("online", wake);

/** Says what the page looks at; it is shown anew whenever it changes. */
export function look(view: View | null): void {
  worker.postMessage({ ask: "look", view } satisfies Request);
}

/** What is shown of a view; undefined until it came. */
export function shownOf<V extends View["name"]>(view: Extract<View, { name: V }>): Shown[V] | undefined {
  const it = shown.value;
  return it && JSON.stringify(it.view) === JSON.stringify(view) ? (it.shown as Shown[V]) : undefined;
}

type Asked = Extract<Request, { readonly id: number }>;
type Unnumbered<R> = R extends Asked ? Omit<R, "id"> : never;

/** Has something written, or this browser paired, and tells what became of it. */
export async function outcomeOf(request: Unnumbered<Asked>): Promise<Outcome> {
  const reply = await replyTo(request);
  return reply.about === "outcome" ? reply.outcome : { type: "trouble", sentence: "The journal gave no answer." };
}

/** The form of an act; null where there is none now. */
export async function formFor(request: Unnumbered<Extract<Asked, { ask: "form" }>>): Promise<ActForm | null> {
  const reply = await replyTo(request);
  return reply.about === "form" ? reply.form : null;
}

/** A port of a job with what the journal knows of it, for the bench; null where it could not be had. */
export async function broughtFrom(of: PortOfJob): Promise<PortBrought | null> {
  const reply = await replyTo({ ask: "bring", ...of });
  return reply.about === "brought" ? reply.brought : null;
}

/** Has a photo kept that was taken or chosen; gives its name, or why it is not kept. */
export async function taken(file: Blob): Promise<{ readonly photo: string } | { readonly trouble: string }> {
  const reply = await replyTo({ ask: "take", file });
  if (reply.about === "taken") return { photo: reply.photo };
  return { trouble: reply.about === "outcome" && reply.outcome.type === "trouble" ? reply.outcome.sentence : "" };
}

/** A photo to look at; null where it can be had neither here nor at the workshop. */
export async function pictureOf(photo: string): Promise<Blob | null> {
  const reply = await replyTo({ ask: "picture", photo });
  return reply.about === "picture" ? reply.picture : null;
}

/** Has a photo forgotten that was taken and that no entry names. */
export function dropPhoto(photo: string): void {
  worker.postMessage({ ask: "drop", photo } satisfies Request);
}

function replyTo(request: Unnumbered<Asked>): Promise<Reply> {
  const id = ++asked;
  return new Promise((hear) => {
    waiting.set(id, hear);
    worker.postMessage({ ...request, id } as Request);
  });
}
