import type { BenchPapers, Paragraph } from "../../../sheets/answer/benchPapers.ts";
import { Sheet } from "../kit/Sheet.tsx";
import { reasons, rest } from "./benchState.ts";
import { WorkingSteps } from "./WorkingSteps.tsx";

/** What stands one tap behind the answer: the owner's version, the page for a colleague, why, and the working. */
export function Papers() {
  const papers = rest.value?.papers;
  return (
    <section class="part papers" aria-labelledby="papers">
      <h2 id="papers" tabIndex={-1}>
        Papers and working
      </h2>
      {papers ? <Sheets {...papers} /> : <p class="hint">They are written once there is an answer.</p>}
    </section>
  );
}

function Sheets(papers: BenchPapers) {
  const why = reasons.value ?? [];
  return (
    <>
      <Sheet title="For the owner">{() => <Paragraphs paragraphs={papers.owner} />}</Sheet>
      <Sheet title="To ask a colleague">{() => <Paragraphs paragraphs={papers.casePage} />}</Sheet>
      {why.length > 0 && (
        <Sheet title="Why, in full">
          {() => (
            <ul>
              {why.map((it) => (
                <li key={it}>{it}</li>
              ))}
            </ul>
          )}
        </Sheet>
      )}
      {papers.working.length > 0 && (
        <Sheet title="Working">
          {() => (
            <>
              <p class="hint">Middle of every range; the window itself puts the same terms together as densities.</p>
              <WorkingSteps steps={papers.working} />
            </>
          )}
        </Sheet>
      )}
      {papers.assumed.length > 0 && (
        <Sheet title="Taken because nobody said">
          {() => (
            <ul>
              {papers.assumed.map(({ reading, value, source }) => (
                <li key={reading}>
                  <b>{reading}</b>: {value} <span class="hint">{source}</span>
                </li>
              ))}
            </ul>
          )}
        </Sheet>
      )}
    </>
  );
}

function Paragraphs({ paragraphs }: { readonly paragraphs: readonly Paragraph[] }) {
  return (
    <div class="paper-sheet">
      {paragraphs.map(({ heading, lines }, i) => (
        <div key={i}>
          {heading !== null && <h4>{heading}</h4>}
          {lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
      ))}
    </div>
  );
}
