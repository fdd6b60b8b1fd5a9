// Every run here is invented: prunings from a community orchard, blue crystals of a salts class, the orchard's balance.
import { placeOf } from "../../src/runsheet/expressions/formulaText";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { checkOptions } from "../../src/runsheet/options/checkOptions";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { balanceSheet } from "../../src/runsheet/sheet/BalanceSheet";
import type { Place } from "../../src/runsheet/sheet/balanceRows";
import type { Cell } from "../../src/runsheet/expressions/Expression";
import { openHeadlessWorkbook } from "../workbench/headlessWorkbook";
import { openRunSheet, type OpenRunSheet } from "./openRunSheet";
import { clock } from "./plainRun";

/** A sheet in the headless workbook, and every cell that was typed into. */
export interface FilledSheet extends Pick<OpenRunSheet, "workbook" | "engine" | "name" | "close"> {
  readonly options: RunSheetOptions;
  readonly typed: readonly (readonly [Cell, string | number])[];
}

const common = { weighIns: 6, intervalMinutes: 30, vessel: "lidded tin", readability: 0.01 } as const;
type Typing = [Cell, string | number][];

async function filled(options: RunSheetOptions, fill: (sheet: OpenRunSheet["sheet"], typed: Typing) => void): Promise<FilledSheet> {
  const open = await openRunSheet(options);
  const typed: Typing = [];
  fill(open.sheet, typed);
  for (const [at, content] of typed) await open.type(at, content);
  return { workbook: open.workbook, engine: open.engine, name: open.name, close: () => open.close(), options, typed };
}

/** Weighings while drying, every half hour from 9:00, and what each firing was and weighed. */
function dried(sheet: OpenRunSheet["sheet"], typed: Typing, sample: number, vessel: number | string, grams: readonly number[]): void {
  const { first, vessel: vesselRow } = sheet.rows.drying;
  typed.push([sheet.columns.box(vesselRow, sample), vessel]);
  for (const [index, mass] of grams.entries()) {
    if (sample === 1) typed.push([{ kind: "cell", row: first + index, column: 1, fixed: "nothing" }, clock(9, 30 * index)]);
    typed.push([sheet.drying.box(first + index, sample), mass]);
  }
}

const liquids = (measuresGas: boolean): Promise<FilledSheet> =>
  filled({ ...common, kind: "liquids", replicates: 2, receivers: 2 }, (sheet, typed) => {
    const { charring, caught, end } = sheet;
    if (charring === undefined || caught === undefined || end === undefined) throw new Error("a run with liquids caught");
    dried(sheet, typed, 1, 41.86, [72.14, 65.92, 63.31, 62.76, 62.72, 62.71]);
    dried(sheet, typed, 2, "tared", [40.2, 31.1, 28.4, 27.62, 27.61]);
    const before = [[55.2, 80.11, 120.5, 98.72], [54.1, 79.3, 121.4, 97.2]]; // prettier-ignore
    const gains = [[0.21, 0.91, 7.4, 0.93], [0.3, 1.1, 9.71, 1.22]]; // prettier-ignore
    const char = [[48.9, 47.86, 47.85], [8.1, 7.81, 7.8]]; // prettier-ignore
    for (const sample of [1, 2])
      for (const [part, mass] of (before[sample - 1] ?? []).entries()) {
        typed.push([caught.before(part, sample), mass], [caught.after(part, sample), mass + (gains[sample - 1]?.[part] ?? 0)]);
      }
    for (const sample of [1, 2])
      for (const [index, mass] of (char[sample - 1] ?? []).entries()) typed.push([charring.box(charring.rows.first + index, sample), mass]);
    for (const [index, held] of [60, 30, 30].entries()) {
      const at = charring.fire(charring.rows.fire.first + index);
      typed.push([at.lit, clock(13 + index)], [at.set, 450], [at.measured, 441], [at.held, held], [at.seen, "white smoke"]);
    }
    typed.push([caught.box("water", 1), 68], [caught.box("known", 1), 1], [caught.box("water", 2), 66]);
    if (measuresGas) typed.push([caught.box("gas", 1), 5.3], [caught.box("gas", 2), 7.4], [end.vessel(1), 41.9], [end.vessel(2), 0.02]);
  });

const staged = (): Promise<FilledSheet> =>
  filled({ ...common, kind: "staged", replicates: 3, stages: 8, readability: 0.001 }, (sheet, typed) => {
    const { stages, end } = sheet;
    if (stages === undefined || end === undefined) throw new Error("a staged run");
    const [vessels, dry] = [[21.5, 22.1, 20.9], [5, 5.2, 4.9]]; // prettier-ignore
    const three = [1, 2, 3].map((sample) => ({ sample, vessel: vessels[sample - 1] ?? 0, mass: dry[sample - 1] ?? 0 }));
    const to = (grams: number): number => Number(grams.toFixed(3));
    for (const { sample, vessel, mass } of three)
      dried(
        sheet,
        typed,
        sample,
        vessel,
        [1.002, 1.0001, 1].map((part) => to(vessel + mass * part)),
      );
    const left = [0.856, 0.712, 0.7119, 0.639, 0.318];
    const set = [60, 120, 120, 250, 750];
    for (const [index, share] of left.entries()) {
      const at = stages.fire(stages.rows.fire.first + index);
      typed.push([at.set, set[index] ?? 0], [at.held, 45]);
      if (index !== 2) typed.push([at.measured, (set[index] ?? 0) - 4], [at.seen, `step ${index + 1}`]);
      for (const { sample, vessel, mass } of three)
        typed.push([stages.box(stages.rows.first + index, sample), to(vessel + mass * (share + (sample - 2) * 0.0004))]);
    }
    for (const { sample, vessel } of three) typed.push([end.vessel(sample), to(vessel + 0.002)]);
  });

const salt = (): Promise<FilledSheet> =>
  filled({ ...common, kind: "salt", replicates: 2, readability: 0.001, formula: "CuSO4·5H2O", residue: "CuSO4" }, (sheet, typed) => {
    const { heating, end } = sheet;
    if (heating === undefined || end === undefined) throw new Error("a run of a salt");
    dried(sheet, typed, 1, 20.112, [22.512]);
    dried(sheet, typed, 2, 21.05, [23.401]);
    for (const [sample, masses] of [
      [21.702, 21.649, 21.648],
      [22.601, 22.555, 22.554],
    ].entries())
      // prettier-ignore
      for (const [index, mass] of masses.entries()) typed.push([heating.box(heating.rows.first + index, sample + 1), mass]);
    for (const [index, held] of [30, 20, 20].entries()) {
      const at = heating.fire(heating.rows.fire.first + index);
      typed.push([at.lit, clock(10 + index)], [at.set, 280], [at.measured, 271], [at.held, held], [at.seen, "white, no spitting"]);
    }
    typed.push([end.vessel(1), 20.112], [end.vessel(2), 21.05]);
  });

async function balance(): Promise<FilledSheet> {
  const options = { ...common, kind: "balance", replicates: 1, weighIns: 10 } as const;
  const open = await openHeadlessWorkbook();
  const name = await open.workbook.addSheet(buildRunSheet(options));
  const { setup, round, rows, corner } = balanceSheet(checkOptions(options));
  const typed: Typing = [[setup.balance, "kitchen balance 3"], [setup.value, 200], [setup.known, 0.01]]; // prettier-ignore
  for (const [index, grams] of [200.01, 200, 200.02, 200.01, 200, 200.01, 200.01, 200.06].entries()) {
    const at = round(rows.rounds.first + index);
    typed.push([at.date, 46_340 + 7 * index], [at.reading, grams], [at.zero, index === 3 ? 0.01 : 0]);
  }
  const places: Partial<Record<Place, number>> = { centre: 70, frontLeft: 70.01, frontRight: 70, backLeft: 69.93, backRight: 70.01, centreAgain: 70 };
  for (const [place, grams] of Object.entries(places)) typed.push([corner(place as Place).box, grams]);
  for (const [at, content] of typed) await open.type(name, placeOf(at), content);
  return { workbook: open.workbook, engine: open.engine, name, close: () => open.close(), options, typed };
}

/** A filled sheet of each further kind. */
export const filledKinds: Readonly<Record<string, () => Promise<FilledSheet>>> = {
  "run with liquids caught, gas by difference": () => liquids(false),
  "run with liquids caught and gas measured, one sample on a tared balance": () => liquids(true),
  "run of staged heating, three samples": staged,
  "run of a salt, two samples": salt,
  "balance check": balance,
};
