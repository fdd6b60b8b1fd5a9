import { KNOWN_STEPS, SOLID_NAMES } from "../../../src/chemistry/decompositionSteps";
import { calculated, PERCENT, published } from "../../published/Published";
import { asTable } from "../call";
import type { FunctionEvidence } from "../evidenceFiles";
import { law, numberBy } from "../laws/Law";

const CIAAW = "atoms counted by hand, weights of CIAAW 2021 (Prohaska et al., Pure Appl. Chem. 94 (2022) 573)";
const OXALATE = '=RETORT.DECOMPOSITION.STEPS("CaC2O4.H2O")';
const of = (solid: string): string => `=RETORT.DECOMPOSITION.STEPS("${solid}")`;

export const evidence: FunctionEvidence = {
  name: "DECOMPOSITION.STEPS",
  answer: ["Steps of the decomposition", ""],
  published: [
    ...published(
      "read as printed",
      "a balance maker's application note on calcium oxalate monohydrate: 12.33, 19.17 and 30.12 %; 87.67, 68.50, 38.38 left",
      [
        [OXALATE, "12.33", { ...PERCENT, at: [1, 2] }],
        [OXALATE, "19.17", { ...PERCENT, at: [2, 2] }],
        [OXALATE, "30.12", { ...PERCENT, at: [3, 2] }],
        [OXALATE, "87.67", { ...PERCENT, at: [1, 4] }],
        [OXALATE, "68.50", { ...PERCENT, at: [2, 4] }],
        [OXALATE, "38.38", { ...PERCENT, at: [3, 4] }],
      ],
    ),
    ...published("worked by hand", "CO is 28.010 of 128.096; 2 and 1 H2O are 36.030 and 18.015 of 249.677; CO2 is 44.009 of 184.399", [
      [OXALATE, "0.218664", { at: [2, 3] }],
      [of("bluestone"), "0.144306", { at: [1, 2] }],
      [of("bluestone"), "0.144306", { at: [2, 2] }],
      [of("CuSO4·5H2O"), "0.0721532", { at: [3, 2] }],
      [of("dolomite"), "0.238662", { at: [1, 2] }],
      [of("dolomite"), "0.238662", { at: [2, 2] }],
    ]),
    ...calculated("decomposition.mjs", CIAAW, [
      [of("gypsum"), "0.156958", "gypsum to hemihydrate", { at: [1, 2] }],
      [of("Al4Si4O10(OH)8"), "0.13957", "kaolinite to metakaolin", { at: [1, 2] }],
      [of("Fe2O3·H2O"), "0.10138", "goethite to Fe2O3", { at: [1, 2] }],
      [of("Malachite"), "0.28051", "malachite to CuO", { at: [1, 2] }],
      [of("limestone"), "0.439712", "CaCO3 to CaO", { at: [1, 2] }],
    ]),
    ...published("read as printed", "Clays and Clay Minerals 2020, doi 10.1007/s42860-020-00082-w: commonly between 400 and 700 °C", [
      [of("kaolin"), "400 to 700 °C", { at: [1, 5] }],
    ]),
    ...published("read as printed", "Frost and Weier, Thermochim. Acta 409 (2004) 79, abstract: steps at 162, 479 and 684 °C, high resolution", [
      [OXALATE, "near 162 °C", { at: [1, 5] }],
      [OXALATE, "near 479 °C", { at: [2, 5] }],
    ]),
    // Printed as 360 to 450 K.
    ...published("read as printed", "Wu and Shih, Thermochim. Acta 223 (1993) 177, abstract", [[of("NaHCO3"), "87 to 177 °C", { at: [1, 5] }]]),
  ],
  laws: [
    law("DECOMPOSITION.STEPS", "THEORETICALLOSS")(
      "the losses of all steps sum to the theoretical loss, and what is left is the product of the steps",
      (call) => {
        for (const { start, steps } of KNOWN_STEPS) {
          const rows = asTable(call("DECOMPOSITION.STEPS", start), start).slice(1) as [string, string, number, number, number, string][];
          expect(rows).toHaveLength(steps.length);
          const whole = numberBy(call)("THEORETICALLOSS", start, steps[steps.length - 1]?.[0]);
          expect(rows.reduce((sum, row) => sum + row[2], 0)).toBeCloseTo(whole, 12);
          expect(rows.reduce((left, row) => left * (1 - row[3]), 1)).toBeCloseTo(1 - whole, 12);
          expect(rows[rows.length - 1]?.[4]).toBeCloseTo(1 - whole, 12);
          for (const [label, , lost, ofStep] of rows) expect([label, lost > 0, ofStep >= lost - 1e-12]).toEqual([label, true, true]);
        }
      },
    ),
    law("DECOMPOSITION.STEPS", "MOLARMASS")("loses what its words say leaves, but for gases that differ with the conditions", (call) => {
      for (const { start, steps } of KNOWN_STEPS) {
        const rows = asTable(call("DECOMPOSITION.STEPS", start), start).slice(1) as [string, string, number, number, number, string][];
        rows.forEach((row, index) => {
          const words = (steps[index]?.[1] ?? "").replace(", without air", "");
          if (!/^[\dA-Z. ]+(?: and [\dA-Z. ]+)*$/.test(words) || words.includes("SO")) return;
          const mass = words.split(" and ").reduce((sum, term) => {
            const [count, formula] = term.includes(" ") ? term.split(" ") : ["1", term];
            return sum + Number(count) * numberBy(call)("MOLARMASS", formula);
          }, 0);
          // Malachite and hydromagnesite are written for one formula of the start, like the rest.
          expect([row[0], row[2] * numberBy(call)("MOLARMASS", start)]).toEqual([row[0], expect.closeTo(mass, 3)]);
        });
      }
    }),
    law("DECOMPOSITION.STEPS")("answers a name as its formula, and an intermediate with the steps from there on", (call) => {
      for (const [name, formula] of Object.entries(SOLID_NAMES))
        expect(call("DECOMPOSITION.STEPS", name.toUpperCase())).toEqual(call("DECOMPOSITION.STEPS", formula));
      const [, first] = asTable(call("DECOMPOSITION.STEPS", "plaster of paris"), "plaster");
      expect(first?.[2]).toBeCloseTo(9.0075 / 145.1415, 6);
      expect(asTable(call("DECOMPOSITION.STEPS", "CuSO4"), "CuSO4")).toHaveLength(2);
    }),
  ],
  refusals: [
    ["=RETORT.DECOMPOSITION.STEPS()", "#VALUE! formula: nothing here (blank or 0). Type a chemical formula such as CaCO3."],
    ["=RETORT.DECOMPOSITION.STEPS(100)", "#VALUE! formula: 100 is not a chemical formula. Type a chemical formula such as CaCO3."],
    [
      '=RETORT.DECOMPOSITION.STEPS("NaCl")',
      '#N/A formula: no steps are listed for "NaCl". Use THEORETICALLOSS with what is left; the reference page names what is listed.',
    ],
    [
      '=RETORT.DECOMPOSITION.STEPS("CaCo3")',
      '#VALUE! formula: "Co3" at character 3 of "CaCo3" reads as cobalt. Type CO3 for carbon and oxygen, or (Co)3 if so meant.',
      "letter for digit or wrong capital",
    ],
  ],
};
