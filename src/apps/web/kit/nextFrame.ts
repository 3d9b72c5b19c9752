const waiting = new Set<() => void>();

/**
 * Runs a piece of work once the frame that is due has been drawn, so that what was changed before it is seen first; asked for again
 * meanwhile it runs once. Nothing waits in a page that nobody sees.
 */
export function nextFrame(work: () => void): void {
  if (document.hidden) {
    work();
    return;
  }
  if (waiting.size === 0) requestAnimationFrame(() => setTimeout(runAll));
  waiting.add(work);
}

function runAll(): void {
  const due = [...waiting];
  waiting.clear();
  for (const work of due) work();
}
