import type { LevelSighting, LimitReached } from "../../mechanics/fluid/limitDistance.ts";
import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { km, mm } from "../../mechanics/quantity/unit.ts";
import { LimitFan } from "../drawings/limit/LimitFan.tsx";
import { standaloneSvg } from "../drawings/standalone.ts";

/** The fan of the distance to the limit as an SVG of its own. */
export function limitFanSvg(sightings: readonly LevelSighting[], limit: Quantity, reached: LimitReached): string {
  const points = sightings.map(({ at, below }) => ({ at_km: valueIn(km, at), below_mm: valueIn(mm, below) }));
  const ends =
    reached.type === "reached"
      ? {
          likely_km: valueIn(km, reached.at),
          earliest_km: valueIn(km, reached.earliest),
          latest_km: valueIn(km, reached.latest),
        }
      : null;
  return standaloneSvg(<LimitFan sightings={points} limit_mm={valueIn(mm, limit)} reached={ends} />);
}
