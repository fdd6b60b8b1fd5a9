import { generateRandomId } from "@univerjs/core";
import { COLUMNS_OF_A_SHEET, ROWS_OF_A_SHEET } from "../../../workbook/cellArea";
import type { GridSheet } from "../../../workbook/grid/writing/GridSheet";
import { isOn, type Attributes, type XmlReader } from "../../../xlsx/parts/readXml";
import { CellsReader, type AnswerInFile, type KeptFormula, type SheetSurroundings } from "./CellsReader";
import { EntryRulesReader } from "./entryRules";
import { SheetLayout } from "./SheetLayout";

/** Room to go on working below and beside what the file holds. */
const SPARE_ROWS = 100;
const COLUMNS = 26;

/** Takes one sheet's part from its start to its end, each element by what it is about. */
export class SheetReader implements XmlReader {
  private readonly cells: CellsReader;
  private readonly layout: SheetLayout;
  private readonly rules = new EntryRulesReader();
  private within = "";

  constructor(
    private readonly name: string,
    private readonly around: SheetSurroundings,
  ) {
    this.layout = new SheetLayout(name, around.findings, around.looks);
    this.cells = new CellsReader(name, around, (row, column) => this.layout.givesLook(row, column));
  }

  readonly open = (element: string, attributes: Attributes): void => {
    this.within = element;
    if (this.cells.isInCell) this.cells.open(element, attributes);
    else if (element === "c") this.cells.cellBegins(attributes);
    else if (element === "row") this.layout.row(this.cells.rowBegins(attributes), attributes);
    else if (element === "col") this.layout.columns(attributes);
    else if (element === "mergeCell") this.layout.merge(attributes);
    else if (element === "sheetView") this.layout.view(attributes);
    else if (element === "pane") this.layout.pane(attributes);
    else if (!this.rules.open(element, attributes)) this.notShown(element, attributes);
  };

  readonly text = (text: string): void => {
    if (this.cells.isInCell) this.cells.text(this.within, text);
    else this.rules.text(this.within, text);
  };

  readonly close = (element: string): void => {
    this.within = "";
    this.cells.close(element);
  };

  get answers(): readonly AnswerInFile[] {
    return this.cells.answers;
  }

  get kept(): readonly KeptFormula[] {
    return this.cells.kept;
  }

  /** The sheet, when all of it has been read. */
  sheet(): GridSheet {
    const lastOf = (line: "row" | "column"): number => Math.max(this.cells.end[line], this.layout.end[line]);
    const rows = Math.min(ROWS_OF_A_SHEET, lastOf("row") + 1 + SPARE_ROWS);
    const columns = Math.min(COLUMNS_OF_A_SHEET, Math.max(COLUMNS, lastOf("column") + 1));
    const { findings } = this.around;
    if (this.layout.hasHidden) findings.add("hiddenLine", this.name);
    const promptsAlone = this.rules.promptsAlone();
    if (promptsAlone > 0) findings.add("entryRule", this.name, promptsAlone);
    return {
      name: this.name,
      data: {
        id: generateRandomId(),
        name: this.name,
        rowCount: rows,
        columnCount: columns,
        cellData: this.cells.held,
        ...this.layout.data(columns),
      },
      rules: this.rules.forGrid({ rows, columns }),
    };
  }

  private notShown(element: string, { sheet }: Attributes): void {
    const thing = NOT_SHOWN[element];
    const isInForce = thing !== "protection" || isOn(sheet);
    if (thing !== undefined && isInForce) this.around.findings.add(thing, this.name);
  }
}

const NOT_SHOWN: Readonly<Record<string, string>> = {
  conditionalFormatting: "conditional",
  hyperlink: "link",
  sheetProtection: "protection",
  autoFilter: "filter",
  control: "control",
};
