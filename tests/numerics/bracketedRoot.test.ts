import { bracketedRoot } from "../../src/numerics/bracketedRoot";

test.each([
  ["x^2 - 2", (x: number) => x * x - 2, 0, 2, Math.SQRT2],
  ["cos x", Math.cos, 0, 3, Math.PI / 2],
  ["x^9, flat at its root", (x: number) => x ** 9 - 1e-9, 0, 1, 0.1],
  ["a rise at the far end", (x: number) => Math.exp(50 * x) - Math.exp(45), 0, 1, 0.9],
  ["a falling function", (x: number) => 1 - x, -3, 5, 1],
])("finds the root of %s", (_, of, low, high, root) => {
  expect(bracketedRoot(of, low, high)).toBeCloseTo(root, 12);
});

test("takes an end of the bracket that is the root", () => {
  expect(bracketedRoot((x) => x, 0, 1)).toBe(0);
  expect(bracketedRoot((x) => x - 1, 0, 1)).toBe(1);
});

test("calls a bracket without a sign change a defect", () => {
  expect(() => bracketedRoot((x) => x * x + 1, 0, 1)).toThrow("no sign change between 0 and 1");
});
