import { type Command, Option } from "commander";
import { type LabelCheck, labelChecks } from "../../mechanics/cure/label.ts";
import { type SiliconeType, siliconeTypes } from "../../mechanics/tables/cureData.ts";
import { dayOption, todayByTheClock } from "./readings.ts";

export type LabelOptions = {
  readonly namesFluid: "yes" | "no" | "unknown";
  readonly useBy?: string;
  readonly today?: string;
  readonly type?: SiliconeType;
};

/** What is asked of a tube's label, by the same options wherever it is asked. */
export const withLabelOptions = (command: Command): Command =>
  command
    .addOption(
      new Option("--names-fluid <answer>", "whether the label names this fluid")
        .choices(["yes", "no", "unknown"])
        .default("unknown"),
    )
    .option("--use-by <day>", "the date on the tube, as 2027-03-31: the last good day")
    .option("--today <day>", "the day it is; by the clock of this machine unless told")
    .addOption(
      new Option("--type <type>", "of a silicone, by what it gives off").choices(
        Object.keys(siliconeTypes) as SiliconeType[],
      ),
    );

/** What the label answered. @throws InputMistake */
export function labelAsked({ namesFluid, useBy, today, type }: LabelOptions): readonly LabelCheck[] {
  return labelChecks(
    {
      namesThisFluid: namesFluid === "unknown" ? null : namesFluid === "yes",
      useBy: useBy === undefined ? null : dayOption("--use-by", useBy),
      siliconeType: type ?? null,
    },
    today === undefined ? todayByTheClock() : dayOption("--today", today),
  );
}
