import { createReadStream, statSync } from "node:fs";
import { Readable } from "node:stream";
import type { Context } from "hono";
import * as z from "zod/mini";
import type { PhotoType } from "../../../stores/photoBytes.ts";
import { isPhotoName, type Keeping, MOST_BYTES } from "../../../stores/photoFolder.ts";
import { type RefusalKind, refused } from "./refusals.ts";
import { type Route, route } from "./route.ts";
import type { ServedWorkshop } from "./servedWorkshop.ts";

const mediaTypes: Readonly<Record<PhotoType, string>> = { jpeg: "image/jpeg", png: "image/png", webp: "image/webp" };

const kept = z.strictObject({ sha256: z.string(), bytes: z.int() });

const notKept = [
  "too large",
  "too many pixels",
  "no picture",
  "carries more",
] as const satisfies readonly RefusalKind[];
const ofTheDisk = ["full", "read-only", "not reachable"] as const satisfies readonly RefusalKind[];

/** Photos by the SHA-256 of their bytes. What comes is counted, hashed and written as it comes: nothing of it waits in memory. */
export function photoRoutes({ photos }: ServedWorkshop): readonly Route[] {
  return [
    route({
      method: "put",
      path: "/photos/:sha256",
      title: "Keeps a JPEG, PNG or WebP under the SHA-256 of its bytes; one that is there already changes nothing",
      who: "device",
      body: null,
      raw: "image/*",
      most_bytes: null,
      status: 200,
      answer: kept,
      refusals: ["no name", "wrong digest", ...notKept, ...ofTheDisk],
      run: async ({ c, named }) => {
        const name = named("sha256");
        if (!isPhotoName(name)) return refused("no name");
        return announced(c) ?? answered(await photos.keep(name, bodyOf(c)), 200);
      },
    }),
    route({
      method: "post",
      path: "/photos",
      title: "Keeps a photo upright and without anything but the picture, and tells the name it has then",
      who: "device",
      body: null,
      raw: "image/*",
      most_bytes: null,
      status: 201,
      answer: kept,
      refusals: [...notKept, ...ofTheDisk],
      run: async ({ c }) => announced(c) ?? answered(await photos.keepStripped(bodyOf(c)), 201),
    }),
    route({
      method: "get",
      path: "/photos/:sha256",
      title: "A photo; what is called so never changes",
      who: "device",
      body: null,
      status: 200,
      answer: "image/*",
      refusals: ["no name", "not there"],
      run: ({ c, named }) => {
        const name = named("sha256");
        if (!isPhotoName(name)) return refused("no name");
        const photo = photos.at(name);
        if (!photo) return refused("not there");
        const etag = `"${name}"`;
        const lasting = { ETag: etag, "Cache-Control": "private, max-age=31536000, immutable" };
        if ((c.req.header("if-none-match") ?? "").includes(etag)) return c.body(null, 304, lasting);
        return c.body(Readable.toWeb(createReadStream(photo.path)) as ReadableStream, 200, {
          ...lasting,
          "Content-Type": mediaTypes[photo.type],
          "Content-Length": String(statSync(photo.path).size),
        });
      },
    }),
  ];
}

/** A body that says beforehand that it is too large is not read at all. */
const announced = (c: Context): Response | null =>
  Number(c.req.header("content-length") ?? 0) > MOST_BYTES
    ? answered({ type: "too large", most_bytes: MOST_BYTES }, 200)
    : null;

async function* bodyOf(c: Context): AsyncGenerator<Uint8Array> {
  if (c.req.raw.body) yield* c.req.raw.body;
}

function answered(keeping: Keeping, status: 200 | 201): Response {
  if (keeping.type === "kept") return Response.json({ sha256: keeping.name, bytes: keeping.bytes }, { status });
  const { type, ...details } = keeping;
  // What is left of a body that was not read to its end must not be taken for the next request.
  return refused(type, details, type === "too large" ? { Connection: "close" } : {});
}
