/** Before the shot. */
export const beforeTheShot: readonly string[] = [
  "A bright even surface behind it: a tablet showing a white page, or a window. No flash, no sun.",
  "Exactly from the side: its end looks like a straight line. Prop up the tip of a flanged plug.",
  "The thread in the middle, a quarter of the picture long; 15 to 30 cm away, 2x zoom is better than closer.",
  "One part, clean, four turns free of fingers.",
  "Caliper over the crests, into the first field of this bench.",
];

export const photoBenchWords = {
  choose: "Take or choose a photo",
  light: "White page for a second screen",
  opening: "Opening the photo",
  looking: "Looking for the thread",
  wantsOutside: "The outside diameter is wanted first: the photo gives the pitch as a share of it.",
  ask: "Do the strokes stand on the crests, and the two lines along them?",
  yes: "Yes, on the crests",
  no: "No",
  line: "Line along the thread",
  lineHint: "Tap one end of the thread in the picture, then the other; or in pixels, as 310,420,780,455.",
  again: "Read along this line",
  taken: "The pitch stands on the bench, beside the other readings.",
  tooLarge: "That picture is too large: up to 60 megapixels.",
  noPicture: "That is no picture that this browser can open: JPEG, PNG or WebP.",
  failed: (message: string): string => `The photo could not be read: ${message}. Choose it again.`,
  others: "Other pitches of that diameter: the leaf that sits without light tells",
} as const;
