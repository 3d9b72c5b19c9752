/** What the page asks of the photo's worker: a new photo, or the one it holds along a line. */
export type PhotoRequest = {
  readonly file: Blob | null;
  /** As typed, with its unit. */
  readonly outside: string;
  /** x1, y1, x2, y2 in pixels of the photo; null to look for the thread. */
  readonly line: readonly [number, number, number, number] | null;
};

export type PhotoReply =
  | { readonly part: "step"; readonly step: "opening" | "looking" }
  | { readonly part: "refused"; readonly why: "tooLarge" | "noPicture" | "wantsOutside" }
  | { readonly part: "fault"; readonly message: string }
  | { readonly part: "read"; readonly read: PhotoRead };

/** What a photo says, in words, and what is shown of it. */
export type PhotoRead = {
  readonly sign: string;
  readonly sentences: readonly string[];
  readonly others: readonly string[];
  /** Null where it takes another photo. */
  readonly pitch: { readonly pitch_mm: string; readonly spread_mm: string } | null;
  readonly found: boolean;
  /** What is shown: a part of the photo as a picture, where it lies in it, and the drawing that lies over it. */
  readonly picture: ImageBitmap;
  readonly box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly svg: string;
};
