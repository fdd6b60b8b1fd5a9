import { NO_SOURCE, plantMatter, RANGE_QUANTITIES, rangeUnit, typicalBands, type RangeQuantity } from "../../src/sense/typicalBands";
import { typicalRange } from "../../src/sense/typicalRange";
import { typicalRows } from "../../src/sense/typicalRows";

// The tables are held against these copies of what is printed, cell by cell; the sources name where each was read.

// Read as printed, mass per cent of the dry sample and MJ/kg (higher heating value), "-" where nothing is printed.
// T. R. Miles, trmiles.com/alkali/fuelsc2.html; Raveendran and others 1995, scribd 249020525, whose volatile matter, printed
// free of ash, is carried to dry by (100 - ash) / 100, fixed carbon being the rest; MaCFP, wood data of NIST.
const PRINTED_ROWS = `
  red oak sawdust        | Miles      | 86.2 13.5 0.31 49.96 5.92 43.77 0.03 -
  fir mill waste         | Miles      | 82.1 17.5 0.41 51.2  5.98 42.3  0.06 -
  hybrid poplar          | Miles      | 84.8 12.5 2.70 50.2  6.06 40.4  0.60 -
  poplar coarse          | Miles      | 86.1 12.3 1.60 50.8  5.89 41.1  0.59 -
  alder and fir sawdust  | Miles      | 76.6 19.3 4.13 51.0  5.80 38.5  0.46 -
  furniture waste        | Miles      | 83.0 13.4 3.61 49.9  5.91 40.3  0.29 -
  forest residuals       | Miles      | 82.4 13.6 3.97 50.3  4.59 40.0  1.03 -
  Christmas trees        | Miles      | 74.0 20.8 5.21 51.6  5.58 36.7  0.52 -
  pine                   | MaCFP      | -    -    -    48.8  6.13 40.7  0.05 -
  bagasse                | Raveendran | 81.8 15.3 2.9  43.8  5.8  47.1  0.4  16.29
  coconut shell          | Raveendran | 79.6 19.7 0.7  50.2  5.7  43.4  0    20.50
  coir pith              | Raveendran | 68.1 24.8 7.1  44.0  4.7  43.4  0.7  -
  corn cob               | Raveendran | 83.0 14.2 2.8  47.6  5.0  44.6  0    15.65
  corn stalks            | Raveendran | 74.6 18.6 6.8  41.9  5.3  46.0  0    16.54
  groundnut shell        | Raveendran | 78.1 16.0 5.9  48.3  5.7  39.4  0.8  18.65
  millet husk            | Raveendran | 66.1 15.8 18.1 42.7  6.0  33.0  0.1  17.48
  rice husk              | Raveendran | 62.4 14.1 23.5 38.9  5.1  32.0  0.6  15.29
  rice straw             | Raveendran | 64.3 15.9 19.8 36.9  5.0  37.9  0.4  16.78
  subabul wood           | Raveendran | 84.8 14.3 0.9  48.2  5.9  45.1  0    19.78
  wheat straw            | Raveendran | 74.5 14.3 11.2 47.5  5.4  35.8  0.1  17.99
`;
// Coir pith: 18.07 MJ/kg is printed and left out, since it does not go with a carbon of 44 %.

const ROW_SOURCES: Readonly<Record<string, string>> = {
  Miles: "T. R. Miles, table of wood fuels with both bases (trmiles.com/alkali/fuelsc2.html)",
  Raveendran: "Raveendran 1995",
  MaCFP: "MaCFP, NIST wood data; as tested, not stated dry",
};

const COLUMNS = ["volatile matter", "fixed carbon", "ash", "carbon", "hydrogen", "oxygen", "nitrogen", "heating value"] as const;
const inFractions = (quantity: RangeQuantity, printed: string): number => Number(printed) / (quantity === "heating value" ? 1 : 100);

test("every row of single materials is the printed one: material, source and each figure", () => {
  const printed = PRINTED_ROWS.trim()
    .split("\n")
    .map((line) => {
      const [feedstock = "", source = "", figures = ""] = line.split("|").map((cell) => cell.trim());
      const shown = figures.split(/\s+/);
      expect(shown).toHaveLength(COLUMNS.length);
      const values = COLUMNS.flatMap((quantity, index) => (shown[index] === "-" ? [] : [[quantity, inFractions(quantity, shown[index] ?? "")]]));
      return { feedstock, source: ROW_SOURCES[source], values: Object.fromEntries(values) as object };
    });
  expect(typicalRows).toEqual(printed);
});

// Read as printed, per cent: MIL-HDBK-1003/6, table 12, "most woods", dry but for the moisture; Energy Sources 24 (2002) 215,
// nut shells. The heating values are printed as 8560 to 9130 Btu/lb; times 0.002326 MJ/kg for 1 Btu/lb that is 19.9 to 21.2.
// Plant matter: common practice, no source: ash, volatile matter and the rest widened about the rows above.
const PRINTED_BANDS = `
  plant matter | volatile matter | 60   | 90
  plant matter | fixed carbon    | 9    | 27
  plant matter | ash             | 0.1  | 25
  plant matter | carbon          | 36   | 54
  plant matter | hydrogen        | 4.5  | 7
  plant matter | oxygen          | 32   | 48
  plant matter | nitrogen        | 0    | 1.6
  plant matter | heating value   | 15   | 21.5
  plant matter | moisture        | 0    | 70
  plant matter | char yield      | 10   | 45
  wood         | volatile matter | 74   | 82
  wood         | fixed carbon    | 17   | 23
  wood         | ash             | 0.5  | 2.2
  wood         | carbon          | 49.6 | 53.1
  wood         | hydrogen        | 5.8  | 6.7
  wood         | oxygen          | 39.8 | 43.8
  wood         | heating value   | 19.9 | 21.2
  wood         | moisture        | 36   | 58
  nut shells   | carbon          | 47.4 | 53.5
  nut shells   | hydrogen        | 5.8  | 6.7
  nut shells   | oxygen          | 35.5 | 41.6
  nut shells   | nitrogen        | 0.5  | 1.6
`;

test("every band is the printed one: material, quantity and both ends, in the printed order, and no band beside them", () => {
  // The bands are written down as fractions: 5.8 / 100 is a hair off 0.058 in binary.
  const written = (of: RangeQuantity, percent: string): number => Number(inFractions(of, percent).toPrecision(12));
  const printed = PRINTED_BANDS.trim()
    .split("\n")
    .map((line) => line.split("|").map((cell) => cell.trim()))
    .map(([feedstock, quantity = "", least = "", most = ""]) => {
      const of = quantity as RangeQuantity;
      return [feedstock, of, written(of, least), written(of, most)];
    });
  expect(typicalBands.flatMap(({ feedstock, bands }) => Object.entries(bands).map(([quantity, band]) => [feedstock, quantity, ...band]))).toEqual(
    printed,
  );
});

test("each band names what its samples were and its source", () => {
  expect(typicalBands.map(({ feedstock, called, source }) => [feedstock, called, source])).toEqual([
    ["plant matter", "untreated plant matter", "span of the materials listed, widened; common practice, no source"],
    ["wood", "most woods", "MIL-HDBK-1003/6, table 12"],
    ["nut shells", "nut shells", "Energy Sources 24 (2002) 215"],
  ]);
  expect(NO_SOURCE).toBe("common practice, no source");
  expect(typicalBands[0]).toBe(plantMatter);
});

test("shares have no unit, and the heating value is in MJ/kg", () => {
  expect(RANGE_QUANTITIES.filter((quantity) => rangeUnit(quantity) !== "")).toEqual(["heating value"]);
  expect(rangeUnit("heating value")).toBe("MJ/kg");
});

// Charring takes no moisture and no element by itself out of line, but air that leaks in burns char: only what charring
// changes is advised to look for a leak.
test.each([
  ["volatile matter", true],
  ["fixed carbon", true],
  ["ash", true],
  ["char yield", true],
  ["carbon", false],
  ["hydrogen", false],
  ["oxygen", false],
  ["nitrogen", false],
  ["moisture", false],
  ["heating value", false],
] as const)("outside its range, %s is advised to look for an air leak: %s", (quantity, leak) => {
  const above = plantMatter.bands[quantity][1] * 1.01;
  const answer = typicalRange(quantity, above, undefined);
  expect(answer).toMatch(/^outside: /);
  expect(answer.endsWith(leak ? "Check tare, basis and air leak." : "Check tare and basis.")).toBe(true);
});

test.each([
  ["a hair beyond an end, as binary arithmetic leaves it, is inside", 0.022 + 1e-15, "inside"],
  ["a trillionth beyond counts as outside from here on", 0.022 + 1e-11, "outside"],
  ["a hair below the lower end is inside", 0.005 - 1e-15, "inside"],
  ["more than that below is outside", 0.005 - 1e-11, "outside"],
])("%s", (_, value, verdict) => {
  expect(typicalRange("ash", value, "wood").split(":")[0]).toBe(verdict);
});

test("a share of exactly 1 is a share, and 100 MJ/kg is no slip of kJ", () => {
  expect(typicalRange("volatile matter", 1, undefined)).toMatch(/^outside: /);
  expect(typicalRange("volatile matter", 1.001, undefined)).toMatch(/percentage/);
  expect(typicalRange("heating value", 100, undefined)).toMatch(/^outside: /);
  expect(typicalRange("heating value", 100.1, undefined)).toMatch(/kJ/);
});
