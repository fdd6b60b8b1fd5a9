/** A number as a cell formula holds it, the shorter of 0.001 and 1E-9; one below zero without an exponent, which not every grid reads there. */
export function numberText(value: number): string {
  const [plain, short] = [String(value), value.toExponential()].map((text) => text.toUpperCase().replace("E+", "E")) as [string, string];
  return value >= 0 && short.length < plain.length ? short : plain;
}
