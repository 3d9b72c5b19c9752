import { adaptorPlate } from "./adaptorPlate.ts";
import { bondedBush } from "./bondedBush.ts";
import { castThread } from "./castThread.ts";
import { closedForGood } from "./closedForGood.ts";
import { expandingBung } from "./expandingBung.ts";
import { firstThreadCleaned } from "./firstThread.ts";
import { leftAndWatched } from "./leftAndWatched.ts";
import { newPart } from "./newPart.ts";
import { newPlug, ordinaryReseal } from "./newPlug.ts";
import { nextSizeRepairs } from "./nextSize.ts";
import type { PortCase } from "./portCase.ts";
import type { Repair } from "./repair.ts";
import { selfCuttingPlug } from "./selfCuttingPlug.ts";
import { solidBushing } from "./solidBushing.ts";
import { studAndNut } from "./studAndNut.ts";
import type { WeighedClosure } from "./weighedClosure.ts";
import { weldedAndRecut } from "./weldedAndRecut.ts";
import { wireCoil } from "./wireCoil.ts";

/** Every method that does more than close what is left of a hurt port, in the order of their numbers. */
export const repairs = (portCase: PortCase, asFound: WeighedClosure): readonly Repair[] => [
  newPlug(portCase, asFound),
  firstThreadCleaned(portCase),
  selfCuttingPlug(portCase),
  ...nextSizeRepairs(portCase),
  wireCoil(portCase),
  solidBushing(portCase),
  bondedBush(portCase),
  castThread(portCase),
  expandingBung(portCase),
  closedForGood(portCase),
  weldedAndRecut(portCase),
  adaptorPlate(portCase),
  studAndNut(portCase),
  newPart(portCase),
  leftAndWatched(portCase),
];

/** A repair of a port that is refused as found: how it fits, and no torque before it is done. */
export const withoutTorque = (repair: Repair): Repair =>
  repair.closed
    ? { ...repair, closed: null, checks: [...repair.checks, { type: "weigh again once repaired" }] }
    : repair;

/** What a healthy port takes, and nothing else. */
export const repairsOfHealthy = (portCase: PortCase): readonly Repair[] => [ordinaryReseal(portCase)];
