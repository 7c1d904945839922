import { expect, test } from "vitest";
import { copyLines, readCopy } from "../../src/log/copy-lines.ts";
import type { LogEvent } from "../../src/log/event.ts";

const event = (seq: number): LogEvent => ({
  ...{ v: 1, id: `0195e0a0-0000-7000-8000-00000000000${seq}`, session: "s", device: "d", seq },
  ...{ at: 1_700_000_000_000 + seq, verdict: "log" },
  body: { kind: "entry", statement: { kind: "drop" } },
});

test("what is copied is read again, with the device that wrote it", () => {
  const text = copyLines([event(1)], "d") + copyLines([event(2)], "d");
  expect(readCopy([text])).toEqual({ events: [event(1), event(2)], device: "d" });
  expect(readCopy([copyLines([event(3)])])).toEqual({ events: [event(3)] });
  expect(readCopy([])).toEqual({ events: [] });
});

test("of two devices that wrote here, the one that wrote last is told, wherever it stands", () => {
  const [early, late] = [
    copyLines([event(1)], "d"),
    copyLines([{ ...event(2), device: "e" }], "e"),
  ];
  expect(readCopy([early, late]).device).toBe("e");
  expect(readCopy([late, early]).device).toBe("e");
  const elsewhere = copyLines([{ ...event(3), device: "another phone" }]);
  expect(readCopy([late, elsewhere]).device).toBe("e");
});

test("a line that was cut off spoils no other", () => {
  const whole = copyLines([event(2)], "d");
  for (const device of ["e", undefined])
    for (let length = 0; length < whole.length; length += 1) {
      const after = copyLines([{ ...event(3), device: "e" }], device);
      const read = readCopy([copyLines([event(1)], "d") + whole.slice(0, length) + after]);
      const seqs = read.events.map(({ seq }) => seq);
      expect(seqs.filter((seq) => seq !== 2)).toEqual([1, 3]);
      expect(read.device).toBe(device ?? "d");
    }
});

test("what is no event is passed over", () => {
  const damaged = `${JSON.stringify({ ...event(2), seq: "two" })}\n{}\nnull\n"d"\n{"device":3}\n`;
  expect(readCopy([damaged + copyLines([event(1)])])).toEqual({ events: [event(1)] });
});
