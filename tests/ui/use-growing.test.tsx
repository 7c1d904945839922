import { render, waitFor } from "@testing-library/preact";
import { expect, test } from "vitest";
import { type Growth, PARTS, ROWS, useGrowing } from "../../src/ui/use-growing.ts";

function List({
  length,
  growth = ROWS,
  seen,
}: {
  length: number;
  growth?: Growth;
  seen?: number[];
}) {
  const shown = useGrowing(length, growth);
  seen?.push(shown);
  return (
    <ol>
      {Array.from({ length: shown }, (_, n) => (
        <li key={String(n)}>{n}</li>
      ))}
    </ol>
  );
}

const rows = () => document.querySelectorAll("li").length;

test("a long list begins with what a screen holds, and is whole soon after", async () => {
  render(<List length={1000} />);
  expect(rows()).toBe(60);
  await waitFor(() => expect(rows()).toBe(1000), { timeout: 10_000 });
});

test("a short list is whole at once, and grows with what is added", async () => {
  const { rerender } = render(<List length={3} />);
  expect(rows()).toBe(3);
  rerender(<List length={70} />);
  await waitFor(() => expect(rows()).toBe(70));
});

test("parts come one at a time, and nothing is made anew once all are there", async () => {
  const seen: number[] = [];
  render(<List length={4} growth={PARTS} seen={seen} />);
  await waitFor(() => expect(rows()).toBe(4));
  await new Promise((done) => setTimeout(done, 100));
  expect(seen).toEqual([1, 2, 3, 4]);
});
