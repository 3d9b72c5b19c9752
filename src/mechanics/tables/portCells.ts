import { commonPractice, judgement, type Source } from "./source.ts";

/** How a method suits a kind of port, before the list of refusals has its say. */
export type Fit = "fit" | "with conditions" | "temporary" | "refused" | "not applicable";

/** What has to hold where a method suits only with conditions or for a time. */
export type Condition =
  | "book figure only"
  | "greased, first thread only"
  | "count again"
  | "rated for the pressure"
  | "rated and cap tested"
  | "pressure and vacuum test"
  | "drained and cured, three turns"
  | "dry joint"
  | "joint above the oil"
  | "lockwire"
  | "sealed outside"
  | "maker's procedure"
  | "get home only"
  | "cool and dry"
  | "not running"
  | "yard only"
  | "standing only"
  | "ashore only"
  | "other opening proven"
  | "part off the machine"
  | "specialist"
  | "specialist where it is magnesium"
  | "compound rated for the heat"
  | "sound flat and holes around"
  | "weep only, above the level";

/** One cell of the table. */
export type PortCell = { readonly fit: Fit; readonly conditions: readonly Condition[]; readonly source: Source };

const cell =
  (fit: Fit) =>
  (source: Source, ...conditions: Condition[]): PortCell => ({ fit, conditions, source });

/** As the trade has it: fits. */
export const yes = cell("fit")(commonPractice);
export const no = cell("refused")(commonPractice);
export const none = cell("not applicable")(commonPractice);
export const on = (...conditions: Condition[]): PortCell => cell("with conditions")(commonPractice, ...conditions);
export const till = (...conditions: Condition[]): PortCell => cell("temporary")(commonPractice, ...conditions);

/** A cell that the trade has no row for, decided with a reason. */
export const decided = (reason: string) => {
  const source = judgement(reason);
  return {
    yes: cell("fit")(source),
    no: cell("refused")(source),
    none: cell("not applicable")(source),
    on: (...conditions: Condition[]) => cell("with conditions")(source, ...conditions),
  };
};
