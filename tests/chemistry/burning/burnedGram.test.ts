import { burnedAnalysis, burnedFormula, type DryAnalysis } from "../../../src/chemistry/burning/burnedGram";
import { formulaOf } from "../formulaOf";

const analysis = (sum: number): DryAnalysis => ({ carbon: 0.5, hydrogen: 0.06, oxygen: sum - 0.6, nitrogen: 0.005, sulfur: 0.005 });
const ASH = 0.03;

const refusal = (sum: string): Error =>
  new Error(`carbon to sulfur: the fractions and ash sum to ${sum}, outside 0.9 to 1.1 of the dry sample. Check the basis and the ash.`);

// The bounds are common practice without a source.
test("burnedAnalysis takes fractions and ash that sum to 0.9 to 1.1, with a slack of binary rounding", () => {
  for (const sum of [0.9 - 9e-10, 0.9, 1, 1.1, 1.1 + 9e-10]) expect(burnedAnalysis(analysis(sum), ASH).notCovered).toBeCloseTo(1 - sum, 12);
  expect(() => burnedAnalysis(analysis(0.9 - 1.1e-9), ASH)).toThrow("outside 0.9 to 1.1");
  expect(() => burnedAnalysis(analysis(1.1 + 1.1e-9), ASH)).toThrow("outside 0.9 to 1.1");
  expect(() => burnedAnalysis(analysis(0.89), ASH)).toThrow(refusal("0.89"));
  expect(() => burnedAnalysis(analysis(1.11), ASH)).toThrow(refusal("1.11"));
});

// By hand, CIAAW 2021: CO2 44.009/12.011, H2O 18.015/(2 x 1.008), SO2 64.058/32.06.
test("burnedAnalysis weighs each product by its element", () => {
  const burned = burnedAnalysis({ carbon: 0.5, hydrogen: 0.06, oxygen: 0.38, nitrogen: 0.01, sulfur: 0.02 }, ASH);
  expect(burned.carbonDioxide).toBeCloseTo((0.5 * 44.009) / 12.011, 12);
  expect(burned.water).toBeCloseTo((0.06 * 18.015) / 2.016, 12);
  expect(burned.otherGases).toBeCloseTo(0.01 + (0.02 * 64.058) / 32.06, 12);
  expect(burned.solid).toBe(ASH);
  expect(burned.oxygenTaken).toBeCloseTo((0.5 * 31.998) / 12.011 + (0.06 * 31.998) / 4.032 + (0.02 * 31.998) / 32.06 - 0.38, 12);
});

const SPARE = (argument: string): Error =>
  new Error(`${argument}: this composition carries more oxygen than it needs, so burning takes up none. Compare a sample that takes up oxygen.`);

test("burnedAnalysis and burnedFormula refuse what carries more oxygen than it needs, and take what needs just none", () => {
  const fractions = { carbon: 0.2, hydrogen: 0.01, nitrogen: 0, sulfur: 0 };
  expect(() => burnedAnalysis({ ...fractions, oxygen: 0.75 }, 0)).toThrow(SPARE("oxygen"));
  expect(burnedAnalysis({ ...fractions, carbon: 0.3, oxygen: 0.69 }, 0).oxygenTaken).toBeGreaterThan(0);
  expect(() => burnedFormula(formulaOf({ N: 2, H: 4, O: 3 }), 0)).toThrow(SPARE("formula"));
  expect(burnedFormula(formulaOf({ C: 1, O: 2 }), 0).oxygenTaken).toBe(0);
});

test("burnedFormula refuses ash that was weighed where the formula leaves solids of its own", () => {
  const message = "ash: weighed, but the formula leaves CaO as well. Give the formula of the ash-free part, or leave the ash out.";
  expect(() => burnedFormula(formulaOf({ C: 2, Ca: 1, O: 4 }), 0.01)).toThrow(new Error(message));
});

// By hand, CIAAW 2021, for 0.8 g of ethyl mercaptan C2H6S, 62.13 g/mol, beside 0.2 g of ash: 2 CO2, 3 H2O, 1 SO2 and 4.5 O2 a mole.
test("burnedFormula burns what is not ash: ethyl mercaptan with a fifth of ash", () => {
  const burned = burnedFormula(formulaOf({ C: 2, H: 6, S: 1 }), 0.2);
  expect(burned.carbonDioxide).toBeCloseTo((0.8 * 2 * 44.009) / 62.13, 12);
  expect(burned.water).toBeCloseTo((0.8 * 3 * 18.015) / 62.13, 12);
  expect(burned.otherGases).toBeCloseTo((0.8 * 64.058) / 62.13, 12);
  expect(burned.oxygenTaken).toBeCloseTo((0.8 * 4.5 * 31.998) / 62.13, 12);
  expect([burned.solid, burned.notCovered]).toEqual([0.2, 0]);
});
