import { describe, expect, test } from "vitest";
import { biteDepth, timedSpeed } from "../../src/analysis/sinking/bite-depth.ts";
import { densityFromFall, drag, fallSpeed, stokesSpeed } from "../../src/analysis/sinking/fall.ts";
import { biteDepths, waterTemperature } from "../../src/analysis/sinking/session-bites.ts";
import { waterAt } from "../../src/analysis/sinking/water.ts";
import { at, emptySession, sessionOf } from "./fixtures/session.ts";

describe("water", () => {
  // IAPWS-95 and IAPWS R12-08 (calc at 101.325 kPa); CRC Handbook 90th ed. p. 6-4 gives the same density to 0.001.
  test.each([
    [5, 999.967, 1518.17],
    [10, 999.702, 1305.9],
    [15, 999.103, 1137.57],
    [20, 998.207, 1001.6],
    [25, 997.048, 890.02],
  ])("at %i °C", (celsius, density, microPascalSeconds) => {
    const water = waterAt(celsius);
    expect(Math.abs(water.density - density)).toBeLessThanOrEqual(0.0015);
    expect(Math.abs(water.viscosity * 1e6 - microPascalSeconds)).toBeLessThanOrEqual(0.05);
  });
});

describe("fall of a sphere", () => {
  const within = (ours: number, printed: number, share: number) =>
    expect(Math.abs(ours / printed - 1)).toBeLessThanOrEqual(share);

  test("ASEE/Polymath problem 5: Schiller-Naumann 0.01560, the book 0.01578", () => {
    const speed = fallSpeed(
      { diameter: 0.208e-3, density: 1800 },
      { density: 994.6, viscosity: 8.931e-4 },
    );
    within(speed, 0.0156, 0.0005);
    within(speed, 0.01578, 0.04);
  });

  test("Rushton/Perry: 70 µm Schiller-Naumann 0.004019, book 0.00406; 50 µm 0.002370, book 0.002453", () => {
    const water = { density: 1000, viscosity: 1e-3 };
    const coarse = fallSpeed({ diameter: 70e-6, density: 2600 }, water);
    within(coarse, 0.004019, 0.0003);
    within(coarse, 0.00406, 0.04);
    const fine = fallSpeed({ diameter: 50e-6, density: 2800 }, water);
    within(fine, 0.00237, 0.0003);
    within(fine, 0.002453, 0.04);
  });

  test("Stokes limit, 70 µm: 0.00427134 m/s, and the smallest spheres fall at it", () => {
    const water = { density: 1000, viscosity: 1e-3 };
    expect(stokesSpeed({ diameter: 70e-6, density: 2600 }, water)).toBeCloseTo(0.00427134, 8);
    const dust = { diameter: 1e-6, density: 2600 };
    within(fallSpeed(dust, water), stokesSpeed(dust, water), 1e-3);
  });

  test("a big heavy sphere falls by Newton's law: v² = 4 g d (ρs/ρ − 1) / (3 · 0.44)", () => {
    const water = waterAt(15);
    const speed = fallSpeed({ diameter: 0.02, density: 11_340 }, water);
    within(
      speed,
      Math.sqrt((4 * 9.80665 * 0.02 * (11_340 / water.density - 1)) / (3 * 0.44)),
      1e-6,
    );
  });

  test("the two laws of drag meet", () => {
    within(drag(999.999), drag(1000), 0.01);
  });

  test("what floats does not fall; cold water is slower; density comes back from the speed", () => {
    const pellet = { diameter: 6e-3, density: 1150 };
    expect(fallSpeed({ diameter: 6e-3, density: 950 }, waterAt(15))).toBe(0);
    expect(fallSpeed(pellet, waterAt(5))).toBeLessThan(fallSpeed(pellet, waterAt(25)));
    const speed = fallSpeed(pellet, waterAt(12));
    expect(densityFromFall(pellet.diameter, speed, waterAt(12))).toBeCloseTo(1150, 4);
  });
});

describe("depth of a bite", () => {
  test("on the way down, and settled on the rig's depth", () => {
    expect(biteDepth(5, 0.06, 1000)).toEqual({
      depthMm: expect.closeTo(300, 9),
      lower: expect.closeTo(4 * 0.048 * 1000, 9),
      upper: expect.closeTo(6 * 0.072 * 1000, 9),
      settled: false,
    });
    expect(biteDepth(60, 0.06, 1000)).toEqual({
      depthMm: 1000,
      lower: 1000,
      upper: 1000,
      settled: true,
    });
    expect(biteDepth(0, 0.06, 1000)).toMatchObject({ depthMm: 0, lower: 0, settled: false });
    expect(biteDepth(9, 0, 1000)).toMatchObject({ depthMm: 0, upper: 0, settled: false });
  });

  test("one timing calibrates", () => {
    expect(timedSpeed(1500, 20)).toBeCloseTo(0.075, 12);
    for (const [depth, seconds] of [
      [0, 5],
      [100, 0],
    ] as const)
      expect(timedSpeed(depth, seconds)).toBeUndefined();
  });

  test("over a session: bites after a drop, on a rig of known depth", () => {
    const session = sessionOf([
      [0, { kind: "drop" }],
      [0.1, { kind: "fish" }],
      [1, { kind: "change", depthMm: 600 }],
      [2, { kind: "drop" }],
      [2.1, { kind: "sign", sort: "bite" }],
      [3, { kind: "drop" }],
      [4, { kind: "drop" }],
      [4.5, { kind: "fish" }],
      [5, { kind: "conditions", waterC: 11 }],
      [6, { kind: "conditions", wind: "light" }],
    ]);
    expect(
      biteDepths(session, at(10), 0.05).map(({ depthMm, settled }) => [
        Math.round(depthMm),
        settled,
      ]),
    ).toEqual([
      [300, false],
      [600, true],
    ]);
    expect(waterTemperature(session)).toBe(11);
    expect(waterTemperature(emptySession)).toBeUndefined();
  });
});
