import { useSignal } from "@preact/signals";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { TextField } from "../kit/TextField.tsx";
import type { GateShut } from "./messages.ts";

/** Why a gate is shut, and the way through where there is one: by name, with a reason. */
export function Override(props: { readonly shut: readonly GateShut[]; readonly take: (reason: string) => void }) {
  const { shut, take } = props;
  const reason = useSignal("");
  const problem = useSignal<string | null>(null);
  if (shut.length === 0) return null;
  const may = shut.every(({ mayOverride }) => mayOverride);
  return (
    <div class="shut" role="alert">
      <h4>{words.shut}</h4>
      <ul>
        {shut.map(({ gate, port, sentence }) => (
          <li key={`${gate} ${port}`}>{sentence}</li>
        ))}
      </ul>
      <p>{words.nothingLost}</p>
      {!may && <p>{words.never}</p>}
      {may && (
        <details class="fold">
          <summary>{words.takeOn}</summary>
          <TextField
            name="override-reason"
            label={words.why}
            hint={words.whyHint}
            value={reason}
            problem={problem}
            give={(text) => {
              reason.value = text;
              problem.value = null;
            }}
          />
          <button
            type="button"
            onClick={() => {
              if (reason.value.trim() === "") problem.value = words.whyWanted;
              else take(reason.value.trim());
            }}
          >
            {words.takeIt}
          </button>
        </details>
      )}
    </div>
  );
}
