/** Brings a part of the page into view and hands it the keyboard; what is folded away is opened first. */
export function jumpTo(id: string): void {
  const target = document.getElementById(id);
  if (!target) return;
  for (let fold = target.closest("details"); fold; fold = fold.parentElement?.closest("details") ?? null)
    fold.open = true;
  follow(target);
  target.focus({ preventScroll: true });
}

/** How long pictures may take to find their size. */
const settled_ms = 1500;

/** What is drawn only where it is looked at grows on the way and pushes the target on: it is followed until it rests. */
function follow(target: HTMLElement): void {
  const resized = new ResizeObserver(() => target.scrollIntoView({ block: "start" }));
  const over = new AbortController();
  const stop = () => {
    resized.disconnect();
    over.abort();
  };
  for (const hand of ["wheel", "touchstart", "pointerdown", "keydown"])
    addEventListener(hand, stop, { signal: over.signal, passive: true });
  setTimeout(stop, settled_ms);
  resized.observe(document.body);
}
