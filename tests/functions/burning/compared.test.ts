import { compared } from "../../../src/functions/burning/compared";

type Given = Parameters<typeof compared>[0];

const run = { vessel: 25, dry: 35, char: 28, ash: 25.3, formula: undefined };
/** 10 g of dry sample with 0.3 g of ash; the fractions and the ash sum as given. */
const summing = (sum: number): Given => ({ ...run, carbon: 0.5, hydrogen: 0.06, oxygen: sum - 0.6, nitrogen: 0.005, sulfur: 0.005 });

const NITROGEN = "The nitrogen that comes with the air is not counted among the gases.";
const OPEN = (sum: string): string => `The fractions and ash sum to ${sum} of the dry sample, outside 0.97 to 1.03: check the analysis.`;

// The bounds are common practice without a source.
test.each([
  [0.97, []],
  [1.03, []],
  [1, []],
  [0.9699, [OPEN("0.9699")]],
  [1.0301, [OPEN("1.0301")]],
])("compared of fractions that sum to %d says what does not close", (sum, said) => {
  expect(compared(summing(sum)).notes).toEqual([NITROGEN, ...said]);
});

test("compared gives the bounds of closing a slack of binary rounding and no more", () => {
  for (const sum of [0.97 - 5e-10, 1.03 + 5e-10]) expect(compared(summing(sum)).notes).toHaveLength(1);
  for (const sum of [0.97 - 2e-9, 1.03 + 2e-9]) expect(compared(summing(sum)).notes).toHaveLength(2);
});

test("compared takes oxygen, nitrogen and sulfur left out as none", () => {
  const { comparison, notes } = compared({ ...summing(1), carbon: 0.85, hydrogen: 0.13, oxygen: undefined, nitrogen: undefined, sulfur: undefined });
  expect(notes).toEqual([NITROGEN]);
  expect(comparison.burned.oxygenTaken).toBeCloseTo((8.5 * 31.998) / 12.011 + (1.3 * 31.998) / 4.032, 9);
  expect(comparison.burned.notCovered).toBeCloseTo(-0.1, 9);
});

test("compared says that no ash was weighed, also beside an analysis", () => {
  expect(compared({ ...summing(1), ash: undefined }).notes).toEqual([NITROGEN, "No ash weighed: taken as none."]);
  const { notes } = compared({ ...summing(0.95), ash: undefined });
  expect(notes).toEqual([NITROGEN, "No ash weighed: taken as none.", OPEN("0.92")]);
});
