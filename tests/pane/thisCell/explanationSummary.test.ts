import type { CallExplanation, CellExplanation } from "../../../src/explanation/CellExplanation";
import { explanationSummary } from "../../../src/pane/thisCell/thisCellTab";

const call = (parts: Partial<CallExplanation>): CallExplanation => ({
  name: "RETORT.MOISTURE.WET",
  summary: "",
  inputs: [],
  working: [],
  resultAbout: "Moisture content, wet basis",
  result: "",
  waiting: false,
  extent: "",
  source: "",
  caution: "",
  ...parts,
});

const cell = (parts: Partial<CellExplanation>): CellExplanation => ({
  address: { sheet: "Run", cell: "B7" },
  opening: "B7 is blank.",
  cellFormula: "",
  shown: "",
  ways: [],
  around: "",
  calls: [],
  notes: [],
  ...parts,
});

describe("explanationSummary(explanation)", () => {
  test.each<[string, CellExplanation, string]>([
    ["the opening of a cell without a call", cell({}), "B7 is blank."],
    ["the notes with it", cell({ opening: "B7 holds a formula.", notes: ["It is stale."] }), "B7 holds a formula. It is stale."],
    [
      "the answer of the outermost call",
      cell({ calls: [call({ result: "0.35 (35 %)" })] }),
      "B7, RETORT.MOISTURE.WET: Moisture content, wet basis 0.35 (35 %).",
    ],
    [
      "an answer that ends its own sentence, once",
      cell({ calls: [call({ result: "in order." })] }),
      "B7, RETORT.MOISTURE.WET: Moisture content, wet basis in order.",
    ],
    [
      "that a table is below",
      cell({ shown: "first", calls: [call({ table: { rows: [["1"]], firstRow: 1, rowCount: 1 } })] }),
      "B7 shows first; RETORT.MOISTURE.WET is explained below.",
    ],
    [
      "the whole message of what is wrong",
      cell({ calls: [call({ problem: { code: "#VALUE!", message: "dry: 36 g is too much." } })] }),
      "B7, RETORT.MOISTURE.WET: dry: 36 g is too much.",
    ],
    [
      "that the cell waits, not that something is wrong",
      cell({ calls: [call({ waiting: true, problem: { code: "#VALUE!", message: "dry: nothing." } })], notes: ["The cell shows nothing yet."] }),
      "B7, RETORT.MOISTURE.WET: The cell shows nothing yet.",
    ],
  ])("says %s", (_what, explanation, words) => {
    expect(explanationSummary(explanation)).toBe(words);
  });
});
