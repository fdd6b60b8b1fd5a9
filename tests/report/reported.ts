// Runs of an orchard's kiln and a salts class, invented, each filled in the local workbook and read as its pane reads it.
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import type { RangeReading } from "../../src/workbook/Workbook";
import { filledKinds } from "../runsheet/filledKinds";
import { stripCell } from "../../src/runsheet/formulas/strip";
import { openRunSheet, type OpenRunSheet } from "../runsheet/openRunSheet";

export const EXTRAS = { date: "2026-11-26", version: "0.2.0" };

const usual: RunSheetOptions = { kind: "ashing", weighIns: 8, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 1 };

async function read(sheet: Pick<OpenRunSheet, "workbook" | "name" | "close">): Promise<RangeReading> {
  const reading = await sheet.workbook.readUsed(sheet.name);
  sheet.close();
  return reading;
}

async function filled(options: Partial<RunSheetOptions>, fill: (sheet: OpenRunSheet) => Promise<void>): Promise<RangeReading> {
  const sheet = await openRunSheet({ ...usual, ...options });
  await fill(sheet);
  return read(sheet);
}

const VESSELS = [25, 24.6, 25.31, 24.9, 25.12, 25.44];
const CLOCKS = ["9:00", "9:30", "10:00", "10:30", "11:00"];

/** Plum prunings dried in as many tins as the sheet has. */
async function dried(sheet: OpenRunSheet): Promise<void> {
  const { setup, samples } = sheet.sheet;
  await sheet.type(setup.date, 46_350);
  await sheet.type(setup.operator, "Mara & Jon");
  await sheet.type(setup.material, "plum prunings");
  for (const sample of samples) {
    const vessel = VESSELS[sample - 1] ?? 0;
    await sheet.type(setup.name(sample), `tin ${sample}`);
    await sheet.vessel(vessel, sample);
    for (const [index, grams] of [40.2, 30.31, 27.1, 26.22, 26.21].entries()) {
      const mass = Number((vessel + grams * (1 + sample / 50)).toFixed(2));
      await sheet.round(index + 1, sample === 1 ? (CLOCKS[index] ?? "") : null, mass, sample);
    }
  }
}

async function burnt(sheet: OpenRunSheet): Promise<void> {
  const seen = ["white smoke, then blue haze", "none"];
  for (const sample of sheet.sheet.samples) {
    const [vessel, size] = [VESSELS[sample - 1] ?? 0, 1 + sample / 50];
    const mass = (grams: number): number => Number((vessel + grams * size).toFixed(2));
    for (const [index, grams] of [7.9, 7.54, 7.53].entries()) {
      const noted = { lit: `${12 + 2 * index}:00`, set: 450, measured: 438, held: 60, quiet: `${12 + 2 * index}:40`, opened: `${13 + 2 * index}:45` };
      await sheet.fire("charring", index + 1, mass(grams), sample === 1 ? { ...noted, seen: seen[index] ?? "none" } : {}, sample);
    }
    for (const [index, grams] of [0.43, 0.42].entries())
      await sheet.fire("ashing", index + 1, mass(grams), sample === 1 ? { set: 580, held: 60 } : {}, sample);
    const { end, composition } = sheet.sheet;
    if (end) await sheet.type(end.vessel(sample), vessel);
    if (composition) await sheet.type(composition.formula, "C6H10O5");
  }
}

/** The balance's zeros and the temperatures beside each weighing, as far as the sheet has boxes for them. */
async function beside({ sheet, type }: OpenRunSheet): Promise<void> {
  const { rows, tables, options } = sheet;
  for (const [place, strip] of [...tables.map((table) => table.rows.strip), rows.end.strip].entries()) {
    if (strip === undefined) continue;
    const first = strip.vessel ?? ("first" in strip ? strip.first : 0);
    const last = "first" in strip ? strip.first + (place === 0 ? 4 : (tables[place]?.rows.last ?? 0) - (tables[place]?.rows.first ?? 0)) : first;
    for (let row = first; row <= last; row++) {
      await type(stripCell(row, "before"), 0);
      await type(stripCell(row, "after"), 0.01);
      if (!options.temperatures || place !== 0 || row === strip.vessel) continue;
      await type(stripCell(row, "room"), 21.5);
      await type(stripCell(row, "warmth"), 22);
    }
  }
}

/** Readings of run sheets of every kind, blank, under way, done and contradicting. */
export const reported: Readonly<Record<string, () => Promise<RangeReading>>> = {
  "blank ashing": () => filled({ replicates: 3 }, async () => undefined),
  drying: () => filled({ kind: "drying", panZeros: true, temperatures: true }, dried),
  "drying under way": () =>
    filled({ kind: "drying", weighIns: 12 }, async (sheet) => {
      await sheet.vessel(25);
      for (const [index, grams] of [65.2, 55.31, 50.1, 47.4].entries()) await sheet.round(index + 1, CLOCKS[index] ?? "", grams);
    }),
  "ashing of one": () =>
    filled({}, async (sheet) => {
      await dried(sheet);
      await burnt(sheet);
    }),
  "ashing of three": () =>
    filled({ replicates: 3 }, async (sheet) => {
      await dried(sheet);
      await burnt(sheet);
    }),
  ...Object.fromEntries(
    [1, 2, 3].map((replicates) => [
      `ashing of ${replicates} with zeros and temperatures`,
      () =>
        filled({ replicates, panZeros: true, temperatures: true }, async (sheet) => {
          await dried(sheet);
          await burnt(sheet);
          await beside(sheet);
        }),
    ]),
  ),
  "ashing of two, char and ash swapped, times backward": () =>
    filled({ replicates: 2 }, async (sheet) => {
      await dried(sheet);
      await burnt(sheet);
      await sheet.round(3, "9:10", null);
      for (const [index, grams] of [32.9, 25.0, 25.0].entries()) await sheet.fire("charring", index + 1, grams, {}, 2);
      for (const [index, grams] of [32.5, 32.4].entries()) await sheet.fire("ashing", index + 1, grams, {}, 2);
    }),
  "ashing of six": () =>
    filled({ replicates: 6, charFirings: 4 }, async (sheet) => {
      await dried(sheet);
      await burnt(sheet);
    }),
  contradicting: () =>
    filled({ replicates: 2, kind: "charring" }, async (sheet) => {
      await dried(sheet);
      // Char and vessel swapped in the second tin.
      for (const [index, grams] of [32.9, 32.54, 32.53].entries()) await sheet.fire("charring", index + 1, grams);
      await sheet.fire("charring", 1, 24.1, {}, 2);
    }),
  ...Object.fromEntries(Object.entries(filledKinds).map(([name, open]) => [name, async () => read(await open())])),
};
