import { computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import type { SumTexts } from "../../../sheets/sums/sumField.ts";
import { type InputProblem, mistakeSentence } from "../../../sheets/words/problemWords.ts";
import { forget, keep, kept } from "../kit/saved.ts";

/** What was typed and tapped in one form, kept in this browser until it is written: nothing is lost by a refusal or a dead battery. */
export type DraftState = {
  readonly text: (field: string) => Signal<string>;
  readonly give: (field: string, text: string) => void;
  readonly texts: () => SumTexts;
  readonly problems: Signal<readonly InputProblem[]>;
  /** Fields that could not be read, with what was given there and what is accepted. */
  readonly mistakes: ReadonlySignal<ReadonlyMap<string, string>>;
  /** Fields without which nothing can be written. */
  readonly wanted: ReadonlySignal<readonly string[]>;
  readonly forget: () => void;
};

/** The draft of that name, as it was left, or as it begins; one that is not kept is forgotten with the page. */
export function draftState(name: string, begins: SumTexts, isKept: boolean): DraftState {
  const key = `draft.${name}`;
  const fields = new Map<string, Signal<string>>();
  const problems = signal<readonly InputProblem[]>([]);
  const text = (field: string): Signal<string> => {
    const there = fields.get(field) ?? signal("");
    fields.set(field, there);
    return there;
  };
  const texts = (): SumTexts =>
    Object.fromEntries([...fields].map(([field, { value }]) => [field, value] as const).filter(([, it]) => it !== ""));
  for (const [field, value] of Object.entries((isKept ? kept<SumTexts>(key) : null) ?? begins))
    text(field).value = value;
  return {
    text,
    give(field, value) {
      text(field).value = value;
      problems.value = problems.peek().filter((it) => it.field !== field);
      if (isKept) keep(key, texts());
    },
    texts,
    problems,
    mistakes: computed(
      () => new Map(problems.value.filter(isMistake).map((problem) => [problem.field, mistakeSentence(problem)])),
    ),
    wanted: computed(() => problems.value.filter((it) => !isMistake(it)).map(({ field }) => field)),
    forget: () => forget(key),
  };
}

const isMistake = ({ given }: InputProblem): boolean => given !== "nothing";
