/** Brings a part of the page into view and hands it the keyboard, what is folded away opened first; or goes to another page, as "#/standing". */
export function jumpTo(id: string): void {
  if (id.startsWith("#")) location.hash = id;
  const target = document.getElementById(id);
  if (!target) return;
  for (let fold = target.closest("details"); fold; fold = fold.parentElement?.closest("details") ?? null)
    fold.open = true;
  const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
  target.scrollIntoView({ behavior: still ? "auto" : "smooth", block: "start" });
  target.focus({ preventScroll: true });
  keptInView(target);
}

/** As long as parts on the way may still be laid out. */
const unsettled_ms = 3000;
let letGo = (): void => {};

/**
 * Parts on the way are drawn only as they come near, grow, and push the target out of view: it is followed until the page has
 * settled or the hand takes over.
 */
function keptInView(target: Element): void {
  letGo();
  const done = new AbortController();
  let grown = false;
  const watcher = new ResizeObserver(() => {
    if (grown) target.scrollIntoView({ behavior: "auto", block: "start" });
    // The first call tells the size as it is.
    grown = true;
  });
  watcher.observe(document.body);
  const timer = setTimeout(() => letGo(), unsettled_ms);
  letGo = () => {
    watcher.disconnect();
    clearTimeout(timer);
    done.abort();
  };
  for (const taken of ["pointerdown", "wheel", "keydown"] as const)
    addEventListener(taken, () => letGo(), { signal: done.signal, passive: true, capture: true });
}
