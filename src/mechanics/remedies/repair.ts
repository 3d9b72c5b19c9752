import type { Insert } from "../joint/sectionInput.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { dayAfter } from "../service/dueDate.ts";
import { jointRows } from "../tables/jointKinds.ts";
import { materialRows } from "../tables/materialRows.ts";
import type { MethodEstimate, MethodNumber } from "../tables/methodEstimates.ts";
import type { Condition, PortCell } from "../tables/portCells.ts";
import type { Chips } from "./fitChips.ts";
import type { Need } from "./fitNeed.ts";
import type { TapForm } from "./fitOverrun.ts";
import { methodOf, type RepairId } from "./method.ts";
import type { PortCase } from "./portCase.ts";
import { isPressurised, portFit, refusedByTable } from "./portFit.ts";
import { type Refusal, type RefusalRule, refusalBy } from "./refusalRules.ts";
import type { RepairCheck } from "./repairCheck.ts";
import { endsAfter_days, estimateOf } from "./shopFigures.ts";
import { turnsOf, type WeighedClosure } from "./weighedClosure.ts";

/** A method that does more than close what is left, weighed for one case. */
export type Repair = {
  readonly id: RepairId;
  readonly number: MethodNumber;
  readonly lasting: boolean;
  /** The day on which a make-do has ended, ISO 8601; null for what stays or where nobody said what day it is. */
  readonly until: string | null;
  readonly refused: Refusal | null;
  readonly stands: Stands;
  /** Why it does not apply, where it does not. */
  readonly whyNot: WhyNot | null;
  /** What has to hold for this kind of port. */
  readonly conditions: readonly Condition[];
  readonly needs: readonly Need[];
  readonly checks: readonly RepairCheck[];
  /** The port once it is repaired; null where no torque of ours makes sense. */
  readonly closed: WeighedClosure | null;
  /** The port as it then is, for a picture of it: its own thread whole again, or a larger one. */
  readonly repaired: PortCase | null;
  /** The steel in the wall of the hole, where the method puts some there. */
  readonly insert: Insert | null;
  /** The fit sums, worked. */
  readonly sums: readonly Quantity[];
  readonly readyAfter_h: number | null;
  readonly estimate: MethodEstimate;
};

/** How a method stands in a case. */
export type Stands =
  | "fits"
  | "measure first"
  | "doubtful"
  | "window empty"
  | "does not fit"
  | "does not apply"
  | "refused";

/** Why a method does not apply to what was found. */
export type WhyNot =
  | "not for this port"
  | "the hole is hurt, not the plug"
  | "more than the first thread is hurt"
  | "nothing is left to clean"
  | "only thin steel pans"
  | "no larger size"
  | "no coil of this size"
  | "no bush of this size"
  | "no table of its coil holes"
  | "taper thread"
  | "closed by a taper plug"
  | "the thread slides over";

/** What a method says of itself in a case; what it leaves out is as for most methods. */
export type RepairParts = {
  /** Which rules of the list bind it. */
  readonly bound: readonly RefusalRule[];
  readonly lasting: boolean;
  readonly whyNot?: WhyNot | null;
  readonly needs?: readonly Need[];
  /** Needs whose lack is only said, as a rule of thumb that is not kept. */
  readonly said?: readonly Need[];
  readonly checks?: readonly RepairCheck[];
  readonly sums?: readonly Quantity[];
  readonly repaired?: PortCase | null;
  readonly insert?: Insert | null;
  /** Weighed only where nothing stands against it. */
  readonly closed?: () => WeighedClosure | null;
};

/** The rules that bind a make-do: all of them. */
export const makeDoRules: readonly RefusalRule[] = [
  "1 structure",
  "2 pressure",
  "3 combustion",
  "4 reach",
  "5 water side",
  "6 crack",
  "7 too little",
  "8 again",
  "10 people",
  "13 not asked",
  "14 breather",
];

/** The rules that bind a new thread of full strength in the same metal. */
export const newThreadRules: readonly RefusalRule[] = ["1 structure", "6 crack", "13 not asked", "14 breather"];

/** A method weighed: the list of refusals first, then the table of ports, then what it needs, then its window. */
export function repairOf(portCase: PortCase, id: RepairId, parts: RepairParts): Repair {
  const { needs = [], said = [], checks = [], sums = [], whyNot = null } = parts;
  const number = methodOf[id];
  const cell = portFit(id, portCase);
  const refused = refusedBy(portCase, id, parts.bound, cell);
  const estimate = estimateOf(id, portCase.shop);
  const notHere = whyNot ?? (cell?.fit === "not applicable" ? "not for this port" : null);
  const against = refused !== null || notHere !== null || needs.some(({ state }) => state === "not met");
  const closed = against || parts.closed === undefined || !oursToWeigh(portCase) ? null : parts.closed();
  const conditions = cell?.conditions ?? [];
  const makersOnly = parts.closed !== undefined && !oursToWeigh(portCase);
  return {
    id,
    number,
    lasting: parts.lasting,
    until: endOf(portCase, endsAfter_days(estimate, parts.lasting)),
    refused,
    stands: standsOf(refused, notHere, needs, closed),
    whyNot: notHere,
    conditions,
    needs: refused ? [] : [...needs, ...said],
    checks: against
      ? []
      : [
          ...conditions.map((condition): RepairCheck => ({ type: "condition", condition })),
          ...checks,
          ...(makersOnly ? [{ type: "maker's torque only" } as const] : []),
        ],
    closed,
    repaired: against ? null : (parts.repaired ?? null),
    insert: against ? null : (parts.insert ?? null),
    sums: refused ? [] : sums,
    readyAfter_h: estimate.readyAfter_h,
    estimate,
  };
}

/** Where the metal of the case is drilled or cut: eyes, access, and whether it may burn. */
export function cuttingChecks({ port, asked, roomInFront }: PortCase): readonly RepairCheck[] {
  return [
    { type: "eyes, gear and cylinder covered" },
    // Measured room in front is a need of its own; without it somebody has to look.
    ...(roomInFront ? [] : ([{ type: "straight access" }] as const)),
    ...magnesiumChecks(port, asked),
  ];
}

/** Magnesium is said where it is known, and asked after where a light alloy has not been tested. */
export function magnesiumChecks({ material }: PortCase["port"], { alloyTested }: PortCase["asked"]): RepairCheck[] {
  if (material === "AZ91D") return [{ type: "is magnesium" }];
  return materialRows[material].lightAlloy && alloyTested !== "yes" ? [{ type: "magnesium question" }] : [];
}

/** The chips of a cut as a check. */
export const chipsCheck = (
  { magnetic, mayBurn }: Chips,
  volume: { readonly low: number; readonly high: number },
  mass: { readonly high: number },
): RepairCheck => ({
  type: "chips",
  from_cm3: volume.low,
  to_cm3: volume.high,
  to_g: mass.high,
  magnetic,
  mayBurn,
});

/** Which forms of tap the room behind takes, as a check. */
export function tapCheck(room: Readonly<Record<TapForm, Need>>): RepairCheck {
  const forms = Object.entries(room) as [TapForm, Need][];
  const most_mm = forms.map(([, { least }]) => 1e3 * least.value);
  if (room.bottoming.state === "not known") return { type: "tap forms not known", most_mm };
  return { type: "tap forms", fits: forms.flatMap(([form, { state }]) => (state === "met" ? [form] : [])), most_mm };
}

/** Plugs under combustion or working pressure are pulled to the maker's figure: our seals know neither. */
function oursToWeigh(portCase: PortCase): boolean {
  const { combustion, workingPressure, structure } = jointRows[portCase.joint];
  return !(combustion || workingPressure || structure || isPressurised(portCase));
}

function refusedBy(
  portCase: PortCase,
  id: RepairId,
  bound: readonly RefusalRule[],
  cell: PortCell | null,
): Refusal | null {
  const method = { id, seal: { kind: "none", material: null }, fullStrength: false } as const;
  return refusalBy(bound, method, portCase, turnsOf(portCase, portCase.asFound)) ?? refusedByTable(cell);
}

function standsOf(
  refused: Refusal | null,
  notHere: WhyNot | null,
  needs: readonly Need[],
  closed: WeighedClosure | null,
): Stands {
  const some = (state: Need["state"]): boolean => needs.some((it) => it.state === state);
  if (refused) return "refused";
  if (notHere) return "does not apply";
  if (some("not met")) return "does not fit";
  if (closed?.window && !closed.window.open) return "window empty";
  if (some("not known")) return "measure first";
  return some("doubtful") ? "doubtful" : "fits";
}

const endOf = ({ today }: PortCase, ends_days: number | null): string | null =>
  today !== null && ends_days !== null ? dayAfter(today, ends_days) : null;
