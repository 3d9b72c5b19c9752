import type { Watched } from "./heldCases.ts";

/** A stretch (from, to] in which failures may lie, with no bound where `to` is null; equal ends are one moment. */
export type Stretch = { readonly from: number; readonly to: number | null };

/**
 * The innermost intervals of a set of cases: those that begin where a case's interval begins and end where the next one
 * ends, with nothing between. Only on them can a curve of greatest likelihood fall. In order of time.
 * Source: B. W. Turnbull, JRSS B 38 (1976), 290, section 2.
 */
export function innermostIntervals(watches: readonly Watched[]): readonly Stretch[] {
  const stretches = watches.map(stretch);
  const starts = distinct(stretches.map(startOf));
  const ends = distinct(stretches.map(endOf));
  return starts.flatMap((start, i) => {
    const end = ends.find((it) => before(start, it));
    const next = starts[i + 1];
    if (!end || (next && before(next, end))) return [];
    return [{ from: start.at, to: end.at === Number.POSITIVE_INFINITY ? null : end.at }];
  });
}

/** Whether the failure of a case may lie in an innermost interval; of those it holds the whole or nothing. */
export function mayLieIn({ from, to }: Stretch, watch: Watched): boolean {
  const within = stretch(watch);
  const inner = { from, to, moment: from === to };
  return !before(startOf(inner), startOf(within)) && !before(endOf(within), endOf(inner));
}

type Marked = Stretch & { readonly moment: boolean };

function stretch(watch: Watched): Marked {
  switch (watch.type) {
    case "failed at":
      return { from: watch.t, to: watch.t, moment: true };
    case "failed between":
      return { from: watch.from, to: watch.to, moment: false };
    case "held until":
      return { from: watch.t, to: null, moment: false };
    default:
      return watch satisfies never;
  }
}

/** An end of an interval. At one time a moment begins first, then everything ends, then what begins after it begins. */
type End = { readonly at: number; readonly rank: 0 | 1 | 2 };

const startOf = ({ from, moment }: Marked): End => ({ at: from, rank: moment ? 0 : 2 });
const endOf = ({ to }: Marked): End => ({ at: to ?? Number.POSITIVE_INFINITY, rank: 1 });

const before = (a: End, b: End): boolean => a.at < b.at || (a.at === b.at && a.rank < b.rank);

const distinct = (ends: readonly End[]): readonly End[] =>
  ends
    .toSorted((a, b) => (before(a, b) ? -1 : before(b, a) ? 1 : 0))
    .filter((end, i, all) => {
      const last = all[i - 1];
      return !last || before(last, end);
    });
