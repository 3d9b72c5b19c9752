import { signal } from "@preact/signals";
import { beforeTheShot, photoBenchWords as words } from "../../../sheets/words/photoBenchWords.ts";
import { TextField } from "../kit/TextField.tsx";
import "./photo.css";
import { PhotoView } from "./PhotoView.tsx";
import { confirm, confirmed, endsOf, line, open, read, readAlong, step, trouble } from "./photoState.ts";
import { ShotSketch } from "./ShotSketch.tsx";

/** The pitch from one photo: how to take it, the photo with what was found on it, and what a person says to that. */
export function PhotoPart() {
  return (
    <div class="photo">
      <ShotSketch />
      <ol>
        {beforeTheShot.map((it) => (
          <li key={it}>{it}</li>
        ))}
      </ol>
      <p class="row">
        <a class="plain" href="./light.html" target="_blank" rel="noopener">
          {words.light}
        </a>
      </p>
      <label class="file">
        <span>{words.choose}</span>
        <input
          type="file"
          accept="image/*"
          onChange={(event) => {
            const [file] = event.currentTarget.files ?? [];
            if (file) open(file);
            // The same file may be chosen again.
            event.currentTarget.value = "";
          }}
        />
      </label>
      <div aria-live="polite">
        {step.value !== null && (
          <p class="busy">
            <progress aria-label={step.value} /> {step.value}
          </p>
        )}
      </div>
      {trouble.value !== null && <p role="alert">{trouble.value}</p>}
      {read.value && <Read />}
    </div>
  );
}

function Read() {
  const at = read.value;
  if (!at) return null;
  return (
    <div class="photo-read">
      <PhotoView read={at} />
      {at.pitch && confirmed.value === null && (
        <fieldset>
          <legend>{words.ask}</legend>
          <div class="row">
            <button type="button" class="plain" onClick={confirm}>
              {words.yes}
            </button>
            <button
              type="button"
              class="plain"
              onClick={() => {
                confirmed.value = "no";
              }}
            >
              {words.no}
            </button>
          </div>
        </fieldset>
      )}
      <div class="sentences" aria-live="polite">
        <p>
          <b>{confirmed.value === "no" ? "Not on the crests" : at.sign}</b>
        </p>
        {confirmed.value !== "no" && at.sentences.map((it) => <p key={it}>{it}</p>)}
        {confirmed.value === "yes" && at.pitch && <p>{words.taken}</p>}
      </div>
      {(confirmed.value === "no" || !at.pitch) && <Along />}
      {at.others.length > 0 && (
        <>
          <p>{words.others}:</p>
          <ul>
            {at.others.map((it) => (
              <li key={it}>{it}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

const noProblem = signal<string | null>(null);

/** The second try: a line along the thread. */
function Along() {
  return (
    <>
      <TextField
        name="photo.line"
        label={words.line}
        hint={words.lineHint}
        value={line}
        problem={noProblem}
        give={(text) => {
          line.value = text;
        }}
      />
      <button type="button" class="plain" disabled={endsOf(line.value) === null} onClick={readAlong}>
        {words.again}
      </button>
    </>
  );
}
