/** The inks of the house. `stop` is used for nothing but stop. */
export const inks = ["paper", "ink", "pencil", "steel", "casting", "amber", "sealant", "stop"] as const;
export type Ink = (typeof inks)[number];
export type Palette = { readonly [name in Ink]: string };

/** Daylight, and paper: warm paper, blue-black ink. Lettering in ink, pencil and stop stands at 7:1 or more. */
export const day: Palette = {
  paper: "#fcfaf4",
  ink: "#14191f",
  pencil: "#3a424a",
  steel: "#d3dce4",
  casting: "#ede5d4",
  amber: "#e3a32b",
  sealant: "#8ec5b6",
  stop: "#9b0a1c",
};

/** The bay at night: the same drawing in chalk on slate. */
export const night: Palette = {
  paper: "#0f1418",
  ink: "#f4f0e6",
  pencil: "#c9cdca",
  steel: "#2c3b48",
  casting: "#2d2820",
  amber: "#7d5414",
  sealant: "#2c665b",
  stop: "#ffa296",
};

/** Where the reader has set colours of his own. */
export const chosen: Palette = {
  paper: "Canvas",
  ink: "CanvasText",
  pencil: "CanvasText",
  steel: "Canvas",
  casting: "Canvas",
  amber: "Canvas",
  sealant: "Canvas",
  stop: "CanvasText",
};
