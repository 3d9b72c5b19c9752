import type { Command } from "commander";
import { parse } from "csv-parse/sync";
import { type HeldByMethod, held } from "../../../mechanics/service/held.ts";
import { type HeldCase, watched } from "../../../mechanics/service/heldCases.ts";
import { heldCurve } from "../../../mechanics/service/heldCurve.ts";
import { holdingSvg } from "../../../sheets/answer/holdingSvg.tsx";
import { heldLines } from "../../../sheets/words/heldWords.ts";
import { textIn, writeSvg } from "../files.ts";
import { mistaken } from "../mistake.ts";
import { digits, print } from "../print.ts";

type Options = { readonly json?: boolean; readonly svg?: string; readonly method?: string };

export function heldCommand(program: Command): void {
  program
    .command("held")
    .description("did the last ones hold: shares, curves and what they may truly be")
    .argument("<cases.csv>", "columns method, from_days, to_days; - for standard input")
    .option("--method <method>", "the method that --svg draws; the first of the file unless told")
    .option("--svg <file>", "write the holding curve")
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft held examples/held.csv")
    .action((file: string, options: Options) => {
      const cases = casesIn(file);
      const { methods } = held(cases);
      if (options.svg) drawCurve(options.svg, cases, options.method);
      print(options.json ?? false, { methods: methods.map(methodDocument) }, methods.flatMap(heldLines));
    });
}

function drawCurve(file: string, cases: readonly HeldCase[], method = cases[0]?.method ?? ""): void {
  const watches = cases.flatMap((it) => (it.method === method ? (watched(it) ?? []) : []));
  const curve = heldCurve(watches);
  if (!curve) throw mistaken("--method", method, [...new Set(cases.map((it) => it.method))].join(", "));
  writeSvg(file, holdingSvg(curve, method));
}

/** The figures by the keys of the contract. */
function methodDocument(it: HeldByMethod) {
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
    turnbull: it.turnbull,
    turnbullProof: it.turnbullCertificate,
    weibull: it.weibull && {
      shape: digits(it.weibull.shape, 10),
      scale: digits(it.weibull.scale, 10),
      logLikelihood: digits(it.weibull.logLikelihood, 12),
    },
    weibullMissing: it.weibullMissing,
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
