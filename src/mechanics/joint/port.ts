import type { Quantity } from "../quantity/quantity.ts";
import type { PropertyClass } from "../tables/iso898.ts";
import type { Material } from "../tables/materials.ts";
import type { Thread } from "../threads/thread.ts";
import type { ThreadLimits } from "../threads/threadLimits.ts";

export const surfaces = ["oiled", "wet sealant", "dry", "anti-seize"] as const;
export type Surface = (typeof surfaces)[number];

export const conditions = ["good", "doubtful", "poor", "gone"] as const;
/** What is left of the height of the turns that were counted. */
export type Condition = (typeof conditions)[number];

export const catches = ["snug", "gritty", "slides over"] as const;
/** How the thread takes hold when the plug is turned in by hand. */
export type Catch = (typeof catches)[number];

export const countings = ["with a dot", "by eye", "felt"] as const;
/** How turns were counted; it sets the uncertainty of the count. */
export type Counting = (typeof countings)[number];

export const sealKinds = [
  "flat washer",
  "crush ring",
  "bonded seal",
  "O-ring",
  "sealant, metal to metal",
  "taper",
  "none",
] as const;
export type SealKind = (typeof sealKinds)[number];

export const washerMaterials = ["aluminium", "copper", "fibre"] as const;
export type WasherMaterial = (typeof washerMaterials)[number];

/** The hole, its thread and its surroundings. Lengths are null where nobody measured them. */
export type Port = {
  readonly thread: Thread;
  /** Limits of size of plug and hole, by the tolerance classes of the case. */
  readonly limits: ThreadLimits;
  readonly material: Material;
  /** From the case face to the end of the threaded hole. */
  readonly threadDepth: Quantity | null;
  /** From the edge of the hole to the outside, on the thinnest side. */
  readonly thinnestWall: Quantity | null;
  /** From the inner face to the nearest thing behind the hole. */
  readonly roomBehind: Quantity | null;
  /** Temperature of the case when the plug is tightened; null reads as a case that has cooled. */
  readonly temperature: Quantity | null;
  readonly left: Left;
  /** The same count in a sound twin hole. */
  readonly healthy: HealthyCount | null;
};

/** What is left of the thread, as found by hand and eye. */
export type Left = {
  /** Turns by hand from the catch to the seat; null where nobody counted. */
  readonly turns: Quantity | null;
  readonly counting: Counting;
  readonly withWasher: boolean;
  readonly condition: Condition;
  readonly catch: Catch;
  /** Ends of the good thread below the case face. */
  readonly goodFrom: Quantity | null;
  readonly goodTo: Quantity | null;
  /** Thread height left as a fraction of the whole, where it was measured. */
  readonly height: Quantity | null;
};

export type HealthyCount = { readonly turns: Quantity; readonly withWasher: boolean };

export type Plug = {
  readonly propertyClass: PropertyClass;
  /** Head face to tip. */
  readonly underHead: Quantity | null;
  readonly headDiameter: Quantity | null;
  /** Length of the point that carries nothing. */
  readonly chamfer: Quantity | null;
  readonly original: boolean;
};

export type Seal = {
  readonly kind: SealKind;
  /** Of a flat washer; null for every other seal. */
  readonly material: WasherMaterial | null;
  readonly outside: Quantity;
  readonly inside: Quantity;
  /** As it lies when tightened. Zero where nothing lies under the head. */
  readonly thickness: Quantity;
  /** How deep the chamfer is that an O-ring lies in; null where nobody measured it, and for every other seal. */
  readonly chamfer: Quantity | null;
  readonly original: boolean;
};

/** One way of closing a port: a plug, a seal, a surface, and what holds it besides its clamp. */
export type Closure = {
  readonly plug: Plug;
  readonly seal: Seal;
  readonly surface: Surface;
  /** A curing sealant or a lock holds the plug against vibration. */
  readonly heldOtherwise: boolean;
};

/** Thread heights and depths of one turn of the hole, for drawing and for counting. */
export type HoleTurn = {
  /** Depth below the case face at which the turn begins and ends, mm. */
  readonly from_mm: number;
  readonly to_mm: number;
  readonly state: "sound" | "worn" | "gone" | "beyond the plug";
  /** Height left, 0 to 1. */
  readonly height: number;
};
