import { useLayoutEffect, useRef } from "preact/hooks";
import { redraw } from "../kit/redraw.ts";
import type { PhotoRead } from "./photoMessages.ts";
import { line } from "./photoState.ts";

/** The photo with the crests and lines over it. A tap on it is an end of the line along the thread. */
export function PhotoView({ read }: { readonly read: PhotoRead }) {
  const { picture, box, svg } = read;
  const canvas = useRef<HTMLCanvasElement>(null);
  const over = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    canvas.current?.getContext("2d")?.drawImage(picture, 0, 0);
    if (over.current) redraw(over.current, svg);
  }, [picture, svg]);
  return (
    // The same line can be typed in the field below.
    // biome-ignore lint/a11y/useKeyWithClickEvents: the field below takes the line from the keyboard
    // biome-ignore lint/a11y/noStaticElementInteractions: the picture has a name of its own, from its drawing
    <div
      class="photo-view"
      onClick={(event) => {
        const { left, top, width, height } = event.currentTarget.getBoundingClientRect();
        const x = Math.round(box.x + ((event.clientX - left) / width) * box.width);
        const y = Math.round(box.y + ((event.clientY - top) / height) * box.height);
        const ends = line.value.split(",").filter((it) => it.trim() !== "");
        line.value = ends.length === 2 ? `${ends.join(",")},${x},${y}` : `${x},${y}`;
      }}
    >
      <canvas ref={canvas} width={picture.width} height={picture.height} />
      <div class="over" ref={over} />
    </div>
  );
}
