/** The same words as a sentence begins, and as they stand within one. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
export const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
