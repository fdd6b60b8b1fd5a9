import { vulgarFractions } from "../../../../src/chemistry/notation/counts/vulgarFractions";
import { parseFormula } from "../../../../src/chemistry/parseFormula";

// The Unicode Standard, UnicodeData.txt: code point and name. The value is read from the name's own words.
const NAMED: readonly (readonly [codePoint: number, name: string])[] = [
  [0x00bd, "VULGAR FRACTION ONE HALF"],
  [0x2153, "VULGAR FRACTION ONE THIRD"],
  [0x2154, "VULGAR FRACTION TWO THIRDS"],
  [0x00bc, "VULGAR FRACTION ONE QUARTER"],
  [0x00be, "VULGAR FRACTION THREE QUARTERS"],
  [0x2155, "VULGAR FRACTION ONE FIFTH"],
  [0x2156, "VULGAR FRACTION TWO FIFTHS"],
  [0x2157, "VULGAR FRACTION THREE FIFTHS"],
  [0x2158, "VULGAR FRACTION FOUR FIFTHS"],
  [0x2159, "VULGAR FRACTION ONE SIXTH"],
  [0x215a, "VULGAR FRACTION FIVE SIXTHS"],
  [0x215b, "VULGAR FRACTION ONE EIGHTH"],
  [0x215c, "VULGAR FRACTION THREE EIGHTHS"],
  [0x215d, "VULGAR FRACTION FIVE EIGHTHS"],
  [0x215e, "VULGAR FRACTION SEVEN EIGHTHS"],
];
const ABOVE: Readonly<Record<string, number>> = { ONE: 1, TWO: 2, THREE: 3, FOUR: 4, FIVE: 5, SEVEN: 7 };
const BELOW: Readonly<Record<string, number>> = { HALF: 2, THIRD: 3, QUARTER: 4, FIFTH: 5, SIXTH: 6, EIGHTH: 8 };

const valueOf = (name: string): number => {
  const [, , above = "", below = ""] = name.split(" ");
  return (ABOVE[above] ?? NaN) / (BELOW[below.replace(/S$/, "")] ?? NaN);
};

test("the fractions of one character are fifteen, each of the value that its Unicode name says", () => {
  expect(NAMED).toHaveLength(15);
  const named = NAMED.map(([codePoint, name]): [string, number] => [String.fromCodePoint(codePoint), valueOf(name)]);
  expect(Object.fromEntries(vulgarFractions)).toEqual(Object.fromEntries(named));
});

test.each(NAMED)("parseFormula reads U+%x, %s, alone and behind a whole number", (codePoint, name) => {
  const fraction = String.fromCodePoint(codePoint);
  expect(parseFormula(`CaSO4·${fraction}H2O`).atoms.get("H")).toBe(2 * valueOf(name));
  expect(parseFormula(`CaSO4·1${fraction}H2O`).atoms.get("H")).toBe(2 * (1 + valueOf(name)));
  expect(parseFormula(`CuO${fraction}`).atoms.get("O")).toBe(valueOf(name));
});
