import { useSignal } from "@preact/signals";
import { workshopTaps } from "../../../sheets/journal/workshopTaps.ts";
import { type ActName, actTitles, type GroupName, groupTitles } from "../../../sheets/words/actWords.ts";
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

/** What is written of the workshop itself: a job opened, a name, what stands on the shelf. */
function WorkshopPart() {
  const opened = useSignal<Opened | null>(null);
  const open = (act: ActName): void => {
    opened.value = { act, about: { type: "workshop" }, job: null, corrects: null, texts: {} };
  };
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
        <>
          <Taps acts={workshopTaps.first} open={open} />
          <details class="fold more">
            <summary>{words.more}</summary>
            {(Object.entries(workshopTaps.more) as [GroupName, readonly ActName[]][]).map(([group, acts]) => (
              <fieldset key={group} class="taps">
                <legend>{groupTitles[group]}</legend>
                <Taps acts={acts} open={open} />
              </fieldset>
            ))}
          </details>
        </>
      )}
      <PinSet />
      <BackupAge />
    </section>
  );
}

function Taps({ acts, open }: { readonly acts: readonly ActName[]; readonly open: (act: ActName) => void }) {
  return (
    <p class="row">
      {acts.map((act) => (
        <button key={act} type="button" class="tap" onClick={() => open(act)}>
          {actTitles[act]}
        </button>
      ))}
    </p>
  );
}
