import { driedInOrder } from "../../src/weighing/weighingsInOrder";

test("driedInOrder takes a dry sample that is only binary rounding for an empty vessel", () => {
  expect(() => driedInOrder(0.3, 1, 0.1 + 0.2)).toThrow("dry: 0.3 g is not more than vessel, 0.3 g. Check for swapped cells or a different vessel.");
});

test("driedInOrder takes a sample that lost nothing", () => {
  expect(() => driedInOrder(25, 35, 35)).not.toThrow();
});
