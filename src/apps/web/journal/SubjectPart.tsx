import type { ComponentChildren } from "preact";
import type { About } from "../../../sheets/journal/act.ts";
import type { ActTap, Subject } from "../../../sheets/journal/jobShown.ts";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import type { Opened } from "./ActSheet.tsx";
import { PortState } from "./WallCard.tsx";
import { WeighTap } from "./WeighTap.tsx";

/** The id of the heading of what facts are written about. */
export const subjectId = (about: About): string => `at-${Object.values(about).join("-")}`;

/** A port, a unit or the machine: its state, and a tap for each thing that hands do to it. */
export function SubjectPart(props: {
  readonly job: string;
  readonly subject: Subject;
  readonly open: (it: Omit<Opened, "job">) => void;
  readonly children: ComponentChildren;
}) {
  const { job, subject, open, children } = props;
  const { about, called, also, wall, state, first, more, weigh } = subject;
  const id = subjectId(about);
  const tapped =
    ({ act }: ActTap) =>
    (): void =>
      open({ act, about, corrects: null, texts: {} });
  return (
    <section class="part subject" aria-labelledby={id}>
      <h3 id={id} tabIndex={-1}>
        {called} {also && <span class="also">{also}</span>}
      </h3>
      {wall && <PortState port={wall} />}
      {state && state !== "not touched" && (
        <span class="port-state">
          <b>{state}</b>
        </span>
      )}
      <Acts taps={first} tapped={tapped} />
      {weigh === "first" && about.type === "port" && <WeighTap job={job} port={about.port} />}
      {children}
      <details class="fold more">
        <summary>{words.more}</summary>
        {weigh === "behind" && about.type === "port" && <WeighTap job={job} port={about.port} />}
        {more.length === 1
          ? more.map(({ title, taps }) => <Acts key={title} taps={taps} tapped={tapped} />)
          : more.map(({ title, taps }) => (
              <fieldset key={title} class="taps">
                <legend>{title}</legend>
                <Acts taps={taps} tapped={tapped} />
              </fieldset>
            ))}
        {about.type === "port" && (
          <a class="tap-link" href={`#/port/${about.port}`}>
            {words.passport}
          </a>
        )}
      </details>
    </section>
  );
}

/** What a gate forbids now stays a tap: its form says why, and what opens it. */
function Acts({ taps, tapped }: { readonly taps: readonly ActTap[]; readonly tapped: (tap: ActTap) => () => void }) {
  return (
    <>
      <p class="row">
        {taps.map((tap) => (
          <button key={tap.act} type="button" class="tap" data-shut={tap.shut ? "" : undefined} onClick={tapped(tap)}>
            {tap.shut && <span aria-hidden="true">✕ </span>}
            {tap.word}
          </button>
        ))}
      </p>
      {taps.map(
        ({ act, word, shut }) =>
          shut && (
            <p key={act} class="hint">
              {word}: {words.notYet} {shut}
            </p>
          ),
      )}
    </>
  );
}
