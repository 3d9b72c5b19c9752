import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { ml, ml_d } from "../../mechanics/quantity/unit.ts";

/** A spot on the ground, its volume and its flow for the thinnest and the thickest film. */
export type SpotInWords = {
  readonly spot: string;
  readonly time: string;
  readonly volumes: readonly [Quantity, Quantity];
  readonly perDay: readonly [Quantity, Quantity];
  readonly dropsAMinute: readonly number[];
  readonly roadTest: "fails" | "passes" | "watched too long";
};

/** What a spot on the ground tells. */
export function spotLines({ spot, time, volumes, perDay, dropsAMinute, roadTest }: SpotInWords): readonly string[] {
  const range = (figures: readonly number[]): string => figures.map((it) => Number(it.toPrecision(2))).join(" to ");
  return [
    `A spot of ${spot} is ${range(volumes.map((it) => valueIn(ml, it)))} ml on smooth ground.`,
    `Grown in ${time}, that is ${range(perDay.map((it) => valueIn(ml_d, it)))} ml a day, about ${range(dropsAMinute)} drops a minute.`,
    roadTestWords[roadTest],
    "",
    "Mind",
    "  Rough or dusty ground drinks: there it is less than this. Catch it in a cup and measure, where you can.",
  ];
}

const roadTestWords: Readonly<Record<SpotInWords["roadTest"], string>> = {
  fails: "A road test refuses it: a pool of more than 75 mm within five minutes, idling (as one test manual has it).",
  passes: "A road test refuses only more than 75 mm within five minutes, idling; a mechanic accepts far less.",
  "watched too long":
    "For a road test watch five minutes, idling, from a wiped floor: more than 75 mm is refused there.",
};
