import { plantMatter, typicalBands } from "../../src/sense/typicalBands";
import { typicalRange } from "../../src/sense/typicalRange";
import { typicalRows, type TypicalRow } from "../../src/sense/typicalRows";
import { convertBasis } from "../../src/residue/convertBasis";
import { halfLastDigit } from "./halfLastDigit";

const rowOf = (feedstock: string): TypicalRow => typicalRows.find((row) => row.feedstock === feedstock) as TypicalRow;

// International-table Btu, 2.326 kJ/kg for 1 Btu/lb (exact).
test("the heating values of wood in MIL-HDBK-1003/6, 8560 to 9130 Btu/lb, are the band of 19.9 to 21.2 MJ/kg", () => {
  const [least, most] = typicalBands.find(({ feedstock }) => feedstock === "wood")?.bands["heating value"] ?? [0, 0];
  expect(Math.abs(8560 * 0.002326 - least)).toBeLessThanOrEqual(halfLastDigit("19.9"));
  expect(Math.abs(9130 * 0.002326 - most)).toBeLessThanOrEqual(halfLastDigit("21.2"));
});

// The same table as received (trmiles.com/alkali/fuelsc2.html), carried to dry by the moisture it prints.
test.each([
  ["red oak sawdust", "volatile matter", 76.35, 11.45],
  ["red oak sawdust", "fixed carbon", 11.92, 11.45],
  ["red oak sawdust", "carbon", 44.24, 11.45],
  ["fir mill waste", "volatile matter", 30.38, 63],
  ["fir mill waste", "fixed carbon", 6.47, 63],
  ["alder and fir sawdust", "carbon", 24.17, 52.63],
  ["Christmas trees", "volatile matter", 46.02, 37.81],
  ["Christmas trees", "ash", 3.24, 37.81],
] as const)("%s, %s: the row kept here is the as-received figure %s %% on the dry basis", (feedstock, quantity, received, moisture) => {
  const dry = convertBasis(received / 100, "as received", "dry", { moistureReceived: moisture / 100 });
  // A tenth of a per cent: the rows are kept to one decimal for shares above 5 %.
  expect(Math.abs(dry - (rowOf(feedstock).values[quantity] ?? 0))).toBeLessThan(0.001);
});

// A checksum on the copied table: what is printed must close.
test.each(typicalRows.filter(({ values }) => values.ash !== undefined).map((row) => [row.feedstock, row] as const))(
  "%s: volatile matter, fixed carbon and ash close to 1, and so do the elements and ash",
  (_feedstock, { values }) => {
    const sum = (...quantities: (keyof typeof values)[]): number => quantities.reduce((total, quantity) => total + (values[quantity] ?? 0), 0);
    expect(Math.abs(sum("volatile matter", "fixed carbon", "ash") - 1)).toBeLessThan(0.0011);
    expect(Math.abs(sum("carbon", "hydrogen", "oxygen", "nitrogen", "ash") - 1)).toBeLessThan(0.005);
  },
);

test.each(typicalRows.map(({ feedstock, values }) => [feedstock, values] as const))(
  "every printed figure of %s lies inside the band for plant matter",
  (feedstock, values) => {
    for (const [quantity, value] of Object.entries(values))
      expect(typicalRange(quantity, value === 0 ? 1e-9 : value, feedstock)).toMatch(/^inside: /);
  },
);

// Register of published errors: the copied paper gives coir pith a heating value that does not go with its carbon, and
// a cotton gin waste that sums to 103.7 %.
test("neither the heating value of coir pith nor cotton gin waste is kept", () => {
  expect(rowOf("coir pith").values["heating value"]).toBeUndefined();
  expect(typicalRows.some(({ feedstock }) => feedstock.includes("gin"))).toBe(false);
});

test("every other band lies within the one for plant matter", () => {
  for (const { bands } of typicalBands)
    for (const [quantity, [least, most]] of Object.entries(bands) as [keyof typeof bands, readonly [number, number]][]) {
      expect(least).toBeGreaterThanOrEqual(plantMatter.bands[quantity][0]);
      expect(most).toBeLessThanOrEqual(plantMatter.bands[quantity][1]);
    }
});
