import { useLayoutEffect, useRef } from "preact/hooks";
import { redraw } from "./redraw.ts";

/**
 * A drawing as the text of its SVG, made by our own components in the engine. It is redrawn where it is another, and not before
 * it comes into view.
 */
export function Picture({ svg, kind }: { readonly svg: string; readonly kind: string }) {
  const frame = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const { current } = frame;
    if (!current) return;
    wanted.set(current, svg);
    if (!current.firstChild) redraw(current, svg);
    else if (inView.has(current)) redraw(current, svg);
  }, [svg]);
  useLayoutEffect(() => {
    const { current } = frame;
    if (!current) return;
    watcher.observe(current);
    mounted.add(current);
    return () => {
      watcher.unobserve(current);
      mounted.delete(current);
    };
  }, []);
  return <div class={`picture ${kind}`} ref={frame} />;
}

/** The latest drawing of every frame, and the frames that are in view or nearly so. */
const wanted = new WeakMap<Element, string>();
const inView = new WeakSet<Element>();
const mounted = new Set<Element>();

// On paper everything is in view.
addEventListener("beforeprint", () => {
  for (const frame of mounted) redraw(frame, wanted.get(frame) ?? "");
});

const watcher = new IntersectionObserver(
  (entries) => {
    for (const { target, isIntersecting } of entries) {
      if (!isIntersecting) {
        inView.delete(target);
        continue;
      }
      inView.add(target);
      const svg = wanted.get(target);
      if (svg !== undefined) redraw(target, svg);
    }
  },
  { rootMargin: "25%" },
);
