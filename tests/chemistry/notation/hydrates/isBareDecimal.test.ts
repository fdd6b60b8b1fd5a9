import { isBareDecimal } from "../../../../src/chemistry/notation/hydrates/hydrateDot";

// Wuestite is listed as Fe0.947O (NIST-JANAF tables, from memory); benzene and the like crystallise along with salts, C9H9 does not.
test.each([
  ["Fe.947O", 2, true],
  ["FeO.947", 3, false],
  ["C.947O", 1, false],
  ["Na·2C9H9", 2, false],
  ["Na.2C9H9", 2, true],
  ["CH3COONa.3H2O", 8, false],
])("the mark of %s at %i is a decimal without its 0: %p", (text, mark, is) => {
  expect(isBareDecimal(text, mark)).toBe(is);
});
