/** Brings a part of the page into view and hands it the keyboard; what is folded away is opened first. */
export function jumpTo(id: string): void {
  const target = document.getElementById(id);
  if (!target) return;
  for (let fold = target.closest("details"); fold; fold = fold.parentElement?.closest("details") ?? null)
    fold.open = true;
  const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
  target.scrollIntoView({ behavior: still ? "auto" : "smooth", block: "start" });
  target.focus({ preventScroll: true });
}
