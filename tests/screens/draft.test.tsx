import { signal } from "@preact/signals";
import { fireEvent, render, screen } from "@testing-library/preact";
import { expect, test } from "vitest";
import { useDraft } from "../../src/screens/set-up/draft.ts";

/** A list that is stored only when the test says so, one save after the other. */
function slowList() {
  const stored = signal<readonly number[]>([]);
  const waiting: (() => void)[] = [];
  function List() {
    const [list, change] = useDraft(
      stored.value,
      (next) =>
        new Promise<void>((done) =>
          waiting.push(() => {
            stored.value = next;
            done();
          }),
        ),
    );
    return (
      <button type="button" onClick={() => change([...list, list.length])}>
        {`shown ${list.join(",")}`}
      </button>
    );
  }
  render(<List />);
  return { stored, waiting };
}

test("changes made before the first is stored build on each other", async () => {
  const { stored, waiting } = slowList();
  for (const shown of ["shown ", "shown 0", "shown 0,1"]) {
    fireEvent.click(await screen.findByText(shown.trim()));
  }
  await screen.findByText("shown 0,1,2");
  waiting[0]?.();
  await Promise.resolve();
  fireEvent.click(await screen.findByText("shown 0,1,2"));
  for (const store of waiting.slice(1)) store();
  await screen.findByText("shown 0,1,2,3");
  expect(stored.value).toEqual([0, 1, 2, 3]);
});
