import { useLayoutEffect, useRef } from "preact/hooks";

/** A drawing as the text of its SVG, made by our own components in the engine; redrawn only where it is another. */
export function Picture({ svg, kind }: { readonly svg: string; readonly kind: string }) {
  const frame = useRef<HTMLDivElement>(null);
  // Not dangerouslySetInnerHTML: that reads the old drawing back out of the page to compare it.
  useLayoutEffect(() => {
    if (frame.current) frame.current.innerHTML = svg;
  }, [svg]);
  return <div class={`picture ${kind}`} ref={frame} />;
}
