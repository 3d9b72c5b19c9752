import type { Condition } from "../tables/portCells.ts";
import type { Need } from "./fitNeed.ts";
import type { TapForm } from "./fitOverrun.ts";

/** What has to be looked at, with the figures of the fit. */
export type RepairCheck =
  | { readonly type: "condition"; readonly condition: Condition }
  | { readonly type: "eyes, gear and cylinder covered" }
  | { readonly type: "straight access" }
  | { readonly type: "magnesium question" }
  | { readonly type: "is magnesium" }
  | { readonly type: "welds badly" }
  | { readonly type: "clean with the right thread" }
  | { readonly type: "count again" }
  | { readonly type: "drill"; readonly drill_mm: number; readonly percentOfThread: number }
  | { readonly type: "clears the torn thread"; readonly clears: "surely" | "just" | "not"; readonly thread: string }
  | {
      readonly type: "or another next size";
      /** Whether it is of the torn thread's own standard. */
      readonly own: boolean;
      readonly thread: string;
      readonly drill_mm: number;
      readonly percentOfThread: number;
      readonly clears: "surely" | "just" | "not";
      readonly wall: Need;
    }
  | { readonly type: "tap forms"; readonly fits: readonly TapForm[]; readonly most_mm: readonly number[] }
  | { readonly type: "tap forms not known"; readonly most_mm: readonly number[] }
  | { readonly type: "depth stop"; readonly depth_mm: number; readonly turns: number; readonly full_mm: number }
  | { readonly type: "crooked"; readonly from_mm: number; readonly to_mm: number }
  | {
      readonly type: "chips";
      readonly from_cm3: number;
      readonly to_cm3: number;
      readonly to_g: number;
      readonly magnetic: boolean;
      readonly mayBurn: boolean;
    }
  | { readonly type: "new plug"; readonly thread: string; readonly underHead_mm: number | null }
  | { readonly type: "coil"; readonly diameters: number; readonly length_mm: number; readonly installed_mm: number }
  | { readonly type: "set down"; readonly from_mm: number; readonly to_mm: number }
  | { readonly type: "bush"; readonly outer: string; readonly inner: string | null; readonly wall_mm: number }
  | { readonly type: "maker's torque only" }
  | { readonly type: "weigh again once repaired" };
