import { everyLine, printedLimit } from "../../chemistry/print/printedWeights";
import { published } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { law, numberBy } from "../laws/Law";

export const evidence: FunctionEvidence = {
  name: "ATOMICWEIGHT",
  answer: ["Atomic weight", "g/mol"],
  published: [
    ...published("read as printed", "CIAAW 2021 (Prohaska et al., Pure Appl. Chem. 94 (2022) 573), table 1", [
      ['=RETORT.ATOMICWEIGHT("N")', "14.007"],
      ['=RETORT.ATOMICWEIGHT("Ca")', "40.078"],
      ['=RETORT.ATOMICWEIGHT("Ca", "limit")', "0.004"],
      ['=RETORT.ATOMICWEIGHT("Pb", "limit")', "1.1"],
      ['=RETORT.ATOMICWEIGHT("H", "interval")', "[1.00784, 1.00811]"],
      ['=RETORT.ATOMICWEIGHT("Na")', "22.98976928"],
      ['=RETORT.ATOMICWEIGHT("Na", "limit")', "0.00000002"],
      ['=RETORT.ATOMICWEIGHT("Sn", "name")', "tin"],
      ['=RETORT.ATOMICWEIGHT("aluminum")', "26.9815384"],
      ['=RETORT.ATOMICWEIGHT("Sulphur", "limit")', "0.02"],
    ]),
    ...published("read as printed", "AME 2020 (Wang et al., Chin. Phys. C 45 (2021) 030003), table I", [
      ['=RETORT.ATOMICWEIGHT("D")', "2.014101778"],
      ['=RETORT.ATOMICWEIGHT("[13C]")', "13.003354835"],
      ['=RETORT.ATOMICWEIGHT("C-13")', "13.003354835"],
      ['=RETORT.ATOMICWEIGHT("Carbon-13")', "13.003354835"],
      ['=RETORT.ATOMICWEIGHT("2H")', "2.014101778"],
      ['=RETORT.ATOMICWEIGHT("D", "name")', "hydrogen-2"],
    ]),
  ],
  laws: [
    law("ATOMICWEIGHT")("is the printed value, limit, interval and name of every element, from another transcription", (call) => {
      expect(everyLine.length).toBe(84);
      for (const { symbol, name, value, interval } of everyLine) {
        for (const asked of [symbol, name, name.toUpperCase(), ` ${symbol} `]) expect(numberBy(call)("ATOMICWEIGHT", asked)).toBe(value);
        expect(numberBy(call)("ATOMICWEIGHT", symbol, "limit")).toBeCloseTo(printedLimit(symbol), 14);
        expect(call("ATOMICWEIGHT", symbol, "name")).toBe(name);
        if (interval !== "") expect(call("ATOMICWEIGHT", symbol, "interval")).toBe(interval.replace(",", ", "));
      }
    }),
    law("ATOMICWEIGHT", "MOLARMASS")("is the molar mass of the symbol alone", (call) => {
      for (const { symbol } of everyLine) expect(numberBy(call)("ATOMICWEIGHT", symbol)).toBe(numberBy(call)("MOLARMASS", symbol));
    }),
  ],
  refusals: [
    ["=RETORT.ATOMICWEIGHT()", "#VALUE! symbol: nothing here (blank or 0). Type a symbol such as Ca."],
    ["=RETORT.ATOMICWEIGHT(20)", "#VALUE! symbol: 20 is not an element. Type a symbol such as Ca."],
    ['=RETORT.ATOMICWEIGHT("CA")', '#VALUE! symbol: no element "CA". Capitals matter: type Ca.', "letter for digit or wrong capital"],
    ['=RETORT.ATOMICWEIGHT("CaO")', '#VALUE! symbol: no element "CaO". Type a symbol such as Ca, or a name; for a compound use MOLARMASS.'],
    [
      '=RETORT.ATOMICWEIGHT("Tc")',
      "#VALUE! symbol: technetium (Tc) has no standard atomic weight, so no molar mass follows. Leave it out or use one isotope's mass.",
    ],
    ['=RETORT.ATOMICWEIGHT("Ca", "interval")', "#N/A symbol: calcium (Ca) has one standard value, not an interval. Ask for its limit."],
    ['=RETORT.ATOMICWEIGHT("13C", "limit")', "#N/A symbol: 13C is one isotope, whose mass is known to better than 1e-7 g/mol. Ask for its value."],
    ['=RETORT.ATOMICWEIGHT("Ca", "u")', '#VALUE! what: "u" is not one of "value", "limit", "interval", "name".'],
  ],
};
