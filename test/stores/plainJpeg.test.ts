import fc from "fast-check";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { plainJpeg } from "../../src/stores/browser/plainJpeg.ts";
import { photoBytes } from "../../src/stores/photoBytes.ts";
import { phonePhoto, plainPhoto } from "./pictures.ts";

const pixels = (bytes: Uint8Array) => sharp(bytes).raw().toBuffer();

/** A segment with what stands in it, behind the first two bytes of a JPEG. */
function withSegment(jpeg: Uint8Array, marker: number, text: string): Buffer {
  const inside = Buffer.from(text, "latin1");
  const head = Buffer.from([0xff, marker, (inside.length + 2) >> 8, (inside.length + 2) & 0xff]);
  return Buffer.concat([jpeg.subarray(0, 2), head, inside, jpeg.subarray(2)]);
}

describe("a JPEG that a browser made", () => {
  test("loses the place where it was taken, comments and small pictures of itself, and not one pixel", async () => {
    const phone = await phonePhoto("jpeg");
    const bytes = [
      phone,
      withSegment(phone, 0xfe, "by a name"),
      withSegment(await plainPhoto(), 0xe0, `JFIF\0\x01\x02\0\0\x01\0\x01\x02\x02${"rgb".repeat(4)}`),
      withSegment(await plainPhoto(), 0xed, "Photo of somebody"),
    ];
    for (const it of bytes) {
      expect(photoBytes(it)?.carries).not.toEqual([]);
      const plain = plainJpeg(it);
      expect(plain && photoBytes(plain)).toEqual({ type: "jpeg", carries: [] });
      expect(await pixels(plain ?? new Uint8Array())).toEqual(await pixels(it));
    }
  });

  test("that carries nothing but the picture stays as it is, with the profile of its colours", async () => {
    const profiled = await sharp({ create: { width: 9, height: 9, channels: 3, background: "#abc" } })
      .withIccProfile("p3")
      .jpeg({ progressive: true })
      .toBuffer();
    for (const it of [await plainPhoto(), profiled]) expect(Buffer.from(plainJpeg(it) ?? [])).toEqual(it);
  });

  test("what is no JPEG is none, whatever its bytes are", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), fc.boolean(), (bytes, begun) => {
        const given = begun ? Uint8Array.from([0xff, 0xd8, ...bytes]) : bytes;
        const plain = plainJpeg(given);
        if (!begun && bytes[0] !== 0xff) expect(plain).toBeNull();
        if (plain) expect(plain.length).toBeLessThanOrEqual(given.length);
      }),
    );
  });
});
