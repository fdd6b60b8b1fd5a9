import fc from "fast-check";
import type { Replicate } from "../../src/confidence/countedReplicates";
import { dixonAssessment, dixonCritical } from "../../src/confidence/dixonAssessment";
import { grubbsAssessment, grubbsCritical } from "../../src/confidence/grubbsAssessment";
import type { OutlierQuestion } from "../../src/confidence/outlierAssessment";
import { seededNormal } from "../numerics/seededNormal";

const TWO_SIDED: OutlierQuestion = { alpha: 0.05, sides: "two" };
const rows = (values: readonly number[]): Replicate[] => values.map((value, index) => ({ row: index + 1, value }));
const values = fc.uniqueArray(fc.integer({ min: -1000, max: 1000 }), { minLength: 3, maxLength: 20 });

describe.each([
  ["GRUBBS", grubbsAssessment],
  ["DIXON", dixonAssessment],
])("%s", (_, assess) => {
  test("does not change its statistic or verdict when the values are shifted and scaled", () => {
    fc.assert(
      fc.property(values, fc.integer({ min: -500, max: 500 }), fc.integer({ min: 1, max: 50 }), (given, shift, scale) => {
        const plain = assess(rows(given), TWO_SIDED);
        const moved = assess(rows(given.map((value) => scale * value + shift)), TWO_SIDED);
        expect(moved.statistic).toBeCloseTo(plain.statistic, 10);
        expect(moved.critical).toBe(plain.critical);
        if (Math.abs(plain.statistic - plain.critical) > 1e-9) expect(moved.isOutlier).toBe(plain.isOutlier);
      }),
    );
  });

  test("does not depend on the order of the values, and names the row where the suspect stands", () => {
    fc.assert(
      fc.property(values, (given) => {
        const turned = [...given].reverse();
        const answer = assess(rows(turned), TWO_SIDED);
        expect(answer.statistic).toBeCloseTo(assess(rows(given), TWO_SIDED).statistic, 10);
        expect(turned[answer.suspect.row - 1]).toBe(answer.suspect.value);
        expect([Math.min(...given), Math.max(...given)]).toContain(answer.suspect.value);
      }),
    );
  });

  test("turned upside down, the smallest stands out as the largest did", () => {
    fc.assert(
      fc.property(values, (given) => {
        const largest = assess(rows(given), { alpha: 0.05, sides: "largest" });
        const smallest = assess(rows(given.map((value) => -value)), { alpha: 0.05, sides: "smallest" });
        expect(smallest.statistic).toBeCloseTo(largest.statistic, 10);
        expect(smallest.suspect.row).toBe(largest.suspect.row);
      }),
    );
  });

  test("two-sided takes the end that stands out more, against a stricter critical value", () => {
    fc.assert(
      fc.property(values, (given) => {
        const [two, largest, smallest] = (["two", "largest", "smallest"] as const).map((sides) => assess(rows(given), { alpha: 0.05, sides }));
        expect(two?.statistic).toBeCloseTo(Math.max(largest?.statistic ?? 0, smallest?.statistic ?? 0), 12);
        expect(two?.critical).toBeGreaterThan(largest?.critical ?? Infinity);
      }),
    );
  });

  test.each([0.05, 0.1])("calls an outlier in clean simulated samples at the rate alpha, %d", (alpha) => {
    const normal = seededNormal(7);
    const samples = 20_000;
    for (const sides of ["two", "largest"] as const) {
      let alarms = 0;
      for (let run = 0; run < samples; run++)
        if (assess(rows([normal(), normal(), normal(), normal(), normal()]), { alpha, sides }).isOutlier) alarms++;
      expect(Math.abs(alarms / samples - alpha)).toBeLessThan(5 * Math.sqrt(alpha / samples));
    }
  });

  test("of two equal suspects names the first given", () => {
    expect(assess(rows([9, 5, 5.1, 5.2, 9]), { alpha: 0.05, sides: "largest" }).suspect.row).toBe(1);
  });

  test("leaves the values as they were", () => {
    const given = Object.freeze(rows([3, 1, 2]));
    assess(given, TWO_SIDED);
    expect(given.map(({ value }) => value)).toEqual([3, 1, 2]);
  });
});

test("G never exceeds (n - 1) / sqrt(n), nor does its critical value", () => {
  fc.assert(
    fc.property(values, (given) => {
      const { statistic, critical } = grubbsAssessment(rows(given), TWO_SIDED);
      const most = (given.length - 1) / Math.sqrt(given.length);
      expect(statistic).toBeLessThanOrEqual(most * (1 + 1e-12));
      expect(critical).toBeLessThan(most);
    }),
  );
});

test("Q lies between 0 and 1", () => {
  fc.assert(
    fc.property(values, (given) => {
      const { statistic } = dixonAssessment(rows(given), TWO_SIDED);
      expect(statistic).toBeGreaterThan(0);
      expect(statistic).toBeLessThanOrEqual(1);
    }),
  );
});

test("a smaller alpha asks for a larger statistic", () => {
  for (const n of [3, 8, 20]) {
    expect(grubbsCritical(n, 0.005)).toBeGreaterThan(grubbsCritical(n, 0.025));
    expect(dixonCritical(n, 0.005)).toBeGreaterThan(dixonCritical(n, 0.025));
  }
});
