import { jointRows } from "../tables/jointKinds.ts";
import { portCell } from "../tables/methodsByPort.ts";
import type { PortCell } from "../tables/portCells.ts";
import { methodOf, type RemedyId } from "./method.ts";
import type { PortCase } from "./portCase.ts";
import type { Refusal } from "./refusalRules.ts";

/**
 * How a method suits the port, by the table of ports: a port under working pressure is a pressure port whatever its name, and
 * where water is reached the test for it is a condition. Null for a kind of joint that nobody has named.
 */
export function portFit(id: RemedyId, portCase: PortCase): PortCell | null {
  const cell = portCell(methodOf[id], isPressurised(portCase) ? "pressure port" : portCase.joint);
  const wet = portCase.asked.reaches?.includes("water") && !jointRows[portCase.joint].waterSide;
  if (!cell || !wet || cell.fit === "refused" || cell.fit === "not applicable") return cell;
  return { ...cell, conditions: [...cell.conditions, "pressure and vacuum test"] };
}

/** The refusal of a method that the table forbids at this port and the list of refusals does not. */
export const refusedByTable = (cell: PortCell | null): Refusal | null =>
  cell?.fit === "refused"
    ? {
        rule: "not for this port",
        reason: { type: "method not for this port" },
        override: "never",
        overridden: null,
      }
    : null;

/** The refusal of a method that the table has against it in this case. */
export const forbiddenHere = (id: RemedyId, portCase: PortCase): Refusal | null =>
  refusedByTable(portFit(id, portCase));

/** Working pressure in a port that is not called one; coolant has its own column, and so have the others. */
export function isPressurised({ joint, asked }: PortCase): boolean {
  const { coolant, structure, combustion } = jointRows[joint];
  const pressurised = asked.pressure !== null && asked.pressure !== "none" && asked.pressure.value > 0;
  return pressurised && !coolant && !structure && !combustion;
}
