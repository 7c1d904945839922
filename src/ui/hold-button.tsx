import type { ComponentChildren } from "preact";
import { useHold } from "./hold.ts";

interface HoldButtonProps {
  /** For those who hear the page. */
  label: string;
  onPress: () => void;
  children: ComponentChildren;
}

/** A button that repeats while it is held. */
export function HoldButton({ label, onPress, children }: HoldButtonProps) {
  return (
    <button type="button" class="button" aria-label={label} {...useHold(onPress)}>
      {children}
    </button>
  );
}
