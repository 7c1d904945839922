import { passOnWords } from "../../words/pass-on.ts";

const words = passOnWords.print;

/** What is printed stands in the page already, as `Sheet`. */
export function PrintForm() {
  return (
    <>
      <p>{words.about}</p>
      <button type="button" class="button button-main" onClick={() => print()}>
        {words.print}
      </button>
    </>
  );
}
