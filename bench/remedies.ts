import { cpus } from "node:os";
import { completed } from "../src/mechanics/remedies/givenCase.ts";
import { nextMeasurements } from "../src/mechanics/remedies/nextMeasurement.ts";
import { type Weighed, weigh } from "../src/mechanics/remedies/weigh.ts";
import { exampleCase } from "../src/sheets/caseForm/exampleCase.ts";
import { readCase } from "../src/sheets/caseForm/readCase.ts";

/** How long a whole case takes with every remedy and its window, and the ranking of what to measure next within it. */
const rounds = 100;

const readings: readonly (readonly [name: string, left: object, housing: object])[] = [
  ["counted with a dot", {}, {}],
  ["counted by eye, deep hole", { turns: "5.5", counted: "by eye" }, { threadDepth: "26 mm", thinnestWall: "14 mm" }],
  ["felt, unknown alloy", { turns: "5.5", counted: "felt" }, { material: "unknown light alloy", threadDepth: "26 mm" }],
];

const rows = readings.map(([name, left, housing]) => {
  const read = readCase(
    { ...exampleCase, left: { ...exampleCase.left, ...left }, case: { ...exampleCase.case, ...housing } },
    null,
  );
  if (!read.ok) throw new Error(read.problems.map(({ field }) => field).join());
  const { given } = read;
  const whole = median_ms(() => weigh(given));
  const weighed: Weighed = weigh(given);
  const next = median_ms(() => nextMeasurements(completed(given).portCase, weighed.asFound, null));
  return { name, windows: [weighed.asFound, ...weighed.remedies].length, whole, next };
});

process.stdout.write(
  [
    `node ${process.version}, ${cpus()[0]?.model ?? "unknown"}, ${cpus().length} cores`,
    ...rows.map(
      ({ name, whole, next }) =>
        `${name.padEnd(28)} whole case ${whole.toFixed(1)} ms, of which next measurement ${next.toFixed(1)} ms`,
    ),
    "",
  ].join("\n"),
);

function median_ms(work: () => unknown): number {
  for (let i = 0; i < 20; i++) work();
  const times = Array.from({ length: rounds }, () => {
    const from = performance.now();
    work();
    return performance.now() - from;
  });
  return times.sort((a, b) => a - b)[rounds / 2] as number;
}
