import type { DrawnThread } from "../../mechanics/silhouette/threadReading.ts";
import { PhotoOverlay, type ShownPhoto } from "../drawings/PhotoOverlay.tsx";
import { standaloneSvg } from "../drawings/standalone.ts";

/** Crest ticks and lines over the photo as an SVG of its own. */
export const photoSvg = (photo: ShownPhoto, drawn: DrawnThread | null): string =>
  standaloneSvg(<PhotoOverlay photo={photo} drawn={drawn} />);
