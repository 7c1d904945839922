/** The screens that are not in the bar. */
import "./more.css";
import { appWords } from "../../words/app.ts";
import { licencesWords } from "../../words/licences.ts";
import { Mark } from "../marks.tsx";
import { ROUTES, type Route } from "../routes.ts";

export function More() {
  return (
    <>
      <h1>{appWords.screens.more.name}</h1>
      <ul class="further">
        {ROUTES.filter(({ place }) => place === "more").map((route) => (
          <Further key={route.id} route={route} />
        ))}
        <li>
          <a class="ticket further-way" href="./licences.txt">
            <span>
              <strong class="further-name">{licencesWords.name}</strong>
              <span class="further-about">{licencesWords.about}</span>
            </span>
          </a>
        </li>
      </ul>
    </>
  );
}

function Further({ route: { id, name, about } }: { route: Route }) {
  return (
    <li>
      <a class="ticket further-way" href={`#${id}`}>
        <Mark of={id} />
        <span>
          <strong class="further-name">{name}</strong>
          <span class="further-about">{about}</span>
        </span>
      </a>
    </li>
  );
}
