import { act, configure, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, beforeEach, expect, test } from "vitest";
import { phrasePage } from "../../grammar/phrase-page.ts";
import { ROUTES } from "../../src/screens/routes.ts";
import { Shell } from "../../src/screens/shell.tsx";
import { fakeApp } from "./fake-app.ts";

// A screen is fetched when it is opened, which a busy machine takes its time over.
configure({ asyncUtilTimeout: 20_000 });

beforeEach(() => {
  document.title = "Pegscribe";
});

afterEach(() => {
  location.hash = "";
});

const goTo = (hash: string) =>
  act(() => {
    location.hash = hash;
    dispatchEvent(new Event("hashchange"));
  });

test("it opens on Live, with a way to every screen", async () => {
  render(<Shell app={await fakeApp()} />);
  screen.getByRole("main", { name: "Live" });
  const links = screen.getAllByRole("link").filter((link) => link.closest("nav"));
  expect(links.map((link) => link.getAttribute("href"))).toEqual([
    "#live",
    "#review",
    "#summary",
    "#set-up",
    "#more",
  ]);
  expect(screen.getByRole("link", { current: "page" }).textContent).toBe("Live");
});

test.each([
  ["#review", "Review"],
  ["#summary", "Summary"],
  ["#set-up", "Set-up"],
  ["#more", "More"],
  ["#phrases", "What you can say"],
  ["#settings", "This phone"],
])("the address %s opens %s, and reading starts at its top", async (hash, heading) => {
  render(<Shell app={await fakeApp()} />);
  await goTo(hash);
  await screen.findByRole("heading", { level: 1, name: heading });
  expect(document.activeElement).toBe(screen.getByRole("main"));
  expect(document.title).toContain("Pegscribe");
});

test("an address that names no screen opens Live", async () => {
  render(<Shell app={await fakeApp()} />);
  await goTo("#nowhere");
  screen.getByRole("main", { name: "Live" });
});

test("every example of the grammar can be read under Phrases", async () => {
  render(<Shell app={await fakeApp()} />);
  await goTo("#phrases");
  await screen.findByRole("heading", { level: 1 });
  const text = screen.getByRole("main").textContent;
  const examples = phrasePage().flatMap(({ phrases }) => phrases.flatMap((one) => one.examples));
  expect(examples.length).toBeGreaterThan(50);
  expect(examples.filter((example) => !text?.includes(example))).toEqual([]);
});

test("there is one place that is read aloud, and it tells what was understood", async () => {
  const app = await fakeApp([[0, "start the session"]]);
  render(<Shell app={app} />);
  await act(() => app.type("carp, two pounds"));
  expect(screen.getAllByRole("status")).toHaveLength(1);
  expect(screen.getByRole("status").textContent).toBe("carp, 2 pounds");
  act(() => {
    app.plays.hearing.value = {
      is: "refused",
      sendsSound: true,
      trouble: { what: "The microphone is shut.", todo: "Open it." },
    };
  });
  expect(screen.getByRole("status").textContent).toContain("The microphone is shut. Open it.");
});

test("what is not stored is seen on every screen", async () => {
  const app = await fakeApp([[0, "start the session"]]);
  app.plays.keeping.value = { unsaved: 2, trouble: "There is no room left.", damaged: 1 };
  render(<Shell app={app} />);
  await goTo("#summary");
  await screen.findByRole("heading", { level: 1, name: "Summary" });
  expect(screen.getByRole("region", { name: "Storing" }).textContent).toMatch(
    /2 entries are not stored. There is no room left..*1 stored record could not be read and was/,
  );
});

test("what waits for a look is counted in the way to Review", async () => {
  render(<Shell app={await fakeApp([[1, "roach thirty"]])} />);
  screen.getByRole("link", { name: /Review\s*1 to look at/ });
});

test("a new version is offered before and after a session, never during one", async () => {
  const app = await fakeApp();
  app.plays.updateWaiting.value = true;
  render(<Shell app={app} />);
  fireEvent.click(screen.getByRole("button", { name: "Take it now" }));
  expect(app.asked).toEqual(["take the update"]);
  await act(() => app.type("start the session"));
  expect(screen.queryByRole("button", { name: "Take it now" })).toBeNull();
});

test("a sample that is played can be left", async () => {
  const app = await fakeApp();
  app.plays.sample.value = { done: 3, of: 120 };
  render(<Shell app={app} />);
  screen.getByText("Sample session: phrase 3 of 120");
  fireEvent.click(screen.getByRole("button", { name: "Leave the sample" }));
  expect(app.asked).toEqual(["stop the sample"]);
});

test("no element carries a style that the page's policy would refuse", async () => {
  const app = await fakeApp([
    [0, "start the session"],
    [1, "carp, two pounds"],
    [2, "roach thirty"],
  ]);
  await app.setPlan({ netLimitG: 1000 });
  const { container } = render(<Shell app={app} />);
  for (const { id } of ROUTES.filter(({ place }) => place !== "link")) {
    await goTo(`#${id}`);
    await screen.findAllByRole("heading", { level: 1 });
    expect(container.querySelectorAll("[style], style, script")).toHaveLength(0);
  }
});
