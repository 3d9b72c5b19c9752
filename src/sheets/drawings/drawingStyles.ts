import { chosen, day, type Ink, inks, night, type Palette } from "./palette.ts";

/** Type of the house: what the device has, with figures of one width. */
const type =
  'font-family: system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", "Helvetica Neue", Arial, sans-serif; font-variant-numeric: tabular-nums;';

/** Widths and dashes, in the size of the lettering, so that a drawing keeps its weights at any size. */
const forms = `
.drawing { ${type} }
.drawing, .drawing * { forced-color-adjust: none; }
.drawing text { stroke: none; }
.drawing .bold { font-weight: 700; }
.drawing path, .drawing line, .drawing rect, .drawing circle { stroke-linejoin: round; stroke-linecap: round; }
.drawing .edge { stroke-width: 0.13em; }
.drawing .flank { stroke-width: 0.09em; }
.drawing .thin { stroke-width: 0.06em; }
.drawing .hatch { stroke-width: 0.055em; fill: none; }
.drawing .dots { stroke-width: 0.13em; fill: none; }
.drawing .axis { stroke-width: 0.06em; stroke-dasharray: 1.1em 0.22em 0.2em 0.22em; }
.drawing .ghost { stroke-width: 0.085em; stroke-dasharray: 0.2em 0.17em; fill: none; }
.drawing .dotted { stroke-width: 0.15em; stroke-dasharray: 0.01em 0.27em; fill: none; }
.drawing .unknown { stroke-dasharray: 0.4em 0.3em; }
.drawing .heavy { stroke-width: 0.24em; }
.drawing .halo { stroke-width: 0.34em; stroke-linecap: butt; }
.drawing .line { fill: none; }
.drawing .bare { stroke: none; }
`;

/** Which ink each thing is drawn in. */
const coloured = (ink: (name: Ink) => string): string => `
.drawing { color: ${ink("ink")}; }
.drawing text { fill: ${ink("ink")}; }
.drawing .edge, .drawing .flank, .drawing .heavy, .drawing .ghost, .drawing .dotted { stroke: ${ink("ink")}; }
.drawing .thin, .drawing .axis, .drawing .hatch, .drawing .dots { stroke: ${ink("pencil")}; }
.drawing .halo { stroke: ${ink("paper")}; }
.drawing .paper { fill: ${ink("paper")}; }
.drawing .steel { fill: ${ink("steel")}; }
.drawing .casting { fill: ${ink("casting")}; }
.drawing .amber { fill: ${ink("amber")}; }
.drawing .sealant { fill: ${ink("sealant")}; }
.drawing .ink, .drawing .rubber { fill: ${ink("ink")}; }
.drawing .on-ink { fill: ${ink("paper")}; }
.drawing .stop { fill: ${ink("stop")}; }
.drawing .stop-edge { stroke: ${ink("stop")}; }
`;

/** The style element of a drawing that stands alone. Colours are plain, for viewers without custom properties. */
export const drawingStyles = [
  forms,
  coloured((name) => day[name]),
  `@media screen and (prefers-color-scheme: dark) {${coloured((name) => night[name])}}\n`,
  `@media (forced-colors: active) {${coloured((name) => chosen[name])}}\n`,
].join("");

/** The palette of a page and the drawings on it: the text of palette.css. */
export const paletteCss = [
  "/* Written by drawingStyles.ts; a test holds the two together. */\n",
  laidOut("@layer palette, drawings;"),
  "\n",
  laidOut(`@layer palette {
    :root { color-scheme: light dark; ${properties(day)} }
    @media (prefers-color-scheme: dark) { :root { ${properties(night)} } }
    :root[data-theme="day"] { color-scheme: light; ${properties(day)} }
    :root[data-theme="night"] { color-scheme: dark; ${properties(night)} }
    @media print { :root, :root[data-theme] { color-scheme: light; ${properties(day)} } }
    @media (forced-colors: active) { :root, :root[data-theme] { ${properties(chosen)} } }
  }`),
  "\n",
  laidOut(`@layer drawings {
    :not(svg) > svg.drawing { display: block; width: 100%; height: auto; break-inside: avoid; print-color-adjust: exact; }
    ${forms}
    ${coloured((name) => `var(--${name})`)}
  }`),
].join("");

function properties(palette: Palette): string {
  return inks.map((name) => `--${name}: ${palette[name]};`).join(" ");
}

/** A style sheet with a line to each selector and declaration, as the formatter of the house wants it. */
function laidOut(css: string): string {
  let indent = "";
  let lines = "";
  for (const [, text = "", mark] of css.matchAll(/([^{};]*)([{};])/g)) {
    const words = text.trim();
    if (mark === "}") indent = indent.slice(2);
    const selectors = mark === "{" && !words.startsWith("@") ? words.split(/,\s*/) : [words];
    lines += `${indent}${selectors.join(`,\n${indent}`)}${mark === "{" ? " " : ""}${mark}\n`;
    if (mark === "{") indent += "  ";
  }
  return lines;
}
