import type { DrawnThread } from "../../mechanics/silhouette/threadReading.ts";

/** A photo as an address (a file, or its own bytes; null where it lies beneath already), and its size in pixels. */
export type ShownPhoto = { readonly href: string | null; readonly width: number; readonly height: number };

/** The crest ticks and the two crest lines over the photo they were read from, so that a person sees a wrong fit at once. */
export function PhotoOverlay({ photo, drawn }: { readonly photo: ShownPhoto; readonly drawn: DrawnThread | null }) {
  const box = shownPart(photo, drawn);
  const letter = Math.max(box.width, box.height) / 42;
  return (
    <svg
      class="drawing"
      viewBox={`${box.x} ${box.y} ${box.width} ${box.height}`}
      font-size={letter.toFixed(1)}
      role="img"
    >
      <title>The photo with what was found on it</title>
      <desc>
        {drawn ? `${drawn.ticks.length} crests found, and a line along the crests of either side` : "No thread found"}
      </desc>
      {photo.href !== null && <image href={photo.href} x={0} y={0} width={photo.width} height={photo.height} />}
      {drawn && <Found drawn={drawn} letter={letter} />}
    </svg>
  );
}

/** The part of the photo that is shown: the thread that was found and what is around it, or all of it. */
export const shownPart = ({ width, height }: Omit<ShownPhoto, "href">, drawn: DrawnThread | null) =>
  drawn ? around(drawn, { width, height }) : { x: 0, y: 0, width, height };

function Found({ drawn: { lines, ticks }, letter }: { readonly drawn: DrawnThread; readonly letter: number }) {
  const width = (share: number): string => (share * letter).toFixed(2);
  const rail = lines.map(([a, b]) => `M${place(a)}L${place(b)}`).join("");
  const marks = ticks.map((tick) => mark(tick, lines, 0.9 * letter)).join("");
  return (
    <g>
      <path class="line" stroke={BENEATH} stroke-width={width(0.3)} d={rail + marks} />
      <path class="line" stroke={MARK} stroke-width={width(0.06)} d={rail} />
      <path class="line" stroke={MARK} stroke-width={width(0.12)} d={marks} />
    </g>
  );
}

/** A photo does not change with the theme, and so its marks do not either. */
const BENEATH = "#ffffff";
const MARK = "#b0101f";

type Place = { readonly x: number; readonly y: number };

const place = ({ x, y }: Place): string => `${x.toFixed(1)} ${y.toFixed(1)}`;

/** A stroke from the crest outward, away from the other side. */
function mark(tick: Place, lines: DrawnThread["lines"], length: number): string {
  const middles = lines.map(([a, b]) => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }));
  const [first, second] = lines;
  if (!first || !second) return "";
  const along = { x: first[1].x - first[0].x, y: first[1].y - first[0].y };
  const size = Math.hypot(along.x, along.y) || 1;
  const middle = { x: middles.reduce((s, it) => s + it.x / 2, 0), y: middles.reduce((s, it) => s + it.y / 2, 0) };
  const normal = { x: -along.y / size, y: along.x / size };
  const outward = (tick.x - middle.x) * normal.x + (tick.y - middle.y) * normal.y < 0 ? -length : length;
  return `M${place(tick)}L${place({ x: tick.x + outward * normal.x, y: tick.y + outward * normal.y })}`;
}

/** The thread with as much around it as it is long, within the photo. */
function around({ lines }: DrawnThread, { width, height }: Omit<ShownPhoto, "href">) {
  const points = lines.flat();
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const size = Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
  const margin = 0.45 * size;
  const [left, top] = [
    Math.max(0, Math.floor(Math.min(...xs) - margin)),
    Math.max(0, Math.floor(Math.min(...ys) - margin)),
  ];
  return {
    x: left,
    y: top,
    width: Math.min(width, Math.ceil(Math.max(...xs) + margin)) - left,
    height: Math.min(height, Math.ceil(Math.max(...ys) + margin)) - top,
  };
}
