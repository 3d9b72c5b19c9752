import { useSignal } from "@preact/signals";
import { namesOf } from "../../../sheets/journal/photoNames.ts";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { fieldId } from "../kit/NumberField.tsx";
import type { DraftState } from "./draftState.ts";
import { dropPhoto, taken } from "./journalState.ts";
import { Photos } from "./Photos.tsx";

/** The name under which a form keeps its photos, with commas. */
const field = "photos";

/** Photos to what is written: taken or chosen, kept on this device at once, and taken off again by a tap. */
export function PhotoField({ state }: { readonly state: DraftState }) {
  const busy = useSignal(false);
  const trouble = useSignal<string | null>(null);
  const names = namesOf(state.text(field).value);

  async function add(files: readonly File[]): Promise<void> {
    // What is kept here alone must not be cleared because a browser is short of room.
    void navigator.storage?.persist?.();
    trouble.value = null;
    busy.value = true;
    for (const file of files) {
      const it = await taken(file);
      if ("trouble" in it) trouble.value = it.trouble;
      else state.give(field, [...new Set([...namesOf(state.text(field).peek()), it.photo])].join(","));
    }
    busy.value = false;
  }

  return (
    <fieldset class="taps photo-field" id={fieldId(field)} tabIndex={-1}>
      <legend>{words.photo}</legend>
      <div class="row">
        <FileTap word={words.takePhoto} camera={true} add={add} />
        <FileTap word={words.choosePhoto} camera={false} add={add} />
      </div>
      <p class="hint" role="status">
        {busy.value ? words.keepingPhoto : ""}
      </p>
      <p class="mistake" role="alert">
        {trouble.value}
      </p>
      <Photos
        names={names}
        of={words.photo}
        beside={(name) => (
          <button
            type="button"
            class="plain"
            onClick={() => {
              state.give(field, names.filter((it) => it !== name).join(","));
              dropPhoto(name);
            }}
          >
            {words.takeOff}
          </button>
        )}
      />
    </fieldset>
  );
}

/** A tap that opens the camera or the pictures of the device. */
function FileTap(props: {
  readonly word: string;
  readonly camera: boolean;
  readonly add: (files: readonly File[]) => Promise<void>;
}) {
  const { word, camera, add } = props;
  return (
    <label class="tap file-tap">
      <span>{word}</span>
      <input
        type="file"
        accept="image/*"
        multiple={!camera}
        {...(camera ? { capture: "environment" as const } : {})}
        onChange={(event) => {
          const files = [...(event.currentTarget.files ?? [])];
          // The same file may be chosen again.
          event.currentTarget.value = "";
          void add(files);
        }}
      />
    </label>
  );
}
