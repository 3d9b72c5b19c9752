import * as z from "zod/mini";
import { afterFacts } from "./afterFacts.ts";
import { arrivalFacts } from "./arrivalFacts.ts";
import { decisionFacts } from "./decisionFacts.ts";
import type { Read } from "./fields.ts";
import { words } from "./fields.ts";
import { fluidFacts } from "./fluidFacts.ts";
import { entryId } from "./ids.ts";
import { portFacts } from "./portFacts.ts";
import { readingFacts } from "./readingFacts.ts";
import { recordFacts } from "./recordFacts.ts";
import { repairFacts } from "./repairFacts.ts";
import { shopFacts } from "./shopFacts.ts";

const jobFacts = [
  ...arrivalFacts,
  ...portFacts,
  ...fluidFacts,
  ...readingFacts,
  ...decisionFacts,
  ...repairFacts,
  ...afterFacts,
] as const;

/** What a correction may put in the place of an entry: anything that is not about the record itself. */
const correctable = z.discriminatedUnion("type", [...shopFacts, ...jobFacts]);

/** The fact that should have been written. It takes the place of the entry, in the picture; both stay in the file. */
const entryCorrected = z.strictObject({
  type: z.literal("EntryCorrected"),
  entry: entryId,
  reason: words,
  is: correctable,
});

/** Everything that can be written down. A fact, once written, keeps its meaning for good. */
export const factSchema = z.discriminatedUnion("type", [...shopFacts, ...jobFacts, ...recordFacts, entryCorrected]);

export type Fact = Read<z.infer<typeof factSchema>>;
export type FactType = Fact["type"];
export type FactOf<T extends FactType> = Extract<Fact, { readonly type: T }>;

const typesOf = (schemas: readonly { readonly shape: { readonly type: { readonly def: { values: unknown[] } } } }[]) =>
  new Set(schemas.flatMap(({ shape }) => shape.type.def.values as FactType[]));

const shopTypes = typesOf(shopFacts as never);
const jobTypes = typesOf(jobFacts as never);

/** Whether a fact is about the workshop itself, whatever job is on the lift. */
export const isShopFact = ({ type }: Fact): boolean => shopTypes.has(type);

/** Whether a fact belongs to one job. Notes, withdrawals and corrections may be of either. */
export const isJobFact = ({ type }: Fact): boolean => jobTypes.has(type);
