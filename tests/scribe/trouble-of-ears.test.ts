import { expect, test } from "vitest";
import { troubleOfEars } from "../../src/scribe/trouble-of-ears.ts";

test("ears that are not fetched are named, or the browser that has none", () => {
  const offline = "absent";
  expect(troubleOfEars("not-kept", { web: "sends", offline }).what).toMatch(
    /not on this phone yet/,
  );
  const alone = troubleOfEars("not-kept", { web: "none", offline });
  expect(alone.what).toBe("This browser has no speech recognition.");
  expect(alone.todo).toMatch(/Fetch .* Set-up, under Listening.*type/);
});

test("those inside are offered where they help and can be fetched", () => {
  const offers = (reason: "service-off" | "no-microphone", offline: "absent" | "impossible") =>
    troubleOfEars(reason, { web: "sends", offline }).todo.includes("Or fetch the ears");
  expect(offers("service-off", "absent")).toBe(true);
  expect(offers("service-off", "impossible")).toBe(false);
  expect(offers("no-microphone", "absent")).toBe(false);
});
