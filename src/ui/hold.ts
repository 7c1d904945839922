import { useEffect, useRef } from "preact/hooks";

/** How long a press lasts before it counts as held. */
const HOLD_MS = 400;
const REPEAT_MS = 120;
/** After this many repeats it goes on twice as fast: a far value is still one press. */
const SLOW_REPEATS = 8;

/**
 * Handlers of a button that does its thing once when pressed, and again and again while it is held.
 * A finger that scrolls the page does nothing.
 */
export function useHold(press: () => void) {
  const latest = useRef(press);
  latest.current = press;
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const wasHeld = useRef(false);
  const stop = () => clearTimeout(timer.current);
  const repeat = (times: number) => {
    wasHeld.current = true;
    latest.current();
    const wait = times < SLOW_REPEATS ? REPEAT_MS : REPEAT_MS / 2;
    timer.current = setTimeout(() => repeat(times + 1), wait);
  };
  useEffect(() => stop, []);
  return {
    onPointerDown: () => {
      stop();
      wasHeld.current = false;
      timer.current = setTimeout(() => repeat(1), HOLD_MS);
    },
    onPointerUp: stop,
    onPointerLeave: stop,
    onPointerCancel: stop,
    // A long press would open the phone's own menu.
    onContextMenu: (event: Event) => event.preventDefault(),
    // The click that ends a hold is none; one from the keyboard comes without a pointer.
    onClick: () => {
      if (!wasHeld.current) latest.current();
      wasHeld.current = false;
    },
  };
}
