import { inCellsOf, workingOf } from "../call";

test("MOISTURE.WET works its answer out with the numbers put in", () => {
  expect(workingOf("MOISTURE.WET", { vessel: 25, moist: 35, dry: 31.5 })).toEqual([
    "loss on drying = 35 - 31.5 = 3.5 g",
    "moist sample = 35 - 25 = 10 g",
    "moisture, wet basis = 3.5 / 10 = 0.35",
  ]);
});

test("MOISTURE.DRY divides by the dry sample", () => {
  expect(workingOf("MOISTURE.DRY", { vessel: 25, moist: 35, dry: 31.5 })).toEqual([
    "loss on drying = 35 - 31.5 = 3.5 g",
    "dry sample = 31.5 - 25 = 6.5 g",
    "moisture, dry basis = 3.5 / 6.5 = 0.5384615",
  ]);
});

test("MOISTURE.CONVERT shows the formula of its direction", () => {
  expect(workingOf("MOISTURE.CONVERT", { moisture: 0.2, from: "wet", to: "dry" })).toEqual(["moisture, dry basis = 0.2 / (1 - 0.2) = 0.25"]);
  expect(workingOf("MOISTURE.CONVERT", { moisture: 1, from: "dry", to: "wet" })).toEqual(["moisture, wet basis = 1 / (1 + 1) = 0.5"]);
  expect(workingOf("MOISTURE.CONVERT", { moisture: 0.2, from: "wet", to: "wet" })).toEqual(["moisture, wet basis = 0.2, as given"]);
});

test("CHARYIELD works out the ash-free yield when the ash is weighed", () => {
  expect(workingOf("CHARYIELD", { vessel: 0, dry: 10, char: 2.5, ash: 0.1 })).toEqual([
    "char, ash-free = 2.5 - 0.1 = 2.4 g",
    "dry sample, ash-free = 10 - 0.1 = 9.9 g",
    "char yield, ash-free = 2.4 / 9.9 = 0.2424242",
  ]);
});

test("CONSTANTWEIGHT works out every comparison and names the standards with its limit", () => {
  expect(workingOf("CONSTANTWEIGHT", { weights: { values: [10, 9.2, 9.199], rows: 3 }, limit: 0.002, criterion: "of total loss" })).toEqual([
    "constant when the change is at most 0.002 (of total loss)",
    "weighing 1: 10 g, first",
    "weighing 2: 9.2 - 10 = -0.8 g against 1; allowed 0.0016 g: not yet",
    "weighing 3: 9.199 - 9.2 = -0.001 g against 2; allowed 0.001602 g: steady",
    "this limit is used by ISO 18134-1, -2 (from memory, check your edition)",
  ]);
});

test.each([
  ["MOISTURE.WET", { vessel: "B2", moist: "C2", dry: "D2" }, "(C2-D2)/(C2-IF(ISNUMBER(B2),B2,0))"],
  ["MOISTURE.WET", { vessel: "25", moist: "C2:C9", dry: "D2:D9-0.1" }, "(C2:C9-(D2:D9-0.1))/(C2:C9-25)"],
  ["MOISTURE.DRY", { vessel: '"tared"', moist: "C2", dry: "D2" }, "(C2-D2)/(D2-0)"],
  ["MOISTURE.CONVERT", { moisture: "B2", from: '"wet"', to: "C1" }, 'IF(TRIM("wet")=TRIM(C1),B2,B2/(1-B2))'],
  ["VOLATILEFRACTION", { vessel: "B2", before: "C2", after: "D2" }, "(C2-D2)/(C2-IF(ISNUMBER(B2),B2,0))"],
  ["CHARYIELD", { vessel: "25", dry: "C2", char: "D2", ash: "" }, "(D2-25)/(C2-25)"],
  [
    "CHARYIELD",
    { vessel: "25", dry: "C2", char: "D2", ash: "E2" },
    "(D2-IF(ISNUMBER(E2),IF(E2>0,E2,25),25))/(C2-IF(ISNUMBER(E2),IF(E2>0,E2,25),25))",
  ],
])("%s of %j is %s in plain cells", (name, text, plain) => {
  expect(inCellsOf(name, text as unknown as Record<string, string>)).toBe(plain);
});
