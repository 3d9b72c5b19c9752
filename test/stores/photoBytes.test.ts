import fc from "fast-check";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { photoBytes } from "../../src/stores/photoBytes.ts";
import { phonePhoto, plainPhoto, plainPng, plainWebp } from "./pictures.ts";

const joined = (...parts: (Uint8Array | string)[]): Buffer =>
  Buffer.concat(parts.map((it) => (typeof it === "string" ? Buffer.from(it, "latin1") : it)));

describe("a file is what its bytes are", () => {
  test.each([
    ["jpeg", plainPhoto],
    ["png", plainPng],
    ["webp", plainWebp],
  ] as const)("%s, and carries nothing but the picture", async (type, made) => {
    expect(photoBytes(await made())).toEqual({ type, carries: [] });
  });

  test("the profile of its colours and several scans belong to the picture", async () => {
    const p3 = (it: "jpeg" | "png" | "webp") =>
      sharp({ create: { width: 9, height: 9, channels: 3, background: "#abc" } })
        .withIccProfile("p3")
        .toFormat(it, { progressive: true })
        .toBuffer();
    for (const it of ["jpeg", "png", "webp"] as const) expect(photoBytes(await p3(it))?.carries).toEqual([]);
  });

  test.each([
    ["nothing", ""],
    ["a text", "%PDF-1.7 or anything"],
    ["a drawing", "<svg xmlns='http://www.w3.org/2000/svg'/>"],
    ["an animation of another kind", "GIF89a\x01\0\x01\0"],
    ["only the mark of a JPEG", "\xff\xd8\xff"],
    ["a JPEG of nothing", "\xff\xd8\xff\xd9"],
  ])("%s is no photo", (_, bytes) => {
    const found = photoBytes(Buffer.from(bytes, "latin1"));
    // A JPEG without a picture has its marks in order; only unpacking it tells.
    expect(found === null || bytes === "\xff\xd8\xff\xd9").toBe(true);
  });

  test("what was cut off anywhere is none", async () => {
    for (const made of [await plainPhoto(), await plainPng(), await plainWebp()])
      for (const share of [0.1, 0.5, 0.9, 0.99])
        expect(photoBytes(made.subarray(0, Math.floor(made.length * share)))).toBeNull();
  });
});

test("whatever the bytes are, they are judged and nothing is thrown", async () => {
  const starts = [await plainPhoto(), await plainPng(), await plainWebp()].map((it) => it.subarray(0, 40));
  const bytes = fc.tuple(fc.constantFrom(...starts), fc.nat(40), fc.uint8Array({ maxLength: 200 }));
  fc.assert(
    fc.property(bytes, ([start, length, rest]) => {
      const found = photoBytes(joined(start.subarray(0, length), rest));
      expect(found === null || found.type.length > 2).toBe(true);
    }),
    { numRuns: 3000 },
  );
});

describe("what is no part of the picture is told", () => {
  test.each(["jpeg", "png", "webp"] as const)("the place in a %s", async (kind) => {
    expect(photoBytes(await phonePhoto(kind))).toEqual({ type: kind, carries: ["EXIF"] });
  });

  test("comments, packets, segments of a maker, and a film behind the picture", async () => {
    const bytes = await plainPhoto();
    const [start, rest] = [bytes.subarray(0, 2), bytes.subarray(2)];
    const carries = (...parts: (Uint8Array | string)[]) => photoBytes(joined(...parts))?.carries;
    expect(carries(start, "\xff\xfe\0\x07Jory!", rest)).toEqual(["a comment"]);
    expect(carries(start, "\xff\xe1\0\x0ahttp://x", rest)).toEqual(["XMP"]);
    expect(carries(start, "\xff\xed\0\x06Phot", rest)).toEqual(["a segment APP13"]);
    // A second picture with a place of its own is announced in the segment that else holds the colours.
    expect(carries(start, "\xff\xe2\0\x06MPF\0", rest)).toEqual(["a segment APP2"]);
    const jfif = "JFIF\0\x01\x02\0\0\x01\0\x01";
    expect(carries(start, "\xff\xe0\0\x10", jfif, "\0\0", rest)).toEqual([]);
    expect(carries(start, "\xff\xe0\0\x13", jfif, "\x01\x01", "rgb", rest)).toEqual(["a small picture of itself"]);
    expect(carries(bytes, "....ftypmp42")).toEqual(["what lies behind the picture"]);
    expect(carries(await plainPng(), "\0")).toEqual(["what lies behind the picture"]);
  });

  test("texts and times in a PNG", async () => {
    const bytes = await plainPng();
    const header = 8 + 25;
    const chunk = (name: string) => joined("\0\0\0\x02", name, "ab", "\0\0\0\0");
    const with_ = (name: string) => photoBytes(joined(bytes.subarray(0, header), chunk(name), bytes.subarray(header)));
    for (const name of ["tEXt", "iTXt", "tIME", "gpSx"]) expect(with_(name)?.carries).toEqual([`a chunk ${name}`]);
    expect(with_("eXIf")?.carries).toEqual(["EXIF"]);
  });
});
