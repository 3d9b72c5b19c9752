import { useSignal } from "@preact/signals";
import type { ComponentChildren } from "preact";
import type { LogShown } from "../../../sheets/journal/logShown.ts";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { momentText, rangeText } from "../kit/clockTexts.ts";
import { TextField } from "../kit/TextField.tsx";
import type { Opened } from "./ActSheet.tsx";
import { by, outcomeOf } from "./journalState.ts";
import { Photos } from "./Photos.tsx";
import { Who } from "./Who.tsx";

type Props = {
  readonly job: string;
  readonly lines: readonly LogShown[];
  readonly open: (it: Omit<Opened, "job">) => void;
  /** The entry that is being corrected, and the form that does it. */
  readonly corrected: string | null;
  readonly sheet: ComponentChildren;
};

/** Everything that was written, the latest first, each with who and when. Nothing is ever taken out of it. */
export function Log({ job, lines, open, corrected, sheet }: Props) {
  const putting = useSignal<string | null>(null);
  const choosing = useSignal(false);
  return (
    <>
      <p class="row">
        <button
          type="button"
          class="plain"
          aria-pressed={choosing.value}
          onClick={() => {
            choosing.value = !choosing.value;
          }}
        >
          {choosing.value ? words.notNow : words.putSomething}
        </button>
      </p>
      <ol class="log" reversed>
        {lines.map((line) => (
          <li key={line.entry} data-struck={line.struck ? "" : undefined}>
            <p>
              <span class="stamp">
                {momentText(line.at)} {line.who}
              </span>{" "}
              <span class="said">
                {line.about && <b>{line.about}: </b>}
                {line.sentence}
                {line.promise && `, ${words.promised(rangeText(line.promise))}`}
              </span>
              {line.struck && <span class="struck">✕ {line.struck}</span>}
            </p>
            <Photos names={line.photos} of={[line.about, line.sentence].filter((it) => it).join(": ")} />
            {choosing.value && !line.struck && putting.value !== line.entry && corrected !== line.entry && (
              <button
                type="button"
                class="plain put-right"
                aria-label={`${words.putRight}: ${line.sentence}`}
                onClick={() => {
                  putting.value = line.entry;
                }}
              >
                {words.putRight}
              </button>
            )}
            {putting.value === line.entry && (
              <PutRight
                job={job}
                line={line}
                open={open}
                close={() => {
                  if (putting.peek() === line.entry) putting.value = null;
                }}
              />
            )}
            {corrected === line.entry && sheet}
          </li>
        ))}
      </ol>
    </>
  );
}

/** A reason, and then either the entry leaves the picture or another takes its place. */
function PutRight(props: {
  readonly job: string;
  readonly line: LogShown;
  readonly open: Props["open"];
  readonly close: () => void;
}) {
  const { job, line, open, close } = props;
  const reason = useSignal("");
  const problem = useSignal<string | null>(null);
  const given = (): string | null => {
    const text = reason.value.trim();
    problem.value = text === "" ? words.reasonWanted : by.value === "" ? words.tapWho : null;
    return problem.value === null ? text : null;
  };
  return (
    <div class="act">
      <TextField
        name="reason"
        label={words.reason}
        value={reason}
        problem={problem}
        give={(text) => {
          reason.value = text;
        }}
      />
      <Who />
      <p class="row">
        {line.corrects && (
          <button
            type="button"
            onClick={() => {
              const text = given();
              if (text === null || !line.corrects) return;
              open({ ...line.corrects, corrects: { entry: line.entry, reason: text } });
              close();
            }}
          >
            {words.correct}
          </button>
        )}
        <button
          type="button"
          onClick={async () => {
            const text = given();
            if (text === null) return;
            const outcome = await outcomeOf({ ask: "withdraw", entry: line.entry, job, by: by.value, reason: text });
            if (outcome.type === "written") close();
            else if (outcome.type === "trouble") problem.value = outcome.sentence;
          }}
        >
          {words.withdraw}
        </button>
        <button type="button" class="plain" onClick={close}>
          {words.notNow}
        </button>
      </p>
    </div>
  );
}
