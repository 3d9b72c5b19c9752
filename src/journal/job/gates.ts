import type { Entry } from "../entry.ts";
import type { Fact, FactOf } from "../facts/fact.ts";
import type { PortId, UnitId } from "../facts/ids.ts";
import type { GateName, GateRefusal } from "./gate.ts";
import type { JobSheet } from "./jobSheet.ts";
import { isTight, type PortSheet } from "./portSheet.ts";

/**
 * The gates that are shut for a fact on this job, none if it may be written.
 *
 * A writer asks before it writes. The projection asks again for every entry, because two devices that were apart may each
 * have done what neither would have done knowing of the other; what it finds is a breach, shown and never dropped.
 * `signed` says who writes and when.
 */
export function gates(sheet: JobSheet, fact: Fact, signed: Pick<Entry, "by" | "at">): readonly GateRefusal[] {
  return shutFor(sheet, fact, signed).filter((it) => it.override === "never" || !isOverridden(sheet, it));
}

/** What stands between a machine and the road at `now`: Appendix B's "may leave", each with whether it can be overridden. */
export function leavingRefusals(sheet: JobSheet, now: string): readonly GateRefusal[] {
  const open = leaving(sheet, now);
  return open.filter((it) => it.override === "never" || !isOverridden(sheet, it));
}

/** What forbids starting the machine: a port that is not tight, a hole held for now, a level unchecked. */
export const startingRefusals = (sheet: JobSheet): readonly GateRefusal[] => [
  ...Object.values(sheet.ports).flatMap(notTight),
  ...Object.values(sheet.units).flatMap((unit) => levelOf(sheet, unit.unit)),
];

function shutFor(sheet: JobSheet, fact: Fact, { by, at }: Pick<Entry, "by" | "at">): readonly GateRefusal[] {
  switch (fact.type) {
    case "UnitDrained":
      return beforeDraining(sheet, fact.unit);
    case "UnitFilled":
      return beforeFilling(sheet, fact.unit);
    case "PortTorqued":
      return beforeTorque(sheet, fact, by);
    case "RepairMade":
      return beforeRepair(sheet, fact);
    case "MachineReleased":
      return leaving(sheet, at);
    default:
      return [];
  }
}

const never = (gate: GateName, port: PortId | null, unit: UnitId | null = null): GateRefusal => ({
  gate,
  override: "never",
  port,
  unit,
});

const byName = (gate: GateName, port: PortId | null, unit: UnitId | null = null): GateRefusal => ({
  gate,
  override: "name and reason",
  port,
  unit,
});

const isOverridden = ({ overrides }: JobSheet, { gate, port }: GateRefusal): boolean =>
  overrides.some((it) => it.rule === gate && (it.port === undefined || port === null || it.port === port));

/** A unit whose fill will not open must not be drained: the machine would be stranded. */
function beforeDraining(sheet: JobSheet, unit: UnitId): readonly GateRefusal[] {
  const is = sheet.units[unit]?.is;
  if (!is) return [byName("unit not named", null, unit)];
  const fills = is.ports.filter(({ roles, closedBy }) => roles.includes("fill") && closedBy === "plug");
  return fills.filter(({ port }) => !hasOpened(sheet.ports[port])).map(({ port }) => byName("fill first", port, unit));
}

const hasOpened = (port: PortSheet | undefined): boolean =>
  port !== undefined && (port.brokenLoose !== null || port.wasOut);

/** A wrong unit or an overfilled case shows in what came out, and only before anything is filled. */
function beforeFilling(sheet: JobSheet, unit: UnitId): readonly GateRefusal[] {
  const { drained = null, balance = null, is = null } = sheet.units[unit] ?? {};
  if (!drained) return [];
  if (balance?.stop) return [byName("volume stop", null, unit)];
  return drained.out === undefined && is?.expected !== undefined ? [byName("volume not measured", null, unit)] : [];
}

function beforeTorque(
  { ports }: JobSheet,
  { port, pulledBy, enteredBecause, checkedAgain }: FactOf<"PortTorqued">,
  by: Entry["by"],
): readonly GateRefusal[] {
  const sheet = ports[port];
  return [
    ...(pulledBy !== by && enteredBecause === undefined ? [byName("pulled by another", port)] : []),
    ...(sheet && differ(sheet) ? [byName("washers differ", port)] : []),
    ...(sheet?.washersOut && !sheet.washersIn ? [byName("washers not counted", port)] : []),
    ...(checkedAgain && (sheet?.checkedAgain ?? 0) > 0 ? [never("checked twice", port)] : []),
    ...(sheet && !sheet.countedSinceLetGo ? [byName("let go, not counted again", port)] : []),
  ];
}

/** A method that was refused when it was weighed stays refused, unless its rule lets a name and a reason through. */
function beforeRepair({ ports, overrides }: JobSheet, { port, method }: FactOf<"RepairMade">): readonly GateRefusal[] {
  const weighed = ports[port]?.weighed?.options.find(({ id }) => id === method);
  if (!weighed?.refused) return [];
  const { rule, override } = weighed.refused;
  if (override !== "name and reason") return [never("method refused", port)];
  return overrides.some((it) => it.rule === rule) ? [] : [byName("method refused", port)];
}

function leaving(sheet: JobSheet, now: string): readonly GateRefusal[] {
  const ports = Object.values(sheet.ports);
  const issued = (paper: string): boolean => sheet.papers.some((it) => it.paper === paper);
  return [
    ...startingRefusals(sheet),
    ...ports.filter((it) => isTight(it.state)).flatMap((it) => closedRight(sheet, it, now)),
    ...(issued("owner's sheet") ? [] : [byName("no owner's sheet", null)]),
    ...ports
      .filter(({ repairs, tag }) => repairs.some((it) => !it.lasting) && !tag)
      .map((it) => byName("no tag", it.port)),
  ];
}

/** A port that nobody touched is no reason to stay; one that was loosened and is not tight again is. */
function notTight({ port, state, heldForNow }: PortSheet): readonly GateRefusal[] {
  if (heldForNow) return [never("held for now", port)];
  return state === "unknown" || state === "closed" || isTight(state) ? [] : [never("port not tight", port)];
}

/** The level counts once fluid went out or in, or a port of the unit was open. */
function levelOf(sheet: JobSheet, unit: UnitId): readonly GateRefusal[] {
  const { fluid, is } = sheet.units[unit] ?? { fluid: "unknown", is: null };
  if (is && !is.holdsFluid) return [];
  const wasOpen = is?.ports.some(({ port }) => sheet.ports[port]?.wasOut) ?? false;
  if (fluid === "level checked" || (fluid === "unknown" && !wasOpen)) return [];
  return [never("level unchecked", null, unit)];
}

function closedRight(sheet: JobSheet, port: PortSheet, now: string): readonly GateRefusal[] {
  const { cure, dry, wasOut, washersOut, washersIn } = port;
  const holdsFluid = Object.values(sheet.units).some(
    ({ is }) => is?.holdsFluid && is.ports.some((it) => it.port === port.port),
  );
  return [
    ...(cure && Date.parse(now) < Date.parse(cure.earliest) ? [byName("curing", port.port)] : []),
    ...(differ(port) ? [byName("washers differ", port.port)] : []),
    ...(wasOut && (!washersOut || !washersIn) ? [byName("washers not counted", port.port)] : []),
    ...(wasOut && holdsFluid && !dry?.dry ? [byName("not seen dry", port.port)] : []),
  ];
}

/** Two out and one in: one was stuck on the case. None out and one in: is the old one still there? */
const differ = ({ washersOut, washersIn }: PortSheet): boolean =>
  washersOut !== null && washersIn !== null && washersOut.count !== washersIn.count && washersIn.because === undefined;
