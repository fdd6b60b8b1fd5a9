import { criticalRangeFactor } from "../../src/confidence/criticalRangeFactor";
import { dixonCritical } from "../../src/confidence/dixonAssessment";
import { grubbsCritical } from "../../src/confidence/grubbsAssessment";
import { gapRatioProbability } from "../../src/numerics/gapRatioProbability";
import { halfLastDigit } from "../published/halfLastDigit";

const expectPrinted = (ours: number, printed: string, units = 1): void => {
  expect(Math.abs(ours - Number(printed))).toBeLessThanOrEqual(units * halfLastDigit(printed));
};

describe("calculated outside: criticalValues.py beside this file", () => {
  test.each([
    [2, "2.7718076"],
    [3, "3.3144932"],
    [4, "3.6331596"],
    [5, "3.8576555"],
    [6, "4.0300921"],
    [7, "4.1695542"],
    [8, "4.2863094"],
    [9, "4.3865091"],
    [10, "4.4741242"],
    [11, "4.5518636"],
    [12, "4.6216555"],
    [15, "4.7959239"],
    [20, "5.0116888"],
    [30, "5.3012896"],
    [50, "5.6460260"],
  ])("the critical-range factor of %d results is %s", (n, calculated) => {
    expectPrinted(criticalRangeFactor(n), calculated);
  });

  test.each([
    [3, "1.153118", "1.154305", "1.154637", "1.154685"],
    [4, "1.462500", "1.481250", "1.492500", "1.496250"],
    [5, "1.671386", "1.715037", "1.748857", "1.763678"],
    [6, "1.822120", "1.887145", "1.944245", "1.972817"],
    [7, "1.938135", "2.019969", "2.097304", "2.139106"],
    [8, "2.031652", "2.126645", "2.220833", "2.274365"],
    [9, "2.109562", "2.215004", "2.323148", "2.386810"],
    [10, "2.176068", "2.289954", "2.409725", "2.482083"],
    [11, "2.233908", "2.354730", "2.484279", "2.564121"],
    [12, "2.284953", "2.411560", "2.549417", "2.635733"],
    [13, "2.330540", "2.462033", "2.607020", "2.698972"],
    [14, "2.371654", "2.507321", "2.658480", "2.755372"],
    [15, "2.409038", "2.548308", "2.704855", "2.806105"],
    [16, "2.443272", "2.585676", "2.746963", "2.852080"],
    [17, "2.474810", "2.619964", "2.785445", "2.894014"],
    [18, "2.504017", "2.651599", "2.820817", "2.932482"],
    [19, "2.531193", "2.680931", "2.853495", "2.967951"],
    [20, "2.556581", "2.708246", "2.883821", "3.000804"],
    [30, "2.745132", "2.908473", "3.102897", "3.236078"],
    [50, "2.956975", "3.128247", "3.336624", "3.482462"],
    [100, "3.209520", "3.384083", "3.600196", "3.754004"],
  ])("G of %d values, one tail of 0.05, 0.025, 0.01, 0.005: %s, %s, %s, %s", (n, ...calculated) => {
    for (const [index, tail] of [0.05, 0.025, 0.01, 0.005].entries()) expectPrinted(grubbsCritical(n, tail), calculated[index] ?? "");
  });

  test.each([
    [3, "0.941262", "0.970213", "0.993972"],
    [4, "0.765533", "0.829750", "0.920657"],
    [5, "0.642357", "0.710239", "0.823196"],
    [6, "0.562424", "0.627511", "0.742698"],
    [7, "0.507330", "0.568952", "0.681075"],
    [8, "0.467073", "0.525602", "0.633630"],
    [9, "0.436275", "0.492195", "0.596268"],
    [10, "0.411859", "0.465594", "0.566132"],
    [11, "0.391955", "0.443843", "0.541290"],
    [12, "0.375362", "0.425673", "0.520425"],
    [13, "0.361275", "0.410223", "0.502617"],
    [14, "0.349135", "0.396891", "0.487209"],
    [15, "0.338539", "0.385242", "0.473720"],
    [16, "0.329191", "0.374957", "0.461790"],
    [17, "0.320867", "0.365792", "0.451146"],
    [18, "0.313396", "0.357560", "0.441576"],
    [19, "0.306642", "0.350114", "0.432912"],
    [20, "0.300499", "0.343338", "0.425021"],
    [21, "0.294881", "0.337137", "0.417796"],
    [22, "0.289717", "0.331435", "0.411148"],
    [23, "0.284949", "0.326169", "0.405004"],
    [24, "0.280531", "0.321285", "0.399304"],
    [25, "0.276420", "0.316740", "0.393997"],
    [26, "0.272583", "0.312497", "0.389039"],
    [27, "0.268991", "0.308522", "0.384394"],
    [28, "0.265618", "0.304790", "0.380030"],
    [29, "0.262444", "0.301275", "0.375919"],
    [30, "0.259449", "0.297958", "0.372037"],
  ])("r10 of %d values is exceeded with chances of 0.05, 0.025, 0.005 at %s, %s, %s", (n, ...calculated) => {
    // Half a unit of the sixth decimal, times the density of r10, which is below 6.
    for (const [index, tail] of [0.05, 0.025, 0.005].entries())
      expect(Math.abs(gapRatioProbability(Number(calculated[index]), n) - tail)).toBeLessThan(3e-6);
  });

  test.each([
    [3, "0.970213", "0.993972"],
    [9, "0.492195", "0.596268"],
    [30, "0.297958", "0.372037"],
  ])("so the critical values of %d values, two-sided 5 %% and 1 %%, are %s and %s", (n, five, one) => {
    expectPrinted(dixonCritical(n, 0.025), five);
    expectPrinted(dixonCritical(n, 0.005), one);
  });
});

describe("read as printed", () => {
  // ISO 5725-2, table of critical values of Grubbs' statistic, one outlying value, upper 1 % and 5 % two-sided, from memory;
  // its last digit strays by one.
  test.each([
    [3, "1.155", "1.155"],
    [4, "1.496", "1.481"],
    [5, "1.764", "1.715"],
    [6, "1.973", "1.887"],
    [7, "2.139", "2.020"],
    [8, "2.274", "2.126"],
    [9, "2.387", "2.215"],
    [10, "2.482", "2.290"],
    [11, "2.564", "2.355"],
    [12, "2.636", "2.412"],
    [13, "2.699", "2.462"],
    [14, "2.755", "2.507"],
    [15, "2.806", "2.549"],
    [16, "2.852", "2.585"],
    [17, "2.894", "2.620"],
    [18, "2.932", "2.651"],
    [19, "2.968", "2.681"],
    [20, "3.001", "2.709"],
  ])("G of %d values is %s at 1 %% and %s at 5 %%, two-sided", (n, one, five) => {
    expectPrinted(grubbsCritical(n, 0.005), one, 2.1);
    expectPrinted(grubbsCritical(n, 0.025), five, 2.1);
  });

  // Rorabacher, Anal. Chem. 63 (1991) 139, r10 for 3 to 30 values at 90 and 95 %, two-sided, as public transcriptions carry it.
  // Interpolated in his day: the third decimal strays by up to 0.003.
  const Q90 = "0.941 0.765 0.642 0.560 0.507 0.468 0.437 0.412 0.392 0.376 0.361 0.349 0.338 0.329 0.320 0.313 0.306 0.300 0.295 0.290";
  const Q95 = "0.970 0.829 0.710 0.625 0.568 0.526 0.493 0.466 0.444 0.426 0.410 0.396 0.384 0.374 0.365 0.356 0.349 0.342 0.337 0.331";
  const MORE90 = "0.285 0.281 0.277 0.273 0.269 0.266 0.263 0.260";
  const MORE95 = "0.326 0.321 0.317 0.312 0.308 0.305 0.301 0.298";
  test.each([
    [0.1, `${Q90} ${MORE90}`],
    [0.05, `${Q95} ${MORE95}`],
  ])("r10 for 3 to 30 values at %d two-sided is as tabulated", (alpha, printed) => {
    const figures = printed.split(" ");
    expect(figures).toHaveLength(28);
    for (const [index, figure] of figures.entries()) {
      expect(gapRatioProbability(Number(figure) - 0.003, index + 3)).toBeGreaterThan(alpha / 2);
      expect(gapRatioProbability(Number(figure) + 0.003, index + 3)).toBeLessThan(alpha / 2);
    }
  });

  // Register of published misprints: several copies of that table end with 0.290 for 30 values at 95 %, the 90 % figure for 22.
  test("for 30 values r10 at 95 % is 0.298, not 0.290", () => {
    expectPrinted(dixonCritical(30, 0.025), "0.298");
    expectPrinted(dixonCritical(22, 0.05), "0.290");
  });
});
