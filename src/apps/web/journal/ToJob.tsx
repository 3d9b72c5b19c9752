import { useSignal } from "@preact/signals";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { broughtPort, putDown, putDownWritten } from "../bench/broughtPort.ts";
import { texts } from "../bench/laidTexts.ts";
import { by, outcomeOf } from "./journalState.ts";
import { Who } from "./Who.tsx";

/** Of the port of a job that lies on the bench: whose it is, and the tap that writes down what was weighed. */
export function ToJob() {
  const trouble = useSignal<string | null>(null);
  const busy = useSignal(false);
  const from = broughtPort();
  if (!from) return null;
  const { job, port, called } = from;

  async function write(): Promise<void> {
    if (busy.value) return;
    trouble.value = by.value === "" ? words.tapWho : null;
    if (trouble.value) return;
    busy.value = true;
    const outcome = await outcomeOf({ ask: "weighed", job, port, by: by.value, texts: texts() });
    busy.value = false;
    trouble.value = outcome.type === "trouble" ? outcome.sentence : outcome.type === "written" ? null : words.unread;
    if (outcome.type !== "written") return;
    putDownWritten();
    location.hash = `#/job/${job}`;
  }

  return (
    <section class="part journal to-job" aria-labelledby="to-job">
      <h2 id="to-job" tabIndex={-1}>
        {words.fromJob}
      </h2>
      <p>{called}</p>
      <Who />
      {trouble.value && (
        <p class="mistake" role="alert">
          {trouble.value}
        </p>
      )}
      <p class="row">
        <button type="button" class="write" aria-busy={busy.value} onClick={write}>
          {words.writeWeighed}
        </button>
        <button type="button" class="plain" onClick={putDown}>
          {words.putDown}
        </button>
        <a class="tap-link" href={`#/job/${job}`}>
          {words.toJob}
        </a>
      </p>
    </section>
  );
}
