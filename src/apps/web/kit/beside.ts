import { latestWins } from "./latestWins.ts";

/** A worker beside the page, as the page speaks to it. */
export type Beside<Request, Reply> = {
  /** Starts it; again where it failed to load or fell. */
  readonly start: () => Worker;
  /** What is posted of a request; `first` where the worker was just started and knows nothing of those before. As it is where left out. */
  readonly packed?: (request: Request, first: boolean) => Request;
  readonly hear: (reply: Reply) => void;
  /** Whether no further reply follows to the same request. */
  readonly isLast: (reply: Reply) => boolean;
  /** Whether it said that it lacks what it will never get: a browser asks once for a part of a script, and remembers that it failed. */
  readonly isLame?: (reply: Reply) => boolean;
  /** Of what waits, the kind of the lowest number goes first. */
  readonly kindOf: (request: Request) => number;
  /** Says that a request came to nothing. */
  readonly failed: (request: Request, message: string) => void;
};

/**
 * What asks the worker: of requests of one kind that come while it reckons only the latest is reckoned. A worker that fell is
 * started again by the next request, and not before: where its script is out of reach nobody tries for ever. Its script is not
 * fetched before the page stands, unless something is asked of it.
 */
export function beside<Request, Reply>(of: Beside<Request, Reply>): (request: Request) => void {
  let worker: Worker | null = null;
  let fresh = true;
  let asked: Request | null = null;
  const queue = latestWins<Request>((request) => {
    asked = request;
    worker ??= started();
    worker.postMessage(of.packed ? of.packed(request, fresh) : request);
    fresh = false;
  }, of.kindOf);
  const early = (): void => {
    worker ??= started();
  };
  if (document.readyState === "complete") early();
  else addEventListener("load", () => setTimeout(early));
  return queue.offer;

  function started(): Worker {
    const made = of.start();
    fresh = true;
    made.addEventListener("message", ({ data }: MessageEvent<Reply>) => {
      if (of.isLame?.(data)) letGo(made);
      if (of.isLast(data)) queue.done();
      of.hear(data);
    });
    made.addEventListener("error", ({ message }) => {
      letGo(made);
      if (asked !== null) of.failed(asked, message);
      queue.done();
    });
    return made;
  }

  function letGo(made: Worker): void {
    made.terminate();
    worker = null;
  }
}
