import { neighbour } from "../../src/pane/tabs";

describe("neighbour(key, index, count)", () => {
  test.each([
    ["ArrowRight", 0, 1],
    ["ArrowRight", 3, 0],
    ["ArrowLeft", 0, 3],
    ["ArrowLeft", 2, 1],
    ["Home", 2, 0],
    ["End", 1, 3],
  ])("takes %s from tab %d to tab %d of 4", (key, from, to) => {
    expect(neighbour(key, from, 4)).toBe(to);
  });

  test("leaves other keys to the page", () => {
    expect(neighbour("Tab", 1, 4)).toBeUndefined();
  });
});
