import type { Keeping } from "../../stores/photoFolder.ts";

/** Why a photo was not kept. */
export type PhotoRefusal = Exclude<Keeping, { type: "kept" }>;

/** Why a photo was not kept, in one sentence, and what would be. */
export function photoSentence(refusal: PhotoRefusal): string {
  switch (refusal.type) {
    case "too large":
      return `A photo may have ${refusal.most_bytes / 1024 / 1024} MB at most; send it smaller.`;
    case "too many pixels":
      return `A photo may have ${refusal.most_pixels / 1e6} million pixels at most; this one has ${Math.ceil(refusal.found_pixels / 1e6)} million.`;
    case "wrong digest":
      return "What arrived is not the photo of that name; it was changed on the way, or its name is that of another. Send it again.";
    case "no picture":
      return "That is no JPEG, PNG or WebP, or not all of it.";
    case "carries more":
      return `The photo carries ${refusal.carries.join(" and ")}, which may tell where and with what it was taken; only the picture itself is kept.`;
    default:
      return refusal satisfies never;
  }
}
