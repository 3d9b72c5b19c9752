import { table } from "../table.ts";
import type { PageSpeed, PressCost } from "./pageSpeed.ts";

/** What was measured in the browser, beside the bare page, for people. */
export function pageLines({ browser, presses, bench, bare, stretch, script }: PageSpeed): readonly string[] {
  return [
    `The bench in Chromium ${browser}, 412x915: ${presses} presses of a stepper, beside a page that changes one text. Script, style,`,
    "layout and paint a press, ms: the main thread's own time, taken 4 times (wanted: 12 at p95; at most 0.05 of the frames late)",
    table(
      ["", "bench", "bare page", "ratio"],
      rows.map(([name, figure]) => {
        const [of, beside] = [figure(bench), figure(bare)];
        return [name, of.toPrecision(3), beside.toPrecision(3), (of / beside).toFixed(1)];
      }),
    ),
    `Slowed down by 4, the browser really made pieces of half a millisecond ${stretch.toFixed(1)} times as long, in any page.`,
    "",
    "Script until the first figure of a kept port stands, kB after gzip -9 (wanted: 60); the rest is fetched after it",
    `page ${script.page_kB.toFixed(1)}, its worker ${script.worker_kB.toFixed(1)}, together ${(script.page_kB + script.worker_kB).toFixed(1)}; after it ${script.later_kB.toFixed(1)}`,
  ];
}

const rows: readonly (readonly [name: string, figure: (cost: PressCost) => number])[] = [
  ["all of a change, p50", (it) => it.p50_ms],
  ["all of a change, p95", (it) => it.p95_ms],
  ["its answer, p50", (it) => it.answerP50_ms],
  ["its answer, p95", (it) => it.answerP95_ms],
  ["script, mean", (it) => it.means_ms.script],
  ["style, mean", (it) => it.means_ms.style],
  ["layout, mean", (it) => it.means_ms.layout],
  ["paint, mean", (it) => it.means_ms.paint],
  ["(handing over, mean)", (it) => it.means_ms.commit],
  ["slowed down by the browser, p50", (it) => it.slowedP50_ms],
  ["slowed down by the browser, p95", (it) => it.slowedP95_ms],
  ["share of frames late, so slowed", (it) => it.lateFrames],
];
