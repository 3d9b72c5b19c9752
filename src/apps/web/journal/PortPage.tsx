import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { route } from "../app/route.ts";
import { Picture } from "../kit/Picture.tsx";
import { Frame } from "./Frame.tsx";

/** The passport of a port: how often it was opened, by whom, and how its turns went over the years. */
export function PortPage() {
  const port = decodeURIComponent(route.value.slice("/port/".length));
  return (
    <Frame view={{ name: "port", port }}>
      {({ called, machine, also, opened, turns, visits, warnings }) => (
        <>
          <section class="part" aria-labelledby="port">
            <h2 id="port" tabIndex={-1}>
              {machine && `${machine}: `}
              {called} {also && <span class="also">{also}</span>}
            </h2>
            {warnings.map((it) => (
              <p key={it} class="shut">
                <b>{words.nextHand}:</b> {it}
              </p>
            ))}
            {turns && (
              <>
                <p class="sentences">{turns.sentence}</p>
                <Picture svg={turns.picture} kind="turns" />
              </>
            )}
            <p>{visits.length === 0 ? words.noVisits : words.timesOpened(opened)}</p>
          </section>
          <section class="part" aria-labelledby="visits">
            <h2 id="visits" tabIndex={-1}>
              {words.visits}
            </h2>
            <ol class="due">
              {visits.map(({ job, on, lines }) => (
                <li key={`${job} ${on}`}>
                  <p class="stamp">
                    <b>{on}</b>
                  </p>
                  <ul>
                    {lines.map((it) => (
                      <li key={it}>{it}</li>
                    ))}
                  </ul>
                  <a class="tap-link" href={`#/job/${job}`} aria-label={`${words.toJob} ${job}`}>
                    {job}
                  </a>
                </li>
              ))}
            </ol>
          </section>
        </>
      )}
    </Frame>
  );
}
