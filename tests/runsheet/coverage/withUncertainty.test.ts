import { cell } from "../../../src/runsheet/expressions/Expression";
import { formulaText } from "../../../src/runsheet/expressions/formulaText";
import { withUncertainty } from "../../../src/runsheet/formulas/withUncertainty";
import { openHeadlessWorkbook } from "../../workbench/headlessWorkbook";

describe("withUncertainty(share, uncertainty)", () => {
  it.each([
    [0.34801, 0.00012628, "34.801 % ± 0.013 %"],
    [0.34801, 0.000994, "34.801 % ± 0.099 %"],
    // 0.0996 % rounds up into the next place: two figures are 0.10, not 0.100
    [0.34801, 0.000996, "34.80 % ± 0.10 %"],
    [0.000004, 0.0000015, "0.00040 % ± 0.00015 %"],
    [0.5, 0.123, "50 % ± 12 %"],
    [1.72, 1.23, "170 % ± 120 %"],
    [0, 0.001, "0.00 % ± 0.10 %"],
  ])("writes %s and %s as %s", async (share, uncertainty, text) => {
    const open = await openHeadlessWorkbook();
    const name = await open.workbook.addSheet({
      name: "Rounding",
      cells: [
        { cell: "A1", content: share },
        { cell: "A2", content: uncertainty },
        { cell: "A3", formula: formulaText(withUncertainty(cell(1, 0), cell(2, 0))) },
      ],
      columnWidths: [30],
      entryRules: [],
      frozenRows: 0,
      startAt: "A1",
    });
    expect((await open.workbook.read(name, "A3")).rows[0]?.[0]?.value).toBe(text);
    open.close();
  });
});
