import { plainJpeg } from "../../../stores/browser/plainJpeg.ts";

/** A photo as the journal keeps it, and the SHA-256 of its bytes, by which it is called. */
export type TakenPhoto = { readonly name: string; readonly bytes: ArrayBuffer };

/** The longer side of a photo that is kept: the crests of a thread are told apart on it, and it goes over a poor network. Judgement. */
const MOST_SIDE_px = 2048;
const QUALITY = 0.85;
const MOST_PIXELS = 60e6;

/** What a camera or a file gave, upright, no larger than it has to be, and without anything but the picture; null where it is none. */
export async function takenPhoto(file: Blob): Promise<TakenPhoto | null> {
  const bitmap = await createImageBitmap(file, { imageOrientation: "from-image" }).catch(() => null);
  if (!bitmap) return null;
  const { width, height } = bitmap;
  const scale = Math.min(1, MOST_SIDE_px / Math.max(width, height));
  const canvas = new OffscreenCanvas(Math.max(1, Math.round(width * scale)), Math.max(1, Math.round(height * scale)));
  const context = canvas.getContext("2d");
  if (!context || width * height > MOST_PIXELS) {
    bitmap.close();
    return null;
  }
  context.imageSmoothingQuality = "high";
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  const made = await canvas.convertToBlob({ type: "image/jpeg", quality: QUALITY });
  // Some browsers write into it with what and how it was made.
  const plain = plainJpeg(new Uint8Array(await made.arrayBuffer()));
  if (!plain) return null;
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", plain));
  return { name: [...digest].map((it) => it.toString(16).padStart(2, "0")).join(""), bytes: plain.buffer };
}
