import type { App } from "./app.ts";
import { Mark } from "./marks.tsx";
import { ROUTES, type Route } from "./routes.ts";

/** The way between screens, within reach of a thumb. */
export function Nav({ app, current }: { app: App; current: Route["id"] }) {
  const toCheck = app.session.value.entries.filter(({ verdict }) => verdict === "check").length;
  return (
    <nav class="ways" aria-label="Screens">
      <ul>
        {ROUTES.map(({ id, name }) => (
          <li key={id}>
            <a href={`#${id}`} aria-current={id === current ? "page" : undefined}>
              <Mark of={id} />
              <span>{name}</span>
              {id === "review" && toCheck > 0 && (
                <span class="ways-count">
                  {toCheck}
                  <span class="for-ears"> to look at</span>
                </span>
              )}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
