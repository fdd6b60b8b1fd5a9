// Every calculated cell of a filled sheet of the further kinds: what This cell says of it, through the local workbook's engine.
import { explainCell } from "../../../src/explanation/explainCell";
import type { RunCellExplanation } from "../../../src/explanation/CellExplanation";
import { explainRunCell } from "../../../src/explanation/runSheet/explainRunCell";
import { nameOf } from "../../../src/explanation/runSheet/cellNames";
import { cellsOf, sheetCells, RUN_SHEET_AREA } from "../../../src/explanation/runSheet/RunCells";
import { RUN_CELL_DIFFERS, RUN_CELL_OTHERWISE } from "../../../src/problems/workbook/cellNotes";
import { cell } from "../../../src/runsheet/expressions/Expression";
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import { runSheet } from "../../../src/runsheet/sheet/RunSheet";
import { saysOfCorner } from "../../../src/runsheet/words/balance/balanceMeanings";
import { meaningWords } from "../../../src/runsheet/words/meaningWords";
import type { CellReading } from "../../../src/workbook/Workbook";
import { filledKinds, type FilledSheet } from "../../runsheet/filledKinds";
import { USUAL } from "../../runsheet/plainRun";
import { equationsIn, isRight, type Equation } from "./workedLines";

jest.setTimeout(120_000);

interface Explained {
  readonly reading: CellReading;
  readonly of: RunCellExplanation;
  readonly notes: readonly string[];
}

async function everyCell({ workbook, name }: FilledSheet): Promise<readonly Explained[]> {
  const read = (await workbook.readUsed(name)).rows.flat().filter(({ formula }) => formula !== "");
  const { ranges } = await workbook.readInputs({ sheet: name, cell: "A1" }, [{ sheet: name, range: RUN_SHEET_AREA, spill: false }]);
  const cells = sheetCells(name, ranges[0] ?? []);
  if (cells === undefined) throw new Error("no run sheet was found");
  return read.map((reading) => {
    const found = explainRunCell(cells, reading);
    if (found === undefined) throw new Error(`${reading.cell} is not explained`);
    return { reading, of: found.ofRun, notes: found.notes };
  });
}

/** Of a difference of two shown numbers that is divided, the first figures cancel, so the answer is known to fewer. */
function asFarAsShown(one: Equation): Equation {
  const [, from, less] = /\((\d[\d.]*) - (\d[\d.]*)\) \//.exec(one.line) ?? [];
  if (from === undefined || less === undefined) return one;
  return { ...one, largest: (one.largest * Number(from)) / Math.abs(Number(from) - Number(less)) };
}

/** What the last line of the head tells on each. */
const LAST_LINES: Readonly<Record<string, string>> = {
  "run with liquids caught, gas by difference": "products",
  "run with liquids caught and gas measured, one sample on a tared balance": "products",
  "run of staged heating, three samples": "where most left",
  "run of a salt, two samples": "beside theory",
  "balance check": "figure for run sheets",
};

test.each([
  ["drying", "what counts as water"],
  ["charring", "open burning"],
  ["ashing", "open burning"],
  ["liquids", "products"],
  ["staged", "where most left"],
  ["salt", "beside theory"],
] as const)("the last line of the head of a %s sheet is called %s", (kind, name) => {
  const sheet = runSheet(checkOptions({ ...USUAL, kind }));
  expect(
    nameOf(
      cellsOf(sheet, () => null),
      cell(sheet.rows.head.openly, 0),
    ).text,
  ).toBe(name);
});

test.each([
  ["run of staged heating, three samples", /^stages weighed, and all of them when over, all samples$/, meaningWords.stagesDone],
  ["run of a salt, two samples", /^theoretical loss$/, meaningWords.theoryLoss],
  ["run of a salt, two samples", /^g\/mol (before|of what stays)$/, meaningWords.molarMass],
  ["run of a salt, two samples", /^equation$/, meaningWords.equation],
  ["run of a salt, two samples", /^n by theory$/, meaningWords.watersByTheory],
  ["run of a salt, two samples", /^1: only water leaves$/, meaningWords.onlyWater],
  ["run with liquids caught, gas by difference", /^gain, (tube and lid|trap|receiver \d), sample \d$/, meaningWords.gainOfPart],
  ["run with liquids caught, gas by difference", /^what the sheet says, (tube and lid|trap|receiver \d)$/, meaningWords.saysOfPart],
  ["run with liquids caught, gas by difference", /^gain, empty vessel again, sample \d$/, meaningWords.gain],
  ["run of a salt, two samples", /^what the sheet says, empty vessel again$/, meaningWords.saysOfVessel],
  ["balance check", /^what the sheet says, back left$/, saysOfCorner],
] as const)("on a %s the cell called %s is told by itself", async (kind, name, { about, source }) => {
  const sheet = await filledKinds[kind]?.();
  if (sheet === undefined) throw new Error(`no ${kind}`);
  const found = (await everyCell(sheet)).filter(({ of }) => name.test(of.name));
  sheet.close();
  expect(found.length).toBeGreaterThan(0);
  expect(found.map(({ of }) => [of.about, of.source])).toEqual(found.map(() => [about, source]));
});

describe.each(Object.keys(filledKinds))("every calculated cell of a %s", (kind) => {
  let sheet: FilledSheet;
  let every: readonly Explained[];
  beforeAll(async () => {
    const filled = await filledKinds[kind]?.();
    if (filled === undefined) throw new Error(`no ${kind}`);
    sheet = filled;
    every = await everyCell(sheet);
  });
  afterAll(() => sheet.close());

  it("is found, named, has a meaning of its own and a source, and holds what its formula gives when worked out again", () => {
    expect(every.length).toBeGreaterThan(60);
    expect(every.filter(({ notes }) => notes.some((note) => note === RUN_CELL_DIFFERS || note === RUN_CELL_OTHERWISE))).toEqual([]);
    expect(every.filter(({ of }) => of.name === "" || of.about === "" || of.source === "").map(({ reading }) => reading.cell)).toEqual([]);
    expect(every.filter(({ of }) => of.about === meaningWords.other.about).map(({ reading, of }) => [reading.cell, of.name])).toEqual([]);
  });

  it("explains the five lines at the top by what stands in them on this kind", () => {
    const head = every.filter(({ reading }) => /^(D1|A[2-5])$/.test(reading.cell)).map(({ reading, of }) => [reading.cell, of.name] as const);
    expect(head.map(([cell]) => cell)).toEqual(expect.arrayContaining(["D1", "A2", "A3", "A4", "A5"]));
    expect(head.find(([cell]) => cell === "A5")?.[1]).toBe(LAST_LINES[kind]);
    expect(every.some(({ of }) => of.about === meaningWords.openly.about)).toBe(false);
  });

  it("puts a number into every line, and gives each name and each source its own cell", () => {
    const lines = every.flatMap(({ of }) => of.working);
    expect(lines.filter((line) => line.includes("…") || /\b(ISNUMBER|ISTEXT|ISFORMULA|COLUMN|ROW)\(/.test(line))).toEqual([]);
    const named = every.flatMap(({ of }) => [of.name, ...of.inputs.map(({ name }) => name)]);
    expect(named.filter((name) => /,\s+to \d|,\s*,|\s\s|^elapsed, \d weighed/.test(name))).toEqual([]);
    // What is withheld has no ± to explain.
    const withoutAny = every.filter(
      ({ reading, of }) => of.plusMinus !== "" && typeof reading.value !== "number" && !String(reading.value).includes("±"),
    );
    expect(withoutAny.map(({ reading }) => reading.cell)).toEqual([]);
  });

  it("has working lines that are right, and the last of a number is what the cell shows", () => {
    expect(every.flatMap(({ of }) => of.working.flatMap(equationsIn)).filter((one) => !isRight(asFarAsShown(one)))).toEqual([]);
    const numbers = every.filter(({ reading, of }) => typeof reading.value === "number" && of.working.length > 0);
    expect(numbers.length).toBeGreaterThan(25);
    const wrong = numbers.filter(({ reading, of }) => {
      const last = parseFloat(of.working.at(-1)?.split(" = ").at(-1) ?? "");
      return !(Math.abs(last - Number(reading.value)) <= 1e-6 * Math.max(1, Math.abs(Number(reading.value))));
    });
    expect(wrong.map(({ reading, of }) => [reading.cell, reading.value, of.working])).toEqual([]);
  });

  it("lists inputs with their labels, or choices, wherever a number is shown", () => {
    const isConstant = (formula: string): boolean => /^=("[^"]*"|-?\d+)$/.test(formula);
    const bare = every.filter(
      ({ reading, of }) => typeof reading.value === "number" && !isConstant(reading.formula) && of.inputs.length === 0 && of.choices.length === 0,
    );
    // The ends of the chart's lines count rows, which no cell holds.
    expect(bare.map(({ reading }) => reading.formula).filter((formula) => !/^=(ROWS\(|1\+0$)/.test(formula))).toEqual([]);
    for (const { of } of every)
      for (const { name, from } of of.inputs) expect([name !== "", /^[A-Z]+\d+(:[A-Z]+\d+)?$/.test(from)]).toEqual([true, true]);
    for (const { of } of every.filter((one) => one.of.check !== undefined)) expect(of.check?.looksAt).toMatch(/^Whether .+\.$/);
  });

  it("is opened by a sentence that names it", async () => {
    const [first] = every.filter(({ reading }) => typeof reading.value === "number");
    await sheet.workbook.readUsed(sheet.name);
    const { opening, ofRun } = await explainCell(sheet.workbook, { sheet: sheet.name, cell: first?.reading.cell ?? "" });
    expect(opening).toBe(`${first?.reading.cell} is calculated by this run sheet: ${first?.of.name}.`);
    expect(ofRun?.about).toBe(first?.of.about);
  });
});
