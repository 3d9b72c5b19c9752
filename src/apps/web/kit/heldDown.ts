/** How long a stepper is held before it repeats, and how often it then does. */
const before_ms = 420;
const every_ms = 90;

/** Handlers for a button that acts once on a tap and again and again while it is held; keys act by their click. */
export function heldDown(act: () => void) {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stop = (): void => clearTimeout(timer);
  const again = (): void => {
    act();
    timer = setTimeout(again, every_ms);
  };
  return {
    onPointerDown: (event: PointerEvent): void => {
      if (event.button !== 0) return;
      stop();
      act();
      timer = setTimeout(again, before_ms);
    },
    onPointerUp: stop,
    onPointerLeave: stop,
    onPointerCancel: stop,
    onContextMenu: (event: Event): void => event.preventDefault(),
    // A key or a screen reader clicks without a pointer before it.
    onClick: (event: MouseEvent): void => {
      if (event.detail === 0) act();
    },
  };
}
