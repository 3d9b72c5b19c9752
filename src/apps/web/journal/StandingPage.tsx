import { useSignal } from "@preact/signals";
import type { ActName } from "../../../sheets/words/actWords.ts";
import { actTitles } from "../../../sheets/words/actWords.ts";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { ActSheet, type Opened } from "./ActSheet.tsx";
import { BackupAge } from "./BackupAge.tsx";
import { Frame } from "./Frame.tsx";
import { PinSet } from "./PinSet.tsx";
import { WallCard } from "./WallCard.tsx";

/** What stands in the workshop, on the wall all day. */
export function StandingPage() {
  return (
    <Frame view={{ name: "standing" }}>
      {(jobs) => (
        <>
          <section class="part" aria-label={words.standing}>
            {jobs.length === 0 && <p class="begin">{words.nothingStands}</p>}
            <div class="wall-cards">
              {jobs.map((job) => (
                <WallCard key={job.job} job={job} />
              ))}
            </div>
          </section>
          <WorkshopPart />
        </>
      )}
    </Frame>
  );
}

const acts: readonly ActName[] = ["open", "call", "person", "wrench"];

/** What is written of the workshop itself: a job opened, a name, a wrench. */
function WorkshopPart() {
  const opened = useSignal<Opened | null>(null);
  return (
    <section class="part" aria-labelledby="workshop">
      <h2 id="workshop" tabIndex={-1}>
        {words.workshop}
      </h2>
      {opened.value ? (
        <ActSheet
          opened={opened.value}
          close={() => {
            opened.value = null;
          }}
          done={({ job }) => {
            opened.value = null;
            if (job) location.hash = `#/job/${job}`;
          }}
        />
      ) : (
        <p class="row">
          {acts.map((act) => (
            <button
              key={act}
              type="button"
              class="tap"
              onClick={() => {
                opened.value = { act, about: { type: "workshop" }, job: null, corrects: null, texts: {} };
              }}
            >
              {actTitles[act]}
            </button>
          ))}
        </p>
      )}
      <PinSet />
      <BackupAge />
    </section>
  );
}
