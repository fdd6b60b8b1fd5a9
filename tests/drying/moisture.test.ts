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
