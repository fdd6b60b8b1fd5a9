/** What HEATINGRATE prints above its columns, and before its rows. */
export const HEADINGS = ["Quantity", "Value", "Unit"] as const;

export const LABELS = {
  rate: "Rate",
  u: "its standard uncertainty",
  halfWidth: "its 95 % uncertainty, plus or minus",
  count: "Readings, n",
  scatter: "Scatter about the line",
  firstHalf: "Rate of the first half",
  secondHalf: "Rate of the second half",
  deviation: "Deviation from the set rate",
  verdict: "Verdict",
} as const;
