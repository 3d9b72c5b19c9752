import type { Command } from "commander";
import { quantityFromText } from "../../../mechanics/quantity/quantityText.ts";
import { inSI, onScale } from "../../../mechanics/quantity/unit.ts";
import { unitNamed, unitsOf } from "../../../mechanics/quantity/unitNames.ts";
import { acceptedQuantity, anyOf } from "../../../sheets/words/problemWords.ts";
import { mistaken } from "../mistake.ts";
import { digits, print } from "../print.ts";

export function convertCommand(program: Command): void {
  program
    .command("convert")
    .description("a quantity in another unit")
    .argument("<quantity>", 'a number with its unit, as "46 N·m"')
    .argument("<unit>", 'the unit wanted, as "lbf·ft"')
    .option("--json", "one JSON document")
    .addHelpText("after", '\nExample:\n  turnsleft convert "46 N·m" "lbf·ft"')
    .action((text: string, wanted: string, { json }: { json?: boolean }) => {
      const read = quantityFromText(text, null);
      if (!read.ok) throw mistaken("quantity", text, acceptedQuantity(read.problem, '"46 N·m"'));
      const { value, unit } = read.written;
      const target = unitNamed(wanted);
      if (!target.ok)
        throw mistaken(
          "unit",
          wanted,
          anyOf(target.problem.type === "ambiguous unit" ? target.problem.accepted : unitsOf(unit.kind)),
        );
      if (target.unit.kind !== unit.kind) throw mistaken("unit", wanted, anyOf(unitsOf(unit.kind)));
      const converted = onScale(inSI(value, unit), target.unit);
      const answer = {
        given: { value, unit: unit.symbol },
        value: digits(converted, 12),
        unit: target.unit.symbol,
        text: `${digits(converted, 4)} ${target.unit.symbol}`,
      };
      print(json ?? false, answer, [`${value} ${unit.symbol} = ${answer.text}`]);
    });
}
