import { parseFormula } from "../../../../src/chemistry/parseFormula";

const NUMERALS = ["I", "II", "III", "IV", "V", "VI", "VII", "VIII"];
const said = (numeral: string): string => `"${numeral}" at character 3 of "Mn${numeral}O2" is an oxidation state, not iodine or vanadium. Remove it.`;

// One to eight: IUPAC, Red Book 2005, IR-5.4.2.2, writes oxidation states in Roman numerals; none in a weighed compound is higher.
test.each(NUMERALS.flatMap((numeral) => [`(${numeral})`, `[${numeral}]`, `{${numeral}}`]))(
  "parseFormula refuses the oxidation state %s",
  (numeral) => {
    expect(() => parseFormula(`Mn${numeral}O2`)).toThrow(new Error(`formula: ${said(numeral)}`));
  },
);

test.each(["(IIII)", "(IVI)", "(VIIII)", "(VV)"])("parseFormula reads %s, which is no numeral, as what it holds", (group) => {
  const { atoms } = parseFormula(`Mn${group}O2`);
  const count = (symbol: string): number => group.split(symbol).length - 1;
  expect([atoms.get("I") ?? 0, atoms.get("V") ?? 0]).toEqual([count("I"), count("V")]);
});

test("parseFormula takes a single letter with a count, or not behind a symbol, as iodine or vanadium", () => {
  expect(Object.fromEntries(parseFormula("Ca(I)2").atoms)).toEqual({ Ca: 1, I: 2 });
  expect(Object.fromEntries(parseFormula("Ca(I)0.5").atoms)).toEqual({ Ca: 1, I: 0.5 });
  expect(Object.fromEntries(parseFormula("(I)2O5").atoms)).toEqual({ I: 2, O: 5 });
  expect(Object.fromEntries(parseFormula("(NH4)2(V)O4").atoms)).toEqual({ N: 2, H: 8, V: 1, O: 4 });
  expect(Object.fromEntries(parseFormula("K2(I)").atoms)).toEqual({ K: 2, I: 1 });
});

// As speciation writes them: chromium(VI), arsenic(III).
test.each(["Fe", "Cr", "As", "Mn", "Sb", "Cu", "Pb"].flatMap((symbol) => ["II", "III", "IV", "VI", "VII"].map((numeral) => [symbol, numeral])))(
  "parseFormula refuses %s%s without brackets",
  (symbol, numeral) => {
    const text = `${symbol}${numeral}`;
    expect(() => parseFormula(text)).toThrow(
      new Error(`formula: "${numeral}" at character 3 of "${text}" is an oxidation state, not iodine or vanadium. Remove it.`),
    );
  },
);

test.each(["FeI2", "TiV", "NbV", "CuI", "InI3", "KI3"])("parseFormula reads %s, which has none", (text) => {
  expect(parseFormula(text).atoms.size).toBe(2);
});
