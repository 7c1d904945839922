/**
 * A quantity to be read from afar: its numbers large, its units small beside them.
 * @param text numbers and units with spaces between them, such as "97 lb 8 oz"
 */
export function Figure({ text }: { text: string }) {
  return (
    <strong class="numeral">
      {text
        .split(/ (?=\d)/)
        .map((part, place) => [place > 0 && " ", <Part key={part} text={part} />])}
    </strong>
  );
}

/** A number with its unit, which stay on one line whatever the size of the letters. */
function Part({ text }: { text: string }) {
  const [number, ...unit] = text.split(" ");
  return (
    <span class="numeral-part">
      {number}
      {unit.length > 0 && <span class="numeral-unit"> {unit.join(" ")}</span>}
    </span>
  );
}
