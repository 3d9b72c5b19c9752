/**
 * Brings a part of the page into view and hands it the keyboard, what is folded away opened first; or goes to another page, as
 * "#/standing". A part that is still being fetched is gone to when it comes, unless the hand takes over before.
 */
export function jumpTo(id: string): void {
  letGo();
  if (id.startsWith("#")) location.hash = id;
  else if (!arrivedAt(id)) awaited(id);
}

function arrivedAt(id: string): boolean {
  const target = document.getElementById(id);
  if (!target) return false;
  for (let fold = target.closest("details"); fold; fold = fold.parentElement?.closest("details") ?? null)
    fold.open = true;
  const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
  target.scrollIntoView({ behavior: still ? "auto" : "smooth", block: "start" });
  target.focus({ preventScroll: true });
  keptInView(target);
  return true;
}

/** Ends what follows a jump that the hand may take over from. */
let letGo = (): void => {};

function untilTaken(stop: () => void): void {
  letGo();
  const done = new AbortController();
  letGo = () => {
    stop();
    done.abort();
  };
  for (const taken of ["pointerdown", "wheel", "keydown", "hashchange"] as const)
    addEventListener(taken, () => letGo(), { signal: done.signal, passive: true, capture: true });
}

function awaited(id: string): void {
  const watcher = new MutationObserver(() => arrivedAt(id));
  watcher.observe(document.body, { childList: true, subtree: true });
  untilTaken(() => watcher.disconnect());
}

/** As long as parts on the way may still be laid out. */
const unsettled_ms = 3000;

/**
 * Parts on the way are drawn only as they come near, grow, and push the target out of view: it is followed until the page has
 * settled or the hand takes over.
 */
function keptInView(target: Element): void {
  let grown = false;
  const watcher = new ResizeObserver(() => {
    if (grown) target.scrollIntoView({ behavior: "auto", block: "start" });
    // The first call tells the size as it is.
    grown = true;
  });
  watcher.observe(document.body);
  const timer = setTimeout(() => letGo(), unsettled_ms);
  untilTaken(() => {
    watcher.disconnect();
    clearTimeout(timer);
  });
}
