import * as z from "zod/mini";
import { sealKinds, surfaces, washerMaterials } from "../../mechanics/joint/port.ts";
import { wrenchKinds } from "../../mechanics/joint/wrenchKinds.ts";
import { jointKinds } from "../../mechanics/tables/jointKinds.ts";
import { materials } from "../../mechanics/tables/materials.ts";
import { choice, day, label, quantity, words, yesNo } from "./fields.ts";
import {
  deviceId,
  figureId,
  fluidId,
  instrumentId,
  machineId,
  ownerId,
  personId,
  portId,
  sealantId,
  unitId,
} from "./ids.ts";

const fact = z.strictObject;
const type = z.literal;

const portRoles = ["fill", "level", "drain", "breather", "hole"] as const;
const closures = ["plug", "cap"] as const;

/** A port as it lies on its unit. A cap opens by hand every day; a plug has to be broken loose first. */
const portNoted = z.strictObject({
  port: portId,
  called: label,
  roles: z.array(choice(portRoles)),
  closedBy: choice(closures),
  joint: choice(jointKinds),
  thread: z.optional(label),
  material: z.optional(choice(materials)),
});

export const unitNoted = z.strictObject({
  unit: unitId,
  called: label,
  holdsFluid: yesNo,
  /** What it should hold, where a book or an earlier job says. */
  expected: z.optional(quantity("volume")),
  levelRule: z.optional(label),
  ports: z.array(portNoted).check(z.minLength(1, { error: "at least one port" })),
});

/** A figure of a book or a plate, with where it stands; two of them may disagree. */
const bookFigure = z.strictObject({
  figure: figureId,
  port: portId,
  source: label,
  torque: z.optional(quantity("torque")),
  seal: z.optional(choice([...sealKinds, ...washerMaterials])),
  surface: z.optional(choice(surfaces)),
  thread: z.optional(label),
  volume: z.optional(quantity("volume")),
  fluid: z.optional(label),
  every: z.optional(
    z.strictObject({
      distance: z.optional(quantity("length")),
      hours: z.optional(quantity("time")),
      months: z.optional(z.int().check(z.minimum(1))),
    }),
  ),
});

/** Measuring instruments by what they read; only a wrench has a scale to be out of. */
const instrument = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: type("wrench"),
    works: choice(wrenchKinds),
    least: quantity("torque"),
    most: quantity("torque"),
    step: quantity("torque"),
  }),
  z.strictObject({ kind: type("length"), called: label }),
  z.strictObject({ kind: type("volume"), called: label, readsIn: label }),
  z.strictObject({ kind: type("pressure"), called: label }),
  z.strictObject({ kind: type("temperature"), called: label }),
  z.strictObject({ kind: type("angle"), called: label }),
]);

/** What is known of the workshop itself, whatever job is on the lift. */
export const shopFacts = [
  fact({ type: type("WorkshopNamed"), called: label, place: z.optional(label), currency: label }),
  fact({ type: type("PersonJoined"), person: personId, called: label, role: z.optional(label) }),
  fact({ type: type("PersonLeft"), person: personId }),
  /** From the tip of a finger to its crease, for a finger that serves as a dipstick. */
  fact({ type: type("FingerMeasured"), person: personId, tipToCrease: quantity("length") }),
  fact({ type: type("DeviceJoined"), device: deviceId, called: label }),
  fact({ type: type("DeviceLeft"), device: deviceId, why: z.optional(words) }),
  fact({ type: type("InstrumentBought"), instrument: instrumentId, is: instrument }),
  fact({ type: type("InstrumentCalibrated"), instrument: instrumentId, on: day, certificate: z.optional(label) }),
  fact({ type: type("InstrumentRetired"), instrument: instrumentId, why: words }),
  fact({
    type: type("FluidStocked"),
    fluid: fluidId,
    called: label,
    batch: z.optional(label),
    shelfDate: z.optional(day),
  }),
  fact({
    type: type("SealantStocked"),
    sealant: sealantId,
    called: label,
    batch: z.optional(label),
    shelfDate: z.optional(day),
    /** What its label asks between closing and filling; the longer of it and ours counts. */
    labelHours: z.optional(quantity("time")),
    mostGap: z.optional(quantity("length")),
  }),
  fact({ type: type("StockUsedUp"), stock: z.union([fluidId, sealantId]) }),
  /** Of an owner the journal holds the identity alone; name, telephone and plates lie in his card, which may be erased. */
  fact({ type: type("OwnerMet"), owner: ownerId }),
  fact({ type: type("OwnerErased"), owner: ownerId, why: words }),
  fact({
    type: type("MachineMet"),
    machine: machineId,
    called: label,
    owner: z.optional(ownerId),
    units: z.array(unitNoted),
  }),
  fact({ type: type("UnitNoted"), machine: machineId, is: unitNoted }),
  fact({ type: type("MachineChangedHands"), machine: machineId, owner: z.nullable(ownerId) }),
  fact({ type: type("BookFigureNoted"), is: bookFigure }),
  fact({ type: type("BookFigureStruck"), figure: figureId, why: words }),
] as const;
