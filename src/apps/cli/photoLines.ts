/** Photos that entries name and that are not here; nothing where none are. */
export const missingPhotoLines = (missing: readonly string[]): readonly string[] =>
  missing.length > 0
    ? [
        `${missing.length} photos that the journal names are not here; another device may still have them:`,
        ...missing.map((it) => `  ${it}`),
      ]
    : [];

/** Photos whose bytes are no longer what they were. */
export const damagedPhotoLines = (damaged: readonly string[]): readonly string[] =>
  damaged.length > 0
    ? [
        `${damaged.length} photos are DAMAGED and were left out; a backup or another device may have them whole:`,
        ...damaged.map((it) => `  ${it}`),
      ]
    : [];
