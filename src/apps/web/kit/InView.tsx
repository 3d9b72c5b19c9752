import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";

/** A part of the page that says when it comes near to view, and when it leaves. */
export function InView(props: {
  readonly kind: string;
  readonly look: (inView: boolean) => void;
  readonly children: ComponentChildren;
}) {
  const { kind, look, children } = props;
  const frame = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const watcher = new IntersectionObserver((entries) => look(entries.at(-1)?.isIntersecting ?? false), {
      rootMargin: "30%",
    });
    if (frame.current) watcher.observe(frame.current);
    return () => {
      watcher.disconnect();
      look(false);
    };
  }, [look]);
  return (
    <div class={kind} ref={frame}>
      {children}
    </div>
  );
}
