/**
 * A quantity to be read from afar: its numbers large, its units small beside them.
 * @param text numbers and units with spaces between them, such as "97 lb 8 oz"
 */
export function Figure({ text }: { text: string }) {
  return (
    <strong class="numeral">
      {text
        .split(" ")
        .map((part, place) =>
          /\d/.test(part) ? (
            `${place > 0 ? " " : ""}${part}`
          ) : (
            <span class="numeral-unit"> {part}</span>
          ),
        )}
    </strong>
  );
}
