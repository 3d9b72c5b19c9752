import { chamferDepth } from "../../mechanics/joint/oRingChamfer.ts";
import { type PortSection, portSection } from "../../mechanics/joint/section.ts";
import type { Insert } from "../../mechanics/joint/sectionInput.ts";
import { sectionThread } from "../../mechanics/joint/sectionThread.ts";
import { usableRange } from "../../mechanics/joint/wrench.ts";
import { mean } from "../../mechanics/quantity/distribution.ts";
import type { Quantity } from "../../mechanics/quantity/quantity.ts";
import { valueIn } from "../../mechanics/quantity/quantity.ts";
import { mm, Nm, one, turn } from "../../mechanics/quantity/unit.ts";
import type { RemedyId } from "../../mechanics/remedies/method.ts";
import type { PortCase } from "../../mechanics/remedies/portCase.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import { turnsOf, type WeighedClosure } from "../../mechanics/remedies/weighedClosure.ts";
import type { WindowProps } from "../drawings/window/windowProps.ts";

/** The section of a port with one closure, from the lengths of the case. */
export function sectionOf(
  { port, ranges }: PortCase,
  { closure, turns }: Pick<WeighedClosure, "closure" | "turns">,
  insert: Insert | null = null,
): PortSection {
  const { thread, left } = port;
  const { plug, seal } = closure;
  const heightName = left.condition === "gone" ? "height poor" : (`height ${left.condition}` as const);
  return portSection({
    ...sectionThread(thread),
    threadDepth_mm: length(port.threadDepth),
    thinnestWall_mm: length(port.thinnestWall),
    roomBehind_mm: length(port.roomBehind),
    underHead_mm: length(plug.underHead),
    chamfer_mm: length(plug.chamfer),
    headDiameter_mm: length(plug.headDiameter),
    seal: {
      kind: seal.kind,
      outside_mm: valueIn(mm, seal.outside),
      inside_mm: valueIn(mm, seal.inside),
      thickness_mm: valueIn(mm, seal.thickness),
      chamfer_mm: length(chamferDepth(seal)),
    },
    turnsCarrying: turns ? Math.max(0, valueIn(turn, turns.caught)) : 0,
    turnsHealthy: port.healthy && valueIn(turn, port.healthy.turns),
    condition: left.condition,
    heightLeft: left.height ? valueIn(one, left.height) : mean(ranges[heightName].distribution),
    goodFrom_mm: length(left.goodFrom),
    goodTo_mm: length(left.goodTo),
    surface: closure.surface,
    insert,
  });
}

/** The section of a port with a remedy or repair done; null where it leaves nothing to draw a plug in. */
export function sectionAfter(id: RemedyId, { portCase, remedies, repairs }: Weighed): PortSection | null {
  const remedy = remedies.find((it) => it.id === id);
  if (remedy) return sectionOf(portCase, remedy);
  const repair = repairs.find((it) => it.id === id);
  return repair?.closed && repair.repaired ? sectionOf(repair.repaired, repair.closed, repair.insert) : null;
}

/** The section of a port that was repaired and not weighed, with its own plug in it; null where there is nothing to draw. */
export function sectionRepaired(id: RemedyId, { portCase: { asFound }, repairs }: Weighed): PortSection | null {
  const repair = repairs.find((it) => it.id === id);
  if (!repair?.repaired) return null;
  const { repaired, insert } = repair;
  return sectionOf(repaired, { closure: asFound, turns: turnsOf(repaired, asFound) }, insert);
}

/** The window bar of one closure; null where it is refused. */
export function windowOf(
  { bookFigures, levels }: PortCase,
  { window, advice }: WeighedClosure,
  caption: string,
): WindowProps | null {
  if (!window) return null;
  const pull = advice?.type === "pull" ? advice : null;
  const wrench = pull?.wrench ?? null;
  const range = wrench && usableRange(wrench, levels);
  return {
    need_Nm: window.need_Nm,
    limit_Nm: window.limit_Nm,
    cautiousRule_Nm: window.cautiousRule_Nm,
    medianStrip_Nm: window.medianStrip_Nm,
    floor_Nm: window.floor_Nm,
    advice_Nm: pull?.torque_Nm ?? null,
    bookFigures: bookFigures.map(({ torque, source }) => ({ torque_Nm: valueIn(Nm, torque), label: source })),
    wrench: wrench && range && { name: wrench.name, least_Nm: range.from_Nm, most_Nm: range.to_Nm },
    caption,
  };
}

const length = (quantity: Quantity | null): number | null => quantity && valueIn(mm, quantity);
