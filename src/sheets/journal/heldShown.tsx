import { render } from "preact-render-to-string";
import type { JobSheet } from "../../journal/job/jobSheet.ts";
import { whatHeld } from "../../journal/views/whatHeld.ts";
import type { RemedyId } from "../../mechanics/remedies/method.ts";
import { held } from "../../mechanics/service/held.ts";
import { watched } from "../../mechanics/service/heldCases.ts";
import { heldCurve } from "../../mechanics/service/heldCurve.ts";
import { HoldingCurve } from "../drawings/holding/HoldingCurve.tsx";
import { heldPlainly } from "../words/heldWords.ts";
import { remedyNames } from "../words/remedyWords.ts";

/** How the workshop's own repairs of one method have held. */
export type HeldShown = {
  readonly method: string;
  readonly sentences: readonly string[];
  /** Causes that were named for those that came back. */
  readonly causes: readonly string[];
  readonly picture: string | null;
};

/** What held, by method, in the order of their names. */
export function heldShown(sheets: Iterable<JobSheet>): readonly HeldShown[] {
  const repairs = whatHeld(sheets);
  return held(repairs).methods.map((it) => {
    const own = repairs.filter(({ method }) => method === it.method);
    const name = remedyNames[it.method as RemedyId];
    const curve = heldCurve(own.flatMap((repair) => watched(repair) ?? []));
    return {
      method: name,
      sentences: heldPlainly(it),
      causes: own.flatMap(({ cause, job }) => (cause ? [`${job}: ${cause}`] : [])),
      picture: curve && render(<HoldingCurve curve={curve} caption={name} />),
    };
  });
}
