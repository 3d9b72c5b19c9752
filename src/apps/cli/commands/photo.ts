import type { Command } from "commander";
import { standardUncertainty, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { mm } from "../../../mechanics/quantity/unit.ts";
import { working } from "../../../mechanics/quantity/working.ts";
import type { DrawnLine } from "../../../mechanics/silhouette/foundThread.ts";
import { type PhotoAnswer, threadFromPhoto } from "../../../mechanics/silhouette/photoPitch.ts";
import type { DrawnThread } from "../../../mechanics/silhouette/threadReading.ts";
import { ordinaryWear, outsideRead } from "../../../mechanics/threads/namingReadings.ts";
import { oddsOfFirst } from "../../../mechanics/threads/namingWorking.ts";
import { threadCandidates } from "../../../mechanics/threads/threadName.ts";
import { photoSvg } from "../../../sheets/answer/photoSvg.tsx";
import { photoLines, photoReasons } from "../../../sheets/words/photoWords.ts";
import { separatingSentence } from "../../../sheets/words/separatingWords.ts";
import { writeSvg } from "../files.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption } from "../options.ts";
import { openedPhoto } from "../photoFile.ts";
import { decimals, digits, print, workingLines } from "../print.ts";

type Options = {
  readonly outside: string;
  readonly line?: string;
  readonly svg?: string;
  readonly working?: boolean;
  readonly json?: boolean;
};

export function photoCommand(program: Command): void {
  program
    .command("photo")
    .description("the pitch of a thread from one photo of it seen from the side, and its diameter by caliper")
    .argument("<photo>", "a photo of the plug from the side, as JPEG, PNG, WebP or TIFF")
    .requiredOption("--outside <diameter>", 'over the middle threads of the plug, as "19.9 mm"')
    .option("--line <points>", 'along the middle of the thread in pixels, where it is not found, as "310,420,780,455"')
    .option("--svg <file>", "write the photo with the crests and lines that were found")
    .option("--working", "how the pitch and the odds were got")
    .option("--json", "one JSON document")
    .addHelpText("after", '\nExample:\n  turnsleft photo examples/plug.jpg --outside "19.85 mm"')
    .action(answer);
}

/** Candidates less likely than this are not told. */
const worthTelling = 0.001;

async function answer(file: string, options: Options): Promise<void> {
  const outside = { length: positiveOption("--outside", "d", "length", "19.9 mm", options.outside), id: "--outside" };
  const line = options.line === undefined ? null : drawnLine(options.line);
  const { photo, asAddress } = await openedPhoto(file);
  const { width, height } = photo;
  if (line?.some(({ x, y }) => x > width || y > height))
    throw mistaken("--line", options.line ?? "", `two points within the photo of ${width} x ${height} pixels`);
  const found = threadFromPhoto(photo, outside, line);
  if (options.svg !== undefined)
    writeSvg(options.svg, photoSvg({ href: await asAddress(), width, height }, found.reading?.drawn ?? null));
  const steps = found.verdict === "again" ? [] : working(found.pitch, oddsOfFirst(found.naming));
  print(options.json ?? false, { ...documentOf(found), working: steps }, [
    ...photoLines(found, threadCandidates([outsideRead(outside, false, ordinaryWear)])),
    ...(options.working && steps.length > 0 ? ["", "Working", ...workingLines(steps)] : []),
  ]);
}

function documentOf(found: PhotoAnswer) {
  const told = found.verdict === "again" ? null : found;
  const first = told?.naming.candidates.filter((it, i) => i < 2 || it.probability >= worthTelling) ?? [];
  return {
    verdict: found.verdict,
    pitch_mm: told && digits(valueIn(mm, told.pitch), 5),
    standardUncertainty_mm: told && digits(1000 * standardUncertainty(told.pitch), 3),
    candidates: first.map(({ designation, probability, thread }) => ({
      designation,
      probability: digits(probability, 4),
      pitch_mm: digits(thread.P_mm, 6),
    })),
    reasons: found.reasons,
    remedies: photoReasons(found),
    separateBy: told && separatingSentence(told.naming),
    hand: told?.hand ?? null,
    tapers: told?.tapers ?? null,
    drawn: found.reading && drawnDocument(found.reading.drawn),
  };
}

/** Pixels of the photo as it is shown. */
const drawnDocument = ({ ticks, lines }: DrawnThread) => {
  const point = ({ x, y }: { readonly x: number; readonly y: number }) => [decimals(x, 1), decimals(y, 1)];
  return { crests_px: ticks.map(point), lines_px: lines.map((line) => line.map(point)) };
};

/** "310,420,780,455": two points, at least twenty pixels apart. */
function drawnLine(text: string): DrawnLine {
  const given = text.split(",").map((it) => it.trim());
  const [x1, y1, x2, y2] = given.map(Number);
  const accepted = 'two points at least 20 pixels apart, as "310,420,780,455"';
  if (given.length !== 4 || given.some((it) => !/^\d+(\.\d+)?$/.test(it))) throw mistaken("--line", text, accepted);
  const line = [
    { x: x1 as number, y: y1 as number },
    { x: x2 as number, y: y2 as number },
  ] as const;
  if (Math.hypot(line[1].x - line[0].x, line[1].y - line[0].y) < 20) throw mistaken("--line", text, accepted);
  return line;
}
