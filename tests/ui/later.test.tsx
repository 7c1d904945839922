import { render, screen } from "@testing-library/preact";
import { useState } from "preact/hooks";
import { expect, test } from "vitest";
import { later } from "../../src/ui/later.tsx";

const made: string[] = [];

function Fetched({ name }: { name: string }) {
  const [number] = useState(() => made.push(name));
  return (
    <p>
      {name} {number}
    </p>
  );
}

test("what was fetched once is there at once when it is opened again, and goes on as it was while open", async () => {
  let fetches = 0;
  const Screen = later(async () => {
    fetches += 1;
    return Fetched;
  });
  const { rerender, unmount } = render(<Screen name="first" />);
  expect(screen.queryByText(/first/)).toBeNull();
  await screen.findByText("first 1");
  rerender(<Screen name="again" />);
  screen.getByText("again 1");
  unmount();
  render(<Screen name="second" />);
  screen.getByText("second 2");
  expect(fetches).toBe(1);
});
