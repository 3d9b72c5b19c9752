/** How firm a figure is. It is shown wherever the figure is used. */
export type Firmness = "published" | "common practice, no source" | "from memory" | "judgement";

/** Where a figure comes from: document, edition and clause, and how firm it is. */
export type Source = { readonly document: string; readonly firmness: Firmness };

export const published = (document: string): Source => ({ document, firmness: "published" });
export const fromMemory = (document: string): Source => ({ document, firmness: "from memory" });
export const judgement = (reason: string): Source => ({ document: reason, firmness: "judgement" });
export const commonPractice: Source = { document: "workshops", firmness: "common practice, no source" };

/** "ISO 898-1:2013, table 3 (from memory)"; published figures need no remark. */
export const sourceText = ({ document, firmness }: Source): string =>
  firmness === "published" ? document : `${document} (${firmness})`;
