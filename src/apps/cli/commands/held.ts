import type { Command } from "commander";
import { parse } from "csv-parse/sync";
import type { Step } from "../../../mechanics/quantity/working.ts";
import { type HeldByMethod, held } from "../../../mechanics/service/held.ts";
import { type HeldCase, watched } from "../../../mechanics/service/heldCases.ts";
import { heldCurve } from "../../../mechanics/service/heldCurve.ts";
import { heldWorking } from "../../../mechanics/service/heldWorking.ts";
import { holdingMedian } from "../../../mechanics/service/kaplanMeier.ts";
import { casesToShow } from "../../../mechanics/service/proportion.ts";
import { holdingSvg } from "../../../sheets/answer/holdingSvg.tsx";
import { comparedLines, heldLines } from "../../../sheets/words/heldWords.ts";
import { textIn, writeSvg } from "../files.ts";
import { heldCompared } from "../heldCompared.ts";
import { mistaken } from "../mistake.ts";
import { digits, print, workingLines } from "../print.ts";

type Options = {
  readonly json?: boolean;
  readonly working?: boolean;
  readonly svg?: string;
  readonly method?: string;
  readonly compare?: string;
};

export function heldCommand(program: Command): void {
  program
    .command("held")
    .description("did the last ones hold: shares, curves and what they may truly be")
    .argument("<cases.csv>", "columns method, from_days, to_days; - for standard input")
    .option("--method <method>", "the method that --svg draws; the first of the file unless told")
    .option("--svg <file>", "write the holding curve")
    .option("--compare <methods>", "two methods, with a comma: whether they hold alike (log-rank test)")
    .option("--working", "print how every figure was got")
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft held examples/held.csv")
    .action((file: string, options: Options) => {
      const cases = casesIn(file);
      const { methods } = held(cases);
      if (options.svg) drawCurve(options.svg, cases, options.method);
      const compared = options.compare === undefined ? null : heldCompared(options.compare, cases);
      const told = methods.map((it) => ({ it, steps: heldWorking(it, cases) }));
      const document = { methods: told.map(({ it, steps }) => methodDocument(it, steps)), compared };
      print(options.json ?? false, document, [
        ...(compared ? comparedLines(compared) : []),
        ...told.flatMap(({ it, steps }) => [
          ...heldLines(it),
          ...(options.working ? [...workingLines(steps), ""] : []),
        ]),
      ]);
    });
}

function drawCurve(file: string, cases: readonly HeldCase[], method = cases[0]?.method ?? ""): void {
  const watches = cases.flatMap((it) => (it.method === method ? (watched(it) ?? []) : []));
  const curve = heldCurve(watches);
  if (!curve) throw mistaken("--method", method, [...new Set(cases.map((it) => it.method))].join(", "));
  writeSvg(file, holdingSvg(curve, method));
}

/** The figures by the keys of the contract. */
function methodDocument(it: HeldByMethod, steps: readonly Step[]) {
  const median = it.kaplanMeier && holdingMedian(it.kaplanMeier);
  return {
    method: it.method,
    cases: it.cases,
    cameBack: it.cameBack,
    neverLookedAt: it.neverLookedAt,
    watched_days: it.watched_days,
    wilson95: it.wilson95,
    jeffreys95: it.jeffreys95,
    exact95: it.exact95,
    kaplanMeier:
      it.kaplanMeier?.map(({ t, survival, standardError, atRisk, low, high }) => ({
        t,
        survival,
        standardError,
        atRisk,
        low,
        high,
      })) ?? null,
    median_days: median && [median.low, median.t, median.high],
    casesToShow90: it.cases > 0 && it.cameBack === 0 ? casesToShow(0.9, 0.95) : null,
    turnbull: it.turnbull,
    turnbullProof: it.turnbullCertificate,
    weibull: it.weibull && {
      shape: digits(it.weibull.shape, 10),
      scale: digits(it.weibull.scale, 10),
      logLikelihood: digits(it.weibull.logLikelihood, 12),
    },
    weibullMissing: it.weibullMissing,
    working: steps,
  };
}

function casesIn(file: string): readonly HeldCase[] {
  const rows = rowsOf(file, textIn("cases.csv", file));
  for (const column of ["method", "from_days", "to_days"])
    if (rows[0] && !(column in rows[0])) throw mistaken("cases.csv", file, `the columns method, from_days, to_days`);
  if (rows.length === 0) throw mistaken("cases.csv", file, "at least one case below the line of column names");
  return rows.map((row, i) => caseOf(row, i + 2));
}

function rowsOf(file: string, text: string): readonly Record<string, string>[] {
  try {
    return parse(text, { columns: true, comment: "#", skip_empty_lines: true, trim: true, bom: true });
  } catch (cause) {
    throw mistaken("cases.csv", file, `CSV; ${(cause as Error).message}`);
  }
}

function caseOf(
  { method = "", from_days: from = "", to_days: to = "" }: Record<string, string>,
  line: number,
): HeldCase {
  if (method === "") throw mistaken(`line ${line}, method`, method, "the name of a method");
  const from_days = daysOf(`line ${line}, from_days`, from);
  if (to === "") return { method, from_days, to_days: null };
  const to_days = daysOf(`line ${line}, to_days`, to);
  if (to_days < from_days)
    throw mistaken(`line ${line}, to_days`, to, `${from} or later: the failure lies in (from, to]`);
  return { method, from_days, to_days };
}

function daysOf(field: string, text: string): number {
  if (!/^\d+(\.\d+)?$/.test(text)) throw mistaken(field, text, "a number of days from 0 up, as 90");
  return Number(text);
}
