import type { JointKind } from "./jointKinds.ts";
import type { MethodNumber } from "./methodEstimates.ts";

/** What hurts people or breaks things, at the step where it does. Common practice of the trade, no source. */
export const cautionNames = [
  "engine off and key away",
  "lift or stands first",
  "hot oil",
  "cold and cap first",
  "wheel and hub held",
  "propeller and ignition",
  "cylinder covered",
  "eyes and swarf",
  "nothing moving behind",
  "fuel and vapour away",
  "magnesium burns",
  "alloy before welding",
  "battery off",
  "fumes of cleaner",
  "solvent aired",
  "sealant on skin",
  "sensors and strainers",
  "cure before it runs",
  "resin on skin",
  "old fibre dust",
  "do not start",
  "pump limited",
  "waste oil caught",
  "oil on the road",
  "next man told",
] as const;
export type Caution = (typeof cautionNames)[number];

/** Before any plug is loosened, by what it closes. */
export function beforeLoosening(joint: JointKind): readonly Caution[] {
  switch (joint) {
    case "coolant drain":
      return ["engine off and key away", "lift or stands first", "cold and cap first"];
    case "hub reduction":
      return ["wheel and hub held", "hot oil"];
    case "outboard lower unit":
      return ["propeller and ignition", "waste oil caught"];
    case "spark plug":
      return ["engine off and key away", "cylinder covered"];
    case "clamp bolt in a casting":
    case "brake, steering, suspension, wheel or restraint":
      return ["engine off and key away", "lift or stands first"];
    case "engine sump":
    case "motorcycle sump":
    case "gear case fill":
    case "gear case level":
    case "gear case drain":
    case "pressure port":
    case "other":
      return ["engine off and key away", "lift or stands first", "hot oil", "waste oil caught"];
    default:
      return joint satisfies never;
  }
}

const cutting: readonly Caution[] = [
  "eyes and swarf",
  "nothing moving behind",
  "fuel and vapour away",
  "magnesium burns",
  "next man told",
];

/** What each method brings with it, beyond loosening the plug. */
export const methodCautions: Readonly<Record<MethodNumber | "lower torque", readonly Caution[]>> = {
  R0: ["old fibre dust"],
  R1: ["old fibre dust"],
  "lower torque": ["old fibre dust", "next man told"],
  R2: ["eyes and swarf", "nothing moving behind"],
  R3: ["old fibre dust", "nothing moving behind", "next man told"],
  R4: ["old fibre dust", "next man told"],
  R5: ["solvent aired", "sealant on skin", "sensors and strainers", "cure before it runs", "next man told"],
  R6: ["eyes and swarf", "nothing moving behind", "oil on the road", "next man told"],
  R7: cutting,
  R8: cutting,
  R9: cutting,
  R10: ["eyes and swarf", "solvent aired", "resin on skin", "cure before it runs"],
  R11: ["solvent aired", "resin on skin", "cure before it runs", "oil on the road", "next man told"],
  R12: ["do not start", "oil on the road", "next man told"],
  R13: ["next man told"],
  R14: [
    "alloy before welding",
    "magnesium burns",
    "battery off",
    "fumes of cleaner",
    "fuel and vapour away",
    "eyes and swarf",
  ],
  R15: cutting,
  R16: cutting,
  R17: ["lift or stands first", "old fibre dust"],
  R18: ["oil on the road"],
};
