import { everyFunction } from "../../../src/functions/catalogue";
import type { CellFunction, Example } from "../../../src/functions/cellFunction";
import { callTemplate } from "../../../src/pane/functions/exampleWith";
import { findCalls } from "../../../src/sharing/findCalls";

const withExamples = (...examples: Example[]): CellFunction => ({
  gives: "value",
  compute: () => 0,
  name: "X",
  summary: "",
  inputs: {},
  result: { about: "", unit: "" },
  examples,
  source: "",
});

describe("callTemplate(definition)", () => {
  test.each(everyFunction.map((definition) => [definition.name, definition]))("of %s is a call of that function", (name, definition) => {
    expect(findCalls(callTemplate(definition)).map((call) => call.name)).toContain(name);
  });

  test("prefers an example that refers to no cells, so that it answers wherever it is put", () => {
    expect(callTemplate(withExamples({ cell: "=RETORT.X(B2:B9)", gives: 1 }, { cell: '=RETORT.X("H2O")', gives: 1 }))).toBe('=RETORT.X("H2O")');
  });

  test("takes the first example where all refer to cells", () => {
    expect(callTemplate(withExamples({ cell: "=RETORT.X($B$2)", gives: 1 }, { cell: "=RETORT.X(C2)", gives: 1 }))).toBe("=RETORT.X($B$2)");
  });

  test("takes a formula in quotation marks for text, not for a cell", () => {
    expect(callTemplate(withExamples({ cell: '=RETORT.X("CO2")', gives: 44 }, { cell: "=RETORT.X(1)", gives: 1 }))).toBe('=RETORT.X("CO2")');
  });
});
