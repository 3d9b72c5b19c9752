import { effect, signal } from "@preact/signals";
import { keep, kept } from "../kit/saved.ts";

/** The path after the hash; without one the place where this browser was last, "/" for the first page. */
export const route = signal(location.hash === "" ? (kept<string>("route") ?? "/") : pathOf(location.hash));

effect(() => keep("route", route.value));

addEventListener("hashchange", () => {
  route.value = pathOf(location.hash);
});

function pathOf(hash: string): string {
  const path = hash.replace(/^#/, "");
  return path.startsWith("/") ? path : "/";
}
