import { useSignal } from "@preact/signals";
import type { JobShown, Subject } from "../../../sheets/journal/jobShown.ts";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { route } from "../app/route.ts";
import { ActSheet, type Opened } from "./ActSheet.tsx";
import { Frame } from "./Frame.tsx";
import { Log } from "./Log.tsx";
import { SubjectPart, subjectId } from "./SubjectPart.tsx";
import { Breaches, Forbids, Promised, WallSign } from "./WallCard.tsx";

/** One job: how it stands, what is next, everything that can be written about it, and its log. */
export function JobPage() {
  const job = decodeURIComponent(route.value.slice("/job/".length));
  return (
    <Frame view={{ name: "job", job }}>
      {(shown) => (shown ? <Job key={job} job={job} shown={shown} /> : <p class="begin">{words.noSuchJob}</p>)}
    </Frame>
  );
}

function Job({ job, shown }: { readonly job: string; readonly shown: JobShown }) {
  const opened = useSignal<Opened | null>(null);
  const open = (it: Omit<Opened, "job"> | null): void => {
    opened.value = it && { ...it, job };
  };
  const now = opened.value;
  // The form goes, and the hand that was on it stays where it wrote; where it opened another one meanwhile, that stays.
  const close = (): void => {
    if (now === null || opened.peek() !== now) return;
    open(null);
    requestAnimationFrame(() => document.getElementById(subjectId(now.about))?.focus());
  };
  const { wall, here, next, cameFor, owner, follows, subjects, log } = shown;
  const sheet = now && <ActSheet opened={now} close={close} done={close} />;
  const at = now?.corrects ? null : now?.about;
  const isOpenAt = (subject: Subject): boolean => JSON.stringify(subject.about) === JSON.stringify(at);
  return (
    <>
      <section class="part job-head" aria-labelledby="job">
        {here ? <WallSign job={wall} /> : <p class="wall-sign">{words.notHere}</p>}
        <h2 id="job" tabIndex={-1}>
          {wall.machine} <span class="also">{[wall.where, wall.job].filter((it) => it).join(", ")}</span>
        </h2>
        {cameFor && (
          <p>
            {words.cameFor}: {cameFor}
          </p>
        )}
        <Promised job={wall} />
        {follows && (
          <p>
            <a class="tap-link" href={`#/job/${follows}`}>
              {words.follows(follows)}
            </a>
          </p>
        )}
        {owner && (
          <p class="owner">
            <span>
              {words.owner}: <b>{owner.name}</b>
              {owner.plate && `, ${owner.plate}`}
            </span>
            {owner.telephone && (
              <a class="tap-link" href={`tel:${owner.telephone.replaceAll(/[^+\d]/g, "")}`}>
                {words.callOwner(owner.telephone)}
              </a>
            )}
          </p>
        )}
        {next && (
          <p class="next">
            <span>
              <b>{words.next}</b> {next.sentence}
            </span>
            <button
              type="button"
              class="plain"
              onClick={() => open({ act: next.act, about: next.about, corrects: null, texts: {} })}
            >
              {words.write1}
            </button>
          </p>
        )}
        <Breaches job={wall} />
        {here && wall.forbids.length > 0 && (
          <details class="fold">
            <summary>{words.before(wall.forbids.length)}</summary>
            <Forbids job={wall} />
          </details>
        )}
      </section>
      {shown.toHaveHere.length > 0 && (
        <section class="part" aria-labelledby="to-have">
          <h2 id="to-have">{words.toHaveHere}</h2>
          <ul>
            {shown.toHaveHere.map((it) => (
              <li key={it}>{it}</li>
            ))}
          </ul>
        </section>
      )}
      {subjects.map((subject) => (
        <SubjectPart key={JSON.stringify(subject.about)} job={job} subject={subject} open={open}>
          {isOpenAt(subject) ? sheet : null}
        </SubjectPart>
      ))}
      <section class="part" aria-labelledby="log">
        <h2 id="log" tabIndex={-1}>
          {words.log}
        </h2>
        <Log job={job} lines={log} open={open} corrected={now?.corrects?.entry ?? null} sheet={sheet} />
      </section>
    </>
  );
}
