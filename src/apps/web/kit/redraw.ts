const drawn = new WeakMap<Element, string>();

/**
 * Lays a drawing into its frame over the one that is there. What is the same in both stays, so that a step of a stepper costs no
 * new lettering and no new style for the whole sheet.
 */
export function redraw(frame: Element, svg: string): void {
  if (drawn.get(frame) === svg) return;
  drawn.set(frame, svg);
  const old = frame.firstElementChild;
  if (!old) {
    frame.innerHTML = svg;
    return;
  }
  const sheet = document.createElement("template");
  sheet.innerHTML = svg;
  const next = sheet.content.firstElementChild;
  if (next) matched(old, next);
}

/** Text beside an element is a node like any other: the figure of the flag stands before its unit. */
function matched(old: ChildNode, next: ChildNode): void {
  if (old.nodeName !== next.nodeName) {
    old.replaceWith(next);
    return;
  }
  if (!(old instanceof Element && next instanceof Element)) {
    if (old.nodeValue !== next.nodeValue) old.nodeValue = next.nodeValue;
    return;
  }
  for (const { name, value } of next.attributes) if (old.getAttribute(name) !== value) old.setAttribute(name, value);
  if (old.attributes.length !== next.attributes.length)
    for (const { name } of [...old.attributes]) if (!next.hasAttribute(name)) old.removeAttribute(name);
  let [from, to] = [old.firstChild, next.firstChild];
  while (from || to) {
    const [afterFrom, afterTo]: [ChildNode | null, ChildNode | null] = [
      from?.nextSibling ?? null,
      to?.nextSibling ?? null,
    ];
    if (from && to) matched(from, to);
    else if (to) old.append(to);
    else from?.remove();
    [from, to] = [afterFrom, afterTo];
  }
}
