/** One event of a Chromium trace; times in µs. Source: the Trace Event Format of the Chromium project. */
export type TraceEvent = {
  readonly name: string;
  readonly ph: string;
  readonly ts: number;
  readonly dur?: number;
  /** What of it the thread really ran; the rest it stood waiting for a core. */
  readonly tdur?: number;
  readonly pid: number;
  readonly tid: number;
  readonly args?: { readonly data?: { readonly type?: string } };
};

/** What a main thread does for a change. */
export type Work = "script" | "style" | "layout" | "paint" | "commit";

/** Main-thread time of one change by its kind, ms. The commit hands the frame over and waits for another thread: it stands apart. */
export type Cost = Readonly<Record<Work, number>>;

const workOf: Readonly<Record<string, Work>> = {
  EvaluateScript: "script",
  "v8.compile": "script",
  FunctionCall: "script",
  EventDispatch: "script",
  TimerFire: "script",
  FireAnimationFrame: "script",
  FireIdleCallback: "script",
  HandlePostMessage: "script",
  RunMicrotasks: "script",
  MinorGC: "script",
  MajorGC: "script",
  ParseHTML: "script",
  ParseAuthorStyleSheet: "style",
  UpdateLayoutTree: "style",
  Layout: "layout",
  HitTest: "layout",
  "IntersectionObserverController::computeIntersections": "layout",
  PrePaint: "paint",
  Paint: "paint",
  Layerize: "paint",
  Commit: "commit",
  UpdateLayer: "paint",
};

/**
 * What each press of a pointer cost the main thread of its page, up to the next press or for so many milliseconds.
 *
 * Time within nested events counts once, for the innermost: their sum is the time the thread was busy with such work.
 */
export function changeCosts(events: readonly TraceEvent[], within_ms = Number.POSITIVE_INFINITY): readonly Cost[] {
  const presses = events
    .filter(({ name, args }) => name === "EventDispatch" && args?.data?.type === "pointerdown")
    .sort((a, b) => a.ts - b.ts);
  const [first] = presses;
  if (!first) return [];
  const costs = presses.map(() => ({ script: 0, style: 0, layout: 0, paint: 0, commit: 0 }));
  const work = events
    .filter(({ name, ph, pid, tid }) => ph === "X" && pid === first.pid && tid === first.tid && name in workOf)
    .sort((a, b) => a.ts - b.ts || (b.dur ?? 0) - (a.dur ?? 0));
  const around: TraceEvent[] = [];
  let press = -1;
  for (const event of work) {
    while (around.length > 0 && endOf(around.at(-1) as TraceEvent) <= event.ts) around.pop();
    // What is nested belongs to the press of the event around it.
    if (around.length === 0) while (press + 1 < presses.length && (presses[press + 1]?.ts ?? 0) <= event.ts) press++;
    const cost = costs[press];
    if (!cost || event.ts - (presses[press]?.ts ?? 0) > within_ms * 1000) continue;
    const outer = around.at(-1);
    if (outer) cost[workOf[outer.name] as Work] -= milliseconds(event);
    cost[workOf[event.name] as Work] += milliseconds(event);
    around.push(event);
  }
  return costs;
}

/** Script, style, layout and paint of a change, ms. */
export const total = ({ script, style, layout, paint }: Cost): number => script + style + layout + paint;

const endOf = ({ ts, dur = 0 }: TraceEvent): number => ts + dur;
const milliseconds = ({ dur = 0, tdur = dur }: TraceEvent): number => tdur / 1000;
