import { constantWeight } from "../../../src/drying/constantWeight/constancySteps";

test("constantWeight is 0 with a single weighing, which a run in progress begins with", () => {
  expect(constantWeight({ weights: [10] })).toBe(0);
});

test("constantWeight counts from the first weighing of the unbroken steady run at the end", () => {
  expect(constantWeight({ weights: [10, 9, 8.999, 8.998, 8.997] })).toBe(3);
});

test("constantWeight does not count a steady pair before a later loss", () => {
  expect(constantWeight({ weights: [10, 9.999, 9, 8.999] })).toBe(4);
  expect(constantWeight({ weights: [10, 9.999, 9] })).toBe(0);
});

test("constantWeight is 0 after a gain beyond the limit", () => {
  expect(constantWeight({ weights: [10, 9, 8.999, 9.05] })).toBe(0);
});

test("constantWeight is 0 while no weighing is old enough to compare with", () => {
  expect(constantWeight({ weights: [10, 9.999], times: [0, 30], interval: 60 })).toBe(0);
});

test("constantWeight with an interval names the weighing that ends the first steady hour", () => {
  expect(constantWeight({ weights: [10, 9, 8.999, 8.999, 8.998], times: [0, 30, 60, 90, 120], interval: 60 })).toBe(4);
});

// ISO 18122 and ISO 21656 hold an ash to 0.2 mg, and 1 g of clean wood leaves about 3 mg.
test("constantWeight holds an ash of a few milligrams to 0.2 mg, though that is more than 4 % of it", () => {
  expect(constantWeight({ weights: [0.0041, 0.0032, 0.0031], limit: 0.0002, criterion: "absolute" })).toBe(3);
  expect(constantWeight({ weights: [0.0041, 0.0036, 0.0033], limit: 0.0002, criterion: "absolute" })).toBe(0);
});

test("constantWeight needs the times an interval is measured in", () => {
  expect(() => constantWeight({ weights: [10, 9], interval: 60 })).toThrow(
    "times: left out, blank or 0, but interval needs them. Give the minutes of each weighing.",
  );
});
