import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { Frame } from "./Frame.tsx";

/** What falls due, the earliest first; what is overdue stands on top. */
export function DuePage() {
  return (
    <Frame view={{ name: "due" }}>
      {(things) => (
        <section class="part" aria-label={words.due}>
          {things.length === 0 && <p class="begin">{words.nothingDue}</p>}
          <ol class="due">
            {things.map(({ on, when, machine, sentence, job }) => (
              <li key={`${on} ${job} ${sentence}`} data-when={when}>
                <p class="stamp">
                  <b>{on}</b>
                  {when !== "to come" && <span class="when">{when === "today" ? words.today : words.overdue}</span>}
                </p>
                <p>
                  {machine && <b>{machine}: </b>}
                  {sentence}
                </p>
                {job && (
                  <a class="tap-link" href={`#/job/${job}`} aria-label={`${words.toJob} ${job}`}>
                    {job}
                  </a>
                )}
              </li>
            ))}
          </ol>
        </section>
      )}
    </Frame>
  );
}
