import { jStat } from "jstat";
import { bracketedRoot } from "../../src/numerics/bracketedRoot";
import { gapRatioProbability } from "../../src/numerics/gapRatioProbability";
import { normalDensity, normalProbability } from "../../src/numerics/normalProbability";
import { rangeProbability } from "../../src/numerics/rangeProbability";
import { studentTCentral, studentTQuantile } from "../../src/numerics/studentTQuantile";

// Calculated outside: distributions.py beside this file, forty digits. jStat's own t probabilities are good to eight digits.
test.each([
  [-9, "1.1285884059538406477e-19"],
  [-8.9, "2.792334374939655567e-19"],
  [-8, "6.2209605742717841235e-16"],
  [-6, "9.865876450376981407e-10"],
  [-4, "0.000031671241833119921254"],
  [-2.5, "0.006209665325776135167"],
  [-0.1, "0.46017216272297101853"],
  [0.1, "0.53982783727702898147"],
  [2.5, "0.99379033467422386483"],
  [4, "0.99996832875816688008"],
  [6, "0.99999999901341235496"],
  [8, "0.9999999999999993779"],
])("normalProbability(%d) is %s to 2e-16", (x, calculated) => {
  expect(Math.abs(normalProbability(x) - Number(calculated))).toBeLessThan(2.3e-16);
});

test("normalProbability is 0 and 1 beyond nine standard deviations, and rises without a step into them", () => {
  expect([normalProbability(-9.0001), normalProbability(-50), normalProbability(-Infinity)]).toEqual([0, 0, 0]);
  expect([normalProbability(9.0001), normalProbability(50), normalProbability(Infinity)]).toEqual([1, 1, 1]);
  expect(normalProbability(0)).toBe(0.5);
});

test.each([
  [1, 0.4, "0.324919696232906"],
  [1, 0.025, "12.7062047361747"],
  [1, 1e-4, "3183.09875711815"],
  [1, 1e-8, "31830988.6183791"],
  [2, 0.4, "0.288675134594813"],
  [2, 0.025, "4.30265272974946"],
  [2, 1e-4, "70.7000710749643"],
  [2, 1e-8, "7071.06770579946"],
  [3, 0.4, "0.27667066233269"],
  [3, 0.025, "3.18244630528371"],
  [3, 1e-4, "22.2037422732042"],
  [3, 1e-8, "479.525069579738"],
  [4, 0.4, "0.270722294707597"],
  [4, 0.025, "2.77644510519779"],
  [4, 1e-4, "13.0336717208965"],
  [4, 1e-8, "131.594736940624"],
  [5, 0.4, "0.267180865704145"],
  [5, 0.025, "2.57058183563632"],
  [5, 1e-4, "9.67756630088259"],
  [5, 1e-8, "62.4045061109673"],
  [6, 0.4, "0.264834532933574"],
  [6, 0.025, "2.44691185114497"],
  [6, 1e-4, "8.02479277311638"],
  [6, 1e-8, "38.6620104463431"],
  [7, 0.4, "0.263166861352023"],
  [7, 0.025, "2.36462425159279"],
  [7, 1e-4, "7.06343282815751"],
  [7, 1e-8, "27.8022831881199"],
  [10, 0.4, "0.26018482949208"],
  [10, 0.025, "2.22813885198627"],
  [10, 1e-4, "5.69382010145751"],
  [10, 1e-8, "15.8956876525135"],
  [28, 0.4, "0.255767523382335"],
  [28, 0.025, "2.04840714179525"],
  [28, 1e-4, "4.27539785534335"],
  [28, 1e-8, "7.73450970450438"],
  [29, 0.4, "0.255683634571256"],
  [29, 0.025, "2.0452296421327"],
  [29, 1e-4, "4.25389411843228"],
  [29, 1e-8, "7.64168313238144"],
  [98, 0.4, "0.254035981445724"],
  [98, 0.025, "1.98446745450848"],
  [98, 1e-4, "3.86460985529873"],
  [98, 1e-8, "6.11230392546524"],
  [99, 0.4, "0.254029012151807"],
  [99, 0.025, "1.98421695158642"],
  [99, 1e-4, "3.86308910712728"],
  [99, 1e-8, "6.10688061390303"],
  [998, 0.4, "0.25341465095651"],
  [998, 0.025, "1.96234384621633"],
  [998, 1e-4, "3.7328794225796"],
  [998, 1e-8, "5.65800499224392"],
  [4999, 0.4, "0.253360586666023"],
  [4999, 0.025, "1.96043864666152"],
  [4999, 1e-4, "3.72177672075022"],
  [4999, 1e-8, "5.62113384385737"],
  [5000, 0.4, "0.253360583969232"],
  [5000, 0.025, "1.96043855170651"],
  [5000, 1e-4, "3.72177616833678"],
  [5000, 1e-8, "5.62113201477515"],
])("studentTQuantile with %d degrees of freedom and a tail of %d is %s to eight digits", (degrees, tail, calculated) => {
  expect(Math.abs(studentTQuantile(tail, degrees) / Number(calculated) - 1)).toBeLessThan(1e-8);
});

// A tail of a half is the middle; one close to it is the slope of the density there: for 1 degree of freedom tan(pi (0.5 - tail)).
test("studentTQuantile at and near the middle", () => {
  expect(studentTQuantile(0.5, 7)).toBe(0);
  expect(studentTQuantile(0.4999, 1) / Math.tan(Math.PI * 0.0001)).toBeCloseTo(1, 9);
});

test("studentTCentral runs from 0 to 1 for odd and even degrees of freedom, one and two included", () => {
  for (const degrees of [1, 2, 3, 4, 9, 10, 101, 500]) {
    expect(studentTCentral(0, degrees)).toBe(0);
    expect(studentTCentral(Math.PI / 2, degrees)).toBeCloseTo(1, 14);
    for (const angle of [0.1, 0.5, 1, 1.5]) {
      const t = Math.sqrt(degrees) * Math.tan(angle);
      expect(studentTCentral(angle, degrees)).toBeCloseTo(2 * jStat.studentt.cdf(t, degrees) - 1, 7);
    }
  }
});

test.each([
  [2, 0.01, "0.00564184882003155028"],
  [2, 1, "0.520499877813046538"],
  [2, 3, "0.966105146475310727"],
  [2, 6, "0.999977909503001415"],
  [2, 9, "0.999999999803383956"],
  [3, 0.01, "0.0000275660619073745179"],
  [3, 1, "0.240712641229338774"],
  [3, 3, "0.914457428345041997"],
  [3, 6, "0.999934426501566912"],
  [3, 9, "0.999999999410256358"],
  [10, 0.01, "8.09414628620724381e-22"],
  [10, 1, "0.00051986945546412452"],
  [10, 3, "0.487815926029193385"],
  [10, 6, "0.999078484696122739"],
  [10, 9, "0.999999991164592548"],
  [30, 0.01, "1.46181545647109119e-69"],
  [30, 1, "4.11270417598657444e-12"],
  [30, 3, "0.0437738551087743633"],
  [30, 6, "0.99228061477553224"],
  [30, 9, "0.999999914871029646"],
  [100, 0.01, "3.09218832524311268e-237"],
  [100, 1, "5.00154752474613472e-41"],
  [100, 3, "3.35982160071262731e-6"],
  [100, 6, "0.937483444538500957"],
  [100, 9, "0.999999041024367495"],
  [1000, 0.01, "6.33053527923518334e-2396"],
  [1000, 1, "2.34516152543400016e-415"],
  [1000, 3, "1.51056530561062895e-61"],
  [1000, 6, "0.160763757651322754"],
  [1000, 9, "0.999910613233847862"],
] as const)("rangeProbability of %d deviates, width %d, is %s", (n, width, calculated) => {
  // Rounding grows with the power n - 1.
  expect(Math.abs(rangeProbability(width, n) - Number(calculated))).toBeLessThan(n <= 100 ? 1e-14 : 1e-12);
});

test("rangeProbability is 0 at no width and 1 at one beyond any", () => {
  for (const n of [2, 10, 1000]) {
    expect(rangeProbability(0, n)).toBe(0);
    expect(rangeProbability(20, n)).toBeCloseTo(1, 12);
  }
});

// Kept apart by symmetry alone: for three deviates each order of the two gaps is as likely, so the ratio exceeds 1/2 half the time.
test("gapRatioProbability of three deviates at a half is a half", () => {
  expect(gapRatioProbability(0.5, 3)).toBeCloseTo(0.5, 13);
});

test("normalDensity is that of jStat, far out as well", () => {
  expect(normalDensity(0)).toBeCloseTo(0.3989422804014327, 15);
  for (const x of [-8, -2.5, -0.1, 1, 4, 12]) expect(normalDensity(x) / jStat.normal.pdf(x, 0, 1)).toBeCloseTo(1, 13);
});

test("bracketedRoot meets a root to the last bits, one at 0 and one in a far corner included", () => {
  expect(Math.abs(bracketedRoot((x) => x ** 3 - 2, 0, 2) - Math.cbrt(2))).toBeLessThan(4e-16);
  expect(Math.abs(bracketedRoot((x) => Math.expm1(x), -1, 3))).toBeLessThan(1e-30);
  expect(Math.abs(bracketedRoot((x) => 1 / x - 1e6, 1e-9, 1) / 1e-6 - 1)).toBeLessThan(4e-16);
});
