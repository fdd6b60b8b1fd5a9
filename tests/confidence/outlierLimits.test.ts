import fc from "fast-check";
import type { Replicate } from "../../src/confidence/countedReplicates";
import { dixonAssessment } from "../../src/confidence/dixonAssessment";
import { grubbsAssessment } from "../../src/confidence/grubbsAssessment";
import { outlierVerdict, suspects } from "../../src/confidence/outlierAssessment";

const rows = (values: readonly number[]): Replicate[] => values.map((value, index) => ({ row: index + 1, value }));
const TWO_SIDED = { alpha: 0.05, sides: "two" } as const;

// Worked by hand.
// 0, 2, 10: gap 8 of range 10; mean 4, s = sqrt((16 + 4 + 36) / 2) = sqrt(28), G = 6 / sqrt(28).
test("Grubbs' and Dixon's statistics", () => {
  const dixon = dixonAssessment(rows([10, 0, 2]), TWO_SIDED);
  expect(dixon).toMatchObject({ count: 3, suspect: { row: 1, value: 10 }, statistic: 0.8, neighbour: 2, range: 10, isOutlier: false });
  expect(dixonAssessment(rows([10, 0, 8]), TWO_SIDED)).toMatchObject({ suspect: { row: 2, value: 0 }, statistic: 0.8, neighbour: 8, range: 10 });
  const grubbs = grubbsAssessment(rows([10, 0, 2]), TWO_SIDED);
  expect(grubbs).toMatchObject({ count: 3, suspect: { row: 1, value: 10 }, mean: 4, isOutlier: false });
  expect(grubbs.deviation).toBeCloseTo(Math.sqrt(28), 14);
  expect(grubbs.statistic).toBeCloseTo(6 / Math.sqrt(28), 14);
});

describe("the order of the suspects", () => {
  test("is the order given, whichever end comes first", () => {
    expect(suspects(rows([5, 1, 9]), "two").map(({ value }) => value)).toEqual([1, 9]);
    expect(suspects(rows([9, 5, 1]), "two").map(({ value }) => value)).toEqual([9, 1]);
    expect(suspects(rows([9, 5, 1]), "largest")).toEqual([{ row: 1, value: 9 }]);
    expect(suspects(rows([9, 5, 1]), "smallest")).toEqual([{ row: 3, value: 1 }]);
  });

  test.each([
    ["Grubbs", grubbsAssessment],
    ["Dixon", dixonAssessment],
  ])("%s: of two ends that stand out alike the first given is the suspect", (_, assess) => {
    expect(assess(rows([1, 5, 9]), TWO_SIDED).suspect).toEqual({ row: 1, value: 1 });
    expect(assess(rows([9, 5, 1]), TWO_SIDED).suspect).toEqual({ row: 1, value: 9 });
    expect(assess(rows([5, 9, 5, 9, 1, 1]), { alpha: 0.05, sides: "smallest" }).suspect.row).toBe(5);
    expect(assess(rows([5, 9, 5, 9, 1, 1]), { alpha: 0.05, sides: "largest" }).suspect.row).toBe(2);
  });
});

describe("where the tables end", () => {
  const spread = (n: number): Replicate[] => rows(Array.from({ length: n }, (_, index) => index ** 2));

  test("three values are enough, two are not", () => {
    for (const assess of [grubbsAssessment, dixonAssessment]) {
      expect(assess(spread(3), TWO_SIDED).count).toBe(3);
      expect(() => assess(spread(2), TWO_SIDED)).toThrow(/3/);
    }
  });

  test("Dixon's ends with 30 values, Grubbs' does not", () => {
    expect(dixonAssessment(spread(30), TWO_SIDED).count).toBe(30);
    expect(() => dixonAssessment(spread(31), TWO_SIDED)).toThrow(/30/);
    expect(grubbsAssessment(spread(31), TWO_SIDED).count).toBe(31);
  });

  test("values apart by no more than rounding are equal; a hundred times more is a spread", () => {
    const apart = (share: number): Replicate[] => rows([1000, 1000, 1000 * (1 + share)]);
    expect(() => suspects(apart(9e-13), "two")).toThrow();
    expect(() => suspects(rows([-1000, -1000, -1000 * (1 + 9e-13)]), "two")).toThrow();
    expect(suspects(apart(2e-12), "two")).toHaveLength(2);
    for (const small of [1e-6, -1e-6]) expect(suspects(rows([small, small, small * (1 + 2e-12)]), "two")).toHaveLength(2);
  });

  test("up to four values the verdict says how little they can show", () => {
    expect(outlierVerdict({ count: 4, isOutlier: false })).toBe("no outlier shown, which 4 values hardly ever can: keep every value");
    expect(outlierVerdict({ count: 5, isOutlier: false })).toBe("no outlier shown: keep every value");
    expect(outlierVerdict({ count: 3, isOutlier: true })).toMatch(/^outlier: /);
  });
});

test("a verdict follows from the statistic and the critical value shown beside it", () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.integer({ min: -99, max: 99 }), { minLength: 3, maxLength: 6 }),
      fc.constantFrom(0.05, 0.4),
      fc.constantFrom("two", "largest", "smallest"),
      (values, alpha, sides) => {
        for (const assess of [grubbsAssessment, dixonAssessment]) {
          const { statistic, critical, isOutlier } = assess(rows(values), { alpha, sides });
          expect(isOutlier).toBe(statistic > critical);
        }
      },
    ),
  );
});
