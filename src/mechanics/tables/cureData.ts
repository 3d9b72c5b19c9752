import { triangular, uniform } from "../quantity/distribution.ts";
import { commonPractice, fromMemory, judgement, published, type Source } from "./source.ts";

/** A moisture-curing silicone in the air it is usually tested in. */
export const moistureCure = {
  /** Depth of the cured layer after a day, mm; it goes with the root of the time. */
  depthAfterADay_mm: { distribution: triangular(2, 2.5, 3), source: commonPractice },
  referenceTemperature_degC: 23,
  referenceHumidity: 0.5,
  /** Depth of a layer that bears splash, mm. */
  skin_mm: { value: 0.5, source: judgement("a skin this thick bears splashed oil") },
  leastSplash_min: { value: 30, source: commonPractice },
  /** Stress at which the paste begins to flow, Pa. */
  yieldStress_Pa: { distribution: uniform(200, 500), source: fromMemory("uncured sealant pastes") },
  coldest_degC: { value: 5, source: judgement("colder, the chemistry slows by more than its moisture tells") },
} as const;

/** Kinds of silicone by what they give off, and what that forbids. */
export const siliconeTypes = {
  acetoxy: { caution: "corrodes metals", source: published("MIL-A-46106B: liberates corrosive acid in cure") },
  oxime: { caution: "restricted in Europe", source: fromMemory("methyl ethyl ketoxime") },
  alkoxy: { caution: null, source: published("MIL-A-46146: non-corrosive type (US Army TM 1-1500-204-23-6, 6-1)") },
} as const satisfies Record<string, { caution: string | null; source: Source }>;
export type SiliconeType = keyof typeof siliconeTypes;

const petrie = "E. M. Petrie, Handbook of Adhesives and Sealants, p. 388";

/** Anaerobic dimethacrylates: where they cure, how long they take, what they bear. */
export const anaerobicLimits = {
  /** They do not cure in wider gaps at all, mm. */
  noCureAbove_mm: { value: 0.76, source: published(`${petrie}: about 30 mil`) },
  /** Diametral clearances up to which each grade is used, mm. */
  locker_mm: { value: 0.25, source: fromMemory("thread lockers, 0.15 to 0.25 mm") },
  highViscosity_mm: { value: 0.5, source: fromMemory("high-viscosity thread sealants, 0.3 to 0.5 mm") },
  full_h: { value: 24, at_degC: 22.5, source: published(`${petrie}: full strength in 24 h at room temperature`) },
  slowerPer10K: { value: 2, source: fromMemory("about twice as slow for 10 °C colder") },
  coldest_degC: { value: 5, source: fromMemory("unreliable below") },
  service_degC: { least: -55, most: 150, source: published("US Army TM 10-3930-643-20, 2-12c: -54 to 149 °C") },
  softens_degC: { value: 250, source: fromMemory("softens for removal from 230 to 250 °C") },
} as const;

/** Metals by whether they start the cure of an anaerobic. George et al., Int. J. Adhesion and Adhesives 17 (1997) 121. */
export const anaerobicMetals = {
  steel: "active",
  copper: "active",
  brass: "active",
  "cast iron": "active",
  aluminium: "needs activator",
  magnesium: "needs activator",
  stainless: "needs activator",
  zinc: "needs activator",
  cadmium: "needs activator",
  anodised: "needs activator",
} as const;
export type AnaerobicMetal = keyof typeof anaerobicMetals;

/** Shear strengths of anaerobics, N/mm², from memory. ISO 10964 is a test and gives no classes. */
export const anaerobicStrengths = {
  low: { low_MPa: 2, high_MPa: 5 },
  medium: { low_MPa: 5, high_MPa: 12 },
  high: { low_MPa: 12, high_MPa: 25 },
} as const;
export type AnaerobicStrength = keyof typeof anaerobicStrengths;

/** Heat that sealants bear in service, and what opens them again. */
export const sealantHeat = {
  silicone: { most_degC: 205, source: published("MIL-A-46106B, group III: 205 to 260 °C") },
  anaerobic: { most_degC: 150, source: anaerobicLimits.service_degC.source },
  "PTFE tape": { most_degC: 125, source: published("EN 751-3: -20 to 125 °C") },
} as const;
export type Sealant = keyof typeof sealantHeat;

export const sealedFluids = ["gear oil", "engine oil", "coolant", "fuel"] as const;
export type SealedFluid = (typeof sealedFluids)[number];

/** What a fluid does to a class of sealant; where it is asked, only the label of the tube can tell. */
type FluidRow = { readonly verdict: "bears it" | "ask the label" | "does not bear it"; readonly source: Source };

const asked = (why: string): FluidRow => ({ verdict: "ask the label", source: judgement(why) });
const oilResistant: FluidRow = {
  verdict: "bears it",
  source: published("US Army TM 10-3930-643-20, 2-12c: anaerobics resist oils"),
};
const tape = asked("EN 751-3 speaks of gas and hot water");

/** Fluids by what they do to each class of sealant. */
export const sealantFluids: Readonly<Record<Sealant, Readonly<Record<SealedFluid, FluidRow>>>> = {
  silicone: {
    "gear oil": { verdict: "ask the label", source: fromMemory("EP gear oil softens ordinary silicone") },
    "engine oil": { verdict: "ask the label", source: fromMemory("silicone swells in hot oil") },
    coolant: asked("some grades are made for coolant"),
    fuel: { verdict: "does not bear it", source: published("MIL-A-46106B: not fuel-resistant") },
  },
  anaerobic: {
    "gear oil": oilResistant,
    "engine oil": oilResistant,
    coolant: asked("EN 751-1 lets anaerobics seal hot water; glycol is the label's to name"),
    fuel: asked("fuels differ"),
  },
  "PTFE tape": { "gear oil": tape, "engine oil": tape, coolant: tape, fuel: tape },
};
