import { readFileSync } from "node:fs";
import { join } from "node:path";
import { seededNormal } from "../../numerics/seededNormal";
import { markdown, outcomes, WATER } from "./regimeOutcomes";

// The same table with six times the runs is printed by tests/bench/dryingRegimes.bench.ts.
const ROUNDS = 1;
const COVERED = 0.93;

const table = outcomes(ROUNDS, seededNormal(60));

// Three standard deviations of a share counted in so many runs.
const atLeast = (share: number, runs: number): number => share - 3 * Math.sqrt((share * (1 - share)) / runs);

test.each(table.map(({ regime, outcomes: of }) => [regime.name, of] as const))(
  "DRYING.END's 95 % uncertainty, where it gives one, covers the true end at least 93 times in 100: %s",
  (_name, of) => {
    for (const { answered, covered } of of) if (answered > 0) expect(covered / answered).toBeGreaterThanOrEqual(atLeast(COVERED, answered));
    const sum = (count: (one: (typeof of)[number]) => number): number => of.reduce((total, one) => total + count(one), 0);
    expect(sum(({ covered }) => covered) / sum(({ answered }) => answered)).toBeGreaterThanOrEqual(COVERED);
    expect(sum(({ above }) => above)).toBe(0);
  },
);

test("DRYING.END answers one exponential, names no tail in it, and knows its end the better the finer the balance", () => {
  const of = table[0]?.outcomes ?? [];
  for (const { runs, answered, named } of of) {
    expect(answered / runs).toBeGreaterThan(0.85);
    expect(named / answered).toBeLessThan(0.03);
  }
  const [coarse, middle, fine] = of.map(({ halfWidth }) => halfWidth / WATER);
  expect(coarse).toBeLessThan(0.2);
  expect(middle).toBeLessThan(0.05);
  expect(fine).toBeLessThan(0.006);
});

// The file is laid out in columns, which is all that spaces and dashes tell.
const lines = (text: string): string[] => text.trim().replace(/ +/g, " ").replace(/-{2,}/g, "--").split("\n");

test("the table of ways of drying stands beside this test as it comes out", () => {
  expect(lines(markdown(table))).toEqual(lines(readFileSync(join(__dirname, "endRegimes.md"), "utf8")));
});
