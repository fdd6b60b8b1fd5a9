// Through the local workbook's engine: what is explained is worked out again from what was read, and the engine must show the same.
import { explainCell } from "../../../src/explanation/explainCell";
import type { RunCellExplanation } from "../../../src/explanation/CellExplanation";
import { RUN_CELL_DIFFERS, RUN_CELL_OTHERWISE } from "../../../src/problems/workbook/cellNotes";
import { explainRunCell } from "../../../src/explanation/runSheet/explainRunCell";
import { RUN_SHEET_AREA, runCells } from "../../../src/explanation/runSheet/RunCells";
import { meaningWords } from "../../../src/runsheet/words/meaningWords";
import { cell } from "../../../src/runsheet/expressions/Expression";
import { placeOf } from "../../../src/runsheet/expressions/formulaText";
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { stripCell } from "../../../src/runsheet/formulas/strip";
import type { CellReading } from "../../../src/workbook/Workbook";
import { openRunSheet, type OpenRunSheet } from "../../runsheet/openRunSheet";
import { equationsIn, isRight } from "./workedLines";

// Typing and calculating weighing by weighing takes a while on a busy machine.
jest.setTimeout(120_000);

const usual: RunSheetOptions = { kind: "ashing", weighIns: 4, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: 1 };
const HALF_HOUR = 30 / 1440;

/** Invented: prunings of a community orchard, 2 or 3 tins alike but for some hundredths. */
async function fill(run: OpenRunSheet, until: "dried" | "charred" | "ashed"): Promise<void> {
  const isByClock = run.sheet.options.timing === "clock";
  for (const sample of run.sheet.samples) {
    await run.vessel(25.02 + sample, sample);
    for (const [index, grams] of [60.15, 55.2, 53.01, 53.01].entries())
      await run.round(index + 1, isByClock ? 0.375 + index * HALF_HOUR : index * 30, grams + sample + sample / 50, sample);
    if (until === "dried") continue;
    await run.fire("charring", 1, 34.25 + sample, { lit: 0.5, set: 500, measured: 480, held: 60, quiet: 0.55, opened: 0.65 }, sample);
    await run.fire("charring", 2, 34.25 + sample + (sample === 2 ? 0.4 : 0), { held: 60 }, sample);
    if (until === "charred") continue;
    await run.fire("ashing", 1, 25.52 + sample, { held: 60 }, sample);
    await run.fire("ashing", 2, 25.52 + sample, { held: 60 }, sample);
  }
}

/** What every calculated cell of the sheet comes to. */
async function explained(
  run: OpenRunSheet,
): Promise<readonly { readonly reading: CellReading; readonly of: RunCellExplanation; readonly notes: readonly string[] }[]> {
  const read = (await run.workbook.readUsed(run.name)).rows.flat().filter(({ formula }) => formula !== "");
  const { ranges } = await run.workbook.readInputs({ sheet: run.name, cell: "A1" }, [{ sheet: run.name, range: RUN_SHEET_AREA, spill: false }]);
  const cells = runCells(run.name, ranges[0] ?? []);
  if (cells === undefined) throw new Error("no run sheet was found");
  return read.map((reading) => {
    const found = explainRunCell(cells, reading);
    if (found === undefined) throw new Error(`${reading.cell} is not explained`);
    return { reading, of: found.ofRun, notes: found.notes };
  });
}

const RUNS: readonly (readonly [string, Partial<RunSheetOptions>, (run: OpenRunSheet) => Promise<void>])[] = [
  ["drying, blank", { kind: "drying" }, async () => undefined],
  ["drying in minutes, filled", { kind: "drying", timing: "minutes", replicates: 2 }, (run) => fill(run, "dried")],
  ["charring, three samples, half filled, °F", { kind: "charring", charFirings: 2, replicates: 3, degrees: "F" }, (run) => fill(run, "charred")],
  [
    "ashing, filled, with zeros, temperatures, an analysis and the vessel again",
    { charFirings: 2, ashFirings: 2, replicates: 2, panZeros: true, temperatures: true, samplesAre: "different" },
    async (run) => {
      await fill(run, "ashed");
      const { sheet } = run;
      const first = sheet.rows.drying.strip?.first ?? 0;
      for (const [column, value] of [["before", 0.01], ["after", 0.03], ["room", 21], ["warmth", 24]] as const) await run.type(stripCell(first, column), value); // prettier-ignore
      for (const sample of [1, 2]) if (sheet.end) await run.type(sheet.end.vessel(sample), 25.03 + sample);
      if (sheet.composition === undefined) throw new Error("no composition");
      for (const [element, share] of [["carbon", 48.6], ["hydrogen", 6.1], ["oxygen", 42]] as const) await run.type(sheet.composition[element], share); // prettier-ignore
    },
  ],
  [
    "ashing, with weights that contradict",
    { charFirings: 1, ashFirings: 1 },
    async (run) => {
      await fill(run, "ashed").catch(() => undefined);
      await run.type(run.sheet.columns.box(run.sheet.rows.drying.vessel, 1), 58);
    },
  ],
];

describe.each(RUNS)("every calculated cell of a sheet: %s", (_what, options, fillIn) => {
  let run: OpenRunSheet;
  let every: Awaited<ReturnType<typeof explained>>;
  beforeAll(async () => {
    run = await openRunSheet({ ...usual, ...options });
    await fillIn(run);
    every = await explained(run);
  });
  afterAll(() => run.close());

  it("is found, named and sourced, and holds what its formula gives when worked out again", () => {
    expect(every.length).toBeGreaterThan(55);
    expect(
      every.filter(({ notes }) => notes.includes(RUN_CELL_DIFFERS) || notes.includes(RUN_CELL_OTHERWISE)).map(({ reading }) => reading.cell),
    ).toEqual([]);
    expect(every.filter(({ of }) => of.name === "" || of.about === "" || of.source === "")).toEqual([]);
    const unknown = every.filter(({ of }) => of.about === meaningWords.other.about).map(({ of }) => of.name);
    expect(unknown).toEqual([]);
  });

  it("has working lines that are right, and the last of a number is what the cell shows", () => {
    const lines = every.flatMap(({ of }) => of.working);
    const equations = lines.flatMap(equationsIn);
    expect(equations.filter((one) => !isRight(one))).toEqual([]);
    for (const { reading, of } of every) {
      if (typeof reading.value !== "number" || of.working.length === 0) continue;
      const last = of.working.at(-1)?.split(" = ").at(-1) ?? "";
      expect([reading.cell, Math.abs(parseFloat(last) - reading.value) <= 1e-6 * Math.max(1, Math.abs(reading.value))]).toEqual([reading.cell, true]);
    }
  });

  it("asks in words, each question once, and nothing that the spreadsheet does not ask", () => {
    for (const { reading, of } of every) {
      const asked = of.choices.map((one) => one.asked);
      // A call of ours is told by its name; what shows an error is told as a cell that does.
      expect([reading.cell, asked.filter((one) => /(?<!RETORT\.)\b[A-Z]{2,}\(/.test(one))]).toEqual([reading.cell, []]);
      expect([reading.cell, new Set(of.choices.map((one) => JSON.stringify(one))).size]).toEqual([reading.cell, asked.length]);
    }
  });

  it("names what is told of cells typed over, however far right it stands", () => {
    const { columns, rows } = run.sheet;
    const row = rows.checks.lines.at(-1)?.row ?? 0;
    const name = (place: number): string | undefined => every.find(({ reading }) => reading.cell === placeOf(columns.working(row, place)))?.of.name;
    expect([1, 2, 3, 5, 6].map(name)).toEqual([
      "cells typed over that the answer rests on",
      "others, nothing typed over",
      "first, nothing typed over",
      "third, nothing typed over",
      "of the head, nothing typed over",
    ]);
  });

  it("has arithmetic, choices or a value where it shows something, and tells what it waits for where it shows nothing", () => {
    const isConstant = (formula: string): boolean => /^="[^"]*"$/.test(formula);
    const silent = every.filter(
      ({ reading, of }) => (reading.value ?? "") !== "" && !isConstant(reading.formula) && of.working.length === 0 && of.choices.length === 0,
    );
    // Whether cells hold formulas still is not read, so the last check is told by what it looks at and found.
    expect(silent.map(({ reading }) => reading.cell).filter((at) => at !== placeOf(cell(run.sheet.rows.checks.lines.at(-1)?.row ?? 0, 1)))).toEqual(
      [],
    );
    const waiting = every.filter(({ reading, of }) => reading.value === "" && of.check === undefined);
    const named = waiting.filter(({ of }) => of.waitsFor.length > 0);
    // What shows nothing because all is in order waits for nothing.
    expect(waiting.length === 0 || named.length > 0).toBe(true);
    for (const { of } of named) for (const one of of.waitsFor) expect(one).toMatch(/ \([A-Z]+\d+\) (is blank|shows .+)$/);
  });
});

describe("explainCell(workbook, address) on a run sheet", () => {
  let run: OpenRunSheet;
  afterEach(() => run.close());
  const opened = async (options: Partial<RunSheetOptions>): Promise<void> => void (run = await openRunSheet({ ...usual, ...options }));
  const at = async (place: ReturnType<typeof cell>) => {
    await run.workbook.readUsed(run.name);
    return explainCell(run.workbook, { sheet: run.name, cell: placeOf(place) });
  };

  /** Plum prunings, invented: 40.20 g moist and 26.21 g dry in a vessel of 25.00 g, 7.53 g char. */
  const plum = async (sample = 1, more = 0): Promise<void> => {
    await run.vessel(25, sample);
    for (const [index, grams] of [65.2, 55.31, 51.21, 51.21].entries()) await run.round(index + 1, 0.375 + index * HALF_HOUR, grams, sample);
    await run.fire("charring", 1, 32.9 + more, { held: 60 }, sample);
    await run.fire("charring", 2, 32.53 + more, { held: 60 }, sample);
    await run.fire("charring", 3, 32.53 + more, { held: 60 }, sample);
  };

  it("puts the numbers into what was lost, by the sheet's words", async () => {
    await opened({ kind: "charring" });
    await plum();
    const { ofRun, opening, notes } = await at(run.sheet.charring?.lost(run.sheet.charring.rows.first, 1) ?? cell(1, 0));
    expect(opening).toBe("F22 is calculated by this run sheet: lost, after firing 1.");
    expect(ofRun?.inputs).toEqual([
      { name: "before the first firing", value: "51.21 g", from: "L21" },
      { name: "counted with the vessel, after firing 1", value: "32.9 g", from: "L22" },
    ]);
    expect(ofRun?.working.at(-1)).toBe("lost (F22) = 51.21 - 32.9 = 18.31 g");
    expect(ofRun?.block).toBe("2 weighed when cold");
    expect(notes).toEqual([]);
  });

  it("puts the numbers into a ± by weighing, and says what it covers", async () => {
    await opened({ kind: "charring" });
    await plum();
    const { ofRun } = await at(run.sheet.plusMinus("volatile", 1));
    // By hand: u = sqrt(2) 0.01 / sqrt(12) = 0.00408 g; y = 7.53 / 26.21 = 0.28730; 2 u sqrt(1 + y^2 + (1 - y)^2) / 26.21 = 0.000393.
    expect(ofRun?.working).toEqual([
      "u of one weighing (L2) = sqrt(0^2 + 0.01^2 / 6) = 0.004082483 g",
      "may still dry off once dry (L8) = 0 g",
      "7.53 / 26.21 = 0.2872949",
      "± 95 % (F42) = 2 × sqrt(0.004082483^2 × (1 + 0.2872949^2 + (1 - 0.2872949)^2)) / 26.21 + 0 × (1 - 0.7127051) / 26.21 = 0.0003928732 (0.03929 %)",
    ]);
    expect(ofRun?.plusMinus).toBe(meaningWords.plusMinus.plusMinus);
    expect(ofRun?.source).toMatch(/GUM \(JCGM 100:2008\)/);
  });

  it("puts the factor for three samples into the ± of their mean", async () => {
    await opened({ kind: "charring", replicates: 3 });
    for (const [index, more] of [0, 0.05, -0.04].entries()) await plum(index + 1, more);
    const together = cell(run.sheet.rows.results.shares.volatile ?? 0, run.sheet.columns.verdict);
    const { ofRun } = await at(together);
    // Student's t, 95 % two-sided, 2 degrees of freedom: 4.303 (any table).
    expect(ofRun?.working).toContain("factor t, 95 % two-sided, degrees of freedom 2 = 4.302653");
    const shares = [7.53, 7.58, 7.49].map((char) => 1 - char / 26.21);
    const mean = shares.reduce((sum, one) => sum + one, 0) / 3;
    const deviation = Math.sqrt(shares.reduce((sum, one) => sum + (one - mean) ** 2, 0) / 2);
    const line = ofRun?.working.find((one) => one.startsWith("standard deviation of left as vapour, of dry, sample 1 to 3 "));
    expect(parseFloat(line?.split(" = ")[1] ?? "")).toBeCloseTo(deviation, 9);
    expect(ofRun?.plusMinus).toMatch(/^95 %\. For several samples the larger of t s \/ sqrt\(n\)/);
    expect(ofRun?.result).toMatch(/^71\.2\d % ± 0\.4\d %$/);
  });

  it("tells why a sample is dry, and of an undone one what it waits for", async () => {
    await opened({ kind: "charring" });
    await plum();
    const total = cell(run.sheet.rows.drying.total, run.sheet.columns.verdict);
    const dry = await at(total);
    expect(dry.ofRun?.result).toBe("✓ dry since round 4");
    expect(dry.ofRun?.source).toMatch(/ASTM D4442 method A/);
    expect(dry.ofRun?.choices.at(-1)).toEqual({ asked: "steady since round, all samples (O5: 4) > 0", holds: true });
    await run.type(cell(run.sheet.rows.drying.first + 1, 1), null);
    const judged = await at(run.sheet.drying.net(1));
    expect(judged.ofRun?.waitsFor).toEqual(["steady since round (L5) shows a clock time is missing"]);
  });

  it("names the blank boxes that a share waits for", async () => {
    await opened({ kind: "charring" });
    const { ofRun, notes } = await at(run.sheet.share("volatile", 1));
    expect(ofRun?.waitsFor).toEqual(["empty vessel (C11) is blank", "round 1: moist (C12) is blank", "vessel + char, after firing 1 (C22) is blank"]);
    expect([ofRun?.result, ofRun?.working, notes]).toEqual(["", [], []]);
  });

  it("tells what a check looks at, what it found and what to do", async () => {
    await opened({ kind: "charring" });
    await plum();
    await run.type(run.sheet.columns.box(run.sheet.rows.drying.vessel, 1), 70);
    const line = run.sheet.rows.checks.lines.find(({ check }) => check === "vessel");
    const { ofRun } = await at(cell(line?.row ?? 0, 2));
    expect(ofRun?.check).toEqual({
      looksAt: "Whether each empty vessel was weighed and its moist sample stands above it, by a hundredth of the vessel at least (common practice).",
      found: "▲ Sample 1: C12 is not above the empty vessel, C11.",
      remedy: "Typed without it, or swapped? Weigh again.",
    });
    expect(ofRun?.choices.at(-1)?.holds).toBe(true);
  });

  it("says of a cell that was typed over that its formula is gone, and of one that shows otherwise no arithmetic", async () => {
    await opened({ kind: "charring" });
    await plum();
    const net = run.sheet.charring?.net(1) ?? cell(1, 0);
    await run.type(net, 7.77);
    const over = await at(net);
    expect(over.notes).toEqual([
      "F25 was typed over: the sheet calculates here, and its formula is gone. Undo, or press Mend formulas in the task pane.",
    ]);
    expect([over.ofRun?.name, over.ofRun?.working]).toEqual(["char", []]);
    const changed = run.sheet.share("volatile", 1);
    await run.type(changed, "=1-F25/F16");
    const own = await at(changed);
    expect(own.notes).toEqual([RUN_CELL_OTHERWISE]);
    expect(own.ofRun?.working.at(-1)).toBe(`Left as vapour, of dry (${placeOf(changed)}) = 1 - 7.77 / 26.21 = 0.7035483 (70.35 %)`);
  });

  it("works on a sheet that rows were put into, by the layout that it has now", async () => {
    await opened({ kind: "charring" });
    await plum();
    const { total } = run.sheet.rows.drying;
    run.engine.book.getSheetByName(run.name)?.insertRowsBefore(total - 1, 1);
    await run.engine.settled();
    const share = cell(run.sheet.share("volatile", 1).row + 1, 2);
    const { ofRun, notes } = await at(share);
    expect(notes).toEqual([]);
    expect(ofRun?.working.at(-1)).toBe(`Left as vapour, of dry (${placeOf(share)}) = 1 - 7.53 / 26.21 = 0.7127051 (71.27 %)`);
    const net = await at(cell(total + 1, run.sheet.drying.net(1).column));
    expect(net.notes).toEqual([]);
    expect(net.ofRun?.working.at(-1)).toBe(`Dry sample (F${total + 1}) = 51.21 - 25 = 26.21 g`);
  });

  it("gives no arithmetic where the cell holds another value than its formula gives", async () => {
    await opened({ kind: "charring" });
    await plum();
    const [read, { ranges }] = [
      (await run.workbook.readUsed(run.name)).rows.flat().find(({ cell: one }) => one === placeOf(run.sheet.share("volatile", 1))),
      await run.workbook.readInputs({ sheet: run.name, cell: "A1" }, [{ sheet: run.name, range: RUN_SHEET_AREA, spill: false }]),
    ];
    const cells = runCells(run.name, ranges[0] ?? []);
    if (read === undefined || cells === undefined) throw new Error("nothing read");
    const stale = explainRunCell(cells, { ...read, value: 0.5, shown: "50.00%" });
    expect([stale?.notes, stale?.ofRun.working, stale?.ofRun.inputs, stale?.ofRun.result]).toEqual([[RUN_CELL_DIFFERS], [], [], "50.00%"]);
    expect(explainRunCell(cells, read)?.notes).toEqual([]);
  });
});

test("a sheet that is no run sheet is explained as before, in one request for a cell with a formula", async () => {
  const { SheetInMemory } = await import("../SheetInMemory");
  const workbook = new SheetInMemory({ Mine: { A1: 3, A2: { formula: "=A1*2", value: 6 } } });
  const explained = await explainCell(workbook, { sheet: "Mine", cell: "A2" });
  expect([explained.ofRun, explained.notes, workbook.asked.length]).toEqual([undefined, [], 1]);
});
