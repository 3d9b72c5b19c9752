import type { BookFigure } from "../../mechanics/joint/bookFigures.ts";
import type { Wrench } from "../../mechanics/joint/wrench.ts";
import { exact, type Quantity } from "../../mechanics/quantity/quantity.ts";
import { deg, Nm } from "../../mechanics/quantity/unit.ts";
import type { WrittenCase, WrittenQuantity } from "./caseSchema.ts";
import type { Field, FieldReader } from "./givenQuantity.ts";

const torqueField = (name: string): Field => ({
  name,
  symbol: "T",
  kind: "torque",
  ordinarily: "read",
  example: "46 N·m",
});

/** The workshop's own figures for a port. A figure that could not be read is left out; its mistake is told. */
export function bookFiguresGiven(written: NonNullable<WrittenCase["bookFigures"]>, take: FieldReader): BookFigure[] {
  return written.flatMap((it, i) => {
    const torque = take(torqueField(`bookFigures[${i}].torque`), it.torque);
    return torque ? [{ torque, source: it.source, seal: it.seal ?? null, surface: it.surface ?? null }] : [];
  });
}

/** The wrenches at hand. A step that is not given is 1 N·m. */
export function wrenchesGiven(written: NonNullable<WrittenCase["wrenches"]>, take: FieldReader): Wrench[] {
  return written.flatMap((it, i): Wrench[] => {
    const torque = (key: "least" | "most" | "step", value: WrittenQuantity | undefined): Quantity | null =>
      take(torqueField(`wrenches[${i}].${key}`), value);
    const [least, most, step] = [torque("least", it.least), torque("most", it.most), torque("step", it.step)];
    const length = (key: "lever" | "extension", value: WrittenQuantity | undefined): Quantity | null =>
      take(
        { name: `wrenches[${i}].crowFoot.${key}`, symbol: "L", kind: "length", ordinarily: "rule", example: "300 mm" },
        value,
      );
    const [lever, extension] = [length("lever", it.crowFoot?.lever), length("extension", it.crowFoot?.extension)];
    const angle = take(
      { name: `wrenches[${i}].crowFoot.angle`, symbol: "a", kind: "angle", ordinarily: "by eye", example: "0 °" },
      it.crowFoot?.angle,
    );
    if (!least || !most) return [];
    return [
      {
        name: it.name,
        kind: it.kind ?? "click",
        least,
        most,
        step: step ?? exact("s", 1, Nm),
        calibrated: it.calibrated ?? null,
        crowFoot: lever && extension ? { lever, extension, angle: angle ?? exact("a", 0, deg) } : null,
      },
    ];
  });
}
