import { statSync } from "node:fs";
import { type Photo, photoOfPixels } from "../../mechanics/silhouette/photo.ts";
import { mistaken } from "./mistake.ts";

/** A photo out of its file, turned as the camera says it was held. */
export type OpenedPhoto = {
  readonly photo: Photo;
  /** The same as bytes of a smaller JPEG, for a drawing that stands alone. */
  readonly asAddress: () => Promise<string>;
};

/** @throws InputMistake if there is no such file, it is too large, or it is no picture. */
export async function openedPhoto(file: string): Promise<OpenedPhoto> {
  const bytes = sizeOf(file);
  if (bytes > MOST_MB * 1e6)
    throw mistaken("photo", file, `a file of up to ${MOST_MB} MB; this one has ${Math.round(bytes / 1e6)} MB`);
  // Its binaries are large; no other command needs them.
  const { default: sharp } = await import("sharp");
  const opened = () => sharp(file, { limitInputPixels: MOST_MEGAPIXELS * 1e6, failOn: "truncated" }).autoOrient();
  const refused = (fault: unknown): never => {
    const why = String((fault as Error).message).replace(/\s+/g, " ");
    throw /pixel limit/.test(why)
      ? mistaken("photo", file, `a picture of up to ${MOST_MEGAPIXELS} megapixels`)
      : mistaken("photo", file, `a whole picture as JPEG, PNG, WebP or TIFF (${why})`);
  };
  const { data, info } = await opened()
    .toColourspace("srgb")
    .flatten({ background: "#ffffff" })
    .raw({ depth: "uchar" })
    .toBuffer({ resolveWithObject: true })
    .catch(refused);
  const { width, height } = info;
  if (info.channels !== 3) throw mistaken("photo", file, "a picture in colour or grey");
  return {
    photo: photoOfPixels({ left: 0, top: 0, width, height, channels: 3, bytes: data }),
    asAddress: async () => {
      const small = await opened().resize(1600, 1600, { fit: "inside", withoutEnlargement: true }).jpeg().toBuffer();
      return `data:image/jpeg;base64,${small.toString("base64")}`;
    },
  };
}

const MOST_MB = 60;
const MOST_MEGAPIXELS = 60;

function sizeOf(file: string): number {
  try {
    const found = statSync(file);
    if (found.isFile()) return found.size;
  } catch (cause) {
    const { code = "not reachable" } = cause as NodeJS.ErrnoException;
    throw mistaken("photo", file, `a file that can be read (${code})`);
  }
  throw mistaken("photo", file, "a file");
}
