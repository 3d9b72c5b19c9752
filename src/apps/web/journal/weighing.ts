import { caseFromJournal } from "../../../sheets/journal/caseFromJournal.ts";
import { namesIn } from "../../../sheets/words/journalNames.ts";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import type { Texts } from "../bench/benchTexts.ts";
import type { PortBrought } from "../bench/broughtPort.ts";
import { caseTexts } from "../bench/caseTexts.ts";
import { weighedBench } from "../bench/weighedBench.ts";
import { today } from "../kit/clock.ts";
import type { Keeper } from "./keeper.ts";
import type { Outcome, PortOfJob } from "./messages.ts";

/** A port of a job with what the journal knows of it, as it is laid on the bench. */
export function portForBench({ reader }: Keeper, { job, port }: PortOfJob): PortBrought {
  const [sheet, shop] = [reader.sheet(job as never), reader.shop()];
  const names = namesIn(shop, sheet);
  const machine = sheet.machine === null ? [] : [names.machine(sheet.machine)];
  const called = [names.port(port), ...machine, words.inJob(job)].join(", ");
  return { job, port, called, texts: caseTexts(caseFromJournal(port, sheet, shop)) };
}

/** Weighs what stands on the bench and writes it to the port of the job it was brought from. */
export async function weighingWritten(
  keeper: Keeper,
  { job, port, by, texts }: PortOfJob & { readonly by: string; readonly texts: Texts },
): Promise<Outcome> {
  const weighed = weighedBench(texts, port as never, today(), ENGINE_VERSION);
  if (!weighed.ok) return { type: "problems", problems: weighed.problems };
  const signed = { by: by as never, job: job as never, at: new Date().toISOString() };
  await keeper.pen.write(signed, weighed.fact);
  await keeper.wrote();
  return { type: "written", job };
}
