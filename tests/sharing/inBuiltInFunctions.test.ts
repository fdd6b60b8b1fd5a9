import { inBuiltInFunctions } from "./inBuiltInFunctions";

const GUARDED =
  "IF(IF(ISNUMBER(B2)>ISLOGICAL(B2),(B2<=0)+(B2>1E15),1)+IF(ISNUMBER(B3)>ISLOGICAL(B3),(B3<=0)+(B3>1E15),1)," +
  'IF(ISERROR(B2),B2,IF(ISERROR(B3),B3,VALUE("moist, dry: blank, not of the right kind, or out of bounds"))),' +
  'IF((B2-25<=1E-9)+(B3>B2)+(B3<25),VALUE("vessel <= dry <= moist does not hold: swapped cells or another vessel"),' +
  'IF(B3-25<=1E-9,VALUE("dry is not above vessel: swapped cells or another vessel"),(B2-B3)/(B2-25))))';

describe("inBuiltInFunctions(cellFormula)", () => {
  it("writes a call out where it stands, behind what the function refuses", () => {
    expect(inBuiltInFunctions('=IF(B1="","",RETORT.MOISTURE.WET(25,B2,B3)*100)')).toBe(`=IF(B1="","",(${GUARDED})*100)`);
  });

  it("writes what is typed into the call without asking for it again", () => {
    expect(inBuiltInFunctions("=RETORT.HOTWEIGHING(30,0.00005)")).toBe("=30*5E-5");
  });

  it("keeps arguments of several parts together", () => {
    expect(inBuiltInFunctions("=RETORT.MOISTURE.WET(25,B2-C2,B3)")).toContain("((B2-C2)-B3)/((B2-C2)-25)");
  });

  it("writes several calls, and a call inside another", () => {
    const text = inBuiltInFunctions("=RETORT.MOISTURE.WET(25,B2,B3)+RETORT.AIRDEMAND(RETORT.AIRDEMAND(C1))");
    expect(text?.startsWith(`=(${GUARDED})+(`)).toBe(true);
    expect(text).toContain("C1/0.2314");
    expect(text).not.toContain("RETORT");
  });

  it.each(["=RETORT.CHARYIELD(B1,B2,B3)", "=RETORT.CHARYIELD(B1,B2,B3,)", '=RETORT.CHARYIELD(B1,B2,B3,"")'])(
    "writes %s as without the argument that is left out",
    (cellFormula) => {
      expect(inBuiltInFunctions(cellFormula)).toMatch(/,\(B3-IF\(ISNUMBER\(B1\),B1,0\)\)\/\(B2-IF\(ISNUMBER\(B1\),B1,0\)\)\)\)$/);
    },
  );

  it("writes an optional argument of empty text as left out; a required one is refused with the function's own sentence", () => {
    expect(inBuiltInFunctions('=RETORT.AIRDEMAND(2,"")')).toBe("=2/0.2314");
    expect(inBuiltInFunctions('=RETORT.READING.U(0.01,"","",TRUE)')).toBe("=SQRT(0^2+IF(TRUE,2,1)*(0.01^2/12+0^2/3))");
    expect(inBuiltInFunctions('=RETORT.AIRDEMAND("")')).toBe(
      '=VALUE("oxygen: nothing here (blank or 0). Give grams of oxygen per gram of fuel; a fuel that takes up none needs no air.")',
    );
  });

  it("never counts a required argument that is left out as 0", () => {
    expect(inBuiltInFunctions("=RETORT.MOISTURE.WET(B1,B2)")).toBe('=VALUE("dry: nothing here (blank or 0). Give grams.")');
    expect(inBuiltInFunctions("=RETORT.MOISTURE.WET(,B2,B3)")).toMatch(/^=VALUE\("vessel: nothing here/);
  });

  it("leaves a choice that an expression makes to the cell", () => {
    const text = inBuiltInFunctions('=RETORT.VOLATILEMATTER(B1,B2,B3,0.05,"dr"&"y")');
    expect(text).toContain('IF(TRIM(("dr"&"y"))="dry",(1-0.05),1)');
  });

  it("knows the stored form", () => {
    expect(inBuiltInFunctions("=[2]!_xldudf_RETORT_MOISTURE_WET(25,B2,B3)")).toBe(`=${GUARDED}`);
  });

  it("leaves a cell formula without calls as it is", () => {
    expect(inBuiltInFunctions('="RETORT.MOISTURE.WET("&A1')).toBe('="RETORT.MOISTURE.WET("&A1');
  });

  it("writes a chemical formula that is typed into the call as the sum over its atoms", () => {
    expect(inBuiltInFunctions('=RETORT.MOLARMASS("H2O")')).toBe("=(2*1.008+1*15.999)");
  });

  it.each([
    "=RETORT.MOLARMASS(A1)",
    "=RETORT.DRYING.END(A1:A9,B1:B9)",
    "=RETORT.GONE(1)",
    "=RETORT.MOISTURE.WET(1,2,3,4)",
    "=RETORT.AIRDEMAND(Oxygen)",
  ])("gives nothing for %s, which cannot be written out", (cellFormula) => {
    expect(inBuiltInFunctions(cellFormula)).toBeUndefined();
  });
});
