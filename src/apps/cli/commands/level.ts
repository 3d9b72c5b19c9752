import { type Command, Option } from "commander";
import { caseMetals } from "../../../mechanics/fluid/expansionInCase.ts";
import { shapes } from "../../../mechanics/fluid/shapeNames.ts";
import { type Quantity, standardUncertainty, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { ml, ml_mm, mm } from "../../../mechanics/quantity/unit.ts";
import { type Step, working } from "../../../mechanics/quantity/working.ts";
import { levelGaugeSvg } from "../../../sheets/answer/levelGaugeSvg.tsx";
import { type LevelInWords, levelLines } from "../../../sheets/words/levelWords.ts";
import { writeSvg } from "../files.ts";
import { mistaken } from "../mistake.ts";
import { digits, print, workingLines } from "../print.ts";
import { type LevelOptions, levelFound } from "./levelFound.ts";

type Options = LevelOptions & { readonly svg?: string; readonly working?: boolean; readonly json?: boolean };

export function levelCommand(program: Command): void {
  program
    .command("level")
    .description("what a millimetre of level holds, how far a level is from its lip, and where to fill")
    .option("--drawn <volume>", 'a volume drawn out between two readings, as "60 ml"')
    .option("--fallen <height>", 'what the level fell by it, as "2.7 mm"')
    .option("--per-mm <volume>", 'what a millimetre holds, where it is known, as "22 ml/mm"')
    .addOption(new Option("--shape <shape>", "of the case inside, where nothing was drawn; lying").choices([...shapes]))
    .option("--length <length>", "inside, of a box, cylinder or ellipse; without a shape it bounds a tilt")
    .option("--width <length>", "inside; the diameter of a cylinder or ball; without a shape it bounds a tilt")
    .option("--height <length>", "inside, of an ellipse or box")
    .option("--depth <length>", "of the oil above the lowest point inside")
    .option("--gears", "take off what gears and shafts usually cut of the surface")
    .option("--below <height>", 'the level below the lip as it was read, as "8 mm"')
    .option("--ran-out", "it was filled until it ran out, in place of --below")
    .option("--allowed <height>", "the lowest level that is left as it is, below the lip; 5 mm is common practice")
    .option("--target <height>", 'the level wanted, below the lip, as "0 mm"')
    .option("--pour <volume>", 'what is about to be poured in, as "200 ml"')
    .option("--syringe <volume>", "what the syringe holds", "60 ml")
    .option("--tilt <angle>", 'the side of the hole lower by this angle than level, as "1 °"')
    .option("--tilt-across <angle>", "the same across it")
    .option("--offset <length>", 'from the middle of the oil to the hole, along the tilt, as "140 mm"')
    .option("--offset-across <length>", "the same across it")
    .option(
      "--to-step <height>",
      'from the level to the nearest step in the wall, as "12 mm": how far a tilt may be reckoned',
    )
    .option("--oil <temperature>", 'the oil as its level was read, as "55 °C"')
    .option("--at <temperature>", 'the temperature the level is counted at, as "20 °C"')
    .option("--settled", "the oil stood for ten minutes before it was read")
    .addOption(new Option("--case <metal>", "what the case is cast of").choices([...caseMetals]))
    .option("--fill <volume>", 'the whole fill, as "2.4 L"')
    .option("--doubtful [temperature]", 'the seal is doubtful: where to fill, for oil that gets as hot as "90 °C"')
    .option("--svg <file>", "write the level gauge")
    .option("--working", "print how every figure was got")
    .option("--json", "one JSON document")
    .addHelpText(
      "after",
      [
        "\nExamples:",
        '  turnsleft level --drawn "60 ml" --fallen "2.7 mm" --below "8 mm" --allowed "8 mm" --target "0 mm"',
        '  turnsleft level --per-mm "22 ml/mm" --below "8 mm" --oil "55 °C" --at "20 °C" --fill "2.4 L" --doubtful "90 °C"',
        '  turnsleft level --per-mm "22 ml/mm" --below "8 mm" --tilt "1 °" --offset "140 mm" --tilt-across "0.5 °" --offset-across "40 mm" --pour "200 ml"',
        '  turnsleft level --shape box --length "150 mm" --width "120 mm" --depth "70 mm" --gears',
      ].join("\n"),
    )
    .action(answer);
}

function answer(options: Options): void {
  const found = levelFound(options);
  const { perHeight, shape, level, cold, lowest, toLip, fillTarget, toTarget, overflow } = found;
  const asked = [
    perHeight,
    shape?.volume,
    cold?.level ?? level,
    toLip,
    fillTarget?.level,
    toTarget?.volume,
    overflow?.volume,
  ];
  const steps = working(...asked.filter((it) => it != null));
  if (options.svg) {
    const drawn = cold?.level ?? level;
    if (!drawn) throw mistaken("--svg", options.svg, "a level to draw: give --below, read as it stands level");
    writeSvg(options.svg, levelGaugeSvg(drawn, lowest, perHeight));
  }
  print(options.json ?? false, document(found, steps), [
    ...levelLines(found),
    ...(options.working ? workingLines(steps) : []),
  ]);
}

/** Volumes to fill are positive, levels below the lip negative. */
function document(found: LevelInWords, steps: readonly Step[]) {
  const { perHeight, calibration, shape, read, tilt, level, cold, toLip, fillTarget, toTarget, overflow } = found;
  return {
    perMillimetre_ml: digits(valueIn(ml_mm, perHeight), 3),
    perMillimetreUncertainty_ml: digits(standardUncertainty(perHeight) / ml_mm.inSI, 2),
    strength: calibration?.strength ?? null,
    betterDraw_ml: calibration && Math.ceil(calibration.betterDraw_ml / 10) * 10,
    plausibility: calibration?.plausibility ?? null,
    contents_ml: shape && digits(valueIn(ml, shape.volume), 3),
    read_mm: read && lengthIn_mm(read),
    tilt: tilt?.type ?? null,
    tiltShift_mm: tilt?.type === "corrected" ? lengthIn_mm(tilt.shift) : null,
    tiltBound_mm: tilt?.type === "bounded" ? lengthIn_mm(tilt.bound) : null,
    level_mm: level && lengthIn_mm(level),
    levelUncertainty_mm: level && uncertaintyIn_mm(level),
    warmRise_mm: cold && digits(valueIn(mm, cold.rise), 2),
    cold_mm: cold && lengthIn_mm(cold.level),
    coldUncertainty_mm: cold && uncertaintyIn_mm(cold.level),
    coldReading: cold?.reading ?? null,
    verdict: found.verdict,
    shortOfLip_ml: toLip && toFill_ml(toLip),
    shortOfLipUncertainty_ml: toLip && digits(standardUncertainty(toLip) / ml.inSI, 2),
    fillTo_mm: fillTarget && lengthIn_mm(fillTarget.level),
    fillToBecause: fillTarget?.because ?? null,
    toTarget_ml: toTarget && toFill_ml(toTarget.volume),
    strokes: toTarget && { full: toTarget.strokes.full, last_ml: digits(toTarget.strokes.last_ml, 2) },
    overflow: overflow && {
      verdict: overflow.verdict,
      volume_ml: digits(Math.max(0, valueIn(ml, overflow.volume)), 3),
      uncertainty_ml: digits(standardUncertainty(overflow.volume) / ml.inSI, 2),
    },
    assumed: found.assumed,
    working: steps,
  };
}

const lengthIn_mm = (it: Quantity): number => digits(valueIn(mm, it), 3) + 0;
const uncertaintyIn_mm = (it: Quantity): number => digits(standardUncertainty(it) / mm.inSI, 2);
const toFill_ml = (drawnOut: Quantity): number => digits(-valueIn(ml, drawnOut), 3) + 0;
