import { characterNumber, counted, listed, plainNumber, quoted, SIZE_FIGURES, withUnit } from "../../src/problems/quoted";

test.each([
  [0.1 + 0.2, undefined, "0.3"],
  [1 / 3, undefined, "0.333333333333333"],
  [123456789012345, undefined, "123456789012345"],
  [1e21, undefined, "1e+21"],
  [-0.25, undefined, "-0.25"],
  [0.0123456, SIZE_FIGURES, "0.0123"],
  [0.0129951, 4, "0.013"],
  [1234.567, SIZE_FIGURES, "1230"],
  [12, 1, "10"],
])("plainNumber(%d, %s) is %s", (value, figures, text) => {
  expect(plainNumber(value, figures)).toBe(text);
});

test("withUnit parts the value from its unit, and stands alone where there is none", () => {
  expect(withUnit(35, "g")).toBe("35 g");
  expect(withUnit(0.1 + 0.2, "")).toBe("0.3");
  expect(withUnit(12.3456, "min", SIZE_FIGURES)).toBe("12.3 min");
});

test("quoted keeps 40 characters of a text, half from each end, and shows numbers and truths bare", () => {
  expect(quoted("a".repeat(40))).toBe(`"${"a".repeat(40)}"`);
  expect(quoted(`${"a".repeat(20)}x${"b".repeat(20)}`)).toBe(`"${"a".repeat(20)}…${"b".repeat(20)}"`);
  expect([quoted(0.1 + 0.2), quoted(true), quoted(false)]).toEqual(["0.3", "TRUE", "FALSE"]);
});

test("counted and listed write numbers of things and words to choose from", () => {
  expect([counted(0, "row"), counted(1, "row"), counted(2, "row")]).toEqual(["0 rows", "1 row", "2 rows"]);
  expect(listed(["wet", "dry"])).toBe('"wet", "dry"');
});

test("characterNumber counts from 1, and a character of two UTF-16 units once", () => {
  expect(characterNumber("CaO", 0)).toBe(1);
  expect(characterNumber("𝟤CaO", 2)).toBe(2);
});
