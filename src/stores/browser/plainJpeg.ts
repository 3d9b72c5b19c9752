/**
 * Application segments of a JPEG that say how its colours are meant, by what they begin with.
 *
 * Source: ITU-T T.871, 10.1; ICC.1, annex B.4; ITU-T T.872, 6.5.3.
 */
export const ofThePicture: Readonly<Record<number, string>> = { 224: "JFIF\0", 226: "ICC_PROFILE\0", 238: "Adobe" };

/** APP0, and its length without a small picture in it, which may be of what was cut off. Source: ITU-T T.871, 10.1. */
export const JFIF = 0xe0;
export const PLAIN_JFIF = 16;

/** A JPEG without what is no part of the picture; null if it is none. Source: ITU-T T.81 (1992), B.1. */
export function plainJpeg(bytes: Uint8Array): Uint8Array<ArrayBuffer> | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < 4 || view.getUint16(0) !== 0xffd8) return null;
  const parts = [bytes.subarray(0, 2)];
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (view.getUint8(at) !== 0xff) return null;
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) {
      at++;
      continue;
    }
    // Behind the head of the first scan stand data and tables alone.
    if (marker === 0xda) return joined([...parts, bytes.subarray(at)]);
    const length = view.getUint16(at + 2);
    const end = at + 2 + length;
    if (length < 2 || end > bytes.length) return null;
    const begins = ofThePicture[marker];
    const known = begins !== undefined && startsWith(bytes.subarray(at + 4, end), begins);
    if (marker < JFIF || (known && !(marker === JFIF && length > PLAIN_JFIF))) parts.push(bytes.subarray(at, end));
    at = end;
  }
  return null;
}

const startsWith = (bytes: Uint8Array, text: string): boolean =>
  [...text].every((character, i) => bytes[i] === character.charCodeAt(0));

function joined(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
