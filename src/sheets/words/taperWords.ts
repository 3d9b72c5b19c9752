import type { SealKind } from "../../mechanics/joint/port.ts";
import type { TaperTurns } from "../../mechanics/joint/taperTurns.ts";
import { support } from "../../mechanics/quantity/distribution.ts";
import { distributionOf, valueIn } from "../../mechanics/quantity/quantity.ts";
import { turn } from "../../mechanics/quantity/unit.ts";
import type { TaperThread } from "../../mechanics/threads/thread.ts";

/** What turns say of a taper thread, and what to mind with it. */
export function taperSentences({ thread, byHand, least, most, byWrench, counted }: TaperTurns): readonly string[] {
  const [from, to] = support(distributionOf(byWrench));
  const hand = valueIn(turn, byHand);
  const told = counted ? [countedSentences[counted]] : [];
  return [
    `By hand ${sound(thread)} goes in ${halves(least)} to ${halves(most)} turns, ${halves(byHand)} where both parts are at their gauges; then ${from} to ${to} by wrench: ${nearest(hand + from)} to ${nearest(hand + to)} engaged in all.`,
    ...told,
    "Past that it wedges: a boss of light alloy or grey iron splits. Never back it off to line it up.",
    ...(thread.type === "Rp"
      ? [
          "The hole is parallel: the R plug seals in the first turns at its mouth alone, with paste or tape. Flanks of 60° (NPT) do not seal in it.",
          `A G plug on a ring is another joint. It goes in where it turns down to its seat by hand, as an Rp hole may be a little tight for it, and seals only on a flat face; it bears what it bears in G ${thread.size}: weigh it as that.`,
        ]
      : [
          "Flanks of 55° (R, Rc) and of 60° (NPT) do not seal on each other, and a taper plug in a parallel hole holds by its first turns only.",
        ]),
  ];
}

/** What stands under Seal and closes nothing on a taper thread. */
export function ringOfTaperSentence({
  kind,
  thread,
}: {
  readonly kind: SealKind;
  readonly thread: TaperThread;
}): string {
  const kept = `Under Seal stands "${kind}": it is kept there and not counted, for ${thread.designation} seals on its own thread.`;
  if (kind === "sealant, metal to metal") return `${kept} Paste or tape belongs on the thread.`;
  return `${kept} Where a ring closes this port, its thread is parallel${thread.type === "NPT" ? "" : `, as G ${thread.size}`}.`;
}

/** "a sound R 1/2"; an Rp hole is named with its plug. */
const sound = ({ type, size, designation }: TaperTurns["thread"]): string =>
  type === "Rp" ? `a sound R ${size} plug in ${designation}` : `a sound ${designation}`;

const countedSentences: Readonly<Record<NonNullable<TaperTurns["counted"]>, string>> = {
  "too few": "Fewer were counted: dirt, a bruised start or another thread. Stop and find out which.",
  "as gauged": "The count is within that: its size is not what is wrong with it.",
  "too many": "More were counted: hole or plug is worn or cut too deep, and it runs out of thread before it seals.",
};

const nearest = (turns: number): string => String(Math.round(2 * turns) / 2);
const halves = (turns: TaperTurns["byHand"]): string => nearest(Math.max(0, valueIn(turn, turns)));
