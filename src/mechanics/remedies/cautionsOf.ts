import { materialRows } from "../tables/materialRows.ts";
import { beforeLoosening, type Caution, cautionNames, methodCautions } from "../tables/methodCautions.ts";
import { methodOf, type RemedyId } from "./method.ts";
import type { PortCase } from "./portCase.ts";
import { portFit } from "./portFit.ts";

/**
 * What to mind where a method is done in a case: what the plug closes, what the method brings, and the test that follows
 * it. Magnesium is left out where the metal is none or was tested, a cylinder or gears where there are none.
 */
export function cautionsOf(id: RemedyId, portCase: PortCase): readonly Caution[] {
  const { joint, port, asked } = portCase;
  const own = methodCautions[id === "lower torque" ? id : methodOf[id]];
  const tested = (portFit(id, portCase)?.conditions ?? []).some((it) => /pressure|cap tested/.test(it));
  const known = new Set<Caution>([...beforeLoosening(joint), ...own, ...(tested ? (["pump limited"] as const) : [])]);
  const burns = materialRows[port.material].lightAlloy && (port.material === "AZ91D" || asked.alloyTested !== "yes");
  if (!burns) known.delete("magnesium burns");
  if (!materialRows[port.material].lightAlloy) known.delete("alloy before welding");
  if (joint === "spark plug") known.delete("nothing moving behind");
  if (id === "left and watched") known.delete("hot oil");
  return cautionNames.filter((it) => known.has(it));
}
