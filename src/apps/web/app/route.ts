import { signal } from "@preact/signals";

/** The path after the hash, "/" for the first page. */
export const route = signal(pathOf(location.hash));

addEventListener("hashchange", () => {
  route.value = pathOf(location.hash);
});

function pathOf(hash: string): string {
  const path = hash.replace(/^#/, "");
  return path.startsWith("/") ? path : "/";
}
