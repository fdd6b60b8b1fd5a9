// Every calculated cell of every kind of sheet, typed over as by a paste that passes the entry rules: some cell must name it.
import { everyBlock } from "../../../src/runsheet/buildRunSheet";
import { balanceBlocks } from "../../../src/runsheet/blocks/balance/planBalanceSheet";
import type { BlockCell } from "../../../src/runsheet/blocks/Block";
import { cell, type Cell } from "../../../src/runsheet/expressions/Expression";
import { placeOf } from "../../../src/runsheet/expressions/formulaText";
import { watchCells } from "../../../src/runsheet/formulas/slips/typedOver";
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import { RUN_KINDS, type RunKind, type RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { balanceSheet, type BalanceSheet } from "../../../src/runsheet/sheet/BalanceSheet";
import { CLOCK } from "../../../src/runsheet/sheet/Columns";
import { runSheet, type RunSheet } from "../../../src/runsheet/sheet/RunSheet";
import { plainCells, type PlainCells } from "../plainCells";
import { clock, USUAL } from "../plainRun";

function opened(kind: RunKind, further: Partial<RunSheetOptions>) {
  const options = checkOptions({ ...USUAL, kind, weighIns: 6, ...(kind === "balance" ? {} : further) });
  const sheet = options.kind === "balance" ? balanceSheet(options) : runSheet(options);
  const { cells } = "drying" in sheet ? everyBlock(sheet) : balanceBlocks(sheet);
  const watch = watchCells(sheet);
  const { head } = sheet.rows;
  const [line, next, answer, finding] = [cell(head.checks, 0), cell(head.title, 3), cell(head.answer, 0), cell(watch.row, CLOCK + 1)];
  const filled = (): PlainCells => {
    const plain = plainCells(cells);
    if ("drying" in sheet) fillRun(sheet, plain);
    else fillBalance(sheet, plain);
    return plain;
  };
  return { sheet, cells, watch, line, next, answer, finding, filled, formulas: cells.filter(({ formula }) => formula !== undefined) };
}

/** Two alike samples, weighed to the end of whatever kind of run it is. */
function fillRun(sheet: RunSheet, { type }: PlainCells): void {
  const { drying, charring, ashing, stages, heating, caught, end, setup, settings, salt } = sheet;
  type(setup.samplesAre, "repeats");
  type(settings.wanted, 5);
  if (salt !== undefined) {
    type(salt.formula, "CaCO3");
    type(salt.residue, "CaO");
    type(salt.water, "as weighed");
  }
  for (const sample of sheet.samples) {
    type(sheet.columns.box(sheet.rows.drying.vessel, sample), 25);
    const rounds = salt === undefined ? [35, 33.02, 33.01, 33.01] : [33.01];
    rounds.forEach((grams, index) => {
      type(cell(drying.rows.first + index, CLOCK), clock(9, 30 * index));
      type(drying.box(drying.rows.first + index, sample), grams + sample / 100);
    });
    const fire = (table: RunSheet["charring"], weights: readonly number[]): void =>
      weights.forEach((grams, index) => {
        if (table === undefined) return;
        const at = table.fire(table.rows.fire.first + index);
        type(at.held, 60);
        type(at.set, 450 + (table === stages ? 100 * index : 0));
        type(table.box(table.rows.first + index, sample), grams + sample / 100);
      });
    fire(charring, [27.51, 27.5]);
    fire(ashing, [25.4, 25.4]);
    fire(heating, [29.5, 29.49]);
    fire(
      stages,
      Array.from({ length: sheet.options.stages ?? 0 }, (_, index) => 30 - index / 2),
    );
    if (end !== undefined) type(end.vessel(sample), 25);
    for (const part of caught?.parts ?? []) {
      type(caught?.before(part, sample) as Cell, 80);
      type(caught?.after(part, sample) as Cell, 80.9);
    }
  }
}

function fillBalance({ setup, round, rows }: BalanceSheet, { type }: PlainCells): void {
  type(setup.value, 200);
  [200.01, 200, 200.02, 200.01, 200, 200.01].forEach((grams, index) => {
    const at = round(rows.rounds.first + index);
    type(at.date, 46_340 + 7 * index);
    type(at.reading, grams);
    type(at.zero, 0);
  });
}

const isAt =
  ({ row, column }: Cell) =>
  ({ at }: BlockCell): boolean =>
    at.row === row && at.column === column;

const MEND = "Undo, or press Mend formulas in the task pane.";
const WITHHELD = "▲ Answer withheld: a cell that it is calculated from was typed over. Put right what the next line names.";

describe.each(RUN_KINDS)("on a sheet of the kind %s", (kind) => {
  const { cells, formulas, watch, line, next, finding } = opened(kind, { replicates: 2, panZeros: true, temperatures: true });
  const said = (at: Cell, mark = "?"): string => `${mark} ${placeOf(at)} was typed over: its formula is gone. ${MEND}`;
  test("whatever calculated cell is typed over, another names it", () => {
    const unnamed = formulas.filter(({ at }) => {
      const plain = plainCells(cells);
      plain.type(at, 7);
      const by = [finding, line, next].filter((one) => !isAt(one)({ at } as BlockCell));
      return !by.some((one) => plain.value(one) === said(at) || plain.value(one) === said(at, "▲"));
    });
    expect(unnamed.map(({ at }) => placeOf(at))).toEqual([]);
    expect(formulas.length).toBeGreaterThan(60);
  });

  test("of a run weighed to the end nothing is called typed over while all hold their formulas", () => {
    const { filled, ...own } = opened(kind, { replicates: 2 });
    const plain = filled();
    for (const at of [own.line, own.next, own.finding]) expect(plain.value(at)).not.toMatch(/typed over/);
  });

  test("what changes the answer's numbers withholds it, and what does not leaves them, marked", () => {
    const { sheet, formulas: every, answer, filled, ...own } = opened(kind, { replicates: kind === "charring" ? 2 : 1 });
    const answered = String(filled().value(answer));
    expect(answered).toMatch(/ ± \d/);
    /** The numbers of the answer, whatever stands before them. */
    const bare = (text: unknown): string => String(text).replace(/^\? (In doubt|Look again): |^In order: /, "");
    const counts = { withheld: 0, marked: 0 };
    const wrong: string[] = [];
    for (const { at } of every) {
      const isHead = at.row <= Math.max(...Object.values(sheet.rows.head)) && at.column <= sheet.columns.verdict;
      if (isHead || (at.row === own.watch.row && at.column > sheet.columns.verdict)) continue;
      const typed = (content: string | number) => {
        const plain = filled();
        plain.type(at, content);
        return [plain.value(answer), String(plain.value(own.finding)), String(plain.value(own.line))] as const;
      };
      const [shown, found, told] = typed(7);
      const isWithheld = shown === WITHHELD;
      counts[isWithheld ? "withheld" : "marked"]++;
      const isTold = isWithheld ? found === said(at, "▲") : `${found}${told}`.includes(said(at));
      const isKept = isWithheld || [shown, typed("")[0]].every((one) => bare(one) === bare(answered));
      if (!isTold || !isKept) wrong.push(`${placeOf(at)}: ${String(shown)} | ${found} | ${told}`);
    }
    expect(wrong).toEqual([]);
    expect(counts.withheld).toBeGreaterThan(5);
    expect(counts.marked).toBeGreaterThan(20);
  });

  test.each([2, 3, 4, 20])("of %s cells typed over the first three are named and the others counted", (count) => {
    const plain = plainCells(cells);
    const own = formulas.map(({ at }) => at).filter(({ row, column }) => row > 12 && row < watch.row && column > CLOCK);
    const typed = own.slice(-2 * count).filter((_, index) => index % 2 === 1);
    typed.forEach((at) => plain.type(at, 7));
    const names = [...typed].sort((one, other) => one.row - other.row || one.column - other.column).map(placeOf);
    const more = count > 3 ? ` and ${count - 3} more` : "";
    const says = String(plain.value(finding));
    expect(says.slice(2)).toBe(`${names.slice(0, 3).join(", ")}${more} were typed over: their formulas are gone. ${MEND}`);
    expect(says.length).toBeLessThanOrEqual(140);
  });

  test("values pasted over everything below the head are named, over the head too, and one formula replaced by its own value", () => {
    const below = plainCells(cells);
    const all = formulas.filter(({ at }) => at.row > 5 && at.row < watch.row);
    const marks = all.filter(({ style }) => style !== "runMark").length; // The marks of the results rest on this check, and stand in its line.
    all.forEach(({ at }) => below.type(at, below.value(at)));
    expect(below.value(finding)).toMatch(new RegExp(`^▲ [A-Z]+\\d+, [A-Z]+\\d+, [A-Z]+\\d+ and ${marks - 3} more were typed over`));
    const head = plainCells(cells);
    formulas.filter(({ at }) => at.row < 6 && at.row !== line.row && at.column === 0).forEach(({ at }) => head.type(at, head.value(at)));
    expect(head.value(line)).toBe(`▲ A2, A4, A5 were typed over: their formulas are gone. ${MEND}`);
    const one = plainCells(cells);
    const total = all.at(-3) as BlockCell;
    one.type(total.at, one.value(total.at));
    expect(String(one.value(finding)).slice(2)).toBe(said(total.at).slice(2));
  });

  test("where the spreadsheet takes single cells alone, the blocks are named", () => {
    const plain = plainCells(cells);
    const [lot, another] = watch.lots;
    plain.type(watch.feeding, 1);
    plain.type(watch.others, 1);
    watch.first.forEach((at) => plain.type(at, 0));
    plain.type(lot as Cell, ",D14:D19,F20");
    plain.type(another as Cell, ",C54,A5,B6");
    expect(plain.value(finding)).toBe(`▲ Something was typed over within D14:D19, F20, C54 and 2 more: its formula is gone. ${MEND}`);
    const asked = plainCells(cells);
    const [cellOfTotal] = formulas.filter(({ at }) => at.row > 12 && at.row < watch.row).slice(-1) as [BlockCell];
    asked.type(cellOfTotal.at, 7);
    const names = watch.lots.flatMap((at) => String(asked.value(at) ?? "").split(",").slice(1)); // prettier-ignore
    expect(names).toHaveLength(1);
    expect(names[0]?.split(":").some((name) => name.replace(/\d+$/, "") === placeOf(cellOfTotal.at).replace(/\d+$/, ""))).toBe(true);
  });

  test("no cell rests on itself, but for the next step and the watch of it, which only ask for each other's formulas", () => {
    const of = new Map(formulas.map(({ at, formula }) => [placeOf(at), formula]));
    const reads = new Map([...of].map(([at, formula]) => [at, cellsIn(JSON.stringify(formula)).filter((one) => of.has(one))]));
    const [nextAt, headAt] = [placeOf(next), placeOf(watch.head)];
    reads.set(headAt, (reads.get(headAt) ?? []).filter((one) => one !== nextAt)); // prettier-ignore
    const state = new Map<string, "on the way" | "done">();
    const circles: string[] = [];
    const walk = (at: string): void => {
      if (state.get(at) === "done") return;
      if (state.get(at) === "on the way") return void circles.push(at);
      state.set(at, "on the way");
      for (const one of reads.get(at) ?? []) walk(one);
      state.set(at, "done");
    };
    for (const at of reads.keys()) walk(at);
    expect(circles).toEqual([]);
    expect(of.has(placeOf(watch.feeding))).toBe(true);
  });
});

/** Every cell that stands in an expression written as JSON, those within its ranges too. */
function cellsIn(json: string): string[] {
  const found = new Set<string>();
  JSON.parse(json, (_, value: unknown) => {
    const one = value as { kind?: string; row: number; column: number; from: Cell; to: Cell } | null;
    if (one?.kind === "cell") found.add(placeOf(cell(one.row, one.column)));
    if (one?.kind === "range")
      for (let row = one.from.row; row <= one.to.row; row++)
        for (let column = one.from.column; column <= one.to.column; column++) found.add(placeOf(cell(row, column)));
    return value;
  });
  return [...found];
}
