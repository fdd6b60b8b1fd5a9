import { charYield } from "../../src/residue/charYield";
import { moistureWetBasis } from "../../src/drying/moisture";
import { volatileFraction } from "../../src/residue/volatileMatter";
import { callLiteral, problemIn } from "../functions/callLiteral";

// Pine charred in nitrogen at 60 K/min, mass in and char out in mg: MaCFP materials database, NIST wood data, micro
// combustion calorimetry, runs R1 to R12. The yields in per cent are the quotients, to the printed twelve figures.
const pine: readonly (readonly [run: string, dry: number, char: number, yieldPercent: number])[] = [
  ["R1", 12.037, 1.747, 14.5135831187],
  ["R2", 11.921, 1.843, 15.4601124067],
  ["R3", 12.04, 1.843, 15.3073089701],
  ["R4", 11.903, 1.846, 15.5086952869],
  ["R5", 12.024, 1.854, 15.4191616766],
  ["R6", 11.989, 1.844, 15.3807657019],
  ["R7", 12.037, 1.846, 15.3360471878],
  ["R8", 12.043, 1.847, 15.3367101221],
  ["R9", 12.019, 1.866, 15.525418088],
  ["R10", 5.075, 0.707, 13.9310344828],
  ["R11", 5.046, 0.7, 13.8723741577],
  ["R12", 5.048, 0.7, 13.8668779715],
];

test.each(pine)("CHARYIELD of pine run %s, %s mg to %s mg, is %s %%", (_run, dry, char, yieldPercent) => {
  expect(100 * (callLiteral(`=RETORT.CHARYIELD("tared", ${dry}, ${char})`) as number)).toBeCloseTo(yieldPercent, 9);
});

// The same data: sample mass moves the yield more than repeatability does.
test("CHARYIELD averages 13.89 % over the 5 mg pine runs and 15.41 % over the eight 12 mg runs", () => {
  const mean = (runs: typeof pine): number => (100 * runs.reduce((sum, [, dry, char]) => sum + charYield(0, dry, char), 0)) / runs.length;
  expect(mean(pine.slice(9))).toBeCloseTo(13.8900955373, 3);
  expect(Math.abs(mean(pine.slice(1, 9)) - 15.409)).toBeLessThanOrEqual(0.0005);
});

// Definition (m_char - m_ash) / (m_dry - m_ash).
test("CHARYIELD with ash gives 0.242424 for 2.5 g of char and 0.1 g of ash from 10 g", () => {
  expect(charYield(0, 10, 2.5, 0.1)).toBeCloseTo(0.242424242424, 9);
});

// Rice-husk char holds 6.40 % of water at 30 degC and 70 % relative humidity (Lin et al., abstract; basis not stated,
// taken as wet). A yield of 25.00 % then reads 26.71 %.
test("CHARYIELD reads 26.71 % for a 25.00 % yield after the char regained 6.40 % moisture", () => {
  const regained = 2.5 / (1 - 0.064);
  expect(moistureWetBasis(0, regained, 2.5)).toBeCloseTo(0.064, 12);
  expect(100 * charYield(0, 10, regained)).toBeCloseTo(26.7094017094, 4);
});

// ASTM E872 clause 7.1, A = 100 (Wi - Wf) / (Wi - Wc), on the weighings of a textbook example (1.478 g at 110 degC,
// 1.068 g at 950 degC; of the 1.508 g taken that loss is 27.188 %).
test("VOLATILEFRACTION times the dried sample is the 27.188 % of the moist sample in the textbook example", () => {
  const ofMoist = (volatileFraction(0, 1.478, 1.068) * 1.478) / 1.508;
  expect(100 * ofMoist).toBeCloseTo(27.1883289125, 3);
  expect(100 * moistureWetBasis(0, 1.508, 1.478)).toBeCloseTo(1.98938992042, 3);
});

// Rules of the trade: a residue cannot outweigh its sample, nor a vessel its load.
test("char heavier than the dry sample, and a vessel heavier than its load, are refused", () => {
  expect(problemIn('=RETORT.CHARYIELD("tared", 10.0, 10.4)')).toBe(
    "#VALUE! char: 10.4 g is more than dry, 10 g. Check for swapped cells or regained moisture.",
  );
  expect(problemIn("=RETORT.MOISTURE.WET(35, 30, 28)")).toBe(
    "#VALUE! moist: 30 g is not more than vessel, 35 g. Check for swapped cells or a different vessel.",
  );
});
