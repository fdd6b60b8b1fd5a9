import { storedFormula, typedFormula } from "../../../src/xlsx/formulas/storedFormula";

test.each([
  ["=RETORT.MOISTURE.WET(A1,B1,C1)*2", "_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)*2"],
  ['=RETORT.VOLATILEFRACTION("tared",B1,C1)', '_xldudf_RETORT_VOLATILEFRACTION("tared",B1,C1)'],
  ['="RETORT.MOISTURE.WET("&A1', '"RETORT.MOISTURE.WET("&A1'],
  ["=SUM(A1:A3)+'My run'!B2", "SUM(A1:A3)+'My run'!B2"],
  ["=IFNA(XLOOKUP(A1,B:B,C:C),0)", "_xlfn.IFNA(_xlfn.XLOOKUP(A1,B:B,C:C),0)"],
  ["=SORT(FILTER(A1:A9,B1:B9>0))", "_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:A9,B1:B9>0))"],
  ["=LET(x,A1,y,x*2,x+y)", "_xlfn.LET(_xlpm.x,A1,_xlpm.y,_xlpm.x*2,_xlpm.x+_xlpm.y)"],
  ["=MAP(A1:A3,LAMBDA(v,v*rate))", "_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.v,_xlpm.v*rate))"],
])("%s is stored as %s and read back", (typed, stored) => {
  expect(storedFormula(typed)).toBe(stored);
  expect(typedFormula(stored)).toBe(typed);
});

test("any letter case is stored in capitals", () => {
  expect(storedFormula("=retort.moisture.wet(A1,B1,C1)")).toBe("_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)");
});

test("a plain name written by another program is read as it stands", () => {
  expect(typedFormula("RETORT.MOISTURE.WET(A1,B1,C1)")).toBe("=RETORT.MOISTURE.WET(A1,B1,C1)");
});
