import { type Dimension, plain } from "./dimension.ts";

/**
 * A unit as people read it. `inSI` converts it to the coherent SI unit of its dimension;
 * `zero` is where its scale starts in that SI unit (only °C and °F differ from 0).
 */
export type Unit = {
  readonly symbol: string;
  readonly inSI: number;
  readonly zero: number;
  readonly dimension: Dimension;
  readonly kind: Kind;
};

/** What a unit measures. Torque and energy share a dimension and are still two kinds. */
export type Kind =
  | "plain number"
  | "angle"
  | "turns"
  | "length"
  | "area"
  | "volume"
  | "mass"
  | "density"
  | "force"
  | "line load"
  | "torque"
  | "pressure"
  | "time"
  | "temperature"
  | "temperature difference"
  | "expansion"
  | "kinematic viscosity"
  | "dynamic viscosity"
  | "flow"
  | "surface tension"
  | "volume per length"
  | "speed";

const unit =
  (kind: Kind, dimension: Dimension) =>
  (symbol: string, inSI: number, zero = 0): Unit => ({ symbol, inSI, zero, dimension, kind });

const number = unit("plain number", plain);
const angle = unit("angle", plain);
const length = unit("length", [1, 0, 0, 0]);
const area = unit("area", [2, 0, 0, 0]);
const volume = unit("volume", [3, 0, 0, 0]);
const mass = unit("mass", [0, 1, 0, 0]);
const force = unit("force", [1, 1, -2, 0]);
const torque = unit("torque", [2, 1, -2, 0]);
const pressure = unit("pressure", [-1, 1, -2, 0]);
const time = unit("time", [0, 0, 1, 0]);
const temperature = unit("temperature", [0, 0, 0, 1]);
const flow = unit("flow", [3, 0, -1, 0]);
const perLength = unit("volume per length", [2, 0, 0, 0]);
const speed = unit("speed", [1, 0, -1, 0]);

// The pound and the standard acceleration are exact: NIST SP 811 (2008), appendix B.8 and footnotes 9, 22, 24.
const poundForce = 4.4482216152605;
const gravity = 9.80665;
const inch = 0.0254;
const foot = 0.3048;
const mile = 1609.344;
// The US gallon is 231 in³; the imperial gallon is 4.546 09 L. NIST SP 811 (2008), appendix B.8.
const usGallon = 231 * inch ** 3;
const imperialGallon = 4.54609e-3;
const litre = 1e-3;
const day = 86_400;

export const one = number("", 1);
export const percent = number("%", 0.01);
export const turn = unit("turns", plain)("turns", 1);
export const radian = angle("rad", 1);
export const deg = angle("°", Math.PI / 180);

export const m = length("m", 1);
export const mm = length("mm", 1e-3);
export const cm = length("cm", 1e-2);
export const um = length("µm", 1e-6);
export const nm = length("nm", 1e-9);
export const km = length("km", 1e3);
export const inches = length("in", inch);
export const feet = length("ft", foot);
export const miles = length("mi", mile);

export const mm2 = area("mm²", 1e-6);
export const cm2 = area("cm²", 1e-4);

export const m3 = volume("m³", 1);
export const mm3 = volume("mm³", 1e-9);
export const ml = volume("ml", 1e-6);
export const cm3 = volume("cm³", 1e-6);
export const L = volume("L", litre);
export const usFluidOunce = volume("US fl oz", usGallon / 128);
export const usPint = volume("US pt", usGallon / 8);
export const usQuart = volume("US qt", usGallon / 4);
export const usGallons = volume("US gal", usGallon);
export const imperialFluidOunce = volume("imp fl oz", imperialGallon / 160);
export const imperialPint = volume("imp pt", imperialGallon / 8);
export const imperialQuart = volume("imp qt", imperialGallon / 4);
export const imperialGallons = volume("imp gal", imperialGallon);

export const kg = mass("kg", 1);
export const g = mass("g", 1e-3);
export const kg_m3 = unit("density", [-3, 1, 0, 0])("kg/m³", 1);

export const N = force("N", 1);
export const kN = force("kN", 1e3);
export const lbf = force("lbf", poundForce);
export const kgf = force("kgf", gravity);
export const N_mm = unit("line load", [0, 1, -2, 0])("N/mm", 1e3);

export const Nm = torque("N·m", 1);
export const Ncm = torque("N·cm", 1e-2);
export const kNm = torque("kN·m", 1e3);
export const lbf_ft = torque("lbf·ft", poundForce * foot);
export const lbf_in = torque("lbf·in", poundForce * inch);
export const kgf_m = torque("kgf·m", gravity);
export const kgf_cm = torque("kgf·cm", gravity / 100);

export const Pa = pressure("Pa", 1);
export const kPa = pressure("kPa", 1e3);
export const MPa = pressure("MPa", 1e6);
export const GPa = pressure("GPa", 1e9);
export const mbar = pressure("mbar", 100);
export const bar = pressure("bar", 1e5);
export const psi = pressure("psi", poundForce / inch ** 2);

export const s = time("s", 1);
export const min = time("min", 60);
export const h = time("h", 3600);
export const d = time("d", day);

export const K = temperature("K", 1);
export const degC = temperature("°C", 1, 273.15);
export const degF = temperature("°F", 5 / 9, 459.67 * (5 / 9));
export const deltaK = unit("temperature difference", [0, 0, 0, 1])("K", 1);
export const perK = unit("expansion", [0, 0, 0, -1])("1/K", 1);

export const mm2_s = unit("kinematic viscosity", [2, 0, -1, 0])("mm²/s", 1e-6);
export const mPas = unit("dynamic viscosity", [-1, 1, -1, 0])("mPa·s", 1e-3);
export const ml_d = flow("ml/d", 1e-6 / day);
export const ml_h = flow("ml/h", 1e-6 / 3600);
export const N_m = unit("surface tension", [0, 1, -2, 0])("N/m", 1);
export const ml_mm = perLength("ml/mm", 1e-3);
export const ml_km = perLength("ml/km", 1e-9);
export const km_h = speed("km/h", 1000 / 3600);
export const km_d = speed("km/d", 1000 / day);

/** A number on the scale of `unit`, in coherent SI. */
export const inSI = (value: number, unit: Unit): number => value * unit.inSI + unit.zero;

/** An SI value on the scale of `unit`. */
export const onScale = (si: number, unit: Unit): number => (si - unit.zero) / unit.inSI;
