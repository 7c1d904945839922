import { appWords } from "../words/app.ts";
import type { App } from "./app.ts";
import { Mark } from "./marks.tsx";
import { ROUTES, type Route } from "./routes.ts";

/** The way between screens, within reach of a thumb. */
export function Nav({ app, current }: { app: App; current: Route }) {
  const toCheck = app.session.value.entries.filter(({ verdict }) => verdict === "check").length;
  // A screen from the list is under "More" in the bar.
  const here = current.place === "bar" ? current.id : "more";
  return (
    <nav class="ways" aria-label={appWords.ways}>
      <ul>
        {ROUTES.filter(({ place }) => place === "bar").map(({ id, name }) => (
          <li key={id}>
            <a href={`#${id}`} aria-current={id === here ? "page" : undefined}>
              <Mark of={id} />
              <span>{name}</span>
              {id === "review" && toCheck > 0 && (
                <span class="ways-count">
                  {toCheck}
                  <span class="for-ears"> {appWords.toLookAt}</span>
                </span>
              )}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
