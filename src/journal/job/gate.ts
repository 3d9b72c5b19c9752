import type { PortId, UnitId } from "../facts/ids.ts";

/** What has to be so before a thing may be written down as done. */
export type GateName =
  | "unit not named"
  | "fill first"
  | "volume not measured"
  | "volume stop"
  | "washers not counted"
  | "washers differ"
  | "pulled by another"
  | "checked twice"
  | "let go, not counted again"
  | "method refused"
  | "port not tight"
  | "held for now"
  | "level unchecked"
  | "curing"
  | "not seen dry"
  | "no owner's sheet"
  | "no tag";

/** A gate that is shut: what it is about, and whether a name and a reason open it. */
export type GateRefusal = {
  readonly gate: GateName;
  readonly override: "never" | "name and reason";
  readonly port: PortId | null;
  readonly unit: UnitId | null;
};
