import { effect, type ReadonlySignal, useComputed } from "@preact/signals";
import { useLayoutEffect, useRef } from "preact/hooks";
import { redraw } from "./redraw.ts";

/**
 * A drawing as the text of its SVG, made by our own components in the engine. It is redrawn where it is another, and not before
 * it comes into view.
 */
export function Picture({ svg, kind }: { readonly svg: string; readonly kind: string }) {
  const frame = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => show(frame.current, svg), [svg]);
  useLayoutEffect(() => watched(frame.current), []);
  return <div class={`picture ${kind}`} ref={frame} />;
}

type Drawing = { readonly svg: ReadonlySignal<string | null>; readonly kind: string };

/** A drawing that changes with every step of a stepper: nothing is drawn anew for it but itself. Nothing stands where there is none. */
export function LivePicture(props: Drawing) {
  const { svg } = props;
  const there = useComputed(() => svg.value !== null);
  return there.value && <LiveFrame {...props} />;
}

function LiveFrame({ svg, kind }: Drawing) {
  const frame = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => effect(() => show(frame.current, svg.value)), [svg]);
  useLayoutEffect(() => watched(frame.current), []);
  return <div class={`picture ${kind}`} ref={frame} />;
}

function show(frame: Element | null, svg: string | null): void {
  if (!frame || svg === null) return;
  wanted.set(frame, svg);
  if (!frame.firstChild || inView.has(frame)) redraw(frame, svg);
}

/** Keeps a frame up to date as it comes into view, until it goes. */
function watched(frame: Element | null) {
  if (!frame) return;
  watcher.observe(frame);
  mounted.add(frame);
  return () => {
    watcher.unobserve(frame);
    mounted.delete(frame);
  };
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
