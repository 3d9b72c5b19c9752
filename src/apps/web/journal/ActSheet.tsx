import { useSignal } from "@preact/signals";
import { useEffect, useMemo, useRef } from "preact/hooks";
import type { About, ActForm } from "../../../sheets/journal/act.ts";
import { isAsked } from "../../../sheets/journal/asked.ts";
import type { SumField } from "../../../sheets/sums/sumField.ts";
import type { ActName } from "../../../sheets/words/actWords.ts";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { Chooser } from "../kit/Chooser.tsx";
import { jumpTo } from "../kit/jump.ts";
import { Mind } from "../kit/Mind.tsx";
import { fieldId } from "../kit/NumberField.tsx";
import { SumReading } from "../sums/SumReading.tsx";
import { type DraftState, draftState } from "./draftState.ts";
import { by, formFor, outcomeOf, status } from "./journalState.ts";
import type { Draft, GateShut, Outcome, PinAsked } from "./messages.ts";
import { Override } from "./Override.tsx";
import { PhotoField } from "./PhotoField.tsx";
import { PinPart } from "./PinPart.tsx";
import { Who } from "./Who.tsx";

/** What a form writes: an act about something on a job, or what takes the place of an earlier entry. */
export type Opened = {
  readonly act: ActName;
  readonly about: About;
  readonly job: string | null;
  readonly corrects: Draft["corrects"];
  readonly texts: Readonly<Record<string, string>>;
};

type Sheet = {
  readonly opened: Opened;
  readonly done: (outcome: Extract<Outcome, { type: "written" }>) => void;
  readonly close: () => void;
};

/** The form of one act, from its cautions to the button that writes it; that of another act begins with nothing of it. */
export const ActSheet = (sheet: Sheet) => <Fetched key={nameOf(sheet.opened)} {...sheet} />;

function Fetched({ opened, done, close }: Sheet) {
  const form = useSignal<ActForm | null>(null);
  const missing = useSignal(false);
  useEffect(() => {
    const { act, about, job, corrects, texts } = opened;
    formFor({ ask: "form", draft: { act, about, job, corrects, texts, by: by.peek() } }).then((it) => {
      form.value = it;
      missing.value = it === null;
    });
  }, [opened]);
  if (missing.value) return <p class="begin">{words.noForm}</p>;
  return form.value && <Form opened={opened} form={form.value} done={done} close={close} />;
}

const nameOf = ({ act, about, job, corrects }: Opened): string =>
  [job ?? "", ...Object.values(about), act, corrects?.entry ?? ""].join(" ");

function Form({ opened, form, done, close }: Sheet & { readonly form: ActForm }) {
  const state = useMemo(() => draftState(nameOf(opened), form.given, !form.personal), [opened]);
  const shut = useSignal<readonly GateShut[]>([]);
  const trouble = useSignal<string | null>(null);
  const pin = useSignal<{ readonly asked: PinAsked; readonly overrides: Draft["overrides"] } | null>(null);
  const busy = useSignal(false);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    heading.current?.scrollIntoView({ block: "nearest" });
  }, []);

  async function write(overrides: Draft["overrides"]): Promise<void> {
    if (busy.value) return;
    // The first name of a workshop signs for itself.
    const founding = opened.act === "person" && status.value?.persons.length === 0;
    if (by.value === "" && !founding) {
      trouble.value = words.tapWho;
      return;
    }
    busy.value = true;
    const { act, about, job, corrects } = opened;
    const draft: Draft = { act, about, job, corrects, overrides, by: by.value, texts: state.texts() };
    const outcome = await outcomeOf({ ask: "write", draft });
    busy.value = false;
    trouble.value = outcome.type === "trouble" ? outcome.sentence : null;
    pin.value = outcome.type === "pin" ? { asked: outcome.pin, overrides } : null;
    if (outcome.type !== "pin") shut.value = outcome.type === "shut" ? outcome.gates : [];
    state.problems.value = outcome.type === "problems" ? outcome.problems : [];
    if (outcome.type !== "written") return;
    state.forget();
    done(outcome);
  }

  return (
    <form
      class="act"
      aria-label={form.title}
      onSubmit={(event) => {
        event.preventDefault();
        void write(null);
      }}
    >
      <h3 ref={heading} tabIndex={-1}>
        {form.title}
      </h3>
      {opened.corrects && <p>{words.corrects(opened.corrects.reason)}</p>}
      <Mind cautions={form.minds} />
      {form.photos === "first" && <PhotoField state={state} />}
      <Fields form={form} state={state} />
      {form.photos === "last" && <PhotoField state={state} />}
      <Who />
      <Wanted form={form} state={state} />
      {trouble.value && (
        <p class="mistake" role="alert">
          {trouble.value}
        </p>
      )}
      <Override shut={shut.value} take={(reason) => write({ gates: shut.value, reason })} />
      {pin.value && (
        <PinPart
          pin={pin.value.asked}
          why={words.pinFirst(pin.value.asked.called)}
          given={() => void write(pin.value?.overrides ?? null)}
        />
      )}
      <p class="row">
        <button type="submit" class="write" aria-busy={busy.value}>
          {words.write}
        </button>
        <button type="button" class="plain" onClick={close}>
          {words.notNow}
        </button>
      </p>
    </form>
  );
}

function Fields({ form, state }: { readonly form: ActForm; readonly state: DraftState }) {
  const bench = { ...form, filled: {} };
  const asked = Object.keys(form.fields).filter((it) =>
    isAsked(it, form.fields, (field) => state.text(field).value, by.value),
  );
  const readings = (names: readonly string[]) =>
    names.map((name) =>
      isLong(form.fields[name]) ? (
        <OneOfMany key={name} form={form} state={state} name={name} />
      ) : (
        <SumReading key={name} bench={bench} state={state} name={name} />
      ),
    );
  const folded = asked.filter((it) => form.folded.includes(it));
  return (
    <>
      {readings(asked.filter((it) => !form.folded.includes(it)))}
      {folded.length > 0 && (
        <details class="fold" open={folded.some((it) => state.text(it).peek() !== "")}>
          <summary>{words.seldom}</summary>
          <div class="act-fields">{readings(folded)}</div>
        </details>
      )}
    </>
  );
}

/** More than these stand better in a list of the device, which a knuckle hits as well. */
const MOST_TAPS = 14;
const isLong = (field: SumField | undefined): boolean => field?.type === "choice" && field.choices.length > MOST_TAPS;

function OneOfMany({ form, state, name }: Parameters<typeof Fields>[0] & { readonly name: string }) {
  const field = form.fields[name];
  const { label, hint } = form.words[name] ?? { label: name };
  const choices = field?.type === "choice" ? field.choices : [];
  return (
    <Chooser
      name={name}
      label={label}
      hint={hint}
      taps={choices.map((value) => ({ value, word: form.choiceWords[value] ?? value }))}
      value={state.text(name)}
      give={(text) => state.give(name, text)}
    />
  );
}

/** What is still wanted, each a tap away. */
function Wanted({ form, state }: { readonly form: ActForm; readonly state: DraftState }) {
  const wanted = state.wanted.value;
  if (wanted.length === 0) return null;
  const label = (name: string): string => form.words[name]?.label ?? name;
  return (
    <p class="next" role="alert">
      <span>
        <b>{words.wanted}</b> {wanted.map(label).join("; ")}
      </span>
      <button type="button" class="plain" onClick={() => jumpTo(fieldId(wanted[0] ?? ""))}>
        {words.goThere}
      </button>
    </p>
  );
}
