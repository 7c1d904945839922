import { fireEvent, render, screen, waitFor } from "@testing-library/preact";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { Files } from "../../src/screens/files/files.tsx";
import { PassOn } from "../../src/screens/pass-on/pass-on.tsx";
import { type FakeApp, fakeApp, type Line } from "./fake-app.ts";

const DAY: readonly Line[] = [
  [0, "start the session"],
  [1, "rig one, depth one metre"],
  [30, "carp, four pounds"],
  [40, "note, topping by the reeds"],
  [80, "F1, one pound eight"],
  [90, "all out"],
];

let app: FakeApp;
let copied: string[];
let saved: { name: string; text: Promise<string> }[];

beforeEach(async () => {
  app = await fakeApp(DAY);
  await app.setPlan({ water: "Osier Lake", peg: "17" });
  copied = [];
  saved = [];
  Object.defineProperty(navigator, "clipboard", {
    configurable: true,
    value: { writeText: async (text: string) => void copied.push(text) },
  });
  const files = new Map<string, Blob>();
  vi.spyOn(URL, "createObjectURL").mockImplementation((file) => {
    const address = `blob:${files.size}`;
    files.set(address, file as Blob);
    return address;
  });
  vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(function (
    this: HTMLAnchorElement,
  ) {
    saved.push({ name: this.download, text: files.get(this.href)?.text() ?? Promise.resolve("") });
  });
});

afterEach(() => void vi.restoreAllMocks());

const shown = () => document.querySelector(".goes-out")?.textContent;

test("what goes out is shown first; water, peg and notes only where each is allowed", async () => {
  render(<PassOn app={app} />);
  expect(shown()).not.toMatch(/Osier|17|reeds/);
  fireEvent.click(screen.getByLabelText("Name the water"));
  await waitFor(() => expect(shown()).toContain("Osier Lake"));
  expect(shown()).not.toMatch(/17|reeds/);
  fireEvent.click(screen.getByLabelText("Name the peg"));
  fireEvent.click(screen.getByLabelText("With my notes"));
  await waitFor(() => expect(shown()).toMatch(/peg 17[\s\S]*topping by the reeds/));
  fireEvent.click(screen.getByRole("button", { name: "Share the text" }));
  await screen.findByText("Copied: paste it into a message.");
  expect(copied).toEqual([shown()]);
});

test("the link shows what it holds, and names no place unless it may", async () => {
  render(<PassOn app={app} />);
  fireEvent.click(screen.getByLabelText("Link"));
  await screen.findByText("Each fish");
  expect(document.querySelector("details")?.textContent).not.toMatch(/Osier|reeds/);
  fireEvent.click(screen.getByRole("button", { name: "Share the link" }));
  await screen.findByText("Copied: paste it into a message.");
  expect(copied[0]).toMatch(/#v1\.[\w-]+$/);
});

test("the log is saved under the day's name, whole or the open session alone", async () => {
  render(<Files app={app} />);
  fireEvent.click(screen.getByRole("button", { name: "Save the log as a file" }));
  await screen.findByText(/pegscribe-log-2026-06-06\.json: 1 session, 7 records\.$/);
  fireEvent.click(screen.getByLabelText("The open session"));
  fireEvent.click(screen.getByRole("button", { name: "Table of fish (CSV)" }));
  await screen.findByText(/pegscribe-fish-2026-06-06\.csv/);
  expect(saved.map(({ name }) => name)).toEqual([
    "pegscribe-log-2026-06-06.json",
    "pegscribe-fish-2026-06-06.csv",
  ]);
  expect(JSON.parse((await saved[0]?.text) ?? "")).toHaveProperty("settings.weight", "lb-oz");
  expect((await saved[1]?.text)?.trim().split("\r\n")).toHaveLength(3);
});

function choose(file: File): void {
  const input = screen.getByLabelText<HTMLInputElement>("Take in a log file", {
    selector: "input",
  });
  Object.defineProperty(input, "files", { configurable: true, value: [file] });
  fireEvent.change(input);
}

test("a log is taken in once, and the settings in it only when asked", async () => {
  const { file } = await app.passOn.logFile("json", true);
  const other = await fakeApp();
  render(<Files app={other} />);
  choose(file);
  await screen.findByText("7 records of 1 session taken in.");
  fireEvent.click(screen.getByRole("button", { name: "Set this phone the same" }));
  await screen.findByText("This phone is set the same now.");
  expect(other.asked.join()).toMatch(/^settings .*lb-oz/);
  choose(file);
  await screen.findByText("All of it was here already.");
});

test("a file that is refused says why", async () => {
  render(<Files app={app} />);
  choose(new File(["x"], "x.json"));
  await screen.findByText(/This is not a file that Pegscribe wrote\./);
});
