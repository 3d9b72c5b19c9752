import type { Way, WayDetails } from "../../../sheets/answer/benchWays.tsx";
import { nothingOffered, offeredHint } from "../../../sheets/words/offerWords.ts";
import { Picture } from "../kit/Picture.tsx";
import { rest, settle } from "./benchState.ts";
import { allWays, way } from "./laidTexts.ts";
import { WorkingSteps } from "./WorkingSteps.tsx";

/** What can be done, as a row of small sections with their windows; a tap opens one. */
export function Ways() {
  const ways = rest.value?.ways ?? [];
  const count = rest.value?.count ?? 0;
  return (
    <section class="part ways" aria-labelledby="ways">
      <h2 id="ways" tabIndex={-1}>
        What can be done
      </h2>
      <p class="hint">{ways.some(({ place }) => place !== null) ? offeredHint : count > 0 ? nothingOffered : ""}</p>
      <ul class="cards">
        {ways.map((it) => (
          <li key={it.id}>
            <Card {...it} />
          </li>
        ))}
      </ul>
      {(allWays.value || count > ways.length) && (
        <button
          type="button"
          class="plain"
          aria-expanded={allWays.value}
          onClick={() => {
            allWays.value = !allWays.value;
            settle();
          }}
        >
          {allWays.value ? "The first few only" : `All ${count}, also what is not offered`}
        </button>
      )}
      <Details />
    </section>
  );
}

function Card(props: Way) {
  const { id, name, place, stands, verdict, price, ready, section, strip } = props;
  const isOpen = way.value === id;
  return (
    <button
      type="button"
      class="card"
      data-stands={stands}
      aria-expanded={isOpen}
      aria-controls={isOpen ? "way-details" : undefined}
      onClick={() => {
        way.value = isOpen ? null : id;
        settle();
      }}
    >
      <span class="card-head">
        {place !== null && <span class="balloon">{place}</span>}
        <b>{name}</b>
      </span>
      {(section || strip) && (
        <span class="card-pictures">
          {section && <Picture svg={section} kind="small" />}
          {strip && <Picture svg={strip} kind="strip" />}
        </span>
      )}
      <span class="verdict">{verdict}</span>
      {(price || ready) && <span class="terms">{[price, ready].filter((it) => it !== null).join(" · ")}</span>}
    </button>
  );
}

function Details() {
  const details = rest.value?.details ?? null;
  if (!details || details.id !== way.value) return null;
  return <WayPage {...details} />;
}

function WayPage({ name, owner, beforeAfter, windows, rows, sums }: WayDetails) {
  return (
    <div class="way-details" id="way-details">
      <h3>{name}</h3>
      <div class="pictures">
        {beforeAfter && <Picture svg={beforeAfter} kind="sheet" />}
        {windows && <Picture svg={windows} kind="sheet" />}
      </div>
      <dl>
        {rows.map((row) => (
          <div key={row.name}>
            <dt>{row.name}</dt>
            {row.lines.map((line) => (
              <dd key={line}>{line}</dd>
            ))}
          </div>
        ))}
        <div>
          <dt>To the owner</dt>
          <dd>{owner}</dd>
        </div>
      </dl>
      {sums.length > 0 && (
        <details class="fold">
          <summary>Working of the fit</summary>
          <WorkingSteps steps={sums} />
        </details>
      )}
    </div>
  );
}
