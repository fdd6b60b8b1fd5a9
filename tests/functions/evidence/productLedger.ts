import fc from "fast-check";
import { seededNormal } from "../../numerics/seededNormal";
import { published } from "../../published/Published";
import { asTable } from "../call";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { figureBy, law } from "../laws/Law";
import { scatterOf } from "../laws/scatter";

const WITH_GAS = "=RETORT.PRODUCT.LEDGER(200, 0.125, 50, 75, 70, 0.05, 0.6)";
const BY_DIFFERENCE = "=RETORT.PRODUCT.LEDGER(200, 0.125, 50, 75)";
const MOIST = "=RETORT.PRODUCT.LEDGER(120, 0.25, 31.5, 60, , 0.02, 0.7)";

const feedOf = fc.record({
  feed: between(50, 500),
  moisture: between(0, 0.4),
  char: between(0.1, 0.5),
  liquids: between(0.01, 0.4),
  gas: between(0.01, 0.3),
});

export const evidence: FunctionEvidence = {
  name: "PRODUCT.LEDGER",
  answer: ["Ledger of the products", ""],
  published: [
    ...published(
      "worked by hand",
      "200 g with 1/8 of water: 25 g water, 175 g dry; 45 g of water in 75 g of liquids, 20 g beyond the feed's; 5 g lacking",
      [
        [WITH_GAS, "175", { at: ["Dry feed", 1] }],
        [WITH_GAS, "0.285714", { at: ["Char", 2] }],
        [WITH_GAS, "45", { at: ["of them water", 1] }],
        [WITH_GAS, "20", { at: ["Water formed", 1] }],
        [WITH_GAS, "50", { at: ["Liquids less", 1] }],
        [WITH_GAS, "195", { at: ["Products", 1] }],
        [WITH_GAS, "5", { at: ["Unaccounted", 1] }],
        [WITH_GAS, "0.1", { at: ["its standard", 1] }],
        [BY_DIFFERENCE, "75", { at: ["Gas, by", 1] }],
        [BY_DIFFERENCE, "0.428571", { at: ["Gas, by", 2] }],
      ],
    ),
    ...published("worked by hand", "120 g with a quarter of water: 30 g and 90 g dry; 42 g of water in 60 g; gas 120 - 31.5 - 60; u sqrt(3)", [
      [MOIST, "0.35", { at: ["Char", 2] }],
      [MOIST, "12", { at: ["Water formed", 1] }],
      [MOIST, "28.5", { at: ["Gas, by", 1] }],
      [MOIST, "0.0346410", { at: ["its standard", 1] }],
    ]),
  ],
  laws: [
    law("PRODUCT.LEDGER")("says in words what its figures show", (call) => {
      const says = (...raw: readonly unknown[]): unknown => asTable(call("PRODUCT.LEDGER", ...raw), "PRODUCT.LEDGER")[13]?.[1];
      expect(says(200, 0.125, 50, 75, 74.85, 0.1)).toBe("closes within 2 u: 0.15 g unaccounted");
      expect(says(200, 0.125, 50, 75, 70)).toBe("no verdict without u: give the standard uncertainty of one mass");
      expect(says(200, 0.125, 50, 150.05, null, 0.05)).toBe("gas by difference, not told from none: char and liquids make up the feed within 2 u");
      expect(says(200, 0.1, 60, "none", 120, 1)).toBe(
        "open: 20 g went unweighed, more than 2 u; look for leaks, films in tube and lid, and gas not measured; 20 g less water caught than the feed brought: check moisture and receivers",
      );
      expect(says(200, 0.2, 50, 60, 90, 1, 0.5)).toMatch(/^closes .*; 10 g less water caught than the feed brought/);
      expect(figureBy(call)("Unaccounted", 1, "PRODUCT.LEDGER", 200, 0.2, 50, 60, 90, 1, 0.5)).toBe(0);
    }),
    law("PRODUCT.LEDGER")("char, liquids, gas and what is unaccounted are the feed, and on dry feed the made products are 1", (call) => {
      fc.assert(
        fc.property(feedOf, fc.boolean(), ({ feed, moisture, char, liquids, gas }, isMeasured) => {
          const dry = feed * (1 - moisture);
          const given = [feed, moisture, dry * char, dry * liquids + feed * moisture * 0.9, isMeasured ? dry * gas * 0.3 : null, null, 0.5];
          const at = (label: string, column: number): number => figureBy(call)(label, column, "PRODUCT.LEDGER", ...given);
          expect(at("Char", 1) + at("Liquids caught", 1) + at("Gas", 1) + at("Unaccounted", 1)).toBeCloseTo(feed, 8);
          expect(at("Char", 2) + at("Liquids less", 2) + at("Gas", 2) + at("Unaccounted", 2)).toBeCloseTo(1, 10);
          expect(at("Water formed", 1) + at("of it water", 1)).toBeCloseTo(at("of them water", 1), 8);
        }),
      );
    }),
    law("PRODUCT.LEDGER")("what is unaccounted scatters by its uncertainty when each mass scatters by u", (call) => {
      const [normal, u, runs] = [seededNormal(20_270_211), 0.05, 4000];
      for (const gas of [60, null]) {
        const sd = scatterOf(runs, () =>
          figureBy(call)(
            gas === null ? "Gas" : "Unaccounted",
            1,
            "PRODUCT.LEDGER",
            ...[200, 0.125, 50, 70].map((mass, place) => (place === 1 ? mass : mass + u * normal())),
            gas === null ? null : gas + u * normal(),
          ),
        );
        const stated = figureBy(call)("its standard", 1, "PRODUCT.LEDGER", 200, 0.125, 50, 70, gas, u);
        expect(stated).toBeCloseTo(u * Math.sqrt(gas === null ? 3 : 4), 12);
        expect(Math.abs(sd / stated - 1)).toBeLessThan(0.05);
      }
    }),
    law("PRODUCT.LEDGER")("is as many rows whatever is left out", (call) => {
      const rows = (...raw: readonly unknown[]): number => asTable(call("PRODUCT.LEDGER", ...raw), "PRODUCT.LEDGER").length;
      expect([rows(200, 0.1, 50, "none"), rows(200, 0, 50, 75, 60), rows(200, 0.1, 50, 75, 60, 0.1, 0.5)]).toEqual([14, 14, 14]);
      expect(figureBy(call)("Gas", 1, "PRODUCT.LEDGER", 200, 0.1, 50, "none")).toBe(150);
    }),
  ],
  refusals: [
    ["=RETORT.PRODUCT.LEDGER(, 0.125, 50, 75)", "#VALUE! feed: nothing here (blank or 0). Give grams."],
    [
      "=RETORT.PRODUCT.LEDGER(200, 0.125, 50, 0)",
      '#VALUE! liquids: nothing here (blank or 0). Give grams, or type "none" if there was none.',
      "0 from an empty cell",
    ],
    ['=RETORT.PRODUCT.LEDGER("wet", 0.125, 50, 75)', '#VALUE! feed: "wet" is not a weighing. Give grams.'],
    [
      "=RETORT.PRODUCT.LEDGER(200, 12.5, 50, 75)",
      "#VALUE! moisture: 12.5 is not below 1 and looks like a percentage. Type a fraction of the moist sample, such as 0.08 or 8%; 0 if dry.",
      "percentage for a fraction",
    ],
    [
      "=RETORT.PRODUCT.LEDGER(200, 0.125, 50, 75, 80, 0.05)",
      "#VALUE! feed: 200 g is less than the products together, 205 g, by more than 2 u, 0.2 g. Check tares, swapped cells and water from outside.",
      "figures that cannot all be of one sample",
    ],
    [
      "=RETORT.PRODUCT.LEDGER(50, 0.125, 200, 75)",
      "#VALUE! feed: 50 g is less than the products together, 275 g. Check tares and swapped cells, or give u.",
      "swapped cells",
    ],
    [
      '=RETORT.PRODUCT.LEDGER(200, 0.5, 150, "none")',
      "#VALUE! char: 150 g is more than the dry feed, 100 g. Check for swapped cells, a vessel weighed along, and the moisture.",
      "figures that cannot all be of one sample",
    ],
    [
      "=RETORT.PRODUCT.LEDGER(200, 0.125, 50, 75, , 50)",
      "#N/A u: 50 g is more than a tenth of the sample, 200 g, so the loss is not known. Check the grams, or take more sample.",
      "other unit of mass, density or pressure",
    ],
    ["=RETORT.PRODUCT.LEDGER(#N/A, 0.125, 50, 75)", "#N/A feed: the cell given here shows #N/A. Mend that cell first."],
  ],
};
