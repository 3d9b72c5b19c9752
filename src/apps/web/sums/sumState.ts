import { batch, computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import type { SumAnswer, SumName } from "../../../sheets/sums/sumAnswer.ts";
import type { SumTexts } from "../../../sheets/sums/sumField.ts";
import { type InputProblem, mistakeSentence } from "../../../sheets/words/problemWords.ts";
import { today } from "../kit/clock.ts";
import { keep, kept } from "../kit/saved.ts";
import { startedSums } from "./sumEngine.ts";

/** What is kept of a bench between two openings: every text as it was typed, and what stood open. */
type KeptSum = { readonly texts: SumTexts; readonly open: readonly string[] };

/** What stands on one bench, and what it comes to. */
export type SumState = {
  readonly text: (field: string) => Signal<string>;
  readonly give: (field: string, text: string) => void;
  readonly clear: () => void;
  /** Whether something was cleared away that can be taken back. */
  readonly cleared: ReadonlySignal<boolean>;
  readonly takeBack: () => void;
  readonly started: ReadonlySignal<boolean>;
  readonly opened: Signal<ReadonlySet<string>>;
  readonly answer: Signal<SumAnswer | null>;
  /** Fields that could not be read, with what was given there and what is accepted. */
  readonly mistakes: ReadonlySignal<ReadonlyMap<string, string>>;
  /** Fields without which there is no answer, and that are still empty. */
  readonly wanted: ReadonlySignal<readonly string[]>;
  readonly fault: Signal<string | null>;
  readonly problems: Signal<readonly InputProblem[]>;
  readonly reckon: () => void;
};

const states = new Map<SumName, SumState>();

/** The state of a bench: made when it is first opened, from what this browser kept of it. */
export function sumState(name: SumName): SumState {
  const known = states.get(name) ?? newState(name);
  states.set(name, known);
  return known;
}

const ask = startedSums((reply) => {
  const state = states.get(reply.name);
  if (!state) return;
  batch(() => {
    state.fault.value = reply.part === "fault" ? reply.message : null;
    const read = reply.part === "fault" ? null : reply.read;
    state.answer.value = read?.ok ? read.answer : null;
    state.problems.value = read && !read.ok ? read.problems : [];
  });
});

function newState(name: SumName): SumState {
  const keptSum = kept<KeptSum>(`sum.${name}`);
  const fields = new Map<string, Signal<string>>();
  const opened = signal<ReadonlySet<string>>(new Set(keptSum?.open ?? []));
  const problems = signal<readonly InputProblem[]>([]);
  const started = signal(Object.keys(keptSum?.texts ?? {}).length > 0);
  const texts = (): SumTexts =>
    Object.fromEntries([...fields].map(([field, { value }]) => [field, value] as const).filter(([, it]) => it !== ""));
  const text = (field: string): Signal<string> => {
    const there = fields.get(field) ?? signal("");
    fields.set(field, there);
    return there;
  };
  const reckon = (): void => ask({ name, texts: texts(), today: today() });
  let keeping: ReturnType<typeof setTimeout> | undefined;
  // Only what is newer here than what was kept is written: another page may have kept more since.
  let unkept = false;
  const keepNow = (): void => {
    clearTimeout(keeping);
    if (!unkept) return;
    unkept = false;
    keep(`sum.${name}`, { texts: texts(), open: [...opened.value] } satisfies KeptSum);
  };
  const keepSoon = (): void => {
    unkept = true;
    clearTimeout(keeping);
    keeping = setTimeout(keepNow, keepAfter_ms);
  };
  const changed = (): void => {
    started.value = Object.keys(texts()).length > 0;
    reckon();
    keepSoon();
  };
  const before = signal<SumTexts | null>(null);
  const lay = (laid: SumTexts): void => {
    batch(() => {
      for (const field of fields.values()) field.value = "";
      for (const [field, value] of Object.entries(laid)) text(field).value = value;
    });
    changed();
  };
  for (const [field, value] of Object.entries(keptSum?.texts ?? {})) text(field).value = value;
  opened.subscribe(keepSoon);
  // What was only just read is kept already.
  unkept = false;
  addEventListener("pagehide", keepNow);
  document.addEventListener("visibilitychange", () => document.visibilityState === "hidden" && keepNow());
  return {
    text,
    give(field, value) {
      if (text(field).value === value) return;
      text(field).value = value;
      changed();
    },
    clear() {
      before.value = texts();
      lay({});
    },
    cleared: computed(() => before.value !== null),
    takeBack() {
      lay(before.value ?? {});
      before.value = null;
    },
    started,
    opened,
    answer: signal(null),
    mistakes: computed(
      () => new Map(problems.value.filter(isMistake).map((problem) => [problem.field, mistakeSentence(problem)])),
    ),
    wanted: computed(() => problems.value.filter((it) => !isMistake(it)).map(({ field }) => field)),
    fault: signal(null),
    problems,
    reckon,
  };
}

/** How long a hand rests before what it typed is kept: that takes a while, and a stepper is held. */
const keepAfter_ms = 200;

const isMistake = ({ given }: InputProblem): boolean => given !== "nothing";
