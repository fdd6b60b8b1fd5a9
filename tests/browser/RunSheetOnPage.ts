import type { FrameLocator } from "playwright-core";
import type { WorkbenchWindow } from "../../src/workbench/WorkbenchWindow";
import type { CellReading, RangeReading } from "../../src/workbook/Workbook";
import type { LocalWorkbook } from "./localWorkbook";

const FIRST_BOX = 2;

/** A run sheet inserted from the pane and filled by keyboard, found by what is printed on it. */
export class RunSheetOnPage {
  private constructor(
    private readonly local: LocalWorkbook,
    readonly name: string,
    private readonly printed: RangeReading,
  ) {}

  static pane(local: LocalWorkbook): FrameLocator {
    return local.page.frameLocator("#pane");
  }

  /** Chooses a kind of run and the number of samples in the pane and inserts the blank sheet. */
  static async insert(local: LocalWorkbook, kind: string, samples = "1"): Promise<RunSheetOnPage> {
    const pane = RunSheetOnPage.pane(local);
    await pane.getByRole("tab", { name: "Run sheet" }).click();
    await pane.getByRole("radio", { name: kind }).check();
    const list = pane.getByLabel("Samples", { exact: true });
    // A balance check has one check weight a sheet.
    if (await list.isVisible()) await list.selectOption(samples);
    await pane.getByRole("button", { name: "Insert blank run sheet" }).click();
    const told = pane.getByText(/^Inserted as a new sheet, /);
    await told.waitFor();
    const name = /"(.+?)"/.exec((await told.textContent()) ?? "")?.[1] ?? "";
    await local.settled();
    return new RunSheetOnPage(local, name, await readSheet(local, name));
  }

  /** Types into the box right of a label in the first column. */
  fillIn(label: string, text: string): Promise<void> {
    return this.local.type(this.cellAt(this.rowOf(label), 1), text);
  }

  vessel(grams: string, sample = 1): Promise<void> {
    return this.local.type(this.box("Empty vessel, g", "1 DRYING", sample), grams);
  }

  vesselAgain(grams: string, sample = 1): Promise<void> {
    return this.local.type(this.box("Empty vessel again, g", "1 DRYING", sample), grams);
  }

  /** Types clock and weight of a round. */
  async round(number: number, clock: string, grams: string, sample = 1): Promise<void> {
    const row = this.rowOf("1 DRYING") + 1 + number;
    await this.local.type(this.cellAt(row, 1), clock);
    await this.local.type(this.cellAt(row, FIRST_BOX + sample - 1), grams);
  }

  /** Types the weighing after a firing. @param phase 2 for charring, 3 for ashing */
  fire(phase: 2 | 3, number: number, grams: string, sample = 1): Promise<void> {
    return this.local.type(this.cellAt(this.rowOf(`${phase} weighed when cold`) + number, FIRST_BOX + sample - 1), grams);
  }

  /** The head as shown: the next step, the answer, the checks, what the ± covers, open burning. */
  async head(): Promise<string[]> {
    const cells = ["D1", "A2", "A3", "A4", "A5"];
    return Promise.all(cells.map(async (cell) => (await this.local.read(cell)).shown));
  }

  /** What a row shows for a sample in the columns of the boxes. */
  async shown(label: string, sample = 1): Promise<string> {
    return (await this.local.read(this.cellAt(this.rowOf(label), FIRST_BOX + sample - 1))).shown;
  }

  /** What the sheet says of a row. */
  async says(label: string): Promise<string> {
    return (await this.local.read(this.cellAt(this.rowOf(label), this.verdictColumn()))).shown;
  }

  /** What is reckoned for a sample in a row. */
  async reckoned(label: string, sample = 1): Promise<string> {
    const column = FIRST_BOX + (this.verdictColumn() - FIRST_BOX) / 2 + sample - 1;
    return (await this.local.read(this.cellAt(this.rowOf(label), column))).shown;
  }

  /** The verdict and the finding of a check, by the end of its label. */
  async check(name: string): Promise<readonly [string, string]> {
    const row = this.printed.rows.findIndex(([first]) => String(first?.value ?? "").endsWith(`  ${name}`));
    return [(await this.local.read(this.cellAt(row, 1))).shown, (await this.local.read(this.cellAt(row, FIRST_BOX))).shown];
  }

  cellOf(label: string, column: number): string {
    return this.cellAt(this.rowOf(label), column);
  }

  /** Cells that show an error. */
  async errors(): Promise<CellReading[]> {
    return (await this.calculated()).filter(({ error }) => error !== "");
  }

  /** Cell formulas that show anything, or an error. */
  async calculated(): Promise<CellReading[]> {
    const { rows } = await readSheet(this.local, this.name);
    return rows.flat().filter(({ formula, value, error }) => error !== "" || (formula !== "" && value !== "" && value !== null));
  }

  private box(label: string, below: string, sample: number): string {
    return this.cellAt(this.rowOf(label, this.rowOf(below)), FIRST_BOX + sample - 1);
  }

  private verdictColumn(): number {
    return this.printed.rows[this.rowOf("1 DRYING")]?.findIndex(({ value }) => value === "What the sheet says") ?? -1;
  }

  /** The row of a label in the first column, at or below a row; from 0. */
  private rowOf(label: string, from = 0): number {
    const row = this.printed.rows.findIndex((cells, index) => index >= from && cells[0]?.value === label);
    if (row < 0) throw new Error(`no label "${label}" on the sheet`);
    return row;
  }

  private cellAt(row: number, column: number): string {
    const cell = this.printed.rows[row]?.[column]?.cell;
    if (cell === undefined) throw new Error(`no cell at row ${row + 1}, column ${column + 1}`);
    return cell;
  }
}

async function readSheet(local: LocalWorkbook, name: string): Promise<RangeReading> {
  const reading = await local.page.evaluate((sheet) => (window as WorkbenchWindow).retortWorkbench?.workbook.readUsed(sheet), name);
  if (reading === undefined) throw new Error("the page has no workbook");
  return reading;
}
