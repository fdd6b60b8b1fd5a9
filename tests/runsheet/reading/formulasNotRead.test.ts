// A sheet in built-in functions has nobody to read a chemical formula: what it leaves open is judged by nobody, and accuses nobody.
import { CellProblem } from "../../../src/cells/CellProblem";
import { everyBlock } from "../../../src/runsheet/buildRunSheet";
import { cell } from "../../../src/runsheet/expressions/Expression";
import { CLOCK } from "../../../src/runsheet/sheet/Columns";
import { plainCells } from "../plainCells";
import { plainRun } from "../plainRun";

describe.each([1, 2, 3])("A salt of %d samples", (replicates) => {
  test.each([
    ["CaCO3", "CaO"],
    ["CuSO4·5H2O", "CuSO4"],
    ["CaCo3", "CaO"],
  ])("in plain cells, %s to %s, is heated without a word against its formulas", (formula, residue) => {
    const run = plainRun({ kind: "salt", replicates, formula, residue });
    const { salt } = run.sheet;
    if (salt === undefined) throw new Error("no salt");
    for (const at of [salt.startMass, salt.theory, salt.residueMass, salt.equation]) run.type(at, new CellProblem("#N/A", ""));
    for (const sample of run.sheet.samples) {
      run.vessel(20, sample);
      run.weigh([22], sample);
      run.fire("heating", [21.2, 21.12, 21.12], sample);
    }
    expect(run.check("theory")).toEqual([
      "· not yet",
      "· Formulas are not read here, which takes Retort: theory is not judged. Weights and shares are.",
    ]);
    expect(run.head()[4]).toBe("The comparison with theory needs Retort, which is not here.");
    const right = run.sheet.columns.reckoned(1, 1).column;
    for (const row of [salt.rows.formula, salt.rows.residue]) expect(run.value(cell(row, right))).toBe("not read here: that takes Retort");
  });

  test("with Retort a formula that cannot be read is told as before", () => {
    const run = plainRun({ kind: "salt", replicates, formula: "CaCo3", residue: "CaO" });
    expect(run.check("theory")).toEqual(["? doubt", expect.stringMatching(/^\? The formula in B\d+ cannot be read/)]);
  });
});

test.each(["wood", "C6H10O5x", "C6H10O5"])("what burns, %s, is not found in order where nobody reads it", (formula) => {
  const { sheet } = plainRun({ kind: "charring", formula });
  const run = plainCells(everyBlock(sheet).cells, true);
  const row = sheet.rows.checks.lines.find(({ check }) => check === "analysis")?.row ?? 0;
  const at = `B${sheet.composition?.formula.row}`;
  expect([run.at(row, CLOCK), run.at(row, CLOCK + 1)]).toEqual([
    "· not yet",
    `· ${at} is not read here, which takes Retort: the formula is not judged.`,
  ]);
});
