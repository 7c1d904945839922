import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import { appWords } from "../words/app.ts";

/**
 * What `load` gives, once it is there; undefined until then. `load` is called once, at once.
 * @throws during rendering, if loading failed, so that whoever stands above can say so
 */
export function useLater<T>(load: () => Promise<T>): T | undefined {
  const [state, setState] = useState<{ value: T } | { error: unknown }>();
  const [loading] = useState(() => {
    const begun = load();
    // Told below; until then nobody has looked.
    begun.catch(() => {});
    return begun;
  });
  useEffect(() => {
    loading.then(
      (value) => setState({ value }),
      (error: unknown) => setState({ error }),
    );
  }, [loading]);
  if (state && "error" in state) throw state.error;
  return state?.value;
}

/** A component that is fetched when it is first shown; from then on it is there at once. */
export function later<P extends object>(load: () => Promise<ComponentType<P>>) {
  let loaded: ComponentType<P> | undefined;
  const fetched = async () => {
    loaded = await load();
    return loaded;
  };
  function Fetched(props: P) {
    const Loaded = useLater(fetched);
    return Loaded ? <Loaded {...props} /> : <p class="soft">{appWords.opening}</p>;
  }
  return function Later(props: P) {
    // What it was when it was opened it stays, or what is open would be begun anew.
    const [Screen] = useState(() => loaded ?? Fetched);
    return <Screen {...props} />;
  };
}
