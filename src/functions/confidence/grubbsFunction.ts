import { grubbsAssessment } from "../../confidence/grubbsAssessment";
import { outlierVerdict } from "../../confidence/outlierAssessment";
import { tableFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { grubbsInCells } from "./grubbsInCells";
import { askedAs, outlierInputs, outlierQuestion, outlierTable, STATISTIC_OF_GRUBBS } from "./outlierForm";

export const grubbsFunction = tableFunction({
  name: "GRUBBS",
  summary: "Grubbs' test for one outlier among three or more results: the suspect and its row, G, the critical value, and a verdict in words.",
  inputs: outlierInputs,
  result: { about: "One quantity a row, with its value", unit: "" },
  computeTable: (read) => {
    const [replicates, question] = outlierQuestion(read);
    return outlierTable(STATISTIC_OF_GRUBBS, grubbsAssessment(replicates, question), question);
  },
  working: (read) => {
    const [replicates, question] = outlierQuestion(read);
    const assessed = grubbsAssessment(replicates, question);
    const [n, suspect, mean, s] = [assessed.count, assessed.suspect.value, assessed.mean, assessed.deviation].map(inFigures);
    return [
      `n = ${n}, mean = ${mean}, s (n - 1) = ${s}`,
      `suspect in row ${assessed.suspect.row}: G = |${suspect} - ${mean}| / ${s} = ${inFigures(assessed.statistic)}`,
      `critical value for n = ${n}, ${askedAs(question)}: ${inFigures(assessed.critical)}`,
      outlierVerdict(assessed),
    ];
  },
  inManyCells: grubbsInCells,
  examples: [
    {
      cell: "=RETORT.GRUBBS({3.067; 3.049; 3.039; 2.514; 3.048; 3.079; 3.094; 3.109; 3.102})",
      gives: [
        ["Quantity", "Value"],
        ["Results, n", 9],
        ["Suspect", 2.514],
        ["Row of the suspect in values", 4],
        ["G = |suspect - mean| / s", 2.6429883614856418],
        ["Critical value, two-sided, alpha 0.05", 2.215004223325531],
        ["Verdict", "outlier: look for a cause; never reject without a cause, and at most one value"],
      ],
      about: "Masses of nine coins [g] (Harvey, Modern Analytical Chemistry, example 4.22).",
    },
  ],
  source:
    "Grubbs, Technometrics 11 (1969) 1; critical value from Student's t with n - 2 degrees of freedom, computed, since copied tables carry misprints. An outlier is shown only where it still is one with half a step taken off and two steps from its neighbour, so that rounded results have no more false ones than alpha (simulated). Wants results that are normal but for the suspect; for one outlier only.",
});
