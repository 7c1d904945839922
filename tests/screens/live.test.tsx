import { act, fireEvent, render, screen } from "@testing-library/preact";
import { expect, test } from "vitest";
import { Live } from "../../src/screens/live/live.tsx";
import { fakeApp, type Line, MINUTE_MS, NINE } from "./fake-app.ts";

const MORNING: readonly Line[] = [
  [0, "start the session"],
  [1, "rig two, depth sixty centimetres, size eighteen hook"],
  [2, "on red maggot"],
  [10, "F1, one pound eight"],
  [20, "skimmer twelve ounces"],
  [30, "roach"],
];

const region = (name: string) => screen.getByRole("region", { name }).textContent;

test("before a session it shows the cautions, where the sound goes, and how to begin", async () => {
  const app = await fakeApp();
  render(<Live app={app} />);
  for (const word of ["Power lines", "Lightning", "Water", "Fish"]) screen.getByText(word);
  screen.getByText(/byelaws, your rod licence/);
  screen.getByText(/sends the sound to its maker/);
  fireEvent.click(screen.getByRole("button", { name: "Play a sample session" }));
  fireEvent.click(screen.getByRole("button", { name: "Start listening" }));
  expect(app.asked).toEqual([expect.stringMatching(/^play the sample/), "start listening"]);
});

test("the session starts at a touch, and the cautions are out of the way", async () => {
  const app = await fakeApp();
  render(<Live app={app} />);
  fireEvent.click(screen.getByRole("button", { name: "Start the session" }));
  await screen.findByRole("region", { name: "Weight and count" });
  expect(app.session.value.state).toBe("fishing");
  expect(screen.queryByText("Power lines")).toBeNull();
});

test("it shows what stands: weight, count, fish not weighed, set-up and net", async () => {
  const app = await fakeApp(MORNING);
  render(<Live app={app} />);
  expect(region("Weight and count")).toContain("2 lb 4 oz");
  expect(region("Weight and count")).toContain("3 fish");
  expect(region("Weight and count")).toContain("1 without a weight");
  expect(region("Set-up in force")).toContain("Rig2Depth60 cmBaitred maggotHook18");
  expect(region("Net in force")).toContain("2 lb 4 oz");
});

test("the weight's limits come once their sums are loaded", async () => {
  render(<Live app={await fakeApp(MORNING.slice(0, 5))} />);
  const words = await screen.findByText(/^likely \d+ lb.* to \d+ lb/);
  expect(words.textContent).not.toContain("NaN");
});

test("the time since the last fish runs", async () => {
  const app = await fakeApp(MORNING);
  render(<Live app={app} />);
  expect(screen.getByRole("timer").textContent).toBe("0:00");
  act(() => {
    app.plays.now.value = NINE + 30 * MINUTE_MS + 252_000;
  });
  expect(screen.getByRole("timer").textContent).toBe("4:12");
});

test("the net is shown against its limit, and by how much it is over", async () => {
  const app = await fakeApp(MORNING);
  await app.setPlan({ netLimitG: 2 * 453.59237 });
  render(<Live app={app} />);
  expect(region("Net in force")).toContain("of 2 lb");
  expect(region("Net in force")).toContain("over by 4 oz");
});

test("what was understood stands with the words that were heard and what became of it", async () => {
  const app = await fakeApp(MORNING.slice(0, 4));
  render(<Live app={app} />);
  expect(region("Last heard")).toMatch(/Stored.*F1, 1 pound 8 ounces.*“F1, one pound eight”/);
  await act(() => app.type("that was a lovely fish he had"));
  expect(region("Last heard")).toContain("Not for the log");
});

test("what waits to be stored says so", async () => {
  const app = await fakeApp(MORNING.slice(0, 4));
  render(<Live app={{ ...app, lastHeard: app.lastHeard }} />);
  const { lastHeard } = app;
  if (!lastHeard.value) throw new Error("Nothing was heard.");
  const waiting = {
    ...app,
    lastHeard: { ...lastHeard, value: { ...lastHeard.value, isStored: false } },
  };
  render(<Live app={waiting as typeof app} />);
  screen.getByText("Waiting to be stored");
});

test("typing does the same as speaking, and empties the field", async () => {
  const app = await fakeApp([[0, "start the session"]]);
  render(<Live app={app} />);
  const field = screen.getByLabelText<HTMLInputElement>(/Type a phrase/);
  fireEvent.input(field, { target: { value: "carp, two pounds" } });
  fireEvent.click(screen.getByRole("button", { name: "Enter" }));
  await screen.findByText("“carp, two pounds”");
  expect(app.session.value.count).toBe(1);
  expect(field.value).toBe("");
});

test("the last thing is taken back at a touch", async () => {
  const app = await fakeApp(MORNING);
  render(<Live app={app} />);
  fireEvent.click(screen.getByRole("button", { name: "Take it back" }));
  await screen.findByText("scratch that");
  expect(app.session.value.count).toBe(2);
});

test("what is heard is text, whatever it looks like", async () => {
  const app = await fakeApp([[0, "note, <img src=x onerror=alert(1)> by the reeds"]]);
  const { container } = render(<Live app={app} />);
  expect(container.querySelector("img")).toBeNull();
  expect(region("Last heard")).toContain("<img src=x");
});

test.each([
  ["listening", { is: "listening", kind: "web", sendsSound: true }, "Listening", "Stop listening"],
  ["refused", { is: "refused", sendsSound: true }, "Not allowed to listen", "Try again"],
  [
    "waiting",
    { is: "waiting", kind: "web", sendsSound: true },
    "Waiting to listen again",
    "Stop listening",
  ],
  ["unavailable", { is: "unavailable", sendsSound: false }, "Cannot listen here", "Try again"],
] as const)(
  "the ears say that they are %s, and what the button does",
  async (_, hearing, state, button) => {
    const app = await fakeApp();
    app.plays.hearing.value = {
      ...hearing,
      trouble: { what: "What is wrong.", todo: "What to do." },
    };
    render(<Live app={app} />);
    const ears = screen.getByRole("region", { name: state });
    expect(ears.textContent).toContain("What is wrong. What to do.");
    fireEvent.click(screen.getByRole("button", { name: button }));
    expect(app.asked).toEqual([button === "Try again" ? "start listening" : "stop listening"]);
  },
);

test("after the end it shows the way to review and summary", async () => {
  render(<Live app={await fakeApp([...MORNING, [60, "all out"]])} />);
  screen.getByRole("link", { name: "Go through it" });
  screen.getByRole("link", { name: "See the day" });
  expect(screen.queryByRole("timer")).toBeNull();
});
