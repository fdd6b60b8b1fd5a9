import { roundingSlack, withoutRounding } from "../../src/weighing/roundingSlack";
import { driedInOrder, weighingsInOrder } from "../../src/weighing/weighingsInOrder";

test("driedInOrder takes a dry sample that is only binary rounding for an empty vessel", () => {
  expect(() => driedInOrder(0.3, 1, 0.1 + 0.2)).toThrow("dry: 0.3 g is not more than vessel, 0.3 g. Check for swapped cells or a different vessel.");
});

test("driedInOrder takes a sample that lost nothing", () => {
  expect(() => driedInOrder(25, 35, 35)).not.toThrow();
});

test("weighingsInOrder takes two nanograms for a load and half a nanogram for none", () => {
  expect(() => weighingsInOrder({ vessel: 25, before: 25 + 2e-9, after: 25 })).not.toThrow();
  expect(() => weighingsInOrder({ vessel: 25, before: 25 + 5e-10, after: 25 })).toThrow("before: 25.0000000005 g is not more than vessel, 25 g.");
  expect(() => driedInOrder(25, 35, 25 + 2e-9)).not.toThrow();
  expect(() => driedInOrder(25, 35, 25 + 5e-10)).toThrow("dry: 25.0000000005 g is not more than vessel, 25 g.");
});

test("weighingsInOrder takes a heated load at either end of its range and refuses it beyond", () => {
  for (const after of [25, 35]) expect(() => weighingsInOrder({ vessel: 25, before: 35, after })).not.toThrow();
  expect(() => weighingsInOrder({ vessel: 25, before: 35, after: 35.001 })).toThrow("after: 35.001 g");
  expect(() => weighingsInOrder({ vessel: 25, before: 35, after: 24.999 })).toThrow("after: 24.999 g is not more than vessel, 25 g.");
});

test("a difference is cleared to the nanogram, and left alone beyond nine tonnes", () => {
  expect(roundingSlack).toBe(1e-9);
  expect(withoutRounding(33.893 - 25)).toBe(8.893);
  expect(withoutRounding(1.0000000014)).toBe(1.000000001);
  expect(withoutRounding(9_100_000.1 + 1e-9)).toBe(9_100_000.1 + 1e-9);
});
