import { useComputed, useSignal } from "@preact/signals";
import { useCallback, useRef } from "preact/hooks";
import {
  type BenchSign,
  signWords,
  startSentence,
  unreadSentence,
  wantedSentence,
  waysComing,
  waysNotFetched,
} from "../../../sheets/words/benchWords.ts";
import { InView } from "../kit/InView.tsx";
import { lazily, quietly } from "../kit/lazily.tsx";
import { Mind } from "../kit/Mind.tsx";
import { Next } from "../kit/Next.tsx";
import {
  answered,
  because,
  cautions,
  fault,
  figure,
  lookAtPictures,
  lookAtWords,
  mistakes,
  more,
  narrow,
  next,
  sentences,
  sign,
  wanted,
  weighNow,
} from "./benchState.ts";

/** The figure that is read from under the lift; small enough to stay in sight while readings are made. */
export function MainFigure() {
  const word = useComputed(() =>
    sign.value ? signWords[sign.value] : mistakes.value.size > 0 ? "Not read" : "Not yet",
  );
  const stop = useComputed(() => (sign.value ? stops.includes(sign.value) : mistakes.value.size > 0));
  return (
    <div class="main-figure" data-stop={stop.value ? "" : undefined}>
      <p class="sign">
        {word} <Narrow />
      </p>
      <Figure />
      {answered.value && <Strip />}
    </div>
  );
}

const Narrow = () => narrow.value && <span class="narrow">narrow</span>;

/** Its two numbers are texts of their own: a step of a stepper changes them and nothing around them. */
function Figure() {
  const none = useComputed(() => figure.value === null);
  const newtonMetres = useComputed(() => figure.value?.newtonMetres);
  const poundFeet = useComputed(() => figure.value?.poundFeet);
  if (none.value) return null;
  return (
    <p class="figure">
      <b>{newtonMetres}</b>
      <span class="units">
        <span>N·m</span>
        <span class="also">{poundFeet} lbf·ft</span>
      </span>
    </p>
  );
}

/** Like the engine's drawings themselves, not fetched before there is an answer. */
const Drawings = lazily(() => import("./Drawings.tsx"), "Drawings");
const Strip = quietly(() => import("./Drawings.tsx"), "Strip");

const stops: readonly BenchSign[] = ["refused", "no torque"];

/** One answer, one "because", one "next". */
export function Answer() {
  return (
    <section class="part answer" aria-labelledby="answer">
      <h2 id="answer" tabIndex={-1}>
        Answer
      </h2>
      <SteadyWords />
      <InView kind="drawn" look={lookAtPictures}>
        {answered.value && <Drawings />}
      </InView>
      <Cautions />
    </section>
  );
}

/**
 * Out of view the words keep the height that they were seen with: they are written with the figure, for a screen reader to say them, and
 * lay out nothing but themselves.
 */
function SteadyWords() {
  const height = useSignal<string | undefined>(undefined);
  const seen = useRef(false);
  const look = useCallback((inView: boolean, height_px: number) => {
    lookAtWords(inView);
    height.value = inView ? undefined : seen.current ? `${height_px}px` : usualHeight;
    seen.current ||= inView;
  }, []);
  return (
    <InView kind="words" look={look}>
      <div class="steady" data-held={height.value ? "" : undefined} style={{ "--height": height.value }}>
        <Words />
      </div>
    </InView>
  );
}

const usualHeight = "12rem";

function Words() {
  if (fault.value !== null)
    return <p role="alert">The reckoning failed: {fault.value}. What you typed is kept; open the page again.</p>;
  if (!answered.value) return <NoAnswer />;
  return (
    <>
      <Sentences />
      <Because />
      <WhatNext />
    </>
  );
}

function Because() {
  const said = useComputed(() => because.value !== "");
  return (
    said.value && (
      <p class="because">
        <b>Because</b> {because}
      </p>
    )
  );
}

/** What to do next; its place is kept while that is still being weighed. */
function WhatNext() {
  if (next.value) return <Next {...next.value} />;
  if (more.value === "coming") return <p class="next awaited hint">{waysComing}</p>;
  return (
    more.value === "not fetched" && (
      <p class="next" role="alert">
        <span>{waysNotFetched}</span>
        <button type="button" class="plain" onClick={weighNow}>
          Try again
        </button>
      </p>
    )
  );
}

function Sentences() {
  return (
    <div class="sentences" aria-live="polite">
      {(sentences.value ?? []).map((it, i) => (
        <p key={i}>{it}</p>
      ))}
    </div>
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

function Cautions() {
  return <Mind cautions={cautions.value ?? []} />;
}
