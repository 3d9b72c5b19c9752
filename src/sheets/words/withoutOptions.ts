/** A sentence without the options that the command line names in brackets: a page has fields in their place. */
export const withoutOptions = (sentence: string): string => sentence.replace(/ \((?:--[^)]*)\)/g, "");
