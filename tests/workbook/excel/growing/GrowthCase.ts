import { buildRunSheet } from "../../../../src/runsheet/buildRunSheet";
import { growRunSheet, mendRunSheet } from "../../../../src/runsheet/growing/growRunSheet";
import { checkOptions } from "../../../../src/runsheet/options/checkOptions";
import type { RunSheetOptions } from "../../../../src/runsheet/options/RunSheetOptions";
import { layout } from "../../../../src/runsheet/sheet/layout";
import { ExcelWorkbook } from "../../../../src/workbook/excel/ExcelWorkbook";
import { cellArea } from "../../../../src/workbook/cellArea";
import { BookState } from "../../../host/BookState";
import type { ExcelHost } from "../../../host/ExcelHost";
import type { Fault } from "../../../host/Faults";
import { putRowsIn } from "../../../host/moveRows";
import type { SheetState } from "../../../host/SheetState";
import { hostSheetState } from "./hostSheetState";

/** One round more on a sheet whose rounds stand in two places, so that it takes two steps. */
const options = checkOptions({ kind: "drying", weighIns: 3, intervalMinutes: 20, readability: 0.01, vessel: "tin", replicates: 1, panZeros: true });
const small: RunSheetOptions = { ...options, cautionsAfter: "end" };
const rows = layout(checkOptions(small)).drying;
const [TOTAL, LAST] = [rows.total, layout(checkOptions(small)).last];
const NAME = "Drying run";

/** What was typed before, under its cell; none of the numbers stands anywhere else. */
const TYPED: readonly (readonly [cell: string, value: number | string])[] = [
  ["B8", "plum prunings"],
  [`C${rows.vessel}`, 25.01],
  [`C${rows.first}`, 60.02],
  [`C${rows.last}`, 50.03],
  [`B${(rows.strip?.first ?? 0) + 2}`, 0.04],
  [`C${LAST + 3}`, "note below"],
  [`Z${TOTAL + 2}`, 9.05],
];

/** Somebody else at work on the same sheet. */
export interface Rival {
  readonly title: string;
  /** @returns the value typed */
  act(sheet: SheetState, book: BookState): number;
}

const types = (title: string, cell: string, value: number): Rival => ({
  title,
  act: (sheet) => {
    const { row, column } = cellArea(cell) ?? { row: 0, column: 0 };
    sheet.write(row, column, value);
    return value;
  },
});

export const RIVALS: readonly Rival[] = [
  types("a blank box is filled in", `C${rows.first + 1}`, 70.11),
  types("a box is typed over", `C${rows.first}`, 70.12),
  types("a calculated cell is typed over", `F${rows.first + 1}`, 70.13),
  types("a label is typed over", `A${TOTAL}`, 70.14),
  types("a cell beside is typed into", "Z2", 70.15),
  types("a cell below is typed into", `B${LAST + 9}`, 70.16),
  {
    title: "a row is put in, and a box filled in",
    act: (sheet, book) => {
      putRowsIn(book, sheet, rows.first, 1);
      sheet.write(rows.first + 1, 2, 70.17);
      return 70.17;
    },
  },
];

export interface GrowthCase {
  readonly fault?: Fault;
  readonly rival?: string;
  readonly outcome: "finished" | "nothing changed" | "half-way, and said so";
  /** True where something was typed before the very request whose answer was lost, or between it and the look before. */
  readonly inTheWindow: boolean;
  /** Each of these breaks a promise. */
  readonly broken: readonly string[];
}

/** The sheets that cases begin and end with. */
export class GrowthScene {
  private readonly smaller: string;

  private constructor(
    private readonly host: ExcelHost,
    private readonly before: SheetState,
    private readonly larger: string,
  ) {
    this.smaller = stateOf(before);
  }

  static async open(host: ExcelHost): Promise<GrowthScene> {
    host.newBook();
    host.calculate = () => "";
    const workbook = new ExcelWorkbook();
    await workbook.addSheet({ ...buildRunSheet(small), name: NAME });
    for (const [cell, value] of TYPED) host.type(NAME, cell, value);
    const before = host.book.sheet(NAME).copy("before", NAME);
    await growRunSheet(workbook, NAME, "weighIns");
    return new GrowthScene(host, before, stateOf(host.book.sheet(NAME)));
  }

  /** Actions of each request of a growth when all goes well. */
  async requests(): Promise<readonly number[]> {
    this.begin();
    const actions: number[] = [];
    this.host.startCounting(() => actions.push(this.host.requests.at(-1)?.Actions.length ?? 0));
    await growRunSheet(new ExcelWorkbook(), NAME, "weighIns");
    return actions;
  }

  async meet(fault: Fault | undefined, rival?: Rival, rivalAt = 0): Promise<GrowthCase> {
    const { host } = this;
    const sheet = this.begin();
    const workbook = new ExcelWorkbook();
    const broken = new Set<string>();
    let typed: number | undefined;
    host.startCounting((before) => {
      if (rival !== undefined && typed === undefined && before === rivalAt) typed = rival.act(sheet, host.book);
    });
    if (fault !== undefined) host.faults.plan(fault);
    const { said, isDone } = await growRunSheet(workbook, NAME, "weighIns").then(
      (done) => ({ said: done, isDone: true }),
      (thrown: Error) => ({ said: thrown.message, isDone: false }),
    );
    await host.quiet();
    host.meanwhile = () => undefined;
    host.faults.none();
    const isUntouched = rival === undefined && stateOf(sheet) === this.smaller;
    const isBegun = JSON.stringify([...sheet.cells]).includes("becoming");
    if (isBegun && !isDone && !said.includes("Mend formulas")) broken.add("left half-way and not said");
    if (!isDone && rival === undefined && !isUntouched && !said.includes("Mend formulas")) broken.add("changed and not said");
    if (isDone && rival === undefined && stateOf(sheet) !== this.larger) broken.add("said to be done and was not");
    const lost = this.lost(sheet, typed, said, rival);
    const inTheWindow = lost.length > 0 && fault?.answerLost === true && rivalAt === fault.after;
    if (lost.length > 0 && !inTheWindow) broken.add(`lost: ${lost.join(", ")}`);
    // A sheet that nothing was done to, or that is whole, has nothing to finish.
    if (!isUntouched && !isDone) await this.finish(workbook, sheet, rival, broken);
    return {
      ...(fault === undefined ? {} : { fault }),
      ...(rival === undefined ? {} : { rival: rival.title }),
      outcome: isDone ? "finished" : isBegun || (rival === undefined && !isUntouched) ? "half-way, and said so" : "nothing changed",
      inTheWindow,
      broken: [...broken],
    };
  }

  /** The host answers again, and the person presses as told. */
  private async finish(workbook: ExcelWorkbook, sheet: SheetState, rival: Rival | undefined, broken: Set<string>): Promise<void> {
    const typedThen = TYPED.filter(([, value]) => holds(sheet, value));
    const said = await mendRunSheet(workbook, NAME).catch((thrown: Error) => thrown.message);
    await this.host.quiet();
    for (const [, value] of typedThen) if (!holds(sheet, value)) broken.add(`mending lost ${value}`);
    if (rival !== undefined) return;
    if (stateOf(sheet) !== this.larger) broken.add(`not whole after mending: ${said}`);
  }

  private lost(sheet: SheetState, typed: number | undefined, said: string, rival: Rival | undefined): (number | string)[] {
    const overtyped = rival?.title === "a box is typed over" && typed !== undefined ? 60.02 : undefined;
    const all = [...TYPED.map(([, value]) => value), ...(typed === undefined ? [] : [typed])].filter((value) => value !== overtyped);
    return all.filter((value) => !holds(sheet, value) && !said.includes(String(value)));
  }

  private begin(): SheetState {
    const { host } = this;
    host.newBook();
    host.book = new BookState();
    const sheet = this.before.copy("run", NAME);
    host.book.sheets.splice(0, 1, sheet);
    host.book.active = sheet;
    // What formulas come to is no part of this, and working it out would take most of the time.
    host.keepCalculating();
    return sheet;
  }
}

const holds = (sheet: SheetState, value: number | string): boolean => [...sheet.cells.values()].some((cell) => cell.value === value);

/** Values of formulas left out: they depend on when they were worked out. */
const stateOf = (sheet: SheetState): string => {
  const { cells, looks, ...rest } = hostSheetState(sheet);
  return JSON.stringify([sorted(cells), sorted(looks), rest.emphasis, sorted(rest.rules), sorted(rest.heights), rest.page, rest.breaks, rest.charts]);
};

const sorted = (record: Record<string, unknown>): unknown => Object.entries(record).sort(([one], [other]) => (one < other ? -1 : 1));
