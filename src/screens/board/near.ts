import { useEffect, useMemo, useState } from "preact/hooks";

/** A screenful above and below what is seen, so that a thumb does not outrun it. */
const MARGIN = "100% 0px";

/** Which of many elements are in sight, or nearly so. */
export class Near {
  readonly #near = new Set<string>();
  readonly #onChange: () => void;
  #observer: IntersectionObserver | undefined;

  constructor(onChange: () => void) {
    this.#onChange = onChange;
  }

  /** @param name as the element carries it in `data-name` */
  has(name: string): boolean {
    return this.#near.has(name);
  }

  /** Follows an element that was put onto the page. */
  readonly follow = (element: HTMLElement | null): void => {
    if (!element) return;
    this.#observer ??= new IntersectionObserver((entries) => this.#take(entries), {
      root: element.closest(".screen"),
      rootMargin: MARGIN,
    });
    this.#observer.observe(element);
  };

  stop(): void {
    this.#observer?.disconnect();
  }

  #take(entries: readonly IntersectionObserverEntry[]): void {
    for (const { target, isIntersecting } of entries) {
      // One that was taken away says nothing of the one that has come in its place.
      if (!target.isConnected || !(target instanceof HTMLElement)) continue;
      const { name = "" } = target.dataset;
      if (isIntersecting) this.#near.add(name);
      else this.#near.delete(name);
    }
    this.#onChange();
  }
}

/** Draws again whenever other elements come near. */
export function useNear(): Near {
  const [, redraw] = useState(0);
  const near = useMemo(() => new Near(() => redraw((times) => times + 1)), []);
  useEffect(() => () => near.stop(), [near]);
  return near;
}
