import { buildRunSheet } from "../../../../src/runsheet/buildRunSheet";
import { valuesBanner } from "../../../../src/problems/sharing/sharedCopyWords";
import { copyTouched } from "../../../../src/problems/sharing/sharingProblems";
import { shareAsPlainCells } from "../../../../src/sharing/shareAsPlainCells";
import { shareAsValues } from "../../../../src/sharing/shareAsValues";
import { LONGEST_SHEET_NAME } from "../../../../src/workbook/freeSheetName";
import type { ExcelWorkbook } from "../../../../src/workbook/excel/ExcelWorkbook";
import { isLive, type Scene } from "./Scene";
import {
  duplicates,
  goesOnTyping,
  removes,
  renames,
  renamesAndTypes,
  renamesMine,
  takesName,
  typesAgainLater,
  typesInto,
  typesIntoMine,
  unmarks,
  unmarksAll,
  type Rival,
} from "./rivals";

export interface Operation {
  readonly title: string;
  /** The first request in which it changes anything. */
  readonly actsFrom: number;
  readonly rivals: readonly Rival[];
  /** What has to be there before. */
  prepare?(scene: Scene, workbook: ExcelWorkbook): Promise<void>;
  /** @returns names of the sheets made, and what is said besides */
  run(workbook: ExcelWorkbook): Promise<Made>;
  /** What is wrong with what a finished operation left, "" for nothing. */
  wrong(scene: Scene, made: Made): string;
  /** True where its change stands in a cell of the user's; left out: where a formula stands in D4. */
  stands?(scene: Scene): boolean;
  /** True where a sheet may stay though it is not named: the user sees it offered again. */
  readonly leaves?: (said: string) => boolean;
}

export interface Made {
  readonly names: readonly string[];
  readonly said: string;
}

const whole = buildRunSheet({ kind: "charring", weighIns: 3, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: 1 });
// Some of everything that is written to a sheet: the requests are the same, and so is what can fail, at a fraction of the time.
export const plan = { ...whole, cells: whole.cells.filter((_, index) => index % 16 === 0), entryRules: whole.entryRules.slice(0, 3) };
const isFilled = ({ content, formula }: (typeof plan.cells)[number]): boolean => (content ?? formula) !== undefined;
const cellWhere = (holds: (cell: (typeof plan.cells)[number]) => boolean): string => plan.cells.find(holds)?.cell ?? "";
const PREFILLED = cellWhere(({ content }) => content !== undefined);
const FORMULA_CELL = cellWhere(({ formula }) => formula !== undefined);
const BLANK = cellWhere((cell) => !isFilled(cell));
const FORMULA = "=RETORT.MOLARMASS(A1)";

const onOneSheet = (what: string): Rival[] => [
  renames(what),
  typesInto(`a blank box of ${what}`, BLANK),
  typesInto(`a prefilled box of ${what}`, PREFILLED),
  typesInto(`a formula of ${what}`, FORMULA_CELL),
  renamesAndTypes(what, BLANK),
  duplicates(what, BLANK),
  removes(what),
  unmarks(what),
];

export const OPERATIONS: readonly Operation[] = [
  {
    title: "insert a run sheet",
    actsFrom: 1,
    rivals: [takesName(plan.name), ...onOneSheet("the new sheet")],
    run: async (workbook) => ({ names: [await workbook.addSheet(plan)], said: "" }),
    wrong({ host }, { names: [name = ""] }) {
      const sheet = host.book.find(name);
      if (sheet === undefined) return "no sheet of that name";
      const missing = plan.cells.filter((cell) => isFilled(cell) && !sheet.cells.has(cell.cell));
      if (missing.length > 0) return `${missing.length} cells are missing`;
      const drawn = sheet.charts.filter(({ over }) => over !== undefined).length;
      return drawn === plan.charts?.length && sheet.charts.length === drawn && sheet.names.size === 0
        ? ""
        : "a chart too few or too many, or a mark left";
    },
  },
  {
    title: "share a sheet",
    actsFrom: 5,
    rivals: [
      takesName("Mine values"),
      takesName("Mine record"),
      typesIntoMine("A1"),
      renamesMine,
      renames("the copy"),
      typesInto("a blank cell of the copy", "F9"),
      typesInto("a number of the copy", "A1"),
      typesInto("a formula of the copy", "B2"),
      renamesAndTypes("the copy", "A1"),
      duplicates("the copy", "A1"),
      removes("the copy"),
      unmarks("the copy"),
      renames("the record", 1),
      typesInto("the record", "A1", 1),
      typesInto("a blank cell of the record", "Z9", 1),
      duplicates("the record", "Z9", 1),
      removes("the record", 1),
      unmarks("the record", 1),
      unmarksAll("copy and record", 2),
    ],
    async run(workbook) {
      const { copy, record, touched } = await shareAsValues(workbook, "Mine", "2026-03-14");
      return { names: [copy, record], said: touched ? copyTouched(copy, "Mine") : "" };
    },
    wrong({ host, typed }, { names: [copy = "", record = ""], said }) {
      const [shared, recorded] = [host.book.find(copy), host.book.find(record)];
      if (shared === undefined || recorded === undefined) return "no copy or no record of that name";
      if (shared.name.startsWith("Unfinished")) return "the copy still says that it is unfinished";
      if (isLive(shared)) return "a formula stayed";
      const isAsMade =
        shared.value(1, 1) === 0.7 &&
        [25, ...typed.filter(({ sheet }) => sheet.name.startsWith("Mine")).map(({ value }) => value)].includes(Number(shared.value(0, 0))) &&
        shared.value(1, 0) === "plum" &&
        // In the first row that is blank from end to end, as in a file.
        shared.value(2, 0) === valuesBanner("2026-03-14") &&
        shared.cells.size === 4;
      if (!isAsMade && said === "") return "the copy holds something else, and nothing is said";
      return recorded.cells.size > 0 && shared.names.size + recorded.names.size === 0 ? "" : "no record, or a mark left";
    },
  },
  {
    title: "share a sheet as plain cells",
    actsFrom: 5,
    rivals: [typesIntoMine("A1"), typesInto("a formula of the copy", "B2"), typesInto("the flags", "Z9", 2), removes("the flags", 2)],
    // What has no plain form is fixed, and flags watch its input.
    async prepare(scene) {
      scene.host.type("Mine", "B3", "=RETORT.BURN.EQUATION(A2)");
      scene.keep(scene.host.book.sheet("Mine"));
    },
    async run(workbook) {
      const { copy, record, touched } = await shareAsPlainCells(workbook, "Mine", "2026-03-14");
      // The hidden sheet of flags is known by its place.
      return {
        names: [copy, record, `${copy.slice(0, LONGEST_SHEET_NAME - " changes".length)} changes`],
        said: touched ? copyTouched(copy, "Mine") : "",
      };
    },
    wrong({ host }, { names: [copy = "", record = "", flags = ""], said }) {
      const [shared, recorded, flagged] = [copy, record, flags].map((name) => host.book.find(name));
      if (shared === undefined || recorded === undefined || flagged === undefined) return "a sheet is missing";
      if (shared.name.startsWith("Unfinished")) return "the copy still says that it is unfinished";
      const formulas = [...shared.cells.values(), ...flagged.cells.values()].flatMap(({ formula }) => formula ?? []);
      if (formulas.some((formula) => formula.includes("RETORT"))) return "a call of ours stayed";
      if (formulas.some((formula) => formula.includes("Unfinished"))) return "a formula refers to the unfinished copy";
      if (formulas.length < 2 && said === "") return "a formula is missing, and nothing is said";
      return [shared, recorded, flagged].every(({ names }) => names.size === 0) ? "" : "a mark left";
    },
  },
  {
    title: "put a formula into a cell",
    actsFrom: 1,
    rivals: [typesIntoMine("D4"), goesOnTyping("D4", 2), goesOnTyping("D4", 3), typesAgainLater("D4"), renamesMine],
    async run(workbook) {
      await workbook.writeFormula({ sheet: "Mine", cell: "D4" }, FORMULA);
      return { names: [], said: "" };
    },
    wrong: ({ host, typed }) => {
      const held = host.book.sheets[0]?.cells.get("D4");
      return held?.formula === FORMULA || typed.some(({ value }) => value === held?.value) ? "" : "no formula";
    },
  },
  {
    title: "put a value into a blank cell",
    actsFrom: 1,
    rivals: [typesIntoMine("D4"), goesOnTyping("D4", 2), goesOnTyping("D4", 3), typesAgainLater("D4"), renamesMine],
    async run(workbook) {
      await workbook.replaceValue({ sheet: "Mine", cell: "D4" }, null, 51.21);
      return { names: [], said: "" };
    },
    stands: ({ host }) => host.book.sheets[0]?.cells.get("D4")?.value === 51.21,
    wrong: ({ host, typed }) => {
      const held = host.book.sheets[0]?.cells.get("D4");
      return held?.value === 51.21 || typed.some(({ value }) => value === held?.value) ? "" : "no value";
    },
  },
  {
    title: "take a value back",
    actsFrom: 1,
    rivals: [typesIntoMine("D4"), goesOnTyping("D4", 2), goesOnTyping("D4", 3), typesAgainLater("D4"), renamesMine],
    prepare: async ({ host }) => void host.book.sheets[0]?.write(3, 3, 51.21),
    async run(workbook) {
      await workbook.replaceValue({ sheet: "Mine", cell: "D4" }, 51.21, null);
      return { names: [], said: "" };
    },
    stands: ({ host }) => host.book.sheets[0]?.cells.has("D4") === false,
    wrong: ({ host, typed }) => {
      const held = host.book.sheets[0]?.cells.get("D4");
      return held === undefined || typed.some(({ value }) => value === held.value) ? "" : "still there";
    },
  },
  {
    title: "remove an unfinished sheet",
    actsFrom: 3,
    rivals: onOneSheet("the unfinished sheet"),
    async prepare({ host }, workbook) {
      host.faults.plan({ code: "ServiceNotAvailable", after: 2, answerLost: false, forGood: true });
      await workbook.addSheet(plan).catch(() => undefined);
      host.faults.none();
    },
    async run(workbook) {
      const [sheet] = await workbook.unfinishedSheets();
      const removal = sheet === undefined ? "gone" : await workbook.removeUnfinished(sheet, false);
      return { names: [], said: removal === "ask first" ? `"${sheet?.name ?? ""}" asks first` : removal === "gone" ? "gone" : "" };
    },
    leaves: () => true,
    wrong: (scene, { said }) => (said === "" && scene.ownSheets().length > 0 ? "said to be removed and was not" : ""),
  },
];
