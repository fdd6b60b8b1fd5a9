import fc from "fast-check";
import { jStat } from "jstat";
import { seededNormal } from "../../numerics/seededNormal";
import { calculated, published } from "../../published/Published";
import { asTable, column } from "../call";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { figureBy, law } from "../laws/Law";

const KILNS =
  '=RETORT.COMPARE.GROUPS({28.1; 28.4; 27.9; 30.2; 30.9; 31.1; 29.0; 31.5; 27.2; 30.1}, {"drum"; "drum"; "drum"; "pit"; "pit"; "pit"; "oven"; "oven"; "oven"; "oven"})';

const inGroups = (groups: readonly (readonly number[])[]): string =>
  `=RETORT.COMPARE.GROUPS({${groups.flat().join("; ")}}, {${groups.flatMap((group, index) => group.map(() => index + 1)).join("; ")}})`;

// NIST StRD, SiRstv: resistivity of a silicon wafer by five instruments (Ehrstein and Croarkin).
const SILICON = inGroups([
  [196.3052, 196.124, 196.189, 196.2569, 196.3403],
  [196.3042, 196.3825, 196.1669, 196.3257, 196.0422],
  [196.1303, 196.2005, 196.2889, 196.0343, 196.1811],
  [196.2795, 196.1748, 196.1494, 196.1485, 195.9885],
  [196.2119, 196.1051, 196.185, 196.0052, 196.209],
]);

// NIST StRD, AtmWtAg: atomic weight of silver by two instruments (Powell, Murphy and Gramlich 1982), last four decimals above 107.868.
const silver = (decimals: readonly number[]): readonly number[] => decimals.map((last) => Number(`107.868${last}`));
const SILVER = inGroups([
  silver([
    1568, 1465, 1572, 1785, 1446, 1903, 1526, 1494, 1616, 1587, 1519, 1486, 1419, 1569, 1508, 1672, 1385, 1518, 1662, 1424, 1360, 1333, 1610, 1477,
  ]),
  silver([
    1079, 1344, 1513, 1197, 1604, 1385, 1642, 1365, 1151, 1082, 1517, 1448, 1198, 1482, 1334, 1609, 1101, 1512, 1469, 1360, 1254, 1261, 1450, 1368,
  ]),
]);

const tenths = (most: number): fc.Arbitrary<number[]> =>
  fc.array(
    fc.integer({ min: 0, max: most }).map((value) => value / 10),
    { minLength: 3, maxLength: 8 },
  );

const RUNS = 300;

export const evidence: FunctionEvidence = {
  name: "COMPARE.GROUPS",
  answer: ["Groups, tests and pairs, a row each", ""],
  published: [
    ...published("read as printed", "NIST statistical reference data sets, one-way analysis of variance, certified F of SiRstv and AtmWtAg", [
      [SILICON, "1.180462374402", { at: ["One-way", 1] }],
      [
        SILVER,
        "15.9467336",
        { at: ["One-way", 1], within: [2e-7, "the seven leading digits leave the binary values of the data themselves uncertain there"] },
      ],
      [SILICON, "20", { at: ["One-way", 3] }],
      [SILVER, "46", { at: ["One-way", 3] }],
      [SILICON, "no difference shown", { at: ["Verdict", 1] }],
      [SILVER, "the means differ", { at: ["Verdict", 1] }],
    ]),
    ...published("worked by hand", "rows that are blank in both columns, and a 0 that is skipped, change nothing", [
      ['=RETORT.COMPARE.GROUPS({1; 3; 6; 8; 0; 0}, {"a"; "a"; "b"; "b"; 0; 0})', "12.5", { at: ["Welch", 1] }],
      ['=RETORT.COMPARE.GROUPS({1; 0; 3; 6; 8}, {"a"; "a"; "a"; "b"; "b"}, "skip")', "12.5", { at: ["Welch", 1] }],
      // 0, 3 and 6, 9: means 1.5 and 7.5, s^2 = 4.5 each, F = 36 / 4.5.
      ['=RETORT.COMPARE.GROUPS({0; 3; 6; 9}, {"a"; "a"; "b"; "b"}, "count")', "8", { at: ["Welch", 1] }],
    ]),
    ...calculated("energyAndClay.mjs", "Welch, Biometrika 38 (1951) 330, and the F density integrated on a grid", [
      [KILNS, "30.6754699", "Welch's F of three kilns", { at: ["Welch", 1] }],
      [KILNS, "4.0702653", "its degrees of freedom", { at: ["Welch", 3] }],
      [KILNS, "0.003511034", "its p", { at: ["Welch", 4] }],
      [SILICON, "0.34944749", "p of F 1.18046237 with 4 and 20", { at: ["One-way", 4] }],
    ]),
    ...published(
      "worked by hand",
      "1, 3 and 6, 8: means 2 and 7, s^2 = 2 each, t^2 = 25 / 2 = F, 2 degrees of freedom, t(0.025, 2) = 4.302653 x sqrt 2 = 6.084870",
      [
        ['=RETORT.COMPARE.GROUPS({1; 3; 6; 8}, {"a"; "a"; "b"; "b"})', "12.5", { at: ["Welch", 1] }],
        ['=RETORT.COMPARE.GROUPS({1; 3; 6; 8}, {"a"; "a"; "b"; "b"})', "2", { at: ["Welch", 3] }],
        ['=RETORT.COMPARE.GROUPS({1; 3; 6; 8}, {"a"; "a"; "b"; "b"})', "-5", { at: ["a - b", 1] }],
        ['=RETORT.COMPARE.GROUPS({1; 3; 6; 8}, {"a"; "a"; "b"; "b"})', "-11.08487", { at: ["a - b", 2] }],
        ['=RETORT.COMPARE.GROUPS({1; 3; 6; 8}, {"a"; "A"; "b"; " B "})', "1.08487", { at: ["a - b", 3] }],
      ],
    ),
  ],
  laws: [
    law("COMPARE.GROUPS")("of two groups is Welch's t squared, with jStat's probabilities, and does not change with unit or zero point", (call) => {
      fc.assert(
        fc.property(tenths(100), tenths(400), between(0.1, 50), (one, two, scale) => {
          const spread = (values: readonly number[]): number => jStat.stdev(values, true);
          fc.pre(spread(one) > 0.1 && spread(two) > 0.1);
          const labels = column([...one.map(() => "one"), ...two.map(() => "two")]);
          const shifted = [...one, ...two].map((value) => 1000 + scale * value);
          const figure = (label: string, place: number): number => figureBy(call)(label, place, "COMPARE.GROUPS", column(shifted), labels);
          const [a, b] = [spread(one) ** 2 / one.length, spread(two) ** 2 / two.length];
          const t = (jStat.mean(one) - jStat.mean(two)) / Math.sqrt(a + b);
          fc.pre(Math.abs(t) > 0.01);
          expect(figure("Welch", 1) / (t * t)).toBeCloseTo(1, 5);
          expect(figure("Welch", 4)).toBeCloseTo(1 - jStat.centralF.cdf(t * t, 1, figure("Welch", 3)), 6);
          const half = (figure("one - two", 3) - figure("one - two", 2)) / 2 / scale;
          expect(half / Math.sqrt(a + b) / jStat.studentt.inv(0.975, figure("Welch", 3))).toBeCloseTo(1, 5);
          const counted = asTable(call("COMPARE.GROUPS", column(shifted), labels), "COMPARE.GROUPS").slice(1, 3);
          expect(counted.map((row) => row[1])).toEqual([one.length, two.length]);
        }),
        { numRuns: 60 },
      );
    }),
    law("COMPARE.GROUPS")(
      "finds a difference among equal means in 5 of 100 trials, and its intervals hold all pairs in 95 (Monte Carlo, seeded)",
      (call) => {
        const normal = seededNormal(20_290_417);
        const labels = column(["a", "b", "c"].flatMap((label) => Array.from({ length: 6 }, () => label)));
        let [found, missed] = [0, 0];
        for (let run = 0; run < RUNS; run++) {
          const values = column([1, 2, 4].flatMap((deviation) => Array.from({ length: 6 }, () => 50 + deviation * normal())));
          const table = asTable(call("COMPARE.GROUPS", values, labels), "COMPARE.GROUPS");
          if ((table[5]?.[4] as number) < 0.05) found++;
          if (table.some((row) => row[4] === "no")) missed++;
          expect((table[1]?.[2] as number) - (table[2]?.[2] as number)).toBeCloseTo(table[8]?.[1] as number, 9);
        }
        // 15 of 300 are expected, with a standard deviation of 3.8; Bonferroni's intervals may miss fewer.
        expect(Math.abs(found - 0.05 * RUNS)).toBeLessThan(12);
        expect(missed).toBeLessThan(27);
      },
    ),
  ],
  refusals: [
    ['=RETORT.COMPARE.GROUPS(, {"a"; "b"})', "#VALUE! values: nothing here (blank). Give the replicate results."],
    ["=RETORT.COMPARE.GROUPS({1; 2; 3; 4})", "#VALUE! groups: nothing here (blank or 0). Type a word or a number beside each value."],
    [
      '=RETORT.COMPARE.GROUPS({1; "n/a"; 3; 4}, {"a"; "a"; "b"; "b"})',
      '#VALUE! values: row 2 holds "n/a", not a number. Clear the cell or give a number.',
    ],
    [
      '=RETORT.COMPARE.GROUPS({1; 0; 3; 4}, {"a"; "a"; "b"; "b"})',
      '#VALUE! values: row 2 is 0 or an empty cell, which look alike here. Give "count" as zeros if 0 was found, "skip" if the cell is empty.',
      "0 from an empty cell",
    ],
    [
      '=RETORT.COMPARE.GROUPS({1; 2; 3; 4}, {"a"; "a"; "b"})',
      "#VALUE! groups: row 4 is blank beside a value. Type the group's name, a word or a number.",
    ],
    [
      '=RETORT.COMPARE.GROUPS({1; 2}, {"a"; "a"})',
      "#VALUE! groups: all values are of one group, so there is nothing to compare. Give the name of each value's group beside it.",
    ],
    ['=RETORT.COMPARE.GROUPS({1; 2; 3}, {"a"; "a"; "b"})', '#N/A groups: "b" has one value and so no scatter. Take at least two in each group.'],
    [
      '=RETORT.COMPARE.GROUPS({1; 2; 3; 3}, {"a"; "a"; "b"; "b"})',
      '#N/A values: all 2 values of "b" are equal, so its scatter is not known. Give more figures, or leave the group out.',
    ],
    [
      "=RETORT.COMPARE.GROUPS({1; 2; 3}, {TRUE; 1; 2})",
      "#VALUE! groups: row 1 holds TRUE, not a group's name. Type a word or a number beside each value.",
    ],
  ],
};
