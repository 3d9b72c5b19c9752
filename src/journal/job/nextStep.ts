import type { PortId, UnitId } from "../facts/ids.ts";
import type { GateRefusal } from "./gate.ts";
import { leavingRefusals } from "./gates.ts";
import type { JobSheet } from "./jobSheet.ts";
import { isTight, type PortSheet } from "./portSheet.ts";
import type { UnitSheet } from "./unitSheet.ts";

/** What a hand does next, where the order of the job leaves no doubt. */
export type Step =
  | "count the turns"
  | "tighten"
  | "hear the owner"
  | "break the fill loose"
  | "take the plug out"
  | "understand the volume"
  | "count washers out"
  | "count washers in"
  | "close by hand"
  | "fill"
  | "check the level"
  | "look for drips"
  | "make the owner's sheet"
  | "release";

export type NextStep = { readonly step: Step; readonly port: PortId | null; readonly unit: UnitId | null };

/**
 * The next step of an open job at `now`; null where only the hand knows. What stands half done comes first, then the order of
 * an ordinary service: fill loose, drain, close, fill, level, tighten, look, release.
 */
export function nextStep(sheet: JobSheet, now: string): NextStep | null {
  if (sheet.stage !== "open") return null;
  const ports = Object.values(sheet.ports).filter((it) => it.heldForNow === null);
  const units = Object.values(sheet.units);
  return (
    at(
      "count the turns",
      ports.find((it) => it.state === "let go" && !it.countedSinceLetGo),
    ) ??
    at(
      "tighten",
      ports.find((it) => it.state === "by hand"),
    ) ??
    ofUnit(
      "understand the volume",
      units.find(({ balance, fills }) => balance?.stop && fills.length === 0),
    ) ??
    at(
      "hear the owner",
      ports.find((it) => it.offered !== null && it.decided === null),
    ) ??
    fillFirst(sheet, units) ??
    at(
      "take the plug out",
      ports.find((it) => it.state === "broken loose"),
    ) ??
    at(
      "count washers out",
      ports.find((it) => it.state === "out" && !it.washersOut),
    ) ??
    closing(sheet, ports, units) ??
    at(
      "look for drips",
      ports.find((it) => it.wasOut && isTight(it.state) && !it.dry?.dry && holdsFluid(units, it)),
    ) ??
    leaving(leavingRefusals(sheet, now), ports)
  );
}

const at = (step: Step, port: PortSheet | undefined): NextStep | null =>
  port ? { step, port: port.port, unit: null } : null;
const ofUnit = (step: Step, unit: UnitSheet | undefined): NextStep | null =>
  unit ? { step, port: null, unit: unit.unit } : null;

/** The fill of a unit that nobody touched yet, where it has a plug. */
function fillFirst({ ports }: JobSheet, units: readonly UnitSheet[]): NextStep | null {
  for (const { is, fluid } of units) {
    if (!is || fluid === "drained" || fluid === "filled") continue;
    const fill = is.ports.find(({ roles, closedBy }) => roles.includes("fill") && closedBy === "plug");
    const state = fill ? (ports[fill.port]?.state ?? "unknown") : null;
    const untouched = is.ports.every(({ port }) => (ports[port]?.state ?? "unknown") === "unknown");
    if (fill && state === "unknown" && untouched && fluid === "unknown")
      return { step: "break the fill loose", port: fill.port, unit: null };
  }
  return null;
}

/** From an empty unit to one that stands right: its drain is closed before it is filled, its level looked at before the rest. */
function closing(sheet: JobSheet, ports: readonly PortSheet[], units: readonly UnitSheet[]): NextStep | null {
  for (const unit of units) {
    const drains = unit.is?.ports.filter(({ roles }) => roles.includes("drain") && !roles.includes("fill")) ?? [];
    const open = drains.map(({ port }) => sheet.ports[port]).find((it) => it?.state === "out");
    if (unit.fluid === "drained") return closed(open) ?? ofUnit("fill", unit);
    if (unit.fluid === "filled") return ofUnit("check the level", unit);
  }
  const levelled = units.some(({ fluid }) => fluid === "level checked");
  return levelled ? closed(ports.find((it) => it.state === "out")) : null;
}

function closed(port: PortSheet | undefined): NextStep | null {
  if (!port) return null;
  return at(port.washersOut && !port.washersIn ? "count washers in" : "close by hand", port);
}

const holdsFluid = (units: readonly UnitSheet[], { port }: PortSheet): boolean =>
  units.some(({ is }) => is?.holdsFluid && is.ports.some((it) => it.port === port));

/** Papers and the road, once nothing else is open; a cure that runs is waited for. */
function leaving(refusals: readonly GateRefusal[], ports: readonly PortSheet[]): NextStep | null {
  if (!ports.some(({ state }) => isTight(state))) return null;
  if (refusals.length === 0) return { step: "release", port: null, unit: null };
  return refusals.every(({ gate }) => gate === "no owner's sheet")
    ? { step: "make the owner's sheet", port: null, unit: null }
    : null;
}
