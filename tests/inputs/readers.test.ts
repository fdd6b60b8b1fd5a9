import { BLANK, CellError, type CellValue } from "../../src/inputs/CellValue";
import { choice } from "../../src/inputs/choice";
import { column, rowCounted } from "../../src/inputs/column";
import { fraction, massFraction } from "../../src/inputs/kinds/shares";
import { replicateValues } from "../../src/inputs/kinds/statistics";
import { mass, vesselMass, weighing } from "../../src/inputs/kinds/weighings";
import { asGiven, formulaText, truth } from "../../src/inputs/kinds/words";
import { omittable, optional, orProblem } from "../../src/inputs/optional";
import { InputProblem } from "../../src/problems/InputProblem";

const says = (message: string, name = "InputProblem"): Error => expect.objectContaining({ name, argument: "x", message }) as Error;
const each = (values: readonly CellValue[], read: (value: CellValue) => unknown): readonly unknown[] => values.map(read);
const na = new CellError("#N/A");
const PASSED = says("x: the cell given here shows #N/A. Mend that cell first.", "PassedError");

describe("a number", () => {
  test.each<readonly [CellValue, string]>([
    ["35,1", 'x: "35,1" is text, not a number. Retype it as a number.'],
    ["1.234,5", 'x: "1.234,5" is text, not a number. Retype it as a number.'],
    [" -3.5 % ", 'x: " -3.5 % " is text, not a number. Retype it as a number.'],
    [".5", 'x: ".5" is text, not a number. Retype it as a number.'],
    ["35.1 g", 'x: "35.1 g" is not a weighing. Give grams.'],
    ["n/a", 'x: "n/a" is not a weighing. Give grams.'],
    [true, "x: TRUE is not a weighing. Give grams."],
    [Infinity, "x: Infinity g is not a finite number. Give grams."],
    [NaN, "x: NaN g is not a finite number. Give grams."],
    [BLANK, "x: nothing here (blank or 0). Give grams."],
    ["  ", "x: nothing here (blank or 0). Give grams."],
  ])("refuses %p", (value, message) => {
    expect(() => mass("").read(value, "x")).toThrow(says(message));
  });

  test("passes an error on", () => {
    expect(() => mass("").read(na, "x")).toThrow(PASSED);
  });
});

describe("a number or a word", () => {
  test("takes the word in any letter case, and is blank without either", () => {
    expect(each([" TARED ", "tared"], (word) => vesselMass("").read(word, "x"))).toEqual([0, 0]);
    expect(each([0, BLANK, " ", "tared", 25], (value) => vesselMass("").isBlank(value))).toEqual([true, true, true, false, false]);
  });
});

describe("a word", () => {
  const basis = choice("", ["Wet", "dry"]);

  test("is taken in any letter case, as it is listed", () => {
    expect(each([" wet ", "DRY"], (word) => basis.read(word, "x"))).toEqual(["Wet", "dry"]);
    expect(basis.choices).toEqual(["Wet", "dry"]);
  });

  test.each<readonly [CellValue, string]>([
    ["damp", 'x: "damp" is not one of "Wet", "dry".'],
    [1, 'x: 1 is not one of "Wet", "dry".'],
    [false, 'x: FALSE is not one of "Wet", "dry".'],
    [0, 'x: nothing here (blank or 0). Type one of "Wet", "dry".'],
    [BLANK, 'x: nothing here (blank or 0). Type one of "Wet", "dry".'],
    ["", 'x: nothing here (blank or 0). Type one of "Wet", "dry".'],
  ])("refuses %p", (value, message) => {
    expect(() => basis.read(value, "x")).toThrow(says(message));
  });

  test("TRUE and FALSE are taken and nothing like them", () => {
    expect(each([true, false], (value) => truth("").read(value, "x"))).toEqual([true, false]);
    expect(() => truth("").read("TRUE", "x")).toThrow(says('x: "TRUE" is not TRUE or FALSE. Type TRUE or FALSE, or leave the argument out.'));
    expect(() => truth("").read(1, "x")).toThrow(says("x: 1 is not TRUE or FALSE. Type TRUE or FALSE, or leave the argument out."));
  });

  test("a formula is any text, as typed", () => {
    expect(formulaText("").read(" CaCO3 ", "x")).toBe(" CaCO3 ");
    expect(() => formulaText("").read(true, "x")).toThrow(says("x: TRUE is not a chemical formula. Type a chemical formula such as CaCO3."));
  });

  test.each([basis, truth(""), formulaText(""), asGiven("")])("an error is passed on (%#)", (input) => {
    expect(() => input.read(na, "x")).toThrow(PASSED);
    expect(each([0, BLANK, " ", "word", 1], (value) => input.isBlank(value))).toEqual([true, true, true, false, false]);
  });

  test("whatever is given is handed on, and nothing as undefined", () => {
    expect(each([0, "ash", true, 0.3, BLANK, " "], (value) => asGiven("").read(value, "x"))).toEqual([0, "ash", true, 0.3, undefined, undefined]);
    expect("choices" in asGiven("")).toBe(false);
    expect(asGiven("", ["ash"]).choices).toEqual(["ash"]);
  });
});

describe("a column", () => {
  const weights = column("", weighing);

  test("ends with its last weighing, and may be one weighing long", () => {
    expect(weights.read([35, 34, 0, BLANK, " "], "x")).toEqual([35, 34]);
    expect(weights.read([35], "x")).toEqual([35]);
    expect(rowCounted(weights).read([35, 34, 0], "x")).toEqual({ values: [35, 34], rows: 3 });
  });

  test("names the row of what it refuses", () => {
    expect(() => weights.read([35, 0, 33], "x")).toThrow(says("x: row 2 is blank. Fill the gap or remove the row."));
    expect(() => weights.read([35, 34, na], "x")).toThrow(says("x: row 3: the cell given here shows #N/A. Mend that cell first.", "PassedError"));
    expect(() => weights.read([], "x")).toThrow(says("x: nothing here (blank or 0). Give grams."));
    expect(() => weights.read([35, 1e16], "x")).toThrow(
      says("x: row 2 holds 10000000000000000 g, beyond 1000000000000000 either way. Clear the cell or give grams."),
    );
  });

  test("of replicate results keeps zeros, negative values and gaps", () => {
    expect(replicateValues("").read([0, -1, BLANK, 2, 0, " "], "x")).toEqual([0, -1, undefined, 2, 0]);
    expect(() => replicateValues("").read([BLANK, ""], "x")).toThrow(says("x: nothing here (blank). Give the replicate results."));
    expect(() => replicateValues("").read([1, "1,2"], "x")).toThrow(says('x: row 2 holds "1,2", text, not a number. Retype it as a number.'));
    expect(() => replicateValues("").read([1, BLANK, na], "x")).toThrow(
      says("x: row 3: the cell given here shows #N/A. Mend that cell first.", "PassedError"),
    );
  });
});

describe("an input that need not be given", () => {
  test("optional reads what is blank, a 0 included where 0 means blank, as undefined", () => {
    expect(each([0, BLANK, " "], (value) => optional(mass("")).read(value, "x"))).toEqual([undefined, undefined, undefined]);
    expect(each([0, BLANK, 0.5], (value) => optional(fraction("")).read(value, "x"))).toEqual([0, undefined, 0.5]);
    expect(each([0, BLANK, 0.5], (value) => optional(massFraction("")).read(value, "x"))).toEqual([undefined, undefined, 0.5]);
    expect(() => optional(mass("")).read(-1, "x")).toThrow(says("x: -1 g is below zero. Give grams."));
    expect([mass("").optional, optional(mass("")).optional, omittable(mass("")).optional]).toEqual([false, true, true]);
  });

  test("an optional column is left out only where every cell is blank", () => {
    const times = optional(column("", weighing));
    expect(times.optional).toBe(true);
    expect([times.read([], "x"), times.read([BLANK, ""], "x")]).toEqual([undefined, undefined]);
    expect(times.read([1, BLANK], "x")).toEqual([1]);
    // A column of zeros may be given or not, as the host likes: it is asked for rather than passed over.
    expect(() => times.read([0, BLANK], "x")).toThrow(says("x: nothing here (blank or 0). Give grams."));
  });
});

test("orProblem hands over what is wrong, but passes an error on", () => {
  const input = orProblem(mass(""));
  expect(input.read(5, "x")).toBe(5);
  const problem = input.read(-1, "x");
  expect(problem).toBeInstanceOf(InputProblem);
  expect(problem).toMatchObject({ argument: "x", message: "x: -1 g is below zero. Give grams." });
  expect(() => input.read(na, "x")).toThrow(PASSED);
});
