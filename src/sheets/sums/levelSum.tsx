import { render } from "preact-render-to-string";
import { calibrationByDraw } from "../../mechanics/fluid/levelByDraw.ts";
import { type InsideSizes, levelByShape } from "../../mechanics/fluid/levelByShape.ts";
import { allowedBelowLip } from "../../mechanics/fluid/levelLip.ts";
import { levelReading } from "../../mechanics/fluid/levelReadings.ts";
import { shapes } from "../../mechanics/fluid/shapeNames.ts";
import { exact, type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { ml, ml_mm, mm } from "../../mechanics/quantity/unit.ts";
import { working } from "../../mechanics/quantity/working.ts";
import { LevelGauge } from "../drawings/level/LevelGauge.tsx";
import type { LevelField } from "../words/levelBenchWords.ts";
import { belowWanted, drawMore, giveOrTakeWords, holdsSign, levelSigns } from "../words/levelBenchWords.ts";
import { volumeDoubt, volumeFigure } from "../words/levelFigures.ts";
import {
  acceptedFall,
  type LevelInWords,
  levelAnswer,
  levelMinds,
  levelReasons,
  perMillimetre,
} from "../words/levelWords.ts";
import { withoutOptions } from "../words/withoutOptions.ts";
import { levelFields } from "./levelFields.ts";
import { levelInWords } from "./levelInWords.ts";
import { answered, type SumAnswer, type SumRead } from "./sumAnswer.ts";
import type { SumTexts } from "./sumField.ts";
import { type Typed, typed } from "./typed.ts";

/** What a millimetre of level holds and how far the level is from its lip, from what is on the bench. */
export function levelSum(texts: SumTexts): SumRead {
  const it = typed(texts, levelFields);
  const holds = holdsOf(it);
  const below = it.quantity("below", "h");
  const read = below && levelReading(-valueIn(mm, below), mm, "wire hook", "below");
  const [allowed, target] = [down(it, "allowed", "h_min"), down(it, "target", "h_t")];
  const poured = it.quantity("pour", "V_f");
  const syringe = it.quantity("syringe", "V") ?? exact("V", 60, ml, "an ordinary syringe");
  if (target || poured) it.want("below");
  if (it.problems.length > 0 || !holds) return { ok: false, problems: it.problems };
  const assumed =
    allowed || !read ? [] : [{ reading: "lowest allowed", value: "5 mm below", source: "common practice" }];
  const found = levelInWords({
    ...holds,
    read,
    tilt: null,
    level: read,
    cold: null,
    lowest: allowed ?? allowedBelowLip,
    fillTarget: null,
    target,
    poured,
    syringe,
    assumed,
  });
  return answerOf(found);
}

type Holds = Pick<LevelInWords, "perHeight" | "calibration" | "shape">;

/** What a millimetre holds, in the way that was tapped; by two readings where none was. */
function holdsOf(it: Typed): Holds | null {
  switch (it.chosen("by", ["drawn", "known", "shape"]) ?? "drawn") {
    case "known": {
      it.want("perMm");
      const perHeight = it.quantity("perMm", "k");
      return perHeight && { perHeight, calibration: null, shape: null };
    }
    case "shape":
      return byShape(it);
    default:
      return byDraw(it);
  }
}

function byDraw(it: Typed): Holds | null {
  it.want("drawn", "fallen");
  const [drawn, fallen, fill] = [it.quantity("drawn", "V"), it.quantity("fallen", "Dh"), it.quantity("fill", "V_fill")];
  if (!drawn || !fallen) return null;
  const known = calibrationByDraw(drawn, fallen, fill);
  if (known.type !== "known") return it.refuse("fallen", acceptedFall(known));
  return { perHeight: known.perHeight, calibration: known, shape: null };
}

function byShape(it: Typed): Holds | null {
  it.want("shape");
  const shape = it.chosen("shape", shapes);
  const size = (name: keyof InsideSizes): Quantity | null => it.quantity(name, "l");
  const sizes = { length: size("length"), width: size("width"), height: size("height"), depth: size("depth") };
  if (!shape) return null;
  const known = levelByShape(shape, sizes, it.text("gears") === "yes");
  if (known.ok) return { perHeight: known.found.perHeight, calibration: null, shape: known.found.contents };
  if (known.problem.type === "depth outside the shape")
    return it.refuse("depth", `less than ${known.problem.most_mm} mm, the height inside`);
  it.want(...known.problem.sizes);
  return null;
}

/** A height below the lip as a level. */
function down(it: Typed, name: LevelField, symbol: string): Quantity | null {
  const read = it.quantity(name, symbol);
  return read && exact(symbol, -valueIn(mm, read), mm, "as given");
}

function answerOf(found: LevelInWords): SumRead {
  const { perHeight, level, lowest, calibration, shape, toLip, toTarget, overflow } = found;
  const [reason = "", ...reasons] = levelReasons(found).map(withoutOptions);
  const sentences = levelAnswer(found).map(withoutOptions);
  const asked = [perHeight, shape?.volume, level, toLip, toTarget?.volume, overflow?.volume];
  return answered({
    ...headOf(found),
    stop: overflow?.verdict === "runs out",
    sentences,
    because: reason,
    next: !level
      ? { sentence: belowWanted, field: "below" }
      : calibration?.strength === "weak"
        ? { sentence: drawMore, field: "drawn" }
        : null,
    picture:
      level &&
      render(
        <LevelGauge
          level_mm={valueIn(mm, level)}
          lowest_mm={valueIn(mm, lowest)}
          perHeight_ml_mm={valueIn(ml_mm, perHeight)}
        />,
      ),
    reasons,
    cautions: levelMinds,
    assumed: found.assumed,
    working: working(...asked.filter((it) => it != null)),
  });
}

/** The main figure: what is short of the lip; what a millimetre holds where no level was read. */
function headOf({ perHeight, toLip, verdict }: LevelInWords): Pick<SumAnswer, "sign" | "figure"> {
  if (!toLip || !verdict) {
    const { figure, doubt } = perMillimetre(perHeight);
    return { sign: holdsSign, figure: { value: String(figure), unit: "ml", also: giveOrTakeWords(doubt) } };
  }
  return {
    sign: levelSigns[verdict],
    figure: { value: String(volumeFigure(toLip)), unit: "ml", also: giveOrTakeWords(volumeDoubt(toLip)) },
  };
}
