import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";

/** One part of the story, under its name. */
export function Card({ title, children }: { title: string; children: ComponentChildren }) {
  const id = useId();
  return (
    <section class="ticket" aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      {children}
    </section>
  );
}

/** What a picture shows, in words beneath it. */
export function InWords({ sentences }: { sentences: readonly string[] }) {
  return (
    <ul class="in-words">
      {sentences.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}

interface TableProps {
  caption: string;
  heads: readonly string[];
  /** The first cell of each row names it. */
  rows: readonly (readonly string[])[];
}

/** Numbers in rows. */
export function Table({ caption, heads, rows }: TableProps) {
  return (
    <table class="table">
      <caption class="for-ears">{caption}</caption>
      <thead>
        <tr>
          {heads.map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, ...cells]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {cells.map((cell, place) => (
              <td key={heads[place + 1]}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
