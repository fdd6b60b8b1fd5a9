import { problemOf } from "../../src/cells/CellProblem";
import { ArgumentProblem } from "../../src/problems/ArgumentProblem";
import * as balance from "../../src/problems/functions/balanceProblems";
import * as burning from "../../src/problems/functions/burningProblems";
import { InputProblem } from "../../src/problems/InputProblem";
import { NoAnswer } from "../../src/problems/NoAnswer";
import { PassedError } from "../../src/problems/PassedError";

test("a problem keeps its parts and puts them into one sentence", () => {
  const problem = new InputProblem("moist", "24 g is not more than vessel, 25 g", "Check for swapped cells.");
  expect(problem).toBeInstanceOf(ArgumentProblem);
  expect(problem).toMatchObject({
    name: "InputProblem",
    argument: "moist",
    wrong: "24 g is not more than vessel, 25 g",
    advice: "Check for swapped cells.",
    message: "moist: 24 g is not more than vessel, 25 g. Check for swapped cells.",
  });
});

test("a problem without advice ends with what is wrong", () => {
  expect(new NoAnswer("values", "all 3 values are equal, so none stands out").message).toBe("values: all 3 values are equal, so none stands out.");
});

test("an error passed on names its argument, and its row where it has one", () => {
  expect(new PassedError("#REF!", "moist")).toMatchObject({
    argument: "moist",
    message: "moist: the cell given here shows #REF!. Mend that cell first.",
  });
  expect(new PassedError("#N/A", "weights", 2)).toMatchObject({
    argument: "weights",
    message: "weights: row 2: the cell given here shows #N/A. Mend that cell first.",
  });
});

test("a cell shows each problem under its own code, with the argument beside the sentence", () => {
  expect(problemOf(balance.startTimeUnclear())).toMatchObject({ code: "#VALUE!", argument: "timeBefore" });
  expect(problemOf(burning.nothingBurns("CO2"))).toMatchObject({ code: "#N/A", argument: "formula" });
  expect(problemOf(new PassedError("#NUM!", "x"))).toMatchObject({ code: "#NUM!", argument: "x" });
  expect(problemOf(new PassedError("#SPILL!", "x"))).toMatchObject({ code: "#VALUE!", argument: "x" });
  expect(problemOf(new Error("x: boom.")).argument).toBeUndefined();
});

test("a problem notes no calls down, and a defect after it still does", () => {
  const problem = new InputProblem("moist", "24 g is not more than vessel, 25 g");
  expect(problem.stack).not.toMatch(/\n/);
  expect(new TypeError("a defect").stack).toMatch(/^TypeError: a defect\n {4}at /);
});

test("a problem says the same where the host has frozen the error class", () => {
  const noted = Object.getOwnPropertyDescriptor(Error, "stackTraceLimit") as PropertyDescriptor;
  Object.defineProperty(Error, "stackTraceLimit", { ...noted, writable: false });
  try {
    expect(new InputProblem("moist", "24 g is not more than vessel, 25 g").message).toBe("moist: 24 g is not more than vessel, 25 g.");
  } finally {
    Object.defineProperty(Error, "stackTraceLimit", noted);
  }
});
