import * as z from "zod/mini";
import { catches, conditions, countings, sealKinds, surfaces, washerMaterials } from "../../mechanics/joint/port.ts";
import { wrenchKinds } from "../../mechanics/joint/wrenchKinds.ts";
import { remedyIds } from "../../mechanics/remedies/method.ts";
import { reaches } from "../../mechanics/remedies/portCase.ts";
import { propertyClasses } from "../../mechanics/tables/iso898.ts";
import { jointKinds } from "../../mechanics/tables/jointKinds.ts";
import { type LevelName, referenceLevels } from "../../mechanics/tables/levels.ts";
import { materials } from "../../mechanics/tables/materials.ts";
import { type RangeName, referenceRanges } from "../../mechanics/tables/referenceRanges.ts";
import { anyOf } from "../words/problemWords.ts";
import { measuredThread } from "./measuredThread.ts";
import { choice, day, described, length, quantity, text, yesNo } from "./schemaParts.ts";

const override = z.strictObject({
  rule: text('the rule, as "7 too little"'),
  by: text("the name of who takes it on himself"),
  reason: text("his reason"),
});

const asked = z.strictObject({
  crack: z.optional(choice(["no", "yes"])),
  pressure: z.optional(quantity('"none", or the working pressure, as "1.2 bar"')),
  reaches: z.optional(
    z.array(choice(reaches), { error: `a list of ${anyOf(reaches)}; [] where the fluid reaches none of them` }),
  ),
  people: z.optional(choice(["no", "yes"])),
  repairedBefore: z.optional(
    z.union(
      [z.literal("no"), z.strictObject({ method: text("the method"), cause: z.optional(text("why it came back")) })],
      { error: '"no", or { "method", "cause" }' },
    ),
  ),
  breather: z.optional(choice(["free", "blocked", "none"])),
  waterTest: z.optional(choice(["passed", "failed", "not done"])),
  alloyTested: z.optional(choice(["yes", "no"])),
  overrides: z.optional(z.array(override, { error: 'a list of { "rule", "by", "reason" }' })),
});

const plug = z.strictObject({
  propertyClass: z.optional(choice(propertyClasses)),
  tolerance: z.optional(text('a tolerance class as "6g"')),
  underHead: length("head face to tip", "13 mm"),
  headDiameter: length("diameter of the head's face", "27 mm"),
  chamfer: length("length of the point that carries nothing", "1 mm"),
  original: z.optional(yesNo("whether this plug belongs here")),
});

const seal = z.strictObject({
  kind: z.optional(choice(sealKinds)),
  material: z.optional(choice(washerMaterials)),
  outside: length("outside diameter of the ring or the sealed face", "26 mm"),
  inside: length("inside diameter of the ring or the sealed face", "20.4 mm"),
  thickness: length("thickness as it lies when tightened", "2 mm"),
  chamfer: length("depth of the chamfer that an O-ring lies in, case face to its bottom", "3 mm"),
  original: z.optional(yesNo("whether this kind of seal belongs here")),
});

const left = z.strictObject({
  turns: z.optional(quantity('turns by hand from the catch to the seat, as "3.5"')),
  counted: z.optional(choice(countings)),
  condition: z.optional(choice(conditions)),
  catch: z.optional(choice(catches)),
  withWasher: z.optional(yesNo("whether a washer was on during the count")),
  goodFrom: length("where the good thread begins below the case face", "8.5 mm"),
  goodTo: length("where the good thread ends below the case face", "16 mm"),
  height: z.optional(quantity('thread height left as a share, as "0.6" or "60 %"')),
});

const housing = z.strictObject(
  {
    material: choice(materials),
    tolerance: z.optional(text('a tolerance class as "6H"')),
    threadDepth: length("case face to the end of the hole", "16 mm"),
    thinnestWall: length("hole edge to the outside, thinnest side", "7 mm"),
    roomBehind: length("inner face to the nearest thing behind", "11 mm"),
    roomInFront: length("face of the hole to the nearest thing in front of it, square to the face", "150 mm"),
    temperature: z.optional(quantity('temperature of the case, as "20 °C"')),
  },
  { error: '{ "material", ... }' },
);

const bookFigure = z.strictObject({
  torque: quantity('a torque, as "46 N·m"'),
  source: text('where it stands, as "service sheet, page 12"'),
  seal: z.optional(choice([...sealKinds, ...washerMaterials])),
  surface: z.optional(choice(surfaces)),
});

const crowFoot = z.strictObject({
  lever: quantity('square of the wrench to the middle of the grip, as "300 mm"'),
  extension: quantity('square of the wrench to the middle of the plug, as "60 mm"'),
  angle: z.optional(quantity("0 ° in line, 90 ° across")),
});

const wrench = z.strictObject({
  name: text('its name in this workshop, as "W-2"'),
  kind: z.optional(choice(wrenchKinds)),
  least: quantity('the least figure of its scale, as "20 N·m"'),
  most: quantity('the greatest figure of its scale, as "100 N·m"'),
  step: z.optional(quantity('the step of its scale, as "2 N·m"')),
  calibrated: z.optional(day),
  crowFoot: z.optional(crowFoot),
});

const number = z.number({ error: "a number" });

const wish = z.strictObject({
  today: z.optional(yesNo("whether the machine is wanted today")),
  ceiling: z.optional(described(number, "the most that it may cost, in the workshop's currency")),
  opensAgain: z.optional(yesNo("whether the port must open again")),
  afterRepair: z.optional(yesNo("whether to weigh the repaired port although it is refused as found")),
});

const air = z.strictObject({
  temperature: z.optional(quantity('temperature of the bay, as "12 °C"')),
  humidity: z.optional(text('its humidity, as "65 %", or dry, normal, damp')),
});

const figure = z.number({ error: "a number" }).check(z.minimum(0, { error: "a number from 0" }));
const span = z.strictObject(
  { low: figure, likely: z.optional(figure), high: figure },
  { error: '{ "low", "likely", "high" }' },
);
const shop = z.strictObject({
  rate: z.optional(described(figure, "the shop's rate per hour, in its currency")),
  comeback: z.optional(described(span, "what a comeback costs the shop")),
});
const ownFigures = z.strictObject({
  hours: z.optional(described(span, "hours on the lift besides the normal service")),
  parts: z.optional(described(span, "parts, in the shop's currency")),
  comesBack: z.optional(described(span, "share that comes back within a year, 0 to 1")),
});

const days = z.number({ error: "days since the repair" }).check(z.minimum(0, { error: "days from 0" }));
const heldCase = z.strictObject({
  method: choice(remedyIds),
  from_days: described(days, "days for which it is known to have held"),
  to_days: z.optional(described(days, "days by which it had come back; left out while it holds")),
});
const range = z.union(
  [
    z.strictObject({ value: number }),
    z.strictObject({ low: number, high: number }),
    z.strictObject({ low: number, likely: number, high: number }),
    z.strictObject({ mean: number, sd: number, least: z.optional(number), most: z.optional(number) }),
    z.strictObject({ mean: number, cv: number, least: z.optional(number), most: z.optional(number) }),
    z.strictObject({ median: number, sigma: number, least: z.optional(number), most: z.optional(number) }),
  ],
  {
    error:
      '{ "value" }, { "low", "high" }, { "low", "likely", "high" }, { "mean", "sd" }, { "mean", "cv" } or { "median", "sigma" }; the last three also with "least" and "most"',
  },
);

const everyName = <N extends string, T extends z.ZodMiniType>(names: readonly N[], schema: T) =>
  z.strictObject(
    Object.fromEntries(names.map((name) => [name, z.optional(schema)])) as Record<N, z.ZodMiniOptional<T>>,
  );

const rangeNames = Object.keys(referenceRanges) as RangeName[];
const levelNames = Object.keys(referenceLevels) as LevelName[];

/** A case as it is written down: docs and `weigh --schema` print this, and every field is checked against it. */
export const caseSchema = z.strictObject(
  {
    joint: z.strictObject({ kind: choice(jointKinds) }, { error: '{ "kind": ... }' }),
    asked: z.optional(asked),
    thread: z.union([text('a thread such as "M20x1.5", "1/2-20 UNF", "G 1/2" or "1/2-14 NPT"'), measuredThread], {
      error: 'a thread such as "M20x1.5", or what was measured of it: { "outside", "gaps", "bore", "travel", ... }',
    }),
    case: housing,
    plug: z.optional(plug),
    seal: z.optional(seal),
    left: z.strictObject(left._zod.def.shape, {
      error: '{ "turns", "counted", "condition", "catch", "withWasher", ... }',
    }),
    healthyTurns: z.optional(quantity('the same count in a sound twin hole, as "8"')),
    healthyWithWasher: z.optional(yesNo("whether a washer was on during that count")),
    surface: z.optional(choice(surfaces)),
    bookFigures: z.optional(z.array(bookFigure, { error: 'a list of { "torque", "source" }' })),
    wrenches: z.optional(z.array(wrench, { error: 'a list of { "name", "least", "most" }' })),
    prevailing: z.optional(quantity('torque at which the plug turns before it is seated, as "1.5 N·m"')),
    today: z.optional(day),
    wish: z.optional(wish),
    record: z.optional(
      z.array(heldCase, { error: 'a list of { "method", "from_days", "to_days" }: how the shop\'s own repairs held' }),
    ),
    temperature: z.optional(quantity('temperature of the case, as "20 °C"')),
    air: z.optional(air),
    shop: z.optional(shop),
    estimates: z.optional(everyName(remedyIds, ownFigures)),
    ranges: z.optional(everyName(rangeNames, range)),
    levels: z.optional(everyName(levelNames, number)),
    questions: z.optional(z.record(z.string(), z.string(), { error: "the questions of the template; not read" })),
  },
  { error: "a case: one JSON object" },
);

export type WrittenCase = z.infer<typeof caseSchema>;
export type WrittenQuantity = z.infer<ReturnType<typeof quantity>>;
export type WrittenRange = z.infer<typeof range>;
export type WrittenSpan = z.infer<typeof span>;
