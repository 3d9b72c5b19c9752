/** How long a stepper is held before it repeats, and how often it then does. */
const before_ms = 420;
const every_ms = 90;

/**
 * Handlers for a button that acts once on a tap and again and again while it is held; keys act by their click. A finger acts when
 * it lifts or has rested, for one that goes on to scroll the page meant no reading.
 */
export function heldDown(act: () => void) {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let resting = false;
  const stop = (): void => {
    if (timer !== undefined) clearTimeout(timer);
    timer = undefined;
    resting = false;
  };
  const again = (): void => {
    resting = false;
    act();
    timer = setTimeout(again, every_ms);
  };
  return {
    onPointerDown: (event: PointerEvent): void => {
      if (event.button !== 0) return;
      stop();
      if (event.pointerType === "touch") resting = true;
      else act();
      timer = setTimeout(again, before_ms);
    },
    onPointerUp: (): void => {
      if (resting) act();
      stop();
    },
    // What the finger meant is done: no movement, press and click of a mouse need be made of it as well.
    onTouchEnd: (event: TouchEvent): void => {
      if (event.cancelable) event.preventDefault();
      // A field whose keyboard covers the half of the screen lets go of it, as it would for a click.
      const { activeElement } = document;
      if (activeElement instanceof HTMLInputElement) activeElement.blur();
    },
    onPointerLeave: stop,
    onPointerCancel: stop,
    onContextMenu: (event: Event): void => event.preventDefault(),
    // A key or a screen reader clicks without a pointer before it.
    onClick: (event: MouseEvent): void => {
      if (event.detail === 0) act();
    },
    stop,
  };
}
