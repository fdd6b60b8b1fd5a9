import { MF } from "mf-parser";
import { everySubstance } from "../../../src/pane/functions/substances/everySubstance";
import { answerOf as call } from "../../functions/call";

// mf-parser works its weights out from isotope masses and abundances, and so differs by up to 150 parts in a million.
const BOTH_WEIGHTS = 2e-4;

const massOutside = (formula: string): number =>
  formula
    .split("·")
    .map((part) => {
      const [, count = "", salt = ""] = /^([\d.]*)(.+)$/.exec(part) ?? [];
      return (count === "" ? 1 : Number(count)) * new MF(salt).getInfo().mass;
    })
    .reduce((sum, mass) => sum + mass, 0);

test("there are about 150 substances or more, each name standing for one", () => {
  expect(everySubstance.length).toBeGreaterThanOrEqual(150);
  const names = everySubstance.flatMap(({ en }) => en.toLowerCase().split(", "));
  expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
});

test.each(everySubstance.map((substance) => [substance.en.split(",")[0], substance] as const))(
  "%s is read, with the mass of another library",
  (_, { formula }) => {
    const mass = call("MOLARMASS", formula) as number;
    expect(Math.abs(mass / massOutside(formula) - 1)).toBeLessThan(BOTH_WEIGHTS);
  },
);

test.each(everySubstance.filter(({ residue }) => residue !== undefined).map((substance) => [substance.formula, substance.residue] as const))(
  "%s leaves %s on heating",
  (formula, residue) => {
    const loss = call("THEORETICALLOSS", formula, residue) as number;
    expect(loss).toBeGreaterThan(0);
    expect(loss).toBeLessThan(1);
  },
);

// Relative molecular masses as bottles and handbooks print them, from memory.
test.each([
  ["limestone", 100.09],
  ["quicklime", 56.08],
  ["slaked lime", 74.09],
  ["bluestone", 249.69],
  ["gypsum", 172.17],
  ["plaster of Paris", 145.15],
  ["washing soda", 286.14],
  ["soda ash", 105.99],
  ["baking soda", 84.01],
  ["epsom salt", 246.47],
  ["borax", 381.37],
  ["alum", 474.39],
  ["kaolin", 258.16],
  ["dolomite", 184.4],
  ["magnesite", 84.31],
  ["siderite", 115.85],
  ["malachite", 221.12],
  ["sugar", 342.3],
  ["limonene", 136.23],
  ["urea", 60.06],
  ["lye", 40],
  ["saltpetre", 101.1],
])("%s has the mass that its bottle prints, %d", (name, printed) => {
  const substance = everySubstance.find(({ en }) => en.split(", ").includes(name));
  expect(call("MOLARMASS", substance?.formula) as number).toBeCloseTo(printed, 1);
});
