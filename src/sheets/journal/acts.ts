import type { Fact } from "../../journal/facts/fact.ts";
import type { PortState } from "../../journal/job/portSheet.ts";
import type { FluidState } from "../../journal/job/unitSheet.ts";
import type { ActName, GroupName, PortActName, UnitActName } from "../words/actWords.ts";
import type { About, Act } from "./act.ts";
import { afterActs } from "./afterActs.ts";
import { arrivalActs } from "./arrivalActs.ts";
import { bookActs } from "./bookActs.ts";
import { bookedActs } from "./bookedActs.ts";
import { callActs } from "./callActs.ts";
import { decisionActs } from "./decisionActs.ts";
import { machineActs } from "./machineActs.ts";
import { measureActs } from "./measureActs.ts";
import { noticeActs } from "./noticeActs.ts";
import { ownerActs } from "./ownerActs.ts";
import { portActs } from "./portActs.ts";
import { repairActs } from "./repairActs.ts";
import { shelfActs } from "./shelfActs.ts";
import { unitActs } from "./unitActs.ts";
import { workshopActs } from "./workshopActs.ts";
import { workshopTaps } from "./workshopTaps.ts";

const acts: Readonly<Record<ActName, Act>> = {
  ...portActs,
  ...unitActs,
  ...machineActs,
  ...decisionActs,
  ...repairActs,
  ...callActs,
  ...measureActs,
  ...arrivalActs,
  ...ownerActs,
  ...noticeActs,
  ...afterActs,
  ...workshopActs,
  ...bookedActs,
  ...shelfActs,
  ...bookActs,
};

export const actNamed = (name: ActName): Act => acts[name];

/** The form that a fact was written by, and the texts that were in it; null where no form here writes such a fact. */
export function actOf(fact: Fact): { readonly act: ActName; readonly texts: Readonly<Record<string, string>> } | null {
  for (const [act, { texts }] of Object.entries(acts) as [ActName, Act][]) {
    const found = texts(fact);
    if (found) return { act, texts: Object.fromEntries(Object.entries(found).filter(([, it]) => it !== "")) };
  }
  return null;
}

/** The taps that come first for a port in a state; all the others lie behind them. */
const firstAtPort: Readonly<Record<PortState, readonly PortActName[]>> = {
  unknown: ["loose", "stuck", "closed"],
  closed: ["loose"],
  "would not open": ["loose"],
  "broken loose": ["out", "torqued"],
  out: ["washersOut", "turns", "found", "washersIn", "byHand"],
  "by hand": ["torqued", "out", "letGo"],
  "let go": ["turns", "asked", "out"],
  torqued: ["dry", "checked", "found", "cure", "letGo"],
  "dry-checked": ["checked", "loose"],
};

const firstAtUnit: Readonly<Record<FluidState, readonly UnitActName[]>> = {
  unknown: ["drained", "level"],
  "drawn down": ["filled", "level"],
  drained: ["filled"],
  filled: ["level"],
  "level checked": ["level"],
};

/** All that is written of a port, a unit or a machine, by what it is about; a group begins with what is done first. */
const groups = {
  port: {
    hands: [
      ...(["loose", "stuck", "out", "washersOut", "washersIn", "byHand", "torqued", "letGo", "dry"] as const),
      ...(["checked", "closed", "held", "holdEnded"] as const),
    ],
    thread: [
      "found",
      "asked",
      "turns",
      "measured",
      "named",
      "material",
      "judged",
      "watched",
      "pressed",
      "figure",
      "struck",
    ],
    repair: ["offered", "decided", "prepared", "repaired", "cure", "tagged", "warned"],
    after: ["cameBack"],
  },
  unit: { fluid: ["drained", "filled", "level", "drawn", "levelFound", "flushed", "laidDown"] },
  machine: {
    machine: [
      "found",
      "note",
      "noticed",
      "paper",
      "released",
      "settled",
      "answered",
      "agreed",
      "promised",
      "meter",
      "ordered",
      "costs",
      "left",
      "nearMiss",
      "unitNoted",
      "follows",
      "done",
    ],
    owner: ["owner", "erased"],
    after: ["looked", "notReached", "planned"],
  },
  workshop: workshopTaps.more,
} as const satisfies Readonly<Record<About["type"], { readonly [G in GroupName]?: readonly ActName[] }>>;

export type Offered = {
  readonly first: readonly ActName[];
  readonly more: readonly { readonly group: GroupName; readonly acts: readonly ActName[] }[];
};

/** What may be written down of a port, unit or machine as it stands, the likeliest first. */
export function offered(
  about: About["type"],
  state: PortState | FluidState | "cap" | "held for now" | "gone" | "enquiry" | "booked" | null,
): Offered {
  const first = firstOf(about, state);
  const behind = Object.entries(groups[about]) as [GroupName, readonly ActName[]][];
  const asked = (act: ActName): boolean => !first.includes(act) && !unaskedOf(state).includes(act);
  const more = behind.map(([group, all]) => ({ group, acts: all.filter(asked) }));
  return { first, more: more.filter(({ acts: all }) => all.length > 0) };
}

/** What nobody can say yet of a machine that was only called about, or any more of one that has gone. */
function unaskedOf(state: Parameters<typeof offered>[1]): readonly ActName[] {
  return state === "enquiry" ? ["promised", "unitNoted"] : state === "gone" ? ["promised"] : [];
}

function firstOf(about: About["type"], state: Parameters<typeof offered>[1]): readonly ActName[] {
  switch (about) {
    case "port":
      // A cap opens by hand every day: nothing about it comes first.
      return state === "held for now" ? ["holdEnded"] : state === "cap" ? [] : firstAtPort[state as PortState];
    case "unit":
      return firstAtUnit[state as FluidState];
    case "machine":
      // Of one that was only called about the answer comes first, of one that has gone the looks.
      if (state === "enquiry") return ["answered", "booked", "open", "found", "note"];
      if (state === "booked") return ["open", "promised", "ordered", "note"];
      return state === "gone" ? [...groups.machine.after, "note"] : groups.machine.machine.slice(0, 5);
    case "workshop":
      return workshopTaps.first;
    default:
      return about satisfies never;
  }
}
