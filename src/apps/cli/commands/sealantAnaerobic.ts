import { breakawayRange } from "../../../mechanics/cure/anaerobic.ts";
import { valueIn } from "../../../mechanics/quantity/quantity.ts";
import { Nm } from "../../../mechanics/quantity/unit.ts";
import {
  type AnaerobicMetal,
  type AnaerobicStrength,
  anaerobicMetals,
  anaerobicStrengths,
} from "../../../mechanics/tables/cureData.ts";
import { anyOf } from "../../../sheets/words/problemWords.ts";
import type { BreakawayInWords } from "../../../sheets/words/sealantWords.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption, threadOption } from "../options.ts";
import { digits } from "../print.ts";

export type AnaerobicOptions = {
  readonly metals?: string;
  readonly activator?: boolean;
  readonly temperature?: string;
  readonly thread?: string;
  readonly engaged?: string;
};

/** The metals that meet in a joint; none where nobody said. @throws InputMistake */
export function metalsOf({ metals }: AnaerobicOptions): readonly AnaerobicMetal[] {
  if (metals === undefined) return [];
  const known = Object.keys(anaerobicMetals) as AnaerobicMetal[];
  return metals.split(",").map((it) => {
    const metal = known.find((name) => name === it.trim());
    if (!metal) throw mistaken("--metals", it.trim(), anyOf(known));
    return metal;
  });
}

export const isLightAlloy = (metals: readonly AnaerobicMetal[]): boolean =>
  metals.includes("aluminium") || metals.includes("magnesium");

/** The torque that breaks each class of anaerobic loose; null where nobody named the thread. @throws InputMistake */
export function breakawayFound({ thread, engaged }: AnaerobicOptions): BreakawayInWords | null {
  if (thread === undefined) {
    if (engaged !== undefined) throw mistaken("--thread", null, "the thread, as M20x1.5, with --engaged");
    return null;
  }
  if (engaged === undefined) throw mistaken("--engaged", null, 'the length on which thread meets thread, as "10 mm"');
  const { d_2 } = threadOption("--thread", thread);
  const l = positiveOption("--engaged", "l", "length", "10 mm", engaged);
  const classes = (Object.keys(anaerobicStrengths) as AnaerobicStrength[]).map((strength) => {
    const { low, high } = breakawayRange(strength, d_2, l);
    const [low_Nm, high_Nm] = [digits(valueIn(Nm, low), 2), digits(valueIn(Nm, high), 2)];
    return { strength, low, high, low_Nm, high_Nm };
  });
  return { thread: thread.trim(), classes };
}
