import { inBuiltInFunctions } from "../../src/sharing/inBuiltInFunctions";

describe("inBuiltInFunctions(cellFormula)", () => {
  it("writes a call out where it stands", () => {
    expect(inBuiltInFunctions('=IF(B1="","",RETORT.MOISTURE.WET(25,B2,B3)*100)')).toBe('=IF(B1="","",((B2-B3)/(B2-25))*100)');
  });

  it("keeps arguments of several parts together", () => {
    expect(inBuiltInFunctions("=RETORT.MOISTURE.WET(25,B2-C2,B3)")).toBe("=(((B2-C2)-B3)/((B2-C2)-25))");
  });

  it("writes several calls, and a call inside another", () => {
    expect(inBuiltInFunctions("=RETORT.MOISTURE.WET(25,B2,B3)+RETORT.MOISTURE.DRY(25,RETORT.MOISTURE.WET(1,2,C1),B3)")).toBe(
      "=((B2-B3)/(B2-25))+(((((2-C1)/(2-1)))-B3)/(B3-25))",
    );
  });

  it.each(["=RETORT.CHARYIELD(B1,B2,B3)", "=RETORT.CHARYIELD(B1,B2,B3,)", '=RETORT.CHARYIELD(B1,B2,B3,"")'])(
    "writes %s as without the argument that is left out",
    (cellFormula) => {
      expect(inBuiltInFunctions(cellFormula)).toBe("=((B3-IF(ISNUMBER(B1),B1,0))/(B2-IF(ISNUMBER(B1),B1,0)))");
    },
  );

  it("writes an optional argument of empty text as left out, a required one as it stands", () => {
    expect(inBuiltInFunctions('=RETORT.AIRDEMAND(B1,"")')).toBe("=(B1/0.2314)");
    expect(inBuiltInFunctions('=RETORT.READING.U(0.01,"","",TRUE)')).toBe("=(SQRT(0^2+IF(TRUE,2,1)*(0.01^2/12+0^2/3)))");
    expect(inBuiltInFunctions('=RETORT.AIRDEMAND("")')).toBe('=(("")/0.2314)');
  });

  it("knows the stored form", () => {
    expect(inBuiltInFunctions("=[2]!_xldudf_RETORT_MOISTURE_WET(25,B2,B3)")).toBe("=((B2-B3)/(B2-25))");
  });

  it("leaves a cell formula without calls as it is", () => {
    expect(inBuiltInFunctions('="RETORT.MOISTURE.WET("&A1')).toBe('="RETORT.MOISTURE.WET("&A1');
  });

  it.each(['=RETORT.MOLARMASS("H2O")', '=RETORT.MOISTURE.WET(25,RETORT.MOLARMASS("H2O"),1)', "=RETORT.GONE(1)", "=RETORT.MOISTURE.WET(1,2,3,4)"])(
    "gives nothing for %s, which cannot be written out",
    (cellFormula) => {
      expect(inBuiltInFunctions(cellFormula)).toBeUndefined();
    },
  );
});
