import { useComputed } from "@preact/signals";
import { firstQuestions } from "../../../mechanics/remedies/portCase.ts";
import { partWords } from "../../../sheets/words/fieldWords.ts";
import { text } from "./laidTexts.ts";
import { Reading } from "./Reading.tsx";

/** The six questions before any number. One that is not answered is not "no": make-dos wait for it. */
export function AskedFirst() {
  const answered = useComputed(() => firstQuestions.filter((it) => text(`asked.${it}`).value !== "").length);
  return (
    <section class="part asked" aria-labelledby="asked">
      <h2 id="asked" tabIndex={-1}>
        <span class="balloon">{answered}/6</span> {partWords.asked}
      </h2>
      {firstQuestions.map((it) => (
        <div class="question-slot" key={it}>
          <Reading name={`asked.${it}`} />
          <Further question={it} />
        </div>
      ))}
    </section>
  );
}

/** What an answer leads on to. */
function Further({ question }: { readonly question: (typeof firstQuestions)[number] }) {
  if (text(`asked.${question}`).value !== "yes") return null;
  if (question === "pressure") return <Reading name="asked.pressure.value" />;
  if (question !== "repairedBefore") return null;
  return (
    <>
      <Reading name="asked.repairedBefore.method" />
      <Reading name="asked.repairedBefore.cause" />
    </>
  );
}
