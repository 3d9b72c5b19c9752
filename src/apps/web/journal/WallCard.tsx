import type { JobOnWall, PortOnWall } from "../../../sheets/journal/standingShown.ts";
import { capital } from "../../../sheets/words/firstLetter.ts";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { momentText, rangeText } from "../kit/clockTexts.ts";

/** The sign over a machine: whether it may be started, in word and sign, never by colour alone. */
export function WallSign({ job }: { readonly job: JobOnWall }) {
  const stop = !job.mayStart;
  return (
    <p class="wall-sign" data-stop={stop ? "" : undefined}>
      <span aria-hidden="true">{stop ? "✕" : "✓"}</span>{" "}
      {job.gone && stop ? `${words.gone}: ${words.doNotStart.toLowerCase()}` : stop ? words.doNotStart : words.mayStart}
      {job.mayLeave && !job.gone && `, ${words.mayLeave.toLowerCase()}`}
    </p>
  );
}

/** The state of a port as big as it has to be from across the bay. */
export function PortState({ port }: { readonly port: PortOnWall }) {
  const { state, alarm, since, hand, until } = port;
  return (
    <span class="port-state" data-alarm={alarm ? "" : undefined}>
      <b>{state}</b>
      <span class="also">
        {[since, hand, until && `${words.until} ${until.includes("T") ? momentText(until) : until}`]
          .filter((it) => it)
          .join(", ")}
      </span>
    </span>
  );
}

/** One job as the wall shows it: what must not be started first, then every port somebody touched. */
export function WallCard({ job }: { readonly job: JobOnWall }) {
  return (
    <section class="wall-card" aria-labelledby={`wall-${job.job}`}>
      <WallSign job={job} />
      <h2 id={`wall-${job.job}`}>
        {job.machine} <span class="also">{[job.where, job.job].filter((it) => it).join(", ")}</span>
      </h2>
      <Promised job={job} />
      <Breaches job={job} />
      <dl class="wall">
        {job.units
          .filter(({ state }) => state !== "not touched")
          .map(({ unit, called, state, stop }) => (
            <div key={unit}>
              <dt>{called}</dt>
              <dd>
                <b>{state}</b>
                {stop && <span class="stop-line">STOP: {stop}</span>}
              </dd>
            </div>
          ))}
        {job.ports.map((port) => (
          <div key={port.port}>
            <dt>{port.called}</dt>
            <dd>
              <PortState port={port} />
            </dd>
          </div>
        ))}
      </dl>
      {job.next && (
        <p class="next">
          <span>
            <b>{words.next}</b> {job.next}
          </span>
        </p>
      )}
      {job.forbids.length > 0 && (
        <details class="fold">
          <summary>{words.before(job.forbids.length)}</summary>
          <Forbids job={job} />
        </details>
      )}
      <p class="row">
        <a class="tap-link" href={`#/job/${job.job}`}>
          {words.toJob}
        </a>
      </p>
    </section>
  );
}

/** By when it is promised, and where that cannot be kept. */
export function Promised({ job: { promise } }: { readonly job: JobOnWall }) {
  if (!promise) return null;
  return (
    <p class="promised">
      {capital(words.promised(rangeText(promise)))}
      {promise.broken && <span class="stop-line">{promise.broken}</span>}
    </p>
  );
}

/** What one device did and would not have done knowing of another. */
export function Breaches({ job }: { readonly job: JobOnWall }) {
  if (job.breaches.length === 0) return null;
  return (
    <div class="shut">
      <h3>{words.wentPast}</h3>
      <ul>
        {job.breaches.map((it) => (
          <li key={it}>{it}</li>
        ))}
      </ul>
    </div>
  );
}

/** Why it must not start or leave, each said once. */
export function Forbids({ job }: { readonly job: JobOnWall }) {
  if (job.forbids.length === 0) return null;
  return (
    <ul class="forbids">
      {job.forbids.map((it) => (
        <li key={it}>{it}</li>
      ))}
    </ul>
  );
}
