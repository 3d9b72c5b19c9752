import { type Signal, signal } from "@preact/signals";
import type { RemedyId } from "../../../mechanics/remedies/method.ts";
import { kept } from "../kit/saved.ts";
import type { Texts } from "./benchTexts.ts";

/** A port as it lies on the bench: every text as it was typed, and what stands open. */
export type LaidPort = { readonly texts: Texts; readonly open: readonly string[]; readonly way: RemedyId | null };

/** The port as this browser kept it. */
const keptPort = kept<LaidPort>("port");

export const fields = new Map<string, Signal<string>>();

/** Which fields there are: changes when a list grows or shrinks, or another port is laid on the bench. */
export const laid = signal(0);
/** Whether anything stands on the bench. */
export const started = signal(Object.keys(keptPort?.texts ?? {}).length > 0);
/** The day of the worked example where that stands there, which is nobody's port; its wrenches are in date on that day. */
export const example = signal<string | null>(null);
export const opened = signal<ReadonlySet<string>>(new Set(keptPort?.open ?? ["left"]));
/** Whether every way is drawn, or the first few of them. */
export const allWays = signal(false);
export const way = signal<RemedyId | null>(keptPort?.way ?? null);
/** The torque at which the odds are asked; null for the one that lies nearest. */
export const tried = signal<string | null>(null);

/** The text of a field; fields are made when they are first asked for. */
export function text(name: string): Signal<string> {
  const known = fields.get(name);
  if (known) return known;
  const made = signal("");
  fields.set(name, made);
  return made;
}

/** What is on the bench. */
export function texts(): Texts {
  const given: Record<string, string> = {};
  for (const [name, field] of fields) {
    const typed = field.peek();
    if (typed !== "") given[name] = typed;
  }
  return given;
}

/** The port that lies on the bench now. */
export const onBench = (): LaidPort => ({ texts: texts(), open: [...opened.value], way: way.value });

for (const [name, value] of Object.entries(keptPort?.texts ?? {})) text(name).value = value;
