import { effect, signal } from "@preact/signals";
import { keep, kept } from "../kit/saved.ts";

/** "as the device" leaves it to the device; night is for the bay with the lights out. */
export const themes = ["as the device", "day", "night"] as const;
export type Theme = (typeof themes)[number];

export const theme = signal<Theme>(kept<Theme>("theme") ?? "as the device");

effect(() => {
  const { dataset } = document.documentElement;
  if (theme.value === "as the device") delete dataset["theme"];
  else dataset["theme"] = theme.value;
  keep("theme", theme.value);
});
