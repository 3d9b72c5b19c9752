import type { Sharp } from "sharp";

/** More than any telephone takes, less than what a machine in a workshop cannot unpack. Judgement. */
export const MOST_PIXELS = 50_000_000;

/** What a picture shows itself to be once it is unpacked; null if it cannot be. */
export type PhotoLook = { readonly width_px: number; readonly height_px: number };

/** Unpacks a picture far enough to know that all of it is there; more than `MOST_PIXELS` are measured and not unpacked. */
export const looked = (path: string): Promise<PhotoLook | null> =>
  alone(async () => {
    const open = await opened();
    try {
      const { width, height } = await open(path, Number.MAX_SAFE_INTEGER).metadata();
      const look = { width_px: width, height_px: height };
      if (width * height <= MOST_PIXELS)
        await open(path, MOST_PIXELS).resize(32, 32, { fit: "inside" }).raw().toBuffer();
      return look;
    } catch {
      return null;
    }
  });

/**
 * The picture upright and with nothing beside it but its colours' profile, in the format it had; null if it cannot be unpacked.
 * A JPEG or WebP is packed once more.
 */
export const stripped = (path: string): Promise<Buffer | null> =>
  alone(async () => {
    const open = await opened();
    try {
      const picture = open(path, MOST_PIXELS).autoOrient().keepIccProfile();
      return await picture.jpeg({ quality: 90, force: false }).webp({ quality: 90, force: false }).toBuffer();
    } catch {
      return null;
    }
  });

/**
 * The library, loaded when the first picture comes: most commands never see one. Of its loaders only the three that are
 * accepted stay open: SVG and PDF among the others can name files of this machine.
 */
async function opened(): Promise<(path: string, pixels: number) => Sharp> {
  const { default: sharp } = await import("sharp");
  sharp.cache(false);
  sharp.block({ operation: ["VipsForeignLoad"] });
  sharp.unblock({
    operation: ["Jpeg", "Png", "Webp"].flatMap((it) => [`VipsForeignLoad${it}File`, `VipsForeignLoad${it}Buffer`]),
  });
  return (path, pixels) => sharp(path, { limitInputPixels: pixels, failOn: "error" });
}

/** One picture at a time: each may take some hundred megabytes while it is unpacked. */
let last: Promise<unknown> = Promise.resolve();
function alone<Result>(work: () => Promise<Result>): Promise<Result> {
  const result = last.then(work);
  last = result.catch(() => {});
  return result;
}
