import { dixonAssessment } from "../../confidence/dixonAssessment";
import { outlierVerdict } from "../../confidence/outlierAssessment";
import { tableFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { dixonInCells } from "./dixonInCells";
import { askedAs, outlierInputs, outlierQuestion, outlierTable, STATISTIC_OF_DIXON } from "./outlierForm";

export const dixonFunction = tableFunction({
  name: "DIXON",
  summary:
    "Dixon's Q test (ratio r10) for one outlier among 3 to 30 results: the suspect and its row, Q, the critical value, and a verdict in words.",
  inputs: outlierInputs,
  result: { about: "One quantity a row, with its value", unit: "" },
  computeTable: (read) => {
    const [replicates, question] = outlierQuestion(read);
    return outlierTable(STATISTIC_OF_DIXON, dixonAssessment(replicates, question), question);
  },
  working: (read) => {
    const [replicates, question] = outlierQuestion(read);
    const assessed = dixonAssessment(replicates, question);
    const [n, suspect, neighbour, range] = [assessed.count, assessed.suspect.value, assessed.neighbour, assessed.range].map(inFigures);
    return [
      `suspect in row ${assessed.suspect.row}: gap = |${suspect} - ${neighbour}|, range = ${range}, Q = gap / range = ${inFigures(assessed.statistic)}`,
      `critical value of r10 for n = ${n}, ${askedAs(question)}: ${inFigures(assessed.critical)}`,
      outlierVerdict(assessed),
    ];
  },
  inManyCells: dixonInCells,
  examples: [
    {
      cell: "=RETORT.DIXON({3.067; 3.049; 3.039; 2.514; 3.048; 3.079; 3.094; 3.109; 3.102})",
      gives: [
        ["Quantity", "Value"],
        ["Results, n", 9],
        ["Suspect", 2.514],
        ["Row of the suspect in values", 4],
        ["Q = gap / range (r10)", 0.8823529411764709],
        ["Critical value, two-sided, alpha 0.05", 0.49219538688947284],
        ["Verdict", "outlier: look for a cause; never reject without a cause, and at most one value"],
      ],
      about: "Masses of nine coins [g] (Harvey, Modern Analytical Chemistry, example 4.22).",
    },
  ],
  source:
    'Dixon, Ann. Math. Stat. 22 (1951) 68; critical values of r10 integrated for n = 3 to 30, no switch to r11 or r21. An outlier is shown only where it still is one with half a step taken off and two steps from its neighbour, so that rounded results have no more false ones than alpha (simulated). A "Q90" table column is this test one-sided at 0.05. Two outliers on one side hide each other.',
});
