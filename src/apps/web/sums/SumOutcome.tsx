import type { SumAnswer } from "../../../sheets/sums/sumAnswer.ts";
import { cannotBeRead, stillWanted } from "../../../sheets/words/benchWords.ts";
import { WorkingSteps } from "../bench/WorkingSteps.tsx";
import { Mind } from "../kit/Mind.tsx";
import { Next } from "../kit/Next.tsx";
import { Picture } from "../kit/Picture.tsx";
import { Sheet } from "../kit/Sheet.tsx";
import { Message } from "./Message.tsx";
import type { SumBench } from "./sumBench.ts";
import type { SumState } from "./sumState.ts";
import { TakenOver } from "./TakenOver.tsx";

type Props = { readonly bench: SumBench; readonly state: SumState };

/** One answer, one "because", one "next", one picture. */
export function SumOutcome(props: Props) {
  const { answer, fault } = props.state;
  const at = answer.value;
  return (
    <>
      <section class="part answer" aria-labelledby="answer">
        <h2 id="answer" tabIndex={-1}>
          Answer
        </h2>
        {fault.value !== null ? (
          <p role="alert">The sum failed: {fault.value}. What you typed is kept; open the page again.</p>
        ) : at ? (
          <Answered {...at} />
        ) : (
          <NoAnswer {...props} />
        )}
      </section>
      <section class="part papers" aria-labelledby="behind">
        <h2 id="behind" tabIndex={-1}>
          Why and how
        </h2>
        {at ? <Behind {...at} /> : <p class="hint">It stands here once there is an answer.</p>}
      </section>
    </>
  );
}

function Answered({ sentences, because, next, threads, message, rows, picture, cautions }: SumAnswer) {
  return (
    <>
      <div class="sentences" aria-live="polite">
        {sentences.map((it) => (
          <p key={it}>{it}</p>
        ))}
      </div>
      {because !== "" && (
        <p class="because">
          <b>Because</b> {because}
        </p>
      )}
      {next && <Next {...next} />}
      {threads.length > 0 && <TakenOver threads={threads} />}
      {message !== null && <Message text={message} />}
      {rows.length > 0 && (
        <dl class="rows">
          {rows.map(({ name, value }) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      )}
      {picture !== null && (
        <div class="pictures one">
          <Picture svg={picture} kind="sheet" />
        </div>
      )}
      <Mind cautions={cautions} />
    </>
  );
}

/** Before there is an answer: what cannot be read, or what is still wanted. */
function NoAnswer({ bench, state }: Props) {
  const unread = [...state.mistakes.value.keys()];
  const wanted = state.wanted.value;
  const labels = (names: readonly string[]): readonly string[] => names.map((it) => bench.words[it]?.label ?? it);
  const [first] = unread.length > 0 ? unread : wanted;
  return (
    <div class="sentences" aria-live="polite">
      <p>{unread.length > 0 ? cannotBeRead(labels(unread)) : bench.start}</p>
      {first && <Next sentence={unread.length > 0 ? "Mend it:" : stillWanted(labels(wanted))} field={first} />}
    </div>
  );
}

/** What stands one tap behind the answer. */
function Behind({ reasons, working, assumed }: SumAnswer) {
  if (reasons.length + working.length + assumed.length === 0) return <p class="hint">Nothing more stands behind it.</p>;
  return (
    <>
      {reasons.length > 0 && (
        <Sheet title="Why, in full">
          {() => (
            <ul>
              {reasons.map((it) => (
                <li key={it}>{it}</li>
              ))}
            </ul>
          )}
        </Sheet>
      )}
      {working.length > 0 && <Sheet title="Working">{() => <WorkingSteps steps={working} />}</Sheet>}
      {assumed.length > 0 && (
        <Sheet title="Taken because nobody said">
          {() => (
            <ul>
              {assumed.map(({ reading, value, source }) => (
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
