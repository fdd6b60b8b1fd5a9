import fc from "fast-check";
import { plantMatter, RANGE_QUANTITIES, typicalBands } from "../../src/sense/typicalBands";
import { FEEDSTOCKS, rangeEvidence, typicalRange } from "../../src/sense/typicalRange";

const given = fc.oneof(
  fc.constantFrom<number | string | boolean | undefined>(...RANGE_QUANTITIES, ...FEEDSTOCKS, "", "bamboo", undefined, true, 0, 1, -1, Infinity),
  fc.double(),
  fc.string(),
);

test("TYPICALRANGE answers whatever it is given in words", () => {
  fc.assert(
    fc.property(given, given, given, (quantity, value, feedstock) => {
      expect(typicalRange(quantity, value, feedstock).length).toBeGreaterThan(10);
    }),
    { numRuns: 2000 },
  );
});

const bands = typicalBands.flatMap(({ feedstock, bands: known }) =>
  Object.entries(known).map(([quantity, [least, most]]) => [quantity, feedstock, least, most] as const),
);

test.each(bands)("%s of %s: inside from %s to %s, both ends counted, outside beyond", (quantity, feedstock, least, most) => {
  const verdict = (value: number): string => typicalRange(quantity, value, feedstock).split(" ")[0] ?? "";
  expect(verdict(most)).toBe("inside:");
  expect(verdict((least + most) / 2)).toBe("inside:");
  expect(verdict(most * 1.001)).toBe("outside:");
  if (least > 0) {
    expect(verdict(least)).toBe("inside:");
    expect(verdict(least * 0.999)).toBe("outside:");
  }
});

test("the general band knows every quantity", () => {
  expect(Object.keys(plantMatter.bands).sort()).toEqual([...RANGE_QUANTITIES].sort());
});

test("no two feedstocks share a word", () => {
  const words = FEEDSTOCKS.map((word) => word.toLowerCase());
  expect(words).toEqual([...new Set(words)]);
});

test("the evidence for a quantity lists its bands and what is printed; an unknown word has none", () => {
  expect(rangeEvidence(" Heating Value ")).toEqual([
    "bands of heating value: plant matter 15 to 21.5; wood 19.9 to 21.2",
    "printed: bagasse 16.29; coconut shell 20.5; corn cob 15.65; corn stalks 16.54; groundnut shell 18.65; millet husk 17.48; rice husk 15.29; rice straw 16.78; subabul wood 19.78; wheat straw 17.99",
  ]);
  expect(rangeEvidence("moisture")).toEqual(["bands of moisture: plant matter 0 to 0.7; wood 0.36 to 0.58"]);
  expect(rangeEvidence("fibre")).toEqual([]);
});
