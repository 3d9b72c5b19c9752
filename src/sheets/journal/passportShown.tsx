import { render } from "preact-render-to-string";
import type { JobSheet } from "../../journal/job/jobSheet.ts";
import { portIn } from "../../journal/shop/machines.ts";
import type { Shop } from "../../journal/shop/shop.ts";
import { passport, type Visit } from "../../journal/views/passport.ts";
import { TurnsOverYears } from "../drawings/TurnsOverYears.tsx";
import { list } from "../words/inCommas.ts";
import { type Names, namesIn } from "../words/journalNames.ts";
import { turnsFallWords } from "../words/passportWords.ts";
import { remedyNames } from "../words/remedyWords.ts";

/** The history of one port, the latest visit first. */
export type PassportShown = {
  readonly port: string;
  readonly called: string;
  readonly machine: string | null;
  readonly also: string | null;
  readonly opened: number;
  /** What the count of turns tells over the years. */
  readonly turns: { readonly sentence: string; readonly falling: boolean; readonly picture: string } | null;
  readonly visits: readonly { readonly job: string; readonly on: string; readonly lines: readonly string[] }[];
  readonly warnings: readonly string[];
};

export function passportShown(port: string, sheets: Iterable<JobSheet>, shop: Shop): PassportShown {
  const found = passport(port as never, sheets);
  const place = portIn(shop.machines, port as never);
  const names = namesIn(shop, null);
  const { counts, falling } = found.turns;
  const points = counts.map(({ at, turns }) => ({ on: at.slice(0, 10), turns }));
  return {
    port,
    called: names.port(port),
    machine: place?.machine.called ?? null,
    also: place ? list([place.unit.called, place.port.thread, place.port.material]) : null,
    opened: found.timesOpened,
    turns:
      points.length === 0
        ? null
        : {
            sentence: turnsFallWords(points, falling),
            falling,
            picture: render(<TurnsOverYears counts={points} falling={falling} />),
          },
    visits: found.visits
      .toReversed()
      .map((it) => ({ job: it.job, on: it.at.slice(0, 10), lines: visitLines(it, names) })),
    warnings: found.visits.flatMap(({ warnings }) => warnings),
  };
}

function visitLines(it: Visit, names: Names): readonly string[] {
  const { washers } = it;
  return [
    it.opened ? list(["opened", it.brokenLoose && `broke loose ${it.brokenLoose}`]) : "not opened",
    it.turns !== null && list([`${it.turns} turns`, it.turnsHow]),
    (washers.out !== null || washers.in !== null) && `washers: ${washers.out ?? "?"} out, ${washers.in ?? "?"} in`,
    it.letGo && "LET GO",
    ...it.repairs.map(({ method, lasting }) => `${remedyNames[method]}${lasting ? "" : ", make-do"}`),
    it.torque !== null && list([`torqued to ${it.torque}`, it.pulledBy && names.person(it.pulledBy), it.fitted?.plug]),
    ...it.cameBack.map(({ how, cause }) => `came back: ${how}; ${cause}`),
  ].filter((line) => line !== false);
}
