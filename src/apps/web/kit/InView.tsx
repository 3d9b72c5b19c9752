import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";

/** A part of the page that says when it comes near to view, and when it leaves, and how high it is then. */
export function InView(props: {
  readonly kind: string;
  readonly look: (inView: boolean, height_px: number) => void;
  readonly children: ComponentChildren;
}) {
  const { kind, look, children } = props;
  const frame = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const watcher = new IntersectionObserver(
      (entries) => {
        const last = entries.at(-1);
        if (last) look(last.isIntersecting, last.boundingClientRect.height);
      },
      { rootMargin: "30%" },
    );
    if (frame.current) watcher.observe(frame.current);
    return () => {
      watcher.disconnect();
      look(false, 0);
    };
  }, [look]);
  return (
    <div class={kind} ref={frame}>
      {children}
    </div>
  );
}
