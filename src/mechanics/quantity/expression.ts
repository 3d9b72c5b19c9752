/** The right-hand side of an equation, read once; values, slopes, samples and print are made from it. */
export type Expression =
  | { readonly type: "number"; readonly value: number }
  | { readonly type: "symbol"; readonly name: string }
  | { readonly type: "sum"; readonly left: Expression; readonly right: Expression; readonly sign: 1 | -1 }
  | { readonly type: "product"; readonly left: Expression; readonly right: Expression; readonly exponent: 1 | -1 }
  | { readonly type: "power"; readonly base: Expression; readonly exponent: Expression }
  | { readonly type: "call"; readonly name: FunctionName; readonly argument: Expression };

/** Functions of one plain number, each with its slope. */
export const functions = {
  exp: { f: Math.exp, slope: Math.exp },
  ln: { f: Math.log, slope: (x: number) => 1 / x },
  log10: { f: Math.log10, slope: (x: number) => 1 / (x * Math.LN10) },
  sin: { f: Math.sin, slope: Math.cos },
  cos: { f: Math.cos, slope: (x: number) => -Math.sin(x) },
  tan: { f: Math.tan, slope: (x: number) => 1 / Math.cos(x) ** 2 },
  atan: { f: Math.atan, slope: (x: number) => 1 / (1 + x * x) },
  acos: { f: Math.acos, slope: (x: number) => -1 / Math.sqrt(1 - x * x) },
  sinh: { f: Math.sinh, slope: Math.cosh },
} as const satisfies Record<string, { f: (x: number) => number; slope: (x: number) => number }>;

export type FunctionName = keyof typeof functions;

const constants: ReadonlyMap<string, number> = new Map([
  ["pi", Math.PI],
  ["deg", Math.PI / 180],
]);
const roots: ReadonlyMap<string, number> = new Map([
  ["sqrt", 1 / 2],
  ["cbrt", 1 / 3],
]);

/**
 * Reads `a + b - c * d / e^2`, `sqrt(x)`, `tan(30 * deg)`, `pi`, in the usual order of precedence.
 * @throws SyntaxError naming the place.
 */
export function parse(text: string): Expression {
  const tokens = text.match(/[A-Za-z_][A-Za-z0-9_]*|\d+(?:\.\d+)?(?:e-?\d+)?|\S/g) ?? [];
  let next = 0;
  const take = (...wanted: string[]): string | undefined =>
    wanted.includes(tokens[next] ?? "") ? tokens[next++] : undefined;

  const expression = sum();
  if (next < tokens.length) throw new SyntaxError(`unexpected "${tokens[next]}" in "${text}"`);
  return expression;

  function sum(): Expression {
    let left = product();
    for (let op = take("+", "-"); op; op = take("+", "-"))
      left = { type: "sum", left, right: product(), sign: op === "+" ? 1 : -1 };
    return left;
  }

  function product(): Expression {
    let left = power();
    for (let op = take("*", "/"); op; op = take("*", "/"))
      left = { type: "product", left, right: power(), exponent: op === "*" ? 1 : -1 };
    return left;
  }

  function power(): Expression {
    if (take("-")) return { type: "product", left: { type: "number", value: -1 }, right: power(), exponent: 1 };
    const base = atom();
    return take("^") ? { type: "power", base, exponent: power() } : base;
  }

  function atom(): Expression {
    const token = tokens[next++];
    if (token === undefined) throw new SyntaxError(`"${text}" ends too soon`);
    if (token === "(") return closed();
    if (/^\d/.test(token)) return { type: "number", value: Number(token) };
    const constant = constants.get(token);
    if (constant !== undefined) return { type: "number", value: constant };
    if (!/^[A-Za-z_]/.test(token)) throw new SyntaxError(`unexpected "${token}" in "${text}"`);
    if (!take("(")) return { type: "symbol", name: token };
    const argument = closed();
    const root = roots.get(token);
    if (root !== undefined) return { type: "power", base: argument, exponent: { type: "number", value: root } };
    if (!Object.hasOwn(functions, token)) throw new SyntaxError(`there is no function "${token}" in "${text}"`);
    return { type: "call", name: token as FunctionName, argument };
  }

  function closed(): Expression {
    const inner = sum();
    if (!take(")")) throw new SyntaxError(`")" is missing in "${text}"`);
    return inner;
  }
}
