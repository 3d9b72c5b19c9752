import { forget, keep, kept } from "../kit/saved.ts";
import { calledName, type Texts } from "./benchTexts.ts";
import { example, started, text, texts } from "./laidTexts.ts";
import { backToPort, before, lay, startAnew, takeBack } from "./ports.ts";
import { knownOverTyped } from "./typedOver.ts";

/** A port of a job as it comes to the bench. */
export type PortBrought = {
  readonly job: string;
  readonly port: string;
  readonly called: string;
  readonly texts: Texts;
};

/**
 * Which port lies here stands among its texts, under names that no case has: so it is kept, laid aside and taken back with
 * them, and never stands beside another port's.
 */
const marks = { job: "from.job", port: "from.port", called: calledName, aside: "from.aside" } as const;

/** Of which job's port what lies on the bench is; null where nobody brought it from one. */
export function broughtPort(): Omit<PortBrought, "texts"> | null {
  const [job, port, called] = [text(marks.job).value, text(marks.port).value, text(marks.called).value];
  return job === "" ? null : { job, port, called };
}

/** Lays a port of a job on the bench; the one that lies there is kept as the one before. */
export function bring({ texts: known, ...of }: PortBrought): void {
  if (example.value) backToPort();
  const lies = broughtPort();
  if (lies) keep(typedTo(lies), texts());
  const aside = lies ? text(marks.aside).value : started.value ? "yes" : "";
  if (!lies && aside) startAnew();
  const from = { [marks.job]: of.job, [marks.port]: of.port, [marks.called]: of.called, [marks.aside]: aside };
  lay({ texts: { ...knownOverTyped(known, kept<Texts>(typedTo(of)) ?? {}), ...from }, open: ["left"], way: null });
}

/** Clears the bench of a job's port: the one that lay here before lies here again. What was typed to it is kept for the next time. */
export function putDown(): void {
  const lies = broughtPort();
  if (lies) keep(typedTo(lies), texts());
  clear();
}

/** Clears the bench of a job's port whose weighing was written down. */
export function putDownWritten(): void {
  const lies = broughtPort();
  if (lies) forget(typedTo(lies));
  clear();
}

/** Where what was typed to a port of a job is kept while another lies on the bench. */
const typedTo = ({ job, port }: { readonly job: string; readonly port: string }): string => `typed.${job} ${port}`;

function clear(): void {
  if (text(marks.aside).value !== "" && before.value) takeBack();
  else lay({ texts: {}, open: ["left"], way: null });
}
