/** The shapes a hollow case is taken for, lying. */
export const shapes = ["box", "cylinder", "ellipse", "ball"] as const;
export type ShapeName = (typeof shapes)[number];
