import type { CureClocks } from "../../mechanics/cure/clocks.ts";
import { CureClock } from "../drawings/cure/CureClock.tsx";
import { standaloneSvg } from "../drawings/standalone.ts";
import { clockText } from "../words/cureWords.ts";

/** The cure clock as an SVG of its own, in clock times where it is known when the joint was closed. */
export const cureClockSvg = (clocks: CureClocks, closed: Date | null): string =>
  standaloneSvg(
    <CureClock
      clocks={clocks}
      caption="Sealed joint"
      splashText={clockText(clocks.mayBeSplashed.time, closed)}
      throughText={clockText(clocks.curedThrough.likely, closed)}
    />,
  );
