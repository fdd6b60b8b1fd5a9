import { catalogue } from "../../../src/functions/catalogue";
import { formulaNamed } from "../../../src/pane/functions/search/formulaNamed";
import { searchFunctions } from "../../../src/pane/functions/search/searchFunctions";

test.each([
  ["CaCO3", "CaCO3", "mineral"],
  ["caco3", "CaCO3", "mineral"],
  ["nacl", "NaCl", "other"],
  ["CuSO4.5H2O", "CuSO4·5H2O", "hydrate"],
  ["CdSO4.4H2O", "CdSO4.4H2O", "hydrate"],
  ["Ba(NO3)2", "Ba(NO3)2", "other"],
])("%s in a search is the formula %s, a %s", (word, formula, kind) => {
  expect(formulaNamed(word)).toMatchObject({ formula, kind });
});

test.each(["RSD", "TGA", "TOC", "no", "co", "Is", "Cu", "Q", "B2", "dry", "in", "UNBALANCED(", "H/C"])("%s in a search is no formula", (word) => {
  expect(formulaNamed(word)).toBeUndefined();
});

test("a formula in a search goes into the example, and two names of one substance count once", () => {
  const { substances } = searchFunctions(catalogue, "loss on heating CaCO3, or chalk?");
  expect(substances.map(({ substance }) => substance.formula)).toEqual(["CaCO3"]);
});
