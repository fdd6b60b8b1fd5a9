import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { readBook } from "../../src/command/book/Book";
import { runCommand } from "../../src/command/runCommand";
import { holdsCall } from "../../src/sharing/findCalls";
import { longBook } from "../command/longBook";
import { mixedBook } from "../command/mixedBook";
import { agree, inTurn, median, minimum, printedTook, stopwatch, type Took } from "./inTurn";

// How long the command line takes for workbooks of many Retort cells: books of formulas that are filled down without a gap, and mixed ones, in which
// they take turns, calculated or not; and that ten times the cells take ten times as long. Others' work on the machine hardly touches processor time.
const SIZES = [1_000, 10_000, 100_000];
const ROUNDS = 3;
const WARM_UP_ROUNDS = 1;
const FILLED_DOWN = "filled down, values";
const ROUNDING = 1e-12;
const FILLED_DOWN_CELLS_IN_A_ROW = 5;
const MIXED_COLUMNS = ["D", "E"];

const folder = mkdtempSync(path.join(os.tmpdir(), "retort-bench-"));
const silent = { answer: () => undefined, note: () => undefined, today: () => "2027-01-15" };

interface Work {
  readonly book: string;
  readonly words: readonly string[];
  /** What the file that is made has to hold in its first sheet; left out for a record. */
  readonly given?: readonly number[];
}

const kept = (name: string, content: Uint8Array): string => {
  const file = path.join(folder, name);
  writeFileSync(file, content);
  return file;
};

const AS_VALUES = ["share", "--as", "values"];
const AS_PLAIN_CELLS = ["share", "--as", "plain-cells"];

async function worksOf(cells: number): Promise<Readonly<Record<string, Work>>> {
  const filledDown = kept(`filled-${cells}.xlsx`, await longBook(cells));
  const [mixed, never] = [await mixedBook(cells), await mixedBook(cells, false)];
  const { given } = mixed;
  const [calculated, blank] = [kept(`mixed-${cells}.xlsx`, mixed.content), kept(`never-${cells}.xlsx`, never.content)];
  return {
    [FILLED_DOWN]: { book: filledDown, words: AS_VALUES },
    "filled down, plain cells": { book: filledDown, words: AS_PLAIN_CELLS },
    "mixed, values": { book: calculated, words: AS_VALUES, given },
    "mixed, plain cells": { book: calculated, words: AS_PLAIN_CELLS, given },
    "mixed, record": { book: calculated, words: ["record"] },
    "never calculated, values": { book: blank, words: [...AS_VALUES, "--recalculate"], given },
    "never calculated, record": { book: blank, words: ["record", "--recalculate"] },
  };
}

async function run({ book, words: [command = "", ...options] }: Work): Promise<string> {
  const output = path.join(folder, "out.xlsx");
  const code = await runCommand([command, book, ...options, "-o", output, "--overwrite"], silent);
  if (code !== 0) throw new Error(`${command} ${options.join(" ")} of ${path.basename(book)} was refused`);
  return output;
}

/** @throws Error where the file holds other values than it should, or still calls our functions */
async function check(name: string, cells: number, work: Work, output: string): Promise<void> {
  const [sheet] = (await readBook(new Uint8Array(readFileSync(output)))).sheets;
  const readings = sheet?.reading.rows.flat() ?? [];
  if (work.words[0] === "share" && readings.some(({ formula }) => holdsCall(formula))) throw new Error(`${name}: a call of ours was left`);
  if (work.given !== undefined) {
    const shown = readings.filter(({ cell }) => MIXED_COLUMNS.includes(cell.charAt(0))).map(({ value }) => Number(value));
    agree(name, shown, work.given, ROUNDING);
  } else if (sheet === undefined || sheet.reading.rows.length < cells / FILLED_DOWN_CELLS_IN_A_ROW) throw new Error(`${name}: lines are missing`);
}

async function bench(): Promise<void> {
  const least = new Map<string, number>();
  for (const cells of SIZES) {
    const works = await worksOf(cells);
    for (const [name, work] of Object.entries(works)) await check(name, cells, work, await run(work));
    const timed = Object.entries(works).map(([name, work]) => [
      name,
      async (): Promise<Took> => {
        const watch = stopwatch();
        await run(work);
        return watch();
      },
    ]);
    console.log(`${cells} Retort cells`);
    const took = await inTurn<Took>(Object.fromEntries(timed) as Record<string, () => Promise<Took>>, ROUNDS, cells < 100_000 ? WARM_UP_ROUNDS : 0);
    printedTook(took, FILLED_DOWN);
    for (const [name, rounds] of took) {
      const processor = rounds.map((round) => round.processor);
      const before = least.get(name);
      least.set(name, minimum(processor));
      if (before !== undefined)
        console.log(
          `  ${name}: ten times the cells, ${(minimum(processor) / before).toFixed(1)} × the time; ${((1000 * median(processor)) / cells).toFixed(0)} µs each`,
        );
    }
  }
  rmSync(folder, { recursive: true });
}

void bench();
