/** The width of the page, in characters. */
export const width = 76;

/** Broken at blanks to the width of the page, later lines indented. */
export function wrapped(text: string, indent: string): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/(?<=\S)\s/)) {
    if (line !== "" && line.length + 1 + word.length > width) {
      lines.push(line);
      line = indent + word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return [...lines, line];
}
