import { h } from "preact";
import { render } from "preact-render-to-string";
import { exact, standardUncertainty, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { quantityFromText } from "../../../mechanics/quantity/quantityText.ts";
import { mm } from "../../../mechanics/quantity/unit.ts";
import type { Photo } from "../../../mechanics/silhouette/photo.ts";
import { type CaliperReading, type PhotoAnswer, threadFromPhoto } from "../../../mechanics/silhouette/photoPitch.ts";
import { ordinaryWear, outsideRead } from "../../../mechanics/threads/namingReadings.ts";
import { threadCandidates } from "../../../mechanics/threads/threadName.ts";
import { PhotoOverlay, shownPart } from "../../../sheets/drawings/PhotoOverlay.tsx";
import {
  alsoSeen,
  gaugeChecks,
  photoPitchSentence,
  photoReasons,
  photoTested,
  verdictWord,
} from "../../../sheets/words/photoWords.ts";
import { separatingSentence } from "../../../sheets/words/separatingWords.ts";
import { namingSentence } from "../../../sheets/words/threadWords.ts";
import { browserPhoto } from "./browserPhoto.ts";
import type { PhotoRead, PhotoReply, PhotoRequest } from "./photoMessages.ts";

const page = self as unknown as { postMessage(reply: PhotoReply, hand?: Transferable[]): void };

/** The photo that was opened last. */
let held: { readonly bitmap: ImageBitmap; readonly photo: Photo } | null = null;

addEventListener("message", async ({ data }: MessageEvent<PhotoRequest>) => {
  try {
    const reply = await answered(data);
    page.postMessage(reply, reply.part === "read" ? [reply.read.picture] : []);
  } catch (cause) {
    page.postMessage({ part: "fault", message: cause instanceof Error ? cause.message : String(cause) });
  }
});

const MOST_MEGAPIXELS = 60;

async function answered({ file, outside, line }: PhotoRequest): Promise<PhotoReply> {
  const read = quantityFromText(outside, "length");
  if (!read.ok || read.written.value <= 0) return { part: "refused", why: "wantsOutside" };
  if (file) {
    page.postMessage({ part: "step", step: "opening" });
    held?.bitmap.close();
    held = null;
    const bitmap = await createImageBitmap(file, { imageOrientation: "from-image" }).catch(() => null);
    if (!bitmap) return { part: "refused", why: "noPicture" };
    if (bitmap.width * bitmap.height > MOST_MEGAPIXELS * 1e6) {
      bitmap.close();
      return { part: "refused", why: "tooLarge" };
    }
    held = { bitmap, photo: browserPhoto(bitmap) };
  }
  if (!held) return { part: "refused", why: "noPicture" };
  page.postMessage({ part: "step", step: "looking" });
  const caliper = { length: exact("d", read.written.value, read.written.unit), id: "outside" };
  const drawn =
    line &&
    ([
      { x: line[0], y: line[1] },
      { x: line[2], y: line[3] },
    ] as const);
  const answer = threadFromPhoto(held.photo, caliper, drawn);
  return { part: "read", read: await shown(held.bitmap, answer, caliper) };
}

async function shown(bitmap: ImageBitmap, answer: PhotoAnswer, caliper: CaliperReading): Promise<PhotoRead> {
  const { width, height } = bitmap;
  const drawn = answer.reading?.drawn ?? null;
  const box = shownPart({ width, height }, drawn);
  const scale = Math.min(1, MOST_SHOWN / Math.max(box.width, box.height));
  const picture = await createImageBitmap(bitmap, box.x, box.y, box.width, box.height, {
    resizeWidth: Math.max(1, Math.round(box.width * scale)),
    resizeHeight: Math.max(1, Math.round(box.height * scale)),
    resizeQuality: "medium",
  });
  const told = answer.verdict === "again" ? null : answer;
  return {
    sign: verdictWord(answer),
    sentences: [
      ...(told ? [namingSentence(told.naming), photoPitchSentence(told), ...alsoSeen(told)] : []),
      ...photoReasons(answer),
      ...(told ? [separatingSentence(told.naming)] : []),
      photoTested,
    ],
    others: gaugeChecks(threadCandidates([outsideRead(caliper, false, ordinaryWear)])),
    pitch: told && {
      pitch_mm: valueIn(mm, told.pitch).toFixed(3),
      spread_mm: (2000 * standardUncertainty(told.pitch)).toFixed(3),
    },
    found: drawn !== null,
    picture,
    box,
    svg: render(h(PhotoOverlay, { photo: { href: null, width, height }, drawn })),
  };
}

const MOST_SHOWN = 1000;
