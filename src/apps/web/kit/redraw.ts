/** A drawing as it stands in its frame: its tags and letterings in order, and the elements and texts that they became. */
type Drawn = {
  readonly svg: string;
  readonly pieces: readonly string[];
  readonly nodes: readonly Node[];
};

const drawn = new WeakMap<Element, Drawn>();

/**
 * Lays a drawing into its frame over the one that is there. Where both have the same elements, as after a step of a stepper, only the
 * attributes and letterings that differ are set, and nothing of the text is parsed as a document.
 */
export function redraw(frame: Element, svg: string): void {
  const before = drawn.get(frame);
  if (before?.svg === svg) return;
  const pieces = svg.match(/<(?:[^">]|"[^"]*")+>|[^<]+/g) ?? [];
  if (before && frame.contains(before.nodes[0] ?? null) && isAlike(before.pieces, pieces)) {
    pieces.forEach((piece, i) => {
      const [was, node] = [before.pieces[i], before.nodes[i]];
      if (piece !== was && was !== undefined && node) altered(node, was, piece);
    });
    drawn.set(frame, { svg, pieces, nodes: before.nodes });
    return;
  }
  frame.innerHTML = svg;
  drawn.set(frame, { svg, pieces, nodes: nodesOf(frame, pieces) });
}

/** Whether two drawings have the same elements with the same attributes, in whatever values. */
const isAlike = (before: readonly string[], now: readonly string[]): boolean =>
  before.length === now.length &&
  now.every((piece, i) => piece === before[i] || shape(piece) === shape(before[i] ?? ""));

/** A tag without its values; the same word for every lettering. */
const shape = (piece: string): string => (piece.startsWith("<") ? piece.replace(/"[^"]*"/g, "") : "text");

function altered(node: Node, was: string, piece: string): void {
  if (!(node instanceof Element)) {
    node.nodeValue = plain(piece);
    return;
  }
  const before = [...was.matchAll(attribute)];
  [...piece.matchAll(attribute)].forEach(([, name = "", value = ""], i) => {
    if (before[i]?.[2] !== value) node.setAttribute(name, plain(value));
  });
}

const attribute = /([\w:-]+)="([^"]*)"/g;

/** What our own components escape in a text. */
const plain = (text: string): string =>
  text.replace(/&(lt|gt|quot|amp);/g, (_, name: keyof typeof escaped) => escaped[name]);
const escaped = { lt: "<", gt: ">", quot: '"', amp: "&" } as const;

/** The element of every opening tag and the text node of every lettering; a closing tag has its element's place and is never altered. */
function nodesOf(frame: Element, pieces: readonly string[]): readonly Node[] {
  const walker = document.createTreeWalker(frame, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT);
  return pieces.map((piece) => (piece.startsWith("</") ? walker.currentNode : (walker.nextNode() ?? frame)));
}
