import { catches, conditions, countings, sealKinds, surfaces, washerMaterials } from "../../../mechanics/joint/port.ts";
import { wrenchKinds } from "../../../mechanics/joint/wrenchKinds.ts";
import { reaches } from "../../../mechanics/remedies/portCase.ts";
import { propertyClasses } from "../../../mechanics/tables/iso898.ts";
import { jointKinds } from "../../../mechanics/tables/jointKinds.ts";
import { materials } from "../../../mechanics/tables/materials.ts";

/** What a field of the bench takes, and with what instrument it is read. */
export type BenchField =
  | {
      readonly type: "number";
      readonly unit: string;
      /** A mark of the instrument's scale, and where the first tap of a stepper begins. */
      readonly step: number;
      readonly start: string;
      /** Below this no stepper goes; 0 where nothing is said. */
      readonly least?: number;
      readonly how: readonly string[];
    }
  | { readonly type: "money" }
  | { readonly type: "choice"; readonly choices: readonly string[] }
  /** A way of closing a port: their list is fetched where somebody is asked for one. */
  | { readonly type: "remedy" }
  | { readonly type: "several"; readonly choices: readonly string[]; readonly none: string }
  | { readonly type: "yes or no" }
  | { readonly type: "text"; readonly common?: readonly string[] };

const length = (step: number, start: string, ...how: readonly string[]): BenchField => ({
  type: "number",
  unit: "mm",
  step,
  start,
  how,
});
const torque = (start: string, step = 1): BenchField => ({ type: "number", unit: "N·m", step, start, how: [] });
const turns = (start: string): BenchField => ({ type: "number", unit: "", step: 0.25, start, how: [] });
const choice = (...choices: readonly string[]): BenchField => ({ type: "choice", choices });
const yesOrNo: BenchField = { type: "yes or no" };
const text: BenchField = { type: "text" };

/** Plug threads that turn up most, by trade practice (no source): one tap in place of typing. */
const commonThreads = ["M12x1.5", "M14x1.5", "M16x1.5", "M18x1.5", "M20x1.5", "M22x1.5", "M24x1.5"];

/** Every field of the bench by its name in the case; elements of lists without their place. */
export const benchFields: Readonly<Record<string, BenchField>> = {
  "asked.crack": choice("no", "yes"),
  "asked.pressure": choice("none", "yes"),
  "asked.pressure.value": { type: "number", unit: "bar", step: 0.1, start: "1", how: [] },
  "asked.reaches": { type: "several", choices: reaches, none: "nothing" },
  "asked.people": choice("no", "yes"),
  "asked.repairedBefore": choice("no", "yes"),
  "asked.repairedBefore.method": { type: "remedy" },
  "asked.repairedBefore.cause": text,
  "asked.breather": choice("free", "blocked", "none"),
  "asked.waterTest": choice("passed", "failed", "not done"),
  "asked.alloyTested": choice("yes", "no"),
  "joint.kind": choice(...jointKinds),
  thread: { type: "text", common: commonThreads },
  "case.material": choice(...materials),
  "left.turns": turns("3"),
  "left.counted": choice(...countings),
  "left.condition": choice(...conditions),
  "left.catch": choice(...catches),
  "left.withWasher": yesOrNo,
  healthyTurns: turns("8"),
  healthyWithWasher: yesOrNo,
  "plug.underHead": length(0.05, "13", "caliper", "rule", "felt"),
  "plug.headDiameter": length(0.05, "27", "caliper", "rule", "felt"),
  "plug.chamfer": length(0.5, "1", "caliper", "rule", "felt"),
  "plug.propertyClass": choice(...propertyClasses),
  "plug.original": yesOrNo,
  "case.threadDepth": length(0.5, "16", "depth rod", "wire hook", "drill shank", "felt"),
  "case.thinnestWall": length(0.5, "7", "caliper", "rule", "felt"),
  "case.roomBehind": length(1, "10", "depth rod", "blunt wire", "felt"),
  "left.goodFrom": length(0.5, "0", "depth rod", "wire hook", "felt"),
  "left.goodTo": length(0.5, "10", "depth rod", "wire hook", "felt"),
  "left.height": { type: "number", unit: "%", step: 5, start: "60", how: ["caliper", "by eye"] },
  temperature: {
    type: "number",
    unit: "°C",
    step: 1,
    start: "20",
    least: Number.NEGATIVE_INFINITY,
    how: ["contact probe", "infrared on paint or tape", "felt"],
  },
  "seal.kind": choice(...sealKinds),
  "seal.material": choice(...washerMaterials),
  "seal.outside": length(0.05, "26", "caliper", "rule", "read"),
  "seal.inside": length(0.05, "20", "caliper", "rule", "read"),
  "seal.thickness": length(0.05, "1.5", "caliper", "rule", "read"),
  "seal.chamfer": length(0.1, "3", "depth rod", "caliper", "felt"),
  "seal.original": yesOrNo,
  surface: choice(...surfaces),
  prevailing: torque("1", 0.5),
  "bookFigures.torque": torque("40"),
  "bookFigures.source": text,
  "bookFigures.seal": choice(...new Set<string>([...sealKinds, ...washerMaterials])),
  "bookFigures.surface": choice(...surfaces),
  "wrenches.name": text,
  "wrenches.kind": choice(...wrenchKinds),
  "wrenches.least": torque("5", 1),
  "wrenches.most": torque("100", 5),
  "wrenches.step": torque("1", 0.5),
  "wrenches.calibrated": text,
  "wish.today": yesOrNo,
  "wish.ceiling": { type: "money" },
  "wish.opensAgain": yesOrNo,
  "wish.afterRepair": yesOrNo,
};
