import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { ml_mm, mm } from "../../mechanics/quantity/unit.ts";
import { LevelGauge } from "../drawings/level/LevelGauge.tsx";
import { standaloneSvg } from "../drawings/standalone.ts";

/** The level gauge as an SVG of its own. */
export const levelGaugeSvg = (level: Quantity, lowest: Quantity, perHeight: Quantity): string =>
  standaloneSvg(
    <LevelGauge
      level_mm={valueIn(mm, level)}
      lowest_mm={valueIn(mm, lowest)}
      perHeight_ml_mm={valueIn(ml_mm, perHeight)}
    />,
  );
