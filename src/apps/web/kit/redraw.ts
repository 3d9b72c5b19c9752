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

function matched(old: Element, next: Element): void {
  if (old.nodeName !== next.nodeName) {
    old.replaceWith(next);
    return;
  }
  for (const { name, value } of next.attributes) if (old.getAttribute(name) !== value) old.setAttribute(name, value);
  if (old.attributes.length !== next.attributes.length)
    for (const { name } of [...old.attributes]) if (!next.hasAttribute(name)) old.removeAttribute(name);
  if (!next.firstElementChild && !old.firstElementChild) {
    if (old.textContent !== next.textContent) old.textContent = next.textContent;
    return;
  }
  let [from, to] = [old.firstElementChild, next.firstElementChild];
  while (from || to) {
    const [afterFrom, afterTo]: [Element | null, Element | null] = [
      from?.nextElementSibling ?? null,
      to?.nextElementSibling ?? null,
    ];
    if (from && to) matched(from, to);
    else if (to) old.append(to);
    else from?.remove();
    [from, to] = [afterFrom, afterTo];
  }
}
