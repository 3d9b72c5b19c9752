/**
 * Serves the built files of one version where there is no network, all of them or none.
 *
 * A page keeps the version that it began with: a newer one is fetched behind it and waits until no page needs the one before, or
 * until a page asks for it. What belongs to the journal is never kept here.
 */
const worker = self as unknown as ServiceWorkerGlobalScope;

/** The files of this version; the build writes them in (vite.config.ts). */
const built = JSON.parse("__BUILT__") as { readonly version: string; readonly files: readonly string[] };

const ours = "turnsleft built ";
const kept = ours + built.version;
/** The page itself, whatever is asked of it behind the hash. */
const page = "./";

worker.addEventListener("install", (event) => {
  // The browser's own cache may hold a page of another version: it is asked again, and answered in a line where nothing changed.
  const fetched = [page, ...built.files].map((file) => new Request(file, { cache: "no-cache" }));
  event.waitUntil(caches.open(kept).then((cache) => cache.addAll(fetched)));
});

worker.addEventListener("activate", (event) => {
  event.waitUntil(othersForgotten().then(() => worker.clients.claim()));
});

worker.addEventListener("message", ({ data }) => {
  if (data === "take over") void worker.skipWaiting();
});

worker.addEventListener("fetch", (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== "GET" || origin !== worker.location.origin) return;
  if (request.mode === "navigate") {
    if (pathname === new URL(page, worker.registration.scope).pathname) event.respondWith(fromKept(page, request));
    return;
  }
  const file = built.files.find((it) => new URL(it, worker.registration.scope).pathname === pathname);
  if (file) event.respondWith(fromKept(file, request));
});

async function fromKept(file: string, request: Request): Promise<Response> {
  const cache = await caches.open(kept);
  return (await cache.match(file)) ?? fetch(request);
}

async function othersForgotten(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(names.filter((it) => it.startsWith(ours) && it !== kept).map((it) => caches.delete(it)));
}
