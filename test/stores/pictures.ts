import { createHash } from "node:crypto";
import sharp, { type Sharp } from "sharp";

export const nameOf = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");

/** A grainy picture, so that its file is not tiny; another for every seed. */
const grainy = (width: number, height: number, shade: number): Sharp =>
  sharp({
    create: { width, height, channels: 3, background: "#888", noise: { type: "gaussian", mean: shade, sigma: 20 } },
  });

/** A JPEG with nothing but the picture. */
export const plainPhoto = (width = 64, height = 48, shade = 128): Promise<Buffer> =>
  grainy(width, height, shade).jpeg().toBuffer();

export const plainPng = (): Promise<Buffer> => grainy(40, 30, 90).png().toBuffer();
export const plainWebp = (): Promise<Buffer> => grainy(40, 30, 90).webp().toBuffer();

/** As a telephone hands it over: lying on its side, the left half dark, with the place where it was taken. */
export const phonePhoto = async (kind: "jpeg" | "png" | "webp"): Promise<Buffer> => {
  const dark = await sharp({ create: { width: 40, height: 60, channels: 3, background: "#000" } })
    .png()
    .toBuffer();
  return sharp({ create: { width: 80, height: 60, channels: 3, background: "#fff" } })
    .composite([{ input: dark, left: 0, top: 0 }])
    .toFormat(kind)
    .withExif({ IFD0: { Make: "Invented" }, IFD3: { GPSLatitudeRef: "N", GPSLatitude: "51/1 30/1 0/1" } })
    .withMetadata({ orientation: 6 })
    .toBuffer();
};

export async function* inPieces(bytes: Uint8Array, size = 1000): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}

/** A PNG that says it has so many pixels a side, and holds none: the bomb that is refused before it is unpacked. */
export async function hugePng(side: number): Promise<Buffer> {
  const bytes = Buffer.from(await plainPng());
  bytes.writeUInt32BE(side, 16);
  bytes.writeUInt32BE(side, 20);
  bytes.writeUInt32BE(crc32(bytes.subarray(12, 29)), 29);
  return bytes;
}

/** ISO 3309, as PNG takes it; Node 20 has none of its own. */
function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (crc ^ 0xffffffff) >>> 0;
}
