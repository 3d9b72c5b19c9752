import { InView } from "../kit/InView.tsx";
import { lazily } from "../kit/lazily.tsx";
import { Answer, MainFigure } from "./AnswerPanel.tsx";
import { AskedFirst } from "./AskedFirst.tsx";
import { answered, lookBehind, weighNow } from "./benchState.ts";
import { calledName } from "./benchTexts.ts";
import { example, started, text } from "./laidTexts.ts";
import { backToPort, before, exampleLost, showExample, startAnew, takeBack } from "./ports.ts";
import { Readings } from "./Readings.tsx";

/** The bench: what is asked, what is read, and beside it what that comes to. */
export function BenchPage() {
  return (
    <div class="bench">
      <div class="figure-strip">
        <MainFigure />
      </div>
      <div class="readings">
        <Begin />
        <AskedFirst />
        <Readings />
      </div>
      <div class="outcome">
        <Answer />
        <Behind />
      </div>
    </div>
  );
}

/** What stands behind the answer, reckoned once it comes near to view. */
function Behind() {
  return (
    <InView kind={answered.value ? "behind" : "behind none"} look={lookBehind}>
      {answered.value && <WaysAndPapers />}
    </InView>
  );
}

/** Its script is not fetched before there is an answer. */
const WaysAndPapers = lazily(() => import("./WaysAndPapers.tsx"), "WaysAndPapers");

/** What lies here, where it has a name; the worked example behind one tap, and the way back from it. */
function Begin() {
  const name = text(calledName).value;
  const called = name && <b>{name}</b>;
  if (example.value)
    return (
      <p class="begin">
        {called}
        <button type="button" class="plain" onClick={backToPort}>
          Back to my port
        </button>
      </p>
    );
  return (
    <p class="begin">
      {called}
      <button type="button" class="plain" onClick={showExample}>
        Show the worked example
      </button>
      {exampleLost.value && <span role="alert">Not fetched: open the page again once there is a network.</span>}
      {started.value && (
        <button type="button" class="plain" onClick={startAnew}>
          Start a new port
        </button>
      )}
      {!started.value && before.value && (
        <button type="button" class="plain" onClick={takeBack}>
          Take the port before back
        </button>
      )}
    </p>
  );
}

/** Weighs the port that was kept. */
export const weighKept = (): void => {
  if (started.value) weighNow();
};
