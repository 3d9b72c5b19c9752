import { createReadStream, statSync } from "node:fs";
import { Readable } from "node:stream";
import { type Context, Hono } from "hono";
import type { PhotoType } from "../../stores/photoBytes.ts";
import { isPhotoName, type Keeping, MOST_BYTES, type PhotoFolder } from "../../stores/photoFolder.ts";
import { type PhotoRefusal, photoSentence } from "./photoWords.ts";

const mediaTypes: Readonly<Record<PhotoType, string>> = { jpeg: "image/jpeg", png: "image/png", webp: "image/webp" };

const statuses = {
  "too large": 413,
  "too many pixels": 413,
  "no picture": 415,
  "wrong digest": 422,
  "carries more": 422,
} as const satisfies Readonly<Record<PhotoRefusal["type"], number>>;

/**
 * The photos of a workshop: `PUT` and `GET /<sha256>`, and `POST /` for whoever cannot strip a photo himself and asks what it is
 * called then. Who may ask is not its business: it is mounted behind what knows. Trouble of the disk goes through to that as well.
 */
export function photoRoutes(photos: PhotoFolder): Hono {
  const app = new Hono();

  app.put("/:name", async (c) => {
    const name = c.req.param("name");
    if (!isPhotoName(name)) return notNamed(c);
    return answered(c, announced(c) ?? (await photos.keep(name, bodyOf(c))), 200);
  });

  app.post("/", async (c) => answered(c, announced(c) ?? (await photos.keepStripped(bodyOf(c))), 201));

  app.get("/:name", (c) => {
    const name = c.req.param("name");
    if (!isPhotoName(name)) return notNamed(c);
    const photo = photos.at(name);
    if (!photo)
      return c.json(
        { error: "not there", sentence: "There is no photo of that name here; it may be on its way." },
        404,
      );
    const etag = `"${name}"`;
    const headers = { ETag: etag, "Cache-Control": "private, max-age=31536000, immutable" };
    if ((c.req.header("if-none-match") ?? "").includes(etag)) return c.body(null, 304, headers);
    const lengths = { "Content-Type": mediaTypes[photo.type], "Content-Length": String(statSync(photo.path).size) };
    if (c.req.method === "HEAD") return c.body(null, 200, { ...headers, ...lengths });
    const body = Readable.toWeb(createReadStream(photo.path)) as ReadableStream;
    return c.body(body, 200, { ...headers, ...lengths });
  });

  return app;
}

/** A body that says beforehand that it is too large is not read at all. */
function announced(c: Context): PhotoRefusal | null {
  const length = Number(c.req.header("content-length") ?? 0);
  return length > MOST_BYTES ? { type: "too large", most_bytes: MOST_BYTES } : null;
}

async function* bodyOf(c: Context): AsyncGenerator<Uint8Array> {
  if (c.req.raw.body) yield* c.req.raw.body;
}

const notNamed = (c: Context): Response =>
  c.json({ error: "no name", sentence: "A photo is called by the SHA-256 of its bytes, 64 hexadecimal digits." }, 400);

function answered(c: Context, keeping: Keeping, status: 200 | 201): Response {
  if (keeping.type === "kept") return c.json({ sha256: keeping.name, bytes: keeping.bytes }, status);
  const { type, ...details } = keeping;
  // What is left of a body that was not read to its end must not be taken for the next request.
  if (type === "too large") c.header("Connection", "close");
  return c.json({ error: type, sentence: photoSentence(keeping), ...details }, statuses[type]);
}
