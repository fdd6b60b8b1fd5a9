import { changeVerdict, falseChange } from "../../src/confidence/changeVerdict";
import { countedReplicates } from "../../src/confidence/countedReplicates";
import { lossUncertainty } from "../../src/confidence/lossUncertainty";
import { readingUncertainty, usualCoverage } from "../../src/confidence/readingUncertainty";
import { repeatabilityLimit, replicateStatistics, replicateVerdict } from "../../src/confidence/replicateStatistics";
import { pharmacopoeiaMinimum, smallestSample } from "../../src/confidence/smallestSample";
import { roundingVariance } from "../../src/weighing/roundingVariance";

describe("read as printed", () => {
  // ISO 5725-6, 4.1.4, from memory; GUM 6.3.3, read.
  test("the repeatability limit is 2.8 standard deviations, and k = 2 is the usual coverage", () => {
    expect(repeatabilityLimit(1)).toBe(2.8);
    expect(usualCoverage).toBe(2);
  });

  // USP <41>, read: 2000 s, its example 0.00015 g gives 0.30000 g; 820 d from 0.41 d.
  test("the pharmacopoeia's smallest mass changes over where s is 0.41 of a step", () => {
    expect(pharmacopoeiaMinimum(0.00015)).toBeCloseTo(0.3, 12);
    expect(pharmacopoeiaMinimum(0.0041, 0.01)).toBeCloseTo(8.2, 12);
    expect(pharmacopoeiaMinimum(0.004, 0.01)).toBeCloseTo(8.2, 12);
    expect(pharmacopoeiaMinimum(0.005, 0.01)).toBeCloseTo(10, 12);
  });
});

describe("worked by hand", () => {
  // d^2 / 12 and, zeroed and read, d^2 / 6: 1.2^2 / 12 = 0.12. Bounds of 0.3: 0.09 / 3 = 0.03. 0.5^2 = 0.25.
  test("the variance of a reading is the sum of its parts", () => {
    expect([roundingVariance(1.2, 1), roundingVariance(1.2, 2)]).toEqual([0.12, 0.24]);
    expect(readingUncertainty({ readability: 1.2 }) ** 2).toBeCloseTo(0.12, 12);
    expect(readingUncertainty({ readability: 1.2, repeatability: 0.5, linearity: 0.3 }) ** 2).toBeCloseTo(0.4, 12);
    expect(readingUncertainty({ readability: 1.2, repeatability: 0.5, linearity: 0.3, tared: true }) ** 2).toBeCloseTo(0.55, 12);
  });

  // w = 0.4: sqrt(0.36 + 1 + 0.16) = sqrt(1.52) and sqrt(1 + 0.36) = sqrt(1.36), over 50 g for u = 0.5 g.
  test("a loss of 40 % of 50 g", () => {
    const { sample, loss, commonTare, separateTaring } = lossUncertainty(10, 60, 40, 0.5);
    expect([sample, loss]).toEqual([50, 0.4]);
    expect(commonTare).toBeCloseTo(Math.sqrt(1.52) / 100, 14);
    expect(separateTaring).toBeCloseTo(Math.sqrt(1.36) / 100, 14);
  });

  test("u may be a tenth of the sample and no more", () => {
    expect(lossUncertainty(0, 10, 10, 1).loss).toBe(0);
    expect(() => lossUncertainty(0, 10, 10, 1.0001)).toThrow(/^u: /);
  });

  // 3 x 0.01 x sqrt(1.52) / 0.002; without k and loss 2 x 0.01 x sqrt(2) / 0.002.
  test("the smallest sample", () => {
    expect(smallestSample(0.01, 0.002, 0.4, 3)).toBeCloseTo(15 * Math.sqrt(1.52), 10);
    expect(smallestSample(0.01, 0.002)).toBeCloseTo(10 * Math.SQRT2, 10);
  });

  // Step not known: sqrt(12 + 12) x 0.5 = 2.44949 at k = 2, sqrt(12 + 18) x 0.5 = 2.73861 at k = 3.
  test("a change on a display that is not known", () => {
    expect(changeVerdict(10, 12.5, 0.5)).toEqual({ change: 2.5, limit: Math.sqrt(24) / 2, level: falseChange(2), verdict: "gain" });
    expect(changeVerdict(10, 12.4, 0.5).verdict).toBe("not significant");
    expect(changeVerdict(12.5, 10, 0.5).verdict).toBe("loss");
    expect(changeVerdict(12.5, 10, 0.5, 3).verdict).toBe("not significant");
    expect(() => changeVerdict(10, 10, 10)).toThrow(/^u: /);
    expect(changeVerdict(10, 10, 9.99).verdict).toBe("not significant");
  });

  // s^2 = 0.36 - 0.12 = 0.24 for a step of 1.2, whose rounding is 1.44 / 12; k sqrt(2) s + 1.2.
  test("a change on a display with a step of 1.2", () => {
    expect(changeVerdict(10, 12.5, 0.6, 2, 1.2).limit).toBeCloseTo(2 * Math.sqrt(0.48) + 1.2, 12);
    expect(changeVerdict(10, 12.5, 0.6, 3, 1.2).limit).toBeCloseTo(3 * Math.sqrt(0.48) + 1.2, 12);
    // At k = 1 the two steps of a zeroed weighing are more: sqrt(0.48) + 1.2 is 1.89.
    expect(changeVerdict(10, 12.5, 0.6, 1, 1.2).limit).toBe(2.4);
    expect(changeVerdict(10, 12.5, 0.36, 1, 1.2).limit).toBeCloseTo(Math.sqrt(24) * 0.36, 12);
  });

  test("k = 2 is a level of 4.55 %, k = 3 of 0.27 %", () => {
    expect(falseChange(2)).toBeCloseTo(0.0455003, 7);
    expect(falseChange(3)).toBeCloseTo(0.0026998, 7);
  });

  // 0.01 / sqrt(12) = 0.00288675; two figures of it may be cut off to 0.0028.
  test("u may be no smaller than the rounding of one reading, but for figures left off", () => {
    expect(changeVerdict(10, 10, 0.0028, 2, 0.01).limit).toBeCloseTo(Math.sqrt(24) * 0.0028, 12);
    expect(() => changeVerdict(10, 10, 0.0027, 2, 0.01)).toThrow(
      "u: 0.0027 g is below the 0.00289 g that rounding to readability, 0.01 g, makes alone. Give what READING.U gives for this balance.",
    );
  });

  test("a change of exactly the limit is not significant", () => {
    const u = 0.5;
    expect(changeVerdict(10, 10 + Math.sqrt(24) * u, u, 2).verdict).toBe("not significant");
    expect(changeVerdict(35, 34.98, 0.01 / Math.sqrt(6)).verdict).toBe("not significant");
    expect(changeVerdict(35, 35.02, 0.01 / Math.sqrt(6), 2, 0.01).verdict).toBe("not significant");
  });

  // 2, 4, 9: mean 5, median 4, squares 9 + 1 + 16 = 26, s = sqrt(13), range 7.
  test("replicates", () => {
    const of = replicateStatistics([9, 2, 4], 2);
    expect([of.count, of.mean, of.median, of.range]).toEqual([3, 5, 4, 7]);
    expect(of.deviation).toBeCloseTo(Math.sqrt(13), 14);
    expect(of.relativeDeviation).toBeCloseTo(Math.sqrt(13) / 5, 14);
    expect(of.criticalRange).toBeCloseTo(2 * 3.3144931554, 8);
    expect(replicateStatistics([9, 2, 4, 6]).median).toBe(5);
    expect(replicateStatistics([9, 2]).criticalRange).toBeUndefined();
    expect(() => replicateStatistics([9])).toThrow();
    expect(replicateVerdict({ range: 1, criticalRange: 1 })).toMatch(/^acceptable/);
    expect(replicateVerdict({ range: 1.001, criticalRange: 1 })).toMatch(/^not acceptable/);
  });
});

test("a mean within rounding of 0 has no relative deviation; ten times that has", () => {
  expect(replicateStatistics([-1, 1 + 1e-12]).relativeDeviation).toBeUndefined();
  expect(replicateStatistics([0, 0]).relativeDeviation).toBeUndefined();
  expect(replicateStatistics([-1, 1 + 1e-11]).relativeDeviation).toBeGreaterThan(1e10);
  // The rounding is that of the largest figure, on whichever side of 0: a mean of 2e-12 beside -3.
  expect(replicateStatistics([-3, 1, 1, 1 + 8e-12]).relativeDeviation).toBeUndefined();
  expect(replicateStatistics([3, -1, -1, -1 - 8e-12]).relativeDeviation).toBeUndefined();
});

test("a 0 counts or is skipped as told, and a blank or a 0 of open meaning is refused by its row", () => {
  expect(countedReplicates([1, undefined, 0, 2], "skip").map(({ row }) => row)).toEqual([1, 4]);
  expect(countedReplicates([0, 2], "count").map(({ row }) => row)).toEqual([1, 2]);
  expect(() => countedReplicates([1, 2, 0])).toThrow(/row 3/);
  expect(() => countedReplicates([1, undefined, 2])).toThrow(/row 2/);
  expect(() => countedReplicates([1, undefined, 2], "count")).toThrow(/row 2/);
  expect(() => countedReplicates([0, undefined], "skip")).toThrow();
});
