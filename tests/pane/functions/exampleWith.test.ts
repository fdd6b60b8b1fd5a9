import { catalogue, everyFunction } from "../../../src/functions/catalogue";
import { chosenExample, exampleWith } from "../../../src/pane/functions/exampleWith";
import { searchFunctions } from "../../../src/pane/functions/search/searchFunctions";
import { searchWords } from "../../../src/pane/functions/searchWords";
import { everySubstance } from "../../../src/pane/functions/substances/everySubstance";

const definitionOf = (name: string) => {
  const found = everyFunction.find((definition) => definition.name === name);
  if (found === undefined) throw new Error(name);
  return found;
};

const exampleFor = (name: string, query: string): string => exampleWith(definitionOf(name), searchFunctions(catalogue, query)).cell;

test.each([
  ["MOLARMASS", "limestone", '=RETORT.MOLARMASS("CaCO3")'],
  ["MOLARMASS", "limstone", '=RETORT.MOLARMASS("CaCO3")'],
  ["MOLARMASS", "Bluestone", '=RETORT.MOLARMASS("CuSO4·5H2O")'],
  ["MOLARMASS", "anhydrous copper sulphate", '=RETORT.MOLARMASS("CuSO4")'],
  ["MOLARMASS", "Kalkstein", '=RETORT.MOLARMASS("CaCO3")'],
  ["THEORETICALLOSS", "loss on heating magnesite", '=RETORT.THEORETICALLOSS("MgCO3", "MgO")'],
  ["HYDRATEWATER", "how much water in epsom salt", '=RETORT.HYDRATEWATER(20, 25, 22.442, "MgSO4", 0.005)'],
  ["PURITY.FROMLOSS", "how pure is my baking soda", '=RETORT.PURITY.FROMLOSS(0.351, "NaHCO3", "Na2CO3")'],
  ["MIXTURE.FROMLOSS", "limestone and dolomite mixed", '=RETORT.MIXTURE.FROMLOSS(0.459, "CaCO3", "CaO", "CaMg(CO3)2", "CaO·MgO")'],
  ["MASSFRACTION", "how much iron is in rust", '=RETORT.MASSFRACTION("Fe2O3", "Fe")'],
  ["MASSFRACTION", "water in gypsum", '=RETORT.MASSFRACTION("CaSO4·2H2O", "H2O")'],
  ["ATOMICWEIGHT", "atomic weight of sulphur", '=RETORT.ATOMICWEIGHT("S")'],
  ["GASVOLUME", "litres of carbon dioxide", '=RETORT.GASVOLUME(1, RETORT.MOLARMASS("CO2"), 100)'],
  ["BURN.EQUATION", "burning sugar", '=RETORT.BURN.EQUATION("C12H22O11")'],
])("%s for %s shows %s", (name, query, cell) => {
  expect(exampleFor(name, query)).toBe(cell);
});

test.each([
  ["MOISTURE.WET", "moisture of limestone"],
  ["DECOMPOSITION.STEPS", "steps of table salt"],
  ["THEORETICALLOSS", "loss of table salt"],
  ["HYDRATEWATER", "water in limestone"],
])("%s keeps its own example for %s, which it cannot answer", (name, query) => {
  expect(exampleFor(name, query)).toBe(chosenExample(definitionOf(name)).cell);
});

test("an example with a substance never gives a purity above 1 or a share outside 0 to 1", () => {
  for (const substance of everySubstance) {
    const named = { substances: [{ name: "", substance }], elements: [] };
    for (const name of ["PURITY.FROMLOSS", "THEORETICALLOSS"]) {
      const { gives } = exampleWith(definitionOf(name), named);
      expect([name, substance.formula, typeof gives === "number" && gives > 0 && gives < 1]).toEqual([name, substance.formula, true]);
    }
  }
});

describe("searchWords", () => {
  const outcome = (query: string): string => searchWords.outcome(searchFunctions(catalogue, query), query);

  test("says what to try where nothing is found", () => {
    expect(outcome("zeppelin")).toBe(
      'No function answers to "zeppelin". Try what you weighed or want to know, such as moisture, ash, purity of limestone, or how long to dry; or clear the box to see all.',
    );
  });

  test("says how a mistyped word was read, and which substance goes into the examples", () => {
    expect(outcome("moisure")).toMatch(/^\d+ functions, best match first\. "moisure" was read as "moisture"\.$/);
    expect(outcome("loss on heating limestone")).toMatch(/ Put into the examples: limestone: CaCO3\.$/);
    expect(outcome("retort.brongniart formula pint weight slip")).toMatch(/^(One function|\d+ functions)/);
  });

  test("says why a function was found, with the name in the phrase", () => {
    const findings = searchFunctions(catalogue, "how much water in copper sulphate");
    expect(searchWords.foundBy(findings.found[0]?.phrase ?? "", findings)).toBe("Found by: water in copper sulphate");
    expect(searchWords.foundBy("how much {element} is in {compound}", { substances: [], elements: [] })).toBe(
      "Found by: how much an element is in a compound",
    );
  });

  test("says what stands in the example", () => {
    expect(searchWords.putIn(searchFunctions(catalogue, "purity of limestone"))).toBe("With what you searched for, limestone: CaCO3.");
    expect(searchWords.putIn(searchFunctions(catalogue, "atomic weight of lead"))).toBe("With what you searched for, Pb.");
  });
});
