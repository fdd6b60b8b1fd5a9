import type { OutlierTest } from "./OutlierTest";

// With so few values the critical values leave room for gross errors only: at n = 3 a value must lie some 30 times farther
// off than the other two lie apart (two-sided 5 %, from the critical value of r10, 0.970).
const FEW = 4;

/** What an outlier test says, in words. */
export function outlierVerdict({ count, isOutlier }: Pick<OutlierTest, "count" | "isOutlier">): string {
  if (isOutlier) return "outlier: look for a cause; never reject without a cause, and at most one value";
  return count <= FEW ? `no outlier shown, which ${count} values hardly ever can: keep every value` : "no outlier shown: keep every value";
}
