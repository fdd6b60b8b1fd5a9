import { convertMoisture } from "../../src/drying/moisture";

test("convertMoisture takes a dry-basis moisture up to 4 and refuses more as a percentage", () => {
  expect(convertMoisture(4, "dry", "wet")).toBe(0.8);
  expect(() => convertMoisture(4.1, "dry", "wet")).toThrow(
    "moisture: 4.1 on the dry basis would be 410 %, wetter than wood gets. Type 54 % as 0.54 or 54%.",
  );
});

test("convertMoisture gives a dry-basis moisture however large", () => {
  expect(convertMoisture(0.95, "wet", "dry")).toBeCloseTo(19, 12);
});

test("convertMoisture takes 0 as a moisture", () => {
  expect(convertMoisture(0, "wet", "dry")).toBe(0);
  expect(convertMoisture(0, "dry", "wet")).toBe(0);
});

// 2.49, the wettest wood listed (Wood Handbook, from memory), must pass; the bound stands above it at 4.
test("convertMoisture refuses a dry-basis moisture just above 4, but not its binary rounding", () => {
  expect(convertMoisture(2.49, "dry", "wet")).toBeCloseTo(2.49 / 3.49, 12);
  expect(convertMoisture(4 + 1e-13, "dry", "wet")).toBeCloseTo(0.8, 12);
  expect(convertMoisture(convertMoisture(0.8, "wet", "dry"), "dry", "wet")).toBeCloseTo(0.8, 12);
  expect(() => convertMoisture(4.00001, "dry", "wet")).toThrow("wetter than wood gets");
  expect(() => convertMoisture(4.00001, "dry", "dry")).toThrow("wetter than wood gets");
});

test("convertMoisture refuses a wet-basis moisture of 1, and takes what is just below", () => {
  expect(convertMoisture(0.999, "wet", "dry")).toBeCloseTo(999, 6);
  expect(() => convertMoisture(1, "wet", "wet")).toThrow("moisture: 1");
});
