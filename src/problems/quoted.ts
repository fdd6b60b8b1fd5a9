// Messages stay readable in a hover box of about 150 characters, so a long text is shortened in the middle.
const LONGEST_QUOTED = 40;

/** The value as a message quotes it: text in quotation marks, shortened when long; numbers and TRUE/FALSE bare. */
export function quoted(value: string | number | boolean): string {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "number") return plainNumber(value);
  const keep = LONGEST_QUOTED / 2;
  const text = value.length > LONGEST_QUOTED ? `${value.slice(0, keep)}…${value.slice(-keep)}` : value;
  return `"${text}"`;
}

// A double carries at least 15 significant decimal digits; more would show rounding residue such as 0.30000000000000004.
const SIGNIFICANT_DIGITS = 15;

/** A number without rounding residue: 0.1 + 0.2 prints as 0.3. */
export function plainNumber(value: number): string {
  return String(Number(value.toPrecision(SIGNIFICANT_DIGITS)));
}
