import { useComputed } from "@preact/signals";
import type { BenchSign } from "../../../sheets/answer/benchAnswer.tsx";
import { signWords, startSentence, unreadSentence, wantedSentence } from "../../../sheets/words/benchWords.ts";
import { InView } from "../kit/InView.tsx";
import { Mind } from "../kit/Mind.tsx";
import { Next } from "../kit/Next.tsx";
import { Picture } from "../kit/Picture.tsx";
import { answer, fault, lookAtPictures, mistakes, wanted } from "./benchState.ts";
import { Odds } from "./Odds.tsx";

/** The figure that is read from under the lift; small enough to stay in sight while readings are made. */
export function MainFigure() {
  const sign = useComputed(() =>
    answer.value ? signWords[answer.value.sign] : mistakes.value.size > 0 ? "Not read" : "Not yet",
  );
  const figure = useComputed(() => answer.value?.figure ?? null);
  const stop = useComputed(() => (answer.value ? stops.includes(answer.value.sign) : mistakes.value.size > 0));
  return (
    <div class="main-figure" data-stop={stop.value ? "" : undefined}>
      <p class="sign">
        {sign} {answer.value?.narrow && <span class="narrow">narrow</span>}
      </p>
      {figure.value && (
        <p class="figure">
          <b>{figure.value.newtonMetres}</b>
          <span class="units">
            <span>N·m</span>
            <span class="also">{figure.value.poundFeet} lbf·ft</span>
          </span>
        </p>
      )}
      {answer.value?.strip && <Picture svg={answer.value.strip} kind="strip" />}
    </div>
  );
}

const stops: readonly BenchSign[] = ["refused", "no torque"];

/** One answer, one "because", one "next". */
export function Answer() {
  return (
    <section class="part answer" aria-labelledby="answer">
      <h2 id="answer" tabIndex={-1}>
        Answer
      </h2>
      <Words />
      <InView kind="drawn" look={lookAtPictures}>
        <Pictures />
        <Odds />
      </InView>
      <Mind cautions={answer.value?.cautions ?? []} />
    </section>
  );
}

function Words() {
  const at = answer.value;
  if (fault.value !== null)
    return <p role="alert">The engine failed: {fault.value}. What you typed is kept; open the page again.</p>;
  if (!at) return <NoAnswer />;
  return (
    <>
      <div class="sentences" aria-live="polite">
        {at.sentences.map((it) => (
          <p key={it}>{it}</p>
        ))}
      </div>
      {at.because !== "" && (
        <p class="because">
          <b>Because</b> {at.because}
        </p>
      )}
      {at.next && <Next {...at.next} />}
    </>
  );
}

function NoAnswer() {
  const unread = [...mistakes.value.keys()];
  if (unread.length > 0)
    return (
      <div class="sentences" aria-live="polite">
        <p>{unreadSentence(unread)}</p>
        <Next sentence="Mend it:" field={unread[0] ?? null} />
      </div>
    );
  return (
    <div class="sentences" aria-live="polite">
      <p>{startSentence}</p>
      {wanted.value.length > 0 && <Next sentence={wantedSentence(wanted.value)} field={wanted.value[0] ?? null} />}
    </div>
  );
}

function Pictures() {
  const pictures = answer.value?.pictures ?? null;
  return (
    <div class="pictures">
      {pictures && <Picture svg={pictures.section} kind="sheet" />}
      {pictures?.window && <Picture svg={pictures.window} kind="sheet" />}
    </div>
  );
}
