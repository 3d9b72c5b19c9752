import type { Remedy } from "../../mechanics/remedies/remedy.ts";
import type { Repair } from "../../mechanics/remedies/repair.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";

/** The first remedy, in the order of the method, that has a torque to pull. */
export const bestRemedy = ({ remedies }: Weighed): Remedy | null =>
  remedies.find((it) => it.advice?.type === "pull") ?? null;

/** What is shown beside the port as found: what would be done instead, or what has more room where that is narrow. */
export function remedyBeside(weighed: Weighed): Remedy | null {
  const best = bestRemedy(weighed);
  if (best?.id !== "lower torque") return best;
  return best.window?.narrow ? roomierRemedy(weighed) : null;
}

/** The first remedy with a torque to pull and room on both sides of it. */
export const roomierRemedy = ({ remedies }: Weighed): Remedy | null =>
  remedies.find(({ window, advice }) => advice?.type === "pull" && !window?.narrow) ?? null;

/** The repair that comes first in the order, among those that are begun today or measured for. */
export function bestRepair({ repairs, ranking }: Weighed): Repair | null {
  const ids = ranking.map(({ id }) => id);
  return (
    repairs.filter(({ id }) => ids.includes(id)).toSorted((a, b) => ids.indexOf(a.id) - ids.indexOf(b.id))[0] ?? null
  );
}
