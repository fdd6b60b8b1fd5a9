import { plainBanner } from "../../problems/sharedCopyWords";
import { bannerCell } from "../../sharing/bannerCell";
import { calculationRecord } from "../../sharing/calculationRecord";
import { formulaCellsOf } from "../../sharing/formulaCells";
import { plannedBeside } from "../../sharing/plain/plannedBeside";
import { plainSheets, type PlainCell, type PlainSheets } from "../../sharing/plain/plainSheets";
import { recordName } from "../../sharing/copyNames";
import type { FileWanted } from "../../sharing/shareInFile";
import { areaNamed } from "../../workbook/areaNamed";
import { cellAt, cellsOfArea } from "../../workbook/cellArea";
import { emphasisStyles } from "../../workbook/sheetStyles";
import type { RangeReading } from "../../workbook/Workbook";
import { storedFormula } from "../formulas/storedFormula";
import type { CellChange, FileValue } from "../package/CellChange";
import { WorkbookPackage } from "../package/WorkbookPackage";
import { addPlanned } from "../planned/addPlanned";
import { BANNER_LOOK, type Handed } from "./valuesFile";

type HeldInFile = ReadonlyMap<string, { readonly value: FileValue; readonly look: number }>;

// Points.
const TITLE_PLACE_SIZE = 8;
const FIXED_LOOK = { fill: emphasisStyles.failed.fill } as const;

/**
 * A workbook file that lives without the add-in: these sheets with every call of ours in built-in functions, the sheet of workings, hidden
 * sheets that watch the fixed cells, and the records. Everything else on the sheets stays as it was.
 * @throws WorkbookProblem where the file cannot be changed so
 */
export async function plainFile(content: Uint8Array<ArrayBuffer>, { sheets, date }: Omit<FileWanted, "as">): Promise<Handed> {
  const file = await WorkbookPackage.of(content);
  await file.keepSheets(sheets.map(({ sheet }) => sheet));
  const held = new Map<string, HeldInFile>();
  for (const { sheet } of sheets) held.set(sheet, await cellsIn(file, sheet));
  const readings = sheets.map((reading) => withFileValues(reading, held.get(reading.sheet) ?? new Map()));
  const around = { names: await file.definedNames(), tables: await file.tables() };
  const plain = plainSheets({ sheets: readings, ...around }, { date });
  const fixed = plain.cells.filter(({ kind }) => kind === "fixed").length;
  for (const reading of sheets) await writeSheet(file, reading, { plain, fixed, date, held: held.get(reading.sheet) ?? new Map() });
  await file.changeNames(plain.names);
  const taken = (await file.sheets()).map(({ name }) => name);
  const reserved = [...taken, ...plain.flags.map(({ name }) => name), ...(plain.workings === undefined ? [] : [plain.workings.name])];
  const records = sheets.map((reading) => {
    const shared = { sheet: reading.sheet, copy: reading.sheet, date, formulaCells: formulaCellsOf(reading, true), plainCells: plain.cells };
    return calculationRecord(shared, recordName(reading.sheet, reserved));
  });
  const working = plain.workings === undefined ? [] : [plannedBeside(plain.workings)];
  await addPlanned(file, [...records, ...working, ...plain.flags.map(plannedBeside)]);
  await file.hide(plain.flags.map(({ name }) => name));
  await file.show(sheets[0]?.sheet ?? "");
  return { content: await file.bytes(), cells: plain.cells.filter(({ kind }) => kind === "plain").length, fixed };
}

interface Written {
  readonly plain: PlainSheets;
  readonly fixed: number;
  readonly date: string;
  readonly held: HeldInFile;
}

async function writeSheet(file: WorkbookPackage, reading: RangeReading, { plain, fixed, date, held }: Written): Promise<void> {
  const ours = plain.cells.filter(({ sheet }) => sheet === reading.sheet);
  const fixedCells = ours.filter(({ kind }) => kind === "fixed").flatMap(({ area }) => cellsOfArea(areaNamed(area)).flat());
  const bases = [...new Set(fixedCells.map((cell) => held.get(cell)?.look ?? 0))];
  const at = bannerCell(reading);
  // In the place of a run sheet's title the line ends where the next step begins.
  const look = (held.get(at)?.value ?? null) === null ? BANNER_LOOK : { ...BANNER_LOOK, size: TITLE_PLACE_SIZE };
  const [bannerLook, ...marked] = await file.addLooks([[0, look], ...bases.map((base) => [base, FIXED_LOOK] as const)]);
  const markOf = new Map(bases.map((base, index) => [base, marked[index]]));
  const changes = ours.flatMap((one) => changesOf(one, held, (look) => markOf.get(look)));
  const banner = { cell: at, content: { kind: "value", value: plainBanner(date, fixed) } } as const;
  await file.changeCells(reading.sheet, [...changes, { ...banner, ...(bannerLook !== undefined && { look: bannerLook }) }]);
}

function changesOf({ kind, cell, area, formulas }: PlainCell, held: HeldInFile, markOf: (look: number) => number | undefined): CellChange[] {
  const look = (at: string): Pick<CellChange, "look"> => {
    const marked = kind === "fixed" ? markOf(held.get(at)?.look ?? 0) : undefined;
    return marked === undefined ? {} : { look: marked };
  };
  const valueOf = (at: string): FileValue => held.get(at)?.value ?? null;
  if ("one" in formulas) {
    const content = { kind: "formula", formula: storedFormula(formulas.one), value: valueOf(cell) } as const;
    return [{ cell, content: formulas.isArray ? { ...content, array: area } : content, ...look(cell) }];
  }
  const { row, column } = areaNamed(area);
  return formulas.each.flatMap((texts, down) =>
    texts.map((text, across): CellChange => {
      const at = cellAt(row + down, column + across);
      return { cell: at, content: { kind: "formula", formula: storedFormula(text), value: valueOf(at) }, ...look(at) };
    }),
  );
}

async function cellsIn(file: WorkbookPackage, sheet: string): Promise<HeldInFile> {
  const held = new Map<string, { value: FileValue; look: number }>();
  await file.readCells(sheet, ({ cell, value, look }) => void held.set(cell, { value, look }));
  return held;
}

/** Numbers as the file holds them: it may count its days from 1904. */
const withFileValues = (reading: RangeReading, held: HeldInFile): RangeReading => ({
  ...reading,
  rows: reading.rows.map((row) =>
    row.map((cell) => {
      const inFile = held.get(cell.cell)?.value;
      return typeof inFile === "number" && typeof cell.value === "number" ? { ...cell, value: inFile } : cell;
    }),
  ),
});
