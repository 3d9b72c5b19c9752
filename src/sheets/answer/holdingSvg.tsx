import type { HeldCurve } from "../../mechanics/service/heldCurve.ts";
import { HoldingCurve } from "../drawings/holding/HoldingCurve.tsx";
import { standaloneSvg } from "../drawings/standalone.ts";

/** The holding curve of one method as an SVG of its own. */
export const holdingSvg = (curve: HeldCurve, method: string): string =>
  standaloneSvg(<HoldingCurve curve={curve} caption={method} />);
