import { limitFigure, needFigure, pullFigure, rangeText } from "./figures.ts";

/** What the words of a card ask of a way: its window, and how it stands without one. */
type Standing = {
  readonly stands: string;
  readonly lasting: boolean;
  readonly refused: { readonly reason: string } | null;
  readonly because: readonly string[];
  readonly leaves: { readonly thread: string };
  readonly window: {
    readonly open: boolean;
    readonly narrow: boolean;
    readonly need_Nm: number;
    readonly floor_Nm: number | null;
    readonly limit_Nm: number;
    readonly advice_Nm: number | null;
  } | null;
};

/** What a way comes to: "12 to 40 N·m: pull 12", "empty: needs 59, limit 12 N·m", or why it is not for this port. */
export function standingWords({ window, refused, stands, because, leaves, lasting }: Standing): string {
  if (refused) return `no: ${refused.reason}`;
  if (!window) {
    const why = stands === "fits" || stands === "measure first" || stands === "doubtful" ? leaves.thread : because[0];
    return [stands === "fits" ? (lasting ? "" : "make-do") : stands, why ?? ""].filter((it) => it !== "").join(": ");
  }
  const from = Math.max(window.need_Nm, window.floor_Nm ?? 0);
  if (!window.open) return `empty: needs ${needFigure(from)}, limit ${limitFigure(window.limit_Nm)} N·m`;
  const range = `${rangeText(from, window.limit_Nm)}${window.narrow ? ", narrow" : ""}`;
  const pull = window.advice_Nm === null ? "no wrench here" : `pull ${pullFigure(window.advice_Nm)}`;
  return `${stands === "fits" ? "" : `${stands}; `}${range}: ${pull}`;
}

/** When the machine may leave once the port is closed. */
export function readyWords(hours: number | null): string {
  if (hours === null) return "ready: only said once looked at";
  if (hours === 0) return "ready when the parts are here";
  return hours <= 48 ? `ready ${pullFigure(hours)} h after closing` : `ready after ${Math.ceil(hours / 24)} days`;
}
