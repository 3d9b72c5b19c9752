import { effect, signal } from "@preact/signals";
import { keep, kept } from "../kit/saved.ts";

/** "auto" leaves it to the device; night is for the bay with the lights out. */
export const themes = ["auto", "day", "night"] as const;
export type Theme = (typeof themes)[number];

export const theme = signal<Theme>(kept<Theme>("theme") ?? "auto");

effect(() => {
  const { dataset } = document.documentElement;
  if (theme.value === "auto") delete dataset["theme"];
  else dataset["theme"] = theme.value;
  keep("theme", theme.value);
});
