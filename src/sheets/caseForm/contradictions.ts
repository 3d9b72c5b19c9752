import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { mm } from "../../mechanics/quantity/unit.ts";
import type { GivenCase } from "../../mechanics/remedies/givenCase.ts";
import { sealSize } from "../../mechanics/remedies/sealSize.ts";
import { isTaper } from "../../mechanics/threads/thread.ts";
import type { InputProblem } from "../words/problemWords.ts";

/** What cannot be so, each by itself or two readings together: a ring wider inside than outside, a count of no turns. */
export function contradictions(given: GivenCase): readonly InputProblem[] {
  const { plug, seal, left, healthyTurns, thread, threadDepth } = given;
  const d_mm = valueIn(mm, thread.d);
  const usual = sealSize(seal.kind ?? "flat washer", thread, plug.headDiameter);
  const [outside_mm, inside_mm] = [lengthOf(seal.outside, usual.outside_mm), lengthOf(seal.inside, usual.inside_mm)];
  const problems: (InputProblem | null)[] = [
    sealsOnItsThread(given),
    plug.headDiameter &&
      unless(
        valueIn(mm, plug.headDiameter) > d_mm,
        "plug.headDiameter",
        plug.headDiameter,
        `more than the thread, ${d_mm} mm`,
      ),
    threadDepth && unless(threadDepth.value > 0, "case.threadDepth", threadDepth, 'more than nothing, as "16 mm"'),
    seal.inside &&
      unless(outside_mm > inside_mm, "seal.inside", seal.inside, `less than the outside, ${shown(outside_mm)} mm`),
    seal.outside && !seal.inside
      ? unless(outside_mm > inside_mm, "seal.outside", seal.outside, `more than the inside, ${shown(inside_mm)} mm`)
      : null,
    seal.chamfer &&
      unless(
        liesInChamfer(given, seal.chamfer),
        "seal.chamfer",
        seal.chamfer,
        "more than nothing and less than the thread is deep, for an O-ring whose head and face meet",
      ),
    left.goodFrom && left.goodTo
      ? unless(
          left.goodTo.value > left.goodFrom.value,
          "left.goodTo",
          left.goodTo,
          `deeper than left.goodFrom, ${shown(valueIn(mm, left.goodFrom))} mm`,
        )
      : null,
    left.height &&
      unless(left.height.value <= 1, "left.height", left.height, 'a share from 0 to 1, as "0.6" or "60 %"'),
    healthyTurns && unless(healthyTurns.value > 0, "healthyTurns", healthyTurns, 'more than no turns, as "8"'),
    ...given.bookFigures.map(({ torque }, i) =>
      unless(torque.value > 0, `bookFigures[${i}].torque`, torque, 'more than nothing, as "46 N·m"'),
    ),
    ...given.wrenches.flatMap(({ least, most, step, crowFoot }, i) => [
      unless(most.value > least.value, `wrenches[${i}].most`, most, `more than the least of its scale`),
      unless(step.value > 0, `wrenches[${i}].step`, step, 'more than nothing, as "2 N·m"'),
      crowFoot &&
        unless(crowFoot.lever.value > 0, `wrenches[${i}].crowFoot.lever`, crowFoot.lever, 'a lever, as "300 mm"'),
    ]),
  ];
  return problems.filter((it) => it !== null);
}

/** A taper thread closes by its own flanks, so a ring under the head of its plug closes nothing. */
function sealsOnItsThread({ thread, seal }: GivenCase): InputProblem | null {
  const { kind } = seal;
  if (!isTaper(thread) || kind === null || kind === "taper" || kind === "none") return null;
  const accepted = `"taper" or left out: ${thread.designation} seals on its own thread; a ring belongs to a parallel plug`;
  return { field: "seal.kind", given: `"${kind}"`, accepted };
}

/** An O-ring lies in a chamfer where head and face meet, and below that there is thread yet, which its plug reaches. */
const liesInChamfer = ({ thread, threadDepth, plug, seal, left }: GivenCase, { value }: Quantity): boolean =>
  seal.kind === "O-ring" &&
  !seal.thickness?.value &&
  value > 0 &&
  [threadDepth, left.goodTo, plug.underHead, thread.d].every((end) => !end || value < end.value);

const lengthOf = (given: Quantity | null, usual_mm: number): number => (given ? valueIn(mm, given) : usual_mm);

const shown = (value: number): number => Number(value.toPrecision(4));

function unless(holds: boolean, field: string, given: Quantity, accepted: string): InputProblem | null {
  return holds ? null : { field, given: `${shown(valueIn(given.unit, given))} ${given.unit.symbol}`.trim(), accepted };
}
