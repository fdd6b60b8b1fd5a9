import type { Plain } from "./Plain";

// A host may store a result with one rounding more than is worked out here.
const RELATIVE_DIFFERENCE = 1e-9;

export const isSameNumber = (one: Plain, other: Plain): boolean =>
  typeof one === "number" && typeof other === "number" && Math.abs(one - other) <= RELATIVE_DIFFERENCE * Math.max(1, Math.abs(other));
