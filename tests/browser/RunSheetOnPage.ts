import type { FrameLocator } from "playwright-core";
import type { WorkbenchWindow } from "../../src/workbench/WorkbenchWindow";
import type { CellReading, RangeReading } from "../../src/workbook/Workbook";
import type { LocalWorkbook } from "./localWorkbook";

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
    await pane.getByLabel("Samples").selectOption(samples);
    await pane.getByRole("button", { name: "Insert blank run sheet" }).click();
    const told = pane.getByText(/^Inserted as a new sheet, /);
    await told.waitFor();
    const name = /"(.+?)"/.exec((await told.textContent()) ?? "")?.[1] ?? "";
    await local.settled();
    return new RunSheetOnPage(local, name, await readSheet(local, name));
  }

  /** Types into the box right of a label. @param sample whose block, from 1; 0 for the first on the sheet */
  fillIn(label: string, text: string, sample = 0): Promise<void> {
    return this.local.type(this.cellBeside(label, sample), text);
  }

  /** Types clock and weight into a row of a sample's weigh-in table. */
  async weighIn(number: number, clock: string, grams: string, sample = 1): Promise<void> {
    await this.local.type(this.cellUnder("Clock", number, sample), clock);
    await this.local.type(this.cellUnder("Vessel + sample (g)", number, sample), grams);
  }

  /** What a row of a results table shows for a sample. */
  async shown(label: string, sample = 1): Promise<string> {
    const { row } = this.place(label, 0);
    return (await this.local.read(this.cellAt(row, sample))).shown;
  }

  /** What the row below it shows: a share with its uncertainty. */
  async shownBelow(label: string, sample = 1): Promise<string> {
    return (await this.local.read(this.cellAt(this.place(label, 0).row + 1, sample))).shown;
  }

  async inTable(heading: string, number: number, sample = 1): Promise<string> {
    return (await this.local.read(this.cellUnder(heading, number, sample))).shown;
  }

  /** Cell formulas that show anything, or an error; none on a blank sheet. */
  async calculated(): Promise<CellReading[]> {
    const { rows } = await readSheet(this.local, this.name);
    return rows.flat().filter(({ formula, value, error }) => error !== "" || (formula !== "" && value !== "" && value !== null));
  }

  private blockOf(sample: number): number {
    return sample === 0 ? 0 : this.place(`Sample ${sample}`, 0).row;
  }

  private cellBeside(label: string, sample: number): string {
    return this.cellAt(this.place(label, this.blockOf(sample)).row, 1);
  }

  private cellUnder(heading: string, number: number, sample: number): string {
    const from = this.blockOf(sample);
    const row = this.printed.rows.findIndex((cells, index) => index > from && cells.some(({ value }) => value === heading));
    const column = this.printed.rows[row]?.findIndex(({ value }) => value === heading) ?? -1;
    return this.cellAt(row + number, column);
  }

  /** The row of a label in the first column, at or below a row. */
  private place(label: string, from: number): { row: number } {
    const row = this.printed.rows.findIndex((cells, index) => index >= from && cells[0]?.value === label);
    if (row < 0) throw new Error(`no label "${label}" on the sheet`);
    return { row };
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
