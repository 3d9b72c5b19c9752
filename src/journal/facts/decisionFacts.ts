import * as z from "zod/mini";
import { remedyIds } from "../../mechanics/remedies/method.ts";
import { choice, day, figure, label, price, priceRange, words, yesNo } from "./fields.ts";
import { jobId, portId } from "./ids.ts";

const fact = z.strictObject;
const type = z.literal;

/** A torque window as it stood that day; it is never reckoned anew. */
const window = z.strictObject({
  open: yesNo,
  need_Nm: figure,
  limit_Nm: figure,
  advice_Nm: z.nullable(figure),
});

const refusalOverrides = ["never", "name and reason", "answer them", "free it"] as const;

const option = z.strictObject({
  id: choice(remedyIds),
  /** Null where it was refused or no torque of ours makes sense. */
  window: z.nullable(window),
  refused: z.nullable(z.strictObject({ rule: label, override: choice(refusalOverrides) })),
  lasting: yesNo,
  price: z.optional(priceRange),
  hours: z.optional(priceRange),
  readyAfter_h: z.optional(z.nullable(figure)),
  comesBack: z.optional(z.strictObject({ low: figure, likely: figure, high: figure })),
});

const step = z.strictObject({
  formula: z.string(),
  substituted: z.string(),
  result: z.string(),
  source: z.string(),
});

/** A document of ours, kept whole; deeper than any of them it would be too deep to be written as one text. */
const documentOfTheDay = z
  .record(z.string(), z.unknown())
  .check(z.refine((it) => isWithin(it, 32), { error: "a document of at most 32 levels" }));

const isWithin = (it: unknown, levels: number): boolean =>
  typeof it !== "object" ||
  it === null ||
  (levels > 0 && Object.values(it).every((inner) => isWithin(inner, levels - 1)));

/** What was weighed, offered and decided, and what somebody took on himself. */
export const decisionFacts = [
  /** The whole answer of that day: the case, every option, the working, the engine and the ranges it used. */
  fact({
    type: type("OptionsWeighed"),
    port: portId,
    engine: label,
    case: documentOfTheDay,
    asFound: z.nullable(window),
    options: z.array(option),
    working: z.array(step),
    ranges: documentOfTheDay,
    levels: documentOfTheDay,
  }),
  fact({
    type: type("OptionsOffered"),
    port: portId,
    rows: z.array(
      z.strictObject({
        id: choice(remedyIds),
        inHisWords: words,
        price: z.optional(priceRange),
        ready: z.optional(words),
      }),
    ),
    recommended: z.optional(choice(remedyIds)),
  }),
  fact({
    type: type("OwnerDecided"),
    port: portId,
    decision: z.discriminatedUnion("is", [
      z.strictObject({ is: type("chosen"), option: choice(remedyIds) }),
      z.strictObject({ is: type("refused"), option: choice(remedyIds), instead: z.optional(choice(remedyIds)) }),
      z.strictObject({ is: type("put off"), until: z.optional(day) }),
      z.strictObject({ is: type("left to the workshop"), upTo: price, notBeyond: z.array(choice(remedyIds)) }),
    ]),
    words,
    by: choice(["message", "signature", "telephone", "at the counter"]),
  }),
  /** Somebody takes a refusal or a gate on himself, by name (who writes the entry) and with a reason. */
  fact({
    type: type("RuleOverridden"),
    rule: label,
    port: z.optional(portId),
    reason: words,
    pinGiven: z.optional(yesNo),
  }),
  fact({ type: type("PartsOrdered"), port: z.optional(portId), words, arrives: z.optional(day) }),
  /** What a comeback costs and who pays, decided from what was written. */
  fact({ type: type("CostsSettled"), words, amount: price, borneBy: choice(["workshop", "owner", "shared"]) }),
  fact({ type: type("JobFollows"), earlier: jobId, words: z.optional(words) }),
] as const;
