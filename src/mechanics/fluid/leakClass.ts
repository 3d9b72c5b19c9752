import { type LeakClass, type LeakSight, leakClasses } from "../tables/leakClasses.ts";

/** What was looked for, in the order in which one looks. Null where nobody looked. */
export type LeakLook = {
  readonly wet: boolean;
  /** Wet again after it was wiped dry. */
  readonly comesAgain: boolean | null;
  readonly drops: "none" | "hanging" | "falling" | "in a string";
};

/** What a look is called, and its classes. */
export type NamedLeak = LeakClass & { readonly sight: LeakSight };

/** The class of a leak by what was seen. Wetness that nobody wiped and watched counts as a weep. */
export function leakClass(look: LeakLook): NamedLeak {
  const sight = sightOf(look);
  return { sight, ...leakClasses[sight] };
}

function sightOf({ wet, comesAgain, drops }: LeakLook): LeakSight {
  switch (drops) {
    case "in a string":
      return "stream";
    case "falling":
      return "drip";
    case "hanging":
      return "drop hanging";
    case "none":
      if (!wet) return "dry";
      return comesAgain === false ? "stain" : "weep";
    default:
      return drops satisfies never;
  }
}
