import { JFIF, ofThePicture, PLAIN_JFIF } from "./browser/plainJpeg.ts";

export type PhotoType = "jpeg" | "png" | "webp";

/** What a file is by its bytes, and what it carries that is no part of the picture: where it was taken, with what, by whom. */
export type PhotoBytes = { readonly type: PhotoType; readonly carries: readonly string[] };

/**
 * What the bytes of a file are; null if they are no JPEG, PNG or WebP from the first to the last.
 *
 * Goes by the segments that a picture needs, not by a list of those that tell something: phones hang on new ones every year,
 * films with a place of their own behind the picture among them.
 *
 * Source: ITU-T T.81 (1992), B.1; W3C PNG (Third Edition), 5 and 11; RFC 9649, 2.
 */
export function photoBytes(bytes: Uint8Array): PhotoBytes | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const carries = new Set<string>();
  for (const [type, walk] of Object.entries(walks) as [PhotoType, Walk][]) {
    const end = walk(view, (name) => carries.add(name));
    if (end === null) continue;
    if (end < bytes.length) carries.add("what lies behind the picture");
    return { type, carries: [...carries] };
  }
  return null;
}

/** Where the picture ends in a file of this kind, null if it is none or was cut off; tells what else it met. */
type Walk = (view: DataView, met: (name: string) => void) => number | null;

const text = (view: DataView, at: number, length: number): string =>
  at + length > view.byteLength
    ? ""
    : String.fromCharCode(...new Uint8Array(view.buffer, view.byteOffset + at, length));

function jpegEnd(view: DataView, met: (name: string) => void): number | null {
  if (view.byteLength < 4 || view.getUint16(0) !== 0xffd8) return null;
  let at = 2;
  while (at + 2 <= view.byteLength) {
    if (view.getUint8(at) !== 0xff) return null;
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) {
      at++;
      continue;
    }
    if (marker === 0xd9) return at + 2;
    if (marker < 0xc0 || (marker >= 0xd0 && marker <= 0xd8) || at + 4 > view.byteLength) return null;
    const length = view.getUint16(at + 2);
    if (length < 2) return null;
    const known = ofThePicture[marker];
    const application = marker >= 0xe0;
    const plain = known !== undefined && text(view, at + 4, known.length) === known;
    if (marker === JFIF && plain && length > PLAIN_JFIF) met("a small picture of itself");
    if (application && !plain) met(marker === 0xfe ? "a comment" : applicationName(view, at, marker));
    at += 2 + length;
    if (marker === 0xda) at = afterScan(view, at);
  }
  return null;
}

function applicationName(view: DataView, at: number, marker: number): string {
  if (text(view, at + 4, 4) === "Exif") return "EXIF";
  if (text(view, at + 4, 4) === "http") return "XMP";
  return `a segment APP${marker - 0xe0}`;
}

/** The next marker after the data of a scan; in them 0xff stands before zero or a restart alone. */
function afterScan(view: DataView, from: number): number {
  for (let at = from; at + 1 < view.byteLength; at++) {
    if (view.getUint8(at) !== 0xff) continue;
    const next = view.getUint8(at + 1);
    if (next !== 0 && !(next >= 0xd0 && next <= 0xd7)) return at;
  }
  return view.byteLength;
}

const pngChunks = new Set(
  "IHDR PLTE IDAT IEND tRNS cHRM gAMA iCCP sBIT sRGB cICP mDCV cLLI bKGD hIST pHYs sPLT".split(" "),
);

function pngEnd(view: DataView, met: (name: string) => void): number | null {
  if (text(view, 0, 8) !== "\x89PNG\r\n\x1a\n") return null;
  let at = 8;
  while (at + 12 <= view.byteLength) {
    const name = text(view, at + 4, 4);
    if (!pngChunks.has(name)) met(name === "eXIf" ? "EXIF" : `a chunk ${printable(name)}`);
    at += 12 + view.getUint32(at);
    if (name === "IEND") return at <= view.byteLength ? at : null;
  }
  return null;
}

const webpChunks = new Set(["VP8 ", "VP8L", "VP8X", "ICCP", "ALPH"]);

function webpEnd(view: DataView, met: (name: string) => void): number | null {
  if (text(view, 0, 4) !== "RIFF" || text(view, 8, 4) !== "WEBP") return null;
  const end = 8 + view.getUint32(4, true);
  if (end > view.byteLength) return null;
  let at = 12;
  while (at + 8 <= end) {
    const name = text(view, at, 4);
    if (!webpChunks.has(name)) met(name === "EXIF" ? "EXIF" : `a chunk ${printable(name).trim()}`);
    const length = view.getUint32(at + 4, true);
    at += 8 + length + (length % 2);
  }
  return at === end ? end : null;
}

const printable = (name: string): string => name.replace(/[^\w ]/g, "?");

const walks: Readonly<Record<PhotoType, Walk>> = { jpeg: jpegEnd, png: pngEnd, webp: webpEnd };
