import { remembered } from "../../src/numerics/remembered";

test("an answer is computed once while it is kept, and each set of numbers has its own", () => {
  const compute = jest.fn((n: number, tail: number) => n + tail);
  const kept = remembered(10, compute);
  expect([kept(3, 0.05), kept(3, 0.05), kept(30, 0.05), kept(3, 0.01)]).toEqual([3.05, 3.05, 30.05, 3.01]);
  expect(compute).toHaveBeenCalledTimes(3);
});

test("no more answers are kept than there is room for; the one kept longest goes first", () => {
  const compute = jest.fn((n: number) => n);
  const kept = remembered(2, compute);
  for (const n of [1, 2, 3]) kept(n);
  kept(3);
  kept(2);
  expect(compute).toHaveBeenCalledTimes(3);
  kept(1);
  expect(compute).toHaveBeenCalledTimes(4);
});
