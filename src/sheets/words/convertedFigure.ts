/** A converted figure by four digits, without powers of ten where a person would not write them. */
export function convertedFigure(value: number): string {
  const four = Number(value.toPrecision(4));
  if (four === 0) return "0";
  const size = Math.floor(Math.log10(Math.abs(four)));
  if (size >= -5 && size < 8)
    return String(Math.abs(four) < 1e-4 ? four.toFixed(3 - size) : four).replace(/(\.\d*?)0+$/, "$1");
  return `${Number((four / 10 ** size).toPrecision(4))} × 10${superscript(size)}`;
}

const superscript = (power: number): string =>
  [...String(power)].map((it) => (it === "-" ? "⁻" : "⁰¹²³⁴⁵⁶⁷⁸⁹"[Number(it)])).join("");
