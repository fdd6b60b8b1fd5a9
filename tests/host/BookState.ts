import type { HostObject } from "./HostObject";
import { badArgument, HostError, notFound } from "./HostError";
import { SheetState } from "./SheetState";

export interface BookEvent {
  readonly kind: "selected" | "activated" | "changed" | "calculated";
  readonly sheet: SheetState;
  readonly range: string;
}

const LONGEST_NAME = 31;

/** The open workbook. */
export class BookState {
  readonly sheets: SheetState[] = [];
  active: SheetState;
  /** The selected range of each sheet, under the sheet's id. */
  readonly selection = new Map<string, string>();
  /** Ranges that the client keeps hold of, under the id it knows them by. */
  readonly references = new Map<string, HostObject>();
  readonly events: BookEvent[] = [];
  /** The version of the ExcelApi requirement set that this Excel claims to have. */
  apiVersion = "1.20";
  /** Workbooks that were opened besides, as the file that each was made from. */
  readonly opened: string[] = [];
  /** Whether cells filled by a spill give the spill's formula as theirs; hosts may differ. */
  ghostFormulas = false;
  /** As Application.calculationMode and calculationState tell it. While `waits`, formulas keep the values they show. */
  readonly calculation = { mode: "Automatic", state: "Done" as "Done" | "Calculating" | "Pending", waits: false };
  /** Names of the whole workbook, with the formula behind each. */
  readonly names = new Map<string, { formula: string; visible: boolean }>();
  private made = 0;

  constructor() {
    this.active = this.add("Sheet1");
  }

  /** An id that was never given before. */
  nextId(): string {
    this.made++;
    return `id${this.made}`;
  }

  add(name: string | null): SheetState {
    const sheet = new SheetState(this.nextId(), this.freeName(name ?? `Sheet${this.sheets.length + 1}`));
    this.sheets.push(sheet);
    return sheet;
  }

  copy(sheet: SheetState): SheetState {
    const copy = sheet.copy(this.nextId(), this.freeName(`${sheet.name.slice(0, LONGEST_NAME - " (99)".length)} (${this.sheets.length + 1})`));
    this.sheets.push(copy);
    return copy;
  }

  /** Formulas of every sheet follow a sheet to its new name; texts in them do not. */
  rename(sheet: SheetState, name: string): void {
    if (name === sheet.name) return;
    const [before, after] = [`'${sheet.name.replaceAll("'", "''")}'!`, `'${name.replaceAll("'", "''")}'!`];
    sheet.name = this.freeName(name);
    for (const { cells } of this.sheets)
      for (const state of cells.values()) if (state.formula?.includes(before)) state.formula = state.formula.replaceAll(before, after);
  }

  remove(sheet: SheetState): void {
    if (this.sheets.length === 1) throw new HostError("InvalidOperation", "A workbook must contain at least one visible worksheet.");
    this.sheets.splice(this.sheets.indexOf(sheet), 1);
    if (this.active === sheet) this.active = this.sheets[0] ?? sheet;
  }

  activate(sheet: SheetState): void {
    if (this.active === sheet) return;
    this.active = sheet;
    this.events.push({ kind: "activated", sheet, range: this.selected(sheet) });
  }

  select(sheet: SheetState, range: string): void {
    this.activate(sheet);
    if (this.selected(sheet) === range) return;
    this.selection.set(sheet.id, range);
    this.events.push({ kind: "selected", sheet, range });
  }

  selected(sheet: SheetState): string {
    return this.selection.get(sheet.id) ?? "A1";
  }

  find(nameOrId: string): SheetState | undefined {
    return this.sheets.find((sheet) => sheet.id === nameOrId || sheet.name.toLowerCase() === nameOrId.toLowerCase());
  }

  sheet(nameOrId: string): SheetState {
    const sheet = this.find(nameOrId);
    if (sheet === undefined) throw notFound(nameOrId);
    return sheet;
  }

  /** @throws HostError when the member came with a later version */
  since(version: string, member: string): void {
    if (minor(version) > minor(this.apiVersion)) throw new HostError("ApiNotFound", `${member} needs ExcelApi ${version}`);
  }

  private freeName(name: string): string {
    if (name === "" || name.length > LONGEST_NAME || /[\\/?*[\]:]|^'|'$/.test(name)) throw badArgument(name);
    if (this.find(name)) throw new HostError("ItemAlreadyExists", "A resource with the same name or identifier already exists.");
    return name;
  }
}

const minor = (version: string): number => Number(version.split(".")[1]);
