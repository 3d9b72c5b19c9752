/** A stretch that wants to be centred somewhere. */
export type Wish = { readonly centre: number; readonly size: number };

/**
 * Centres as near their wishes as may be, in the order given, without overlap and at least `gap` apart.
 * They stay above `from`; they run past no `to` unless there is not room for all of them, and then past `to`.
 */
export function pushedApart(wishes: readonly Wish[], from: number, to: number, gap: number): readonly number[] {
  const down: number[] = [];
  let edge = from;
  for (const { centre, size } of wishes) {
    const at = Math.max(centre, edge + size / 2);
    down.push(at);
    edge = at + size / 2 + gap;
  }
  const up: number[] = [];
  let floor = Math.max(to, edge - gap);
  if (floor > to) floor = Math.max(to, from + wishes.reduce((sum, { size }) => sum + size + gap, -gap));
  for (let i = wishes.length - 1; i >= 0; i--) {
    const size = wishes[i]?.size ?? 0;
    const at = Math.min(down[i] ?? 0, floor - size / 2);
    up.unshift(at);
    floor = at - size / 2 - gap;
  }
  return up;
}
