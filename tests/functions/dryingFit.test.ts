import type { Answer } from "../../src/cells/CellProblem";
import { tableIn } from "./call";

const TIMES = "{0; 20; 40; 60; 90; 120; 150; 180; 240; 300}";
// Made up: 8 + 4 (0.7 exp(-0.03 t) + 0.3 exp(-0.006 t)) g to the milligram, in a 25 g vessel.
const WEIGHTS = "{37; 35.601; 34.787; 34.3; 33.888; 33.661; 33.519; 33.42; 33.286; 33.199}";
const table = (rest: string): Answer[][] => tableIn(`=RETORT.DRYING.FIT(${TIMES}, ${WEIGHTS}, ${rest})`);

test.each([
  ["Newton", ["k"], ["1/min"], "MR = exp(-k t)"],
  ["Page", ["k", "n"], ["min^-n", ""], "MR = exp(-k t^n)"],
  ["modified Page", ["k", "n"], ["1/min", ""], "MR = exp(-(k t)^n)"],
  ["Henderson-Pabis", ["a", "k"], ["", "1/min"], "MR = a exp(-k t)"],
  ["logarithmic", ["a", "k", "c"], ["", "1/min", ""], "MR = a exp(-k t) + c"],
  ["two-term", ["a", "k", "b", "g"], ["", "1/min", "", "1/min"], "MR = a exp(-k t) + b exp(-g t)"],
])("DRYING.FIT by %s names its parameters %j with units %j and prints its law", (name, names, units, law) => {
  const rows = table(`"${name}", 25, 33`);
  expect(rows[0]).toEqual(["Quantity", "Value", "Standard error", "Unit"]);
  const parameters = rows.slice(1, 1 + names.length);
  expect(parameters.map(([label]) => label)).toEqual(names);
  expect(parameters.map((row) => row[3])).toEqual(units);
  for (const [, value, error] of parameters) {
    expect(value).toBeGreaterThan(0);
    expect(error).toBeGreaterThan(0);
  }
  expect(rows.slice(1 + names.length)).toEqual([
    ["Final sample, given", 8, "", "g"],
    ["Residual scatter s", expect.any(Number), "", "g"],
    ["Weighings", 10, "", ""],
    ["Degrees of freedom", expect.any(Number), "", ""],
    [`Model: ${name}`, `${law}, t in min since the first weighing`, "", ""],
    ["Moisture ratio", "MR = (sample - final) / (first sample - final)", "", ""],
  ]);
});

test("DRYING.FIT takes Lewis as the other name of Newton's law", () => {
  expect(table('"Lewis", 25')).toEqual(table('"Newton", 25'));
});

test("DRYING.FIT finds the two terms of a made-up two-term run within three standard errors", () => {
  const rows = table('"two-term", 25, 33');
  for (const [j, truth] of [0.7, 0.03, 0.3, 0.006].entries()) {
    const [, value, error] = rows[j + 1] as [string, number, number];
    expect(Math.abs(value - truth)).toBeLessThan(3 * error);
    expect(error / value).toBeLessThan(0.02);
  }
});

test("DRYING.FIT counts the first weighing as the law's start for Newton, and as a point for Henderson-Pabis", () => {
  const degrees = (model: string): Answer => table(`"${model}", 25, 33`).find(([label]) => label === "Degrees of freedom")?.[1] as Answer;
  expect(degrees("Newton")).toBe(10 - 1 - 1);
  expect(degrees("Henderson-Pabis")).toBe(10 - 2);
});

test("DRYING.FIT by a law with more parameters lies no farther from the weighings", () => {
  const squares = (model: string): number => {
    const rows = table(`"${model}", 25, 33`);
    const value = (label: string): number => rows.find(([name]) => name === label)?.[1] as number;
    return value("Residual scatter s") ** 2 * value("Degrees of freedom");
  };
  expect(squares("Page")).toBeLessThan(squares("Newton"));
  expect(squares("logarithmic")).toBeLessThan(squares("Henderson-Pabis"));
  expect(squares("two-term")).toBeLessThan(squares("Henderson-Pabis"));
  expect(squares("modified Page")).toBeCloseTo(squares("Page"), 9);
});

test("DRYING.FIT fits the final sample with its standard error where no dry weighing is given", () => {
  expect(table('"Page", 25')[3]).toEqual(["Final sample, fitted", expect.any(Number), expect.any(Number), "g"]);
});
