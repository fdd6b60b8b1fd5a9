import { criteriaLike, dryingCriteria } from "../../../src/drying/constantWeight/dryingCriteria";

test("every drying criterion says how far it can be relied on", () => {
  const marks = new Set(dryingCriteria.map(({ mark }) => mark));
  expect([...marks].sort()).toEqual([
    "from memory, check your edition",
    "limit seen in print; interval from memory, check your edition",
    "seen in an open copy",
  ]);
});

test("no standard is listed twice", () => {
  const names = dryingCriteria.map(({ standard }) => standard);
  expect(names).toEqual([...new Set(names)]);
});

// Solid biofuel, not the mass but the loss: the commonest misreading of the standard.
test("ISO 18134-1 limits the change to 0.2 % of the total loss, not of the mass", () => {
  expect(criteriaLike("of total loss", 0.002).map(({ standard }) => standard)).toEqual(["ISO 18134-1, -2"]);
});
