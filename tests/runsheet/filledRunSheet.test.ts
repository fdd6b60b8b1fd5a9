// Through the local workbook's engine, box by box. The runs are invented: prunings from a community orchard.
import { cell } from "../../src/runsheet/expressions/Expression";
import { placeOf } from "../../src/runsheet/expressions/formulaText";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { readWeighings } from "../../src/runsheet/reading/readWeighings";
import { stripCell } from "../../src/runsheet/formulas/strip";
import { openRunSheet, type OpenRunSheet } from "./openRunSheet";

// Typing and calculating weighing by weighing takes a while on a busy machine.
jest.setTimeout(60_000);

const usual: RunSheetOptions = { kind: "ashing", weighIns: 8, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 1 };

let sheet: OpenRunSheet;
const opened = async (options: Partial<RunSheetOptions> = {}): Promise<void> => void (sheet = await openRunSheet({ ...usual, ...options }));
afterEach(() => sheet.close());

const says = async (row: number) => (await sheet.read(cell(row, sheet.sheet.columns.verdict))).shown;
const errors = async () => (await sheet.calculated()).filter(({ error }) => error !== "").map(({ cell: at, error, message }) => [at, error, message]);

/** Plum prunings, one tin: vessel 25.00 g, moist 65.20 g, dry 51.21 g. Clock times are typed as text, as a person does. */
async function dryPlum(): Promise<void> {
  await sheet.vessel(25);
  for (const [index, grams] of [65.2, 55.31, 52.1, 51.22, 51.21].entries())
    await sheet.round(index + 1, `${9 + Math.floor(index / 2)}:${index % 2 ? "30" : "00"}`, grams);
}

describe("A run sheet filled in weighing by weighing", () => {
  it("follows the sample round by round and tells when it is dry", async () => {
    await opened();
    await sheet.vessel(25);
    expect((await sheet.head()).slice(0, 2)).toEqual(["► Next: round 1, row 12", "No answer yet: nothing has been weighed."]);
    await sheet.round(1, "9:00", 65.2);
    expect([await says(12), (await sheet.head())[1]]).toEqual(["all in; into the oven", "Drying. One round weighed: no answer yet."]);
    await sheet.round(2, "9:30", 55.31);
    expect([await says(13), (await sheet.head())[0]]).toEqual(["still losing 9.89 g", "► Next: round 3 at about 10:00, row 14"]);
    // 9.89 of 40.20 g
    expect((await sheet.head())[1]).toBe("Drying. Lost so far 24.6 % of the moist weight, and not shown dry: no answer yet.");
    await sheet.round(3, "10:00", 52.1);
    await sheet.round(4, "10:30", 51.22);
    expect((await sheet.share("moistureWet")).shown).toBe("");
    await sheet.round(5, "11:00", 51.21);
    expect([await says(16), await says(sheet.sheet.rows.drying.total)]).toEqual(["no loss that counts", "✓ dry since round 5"]);
    expect((await sheet.share("moistureWet")).shown).toBe("34.80%");
    expect(await errors()).toEqual([]);
  });

  it("goes on to char and ash, fired until nothing more leaves, and to the vessel weighed again", async () => {
    await opened();
    await dryPlum();
    // Asked for as soon as a kiln is hotter than any of the list stands; without it the answer is in doubt.
    await sheet.type(sheet.sheet.settings.material, "mild steel");
    await sheet.fire("charring", 1, 32.9, { lit: "12:00", set: 450, measured: 438, held: 60, quiet: "13:10", opened: "14:20", seen: "white smoke" });
    expect((await sheet.head())[1]).toBe("At least 69.9 % of the dry sample has left as vapour so far; charring is not shown finished.");
    await sheet.fire("charring", 2, 32.54);
    await sheet.fire("charring", 3, 32.53);
    expect((await sheet.head())[1]).toBe("71.271 % ± 0.039 % (95 %) of the dry sample left as vapour; 28.729 % stayed. 1 sample.");
    await sheet.fire("ashing", 1, 25.41);
    await sheet.fire("ashing", 2, 25.4);
    expect([await sheet.together("charYieldAshFree"), await sheet.together("ash")]).toEqual(["27.625 % ± 0.040 %", "1.526 % ± 0.044 %"]);
    const { end, composition } = sheet.sheet;
    if (end) await sheet.type(end.vessel(1), 25);
    expect((await sheet.head())[0]).toBe("Run complete: all weighings are in");
    if (composition) await sheet.type(composition.formula, "C6H10O5");
    expect((await sheet.head())[4]).toBe(
      "Of 100 g dry, closed: 71.3 g left as vapour. Burnt openly: 117 g oxygen in, 215 g gases out, by the formula as it stands.",
    );
    expect((await sheet.head())[2]).toBe("✓ Checks: 15 in order, 1 with nothing to look at yet.");
    expect(await errors()).toEqual([]);
  });

  it("takes the word tared for a vessel", async () => {
    await opened({ kind: "drying" });
    await sheet.vessel("tared");
    for (const [index, grams] of [40.2, 26.22, 26.21].entries()) await sheet.round(index + 1, `9:${index * 2}0`, grams);
    await sheet.round(3, "10:00", null);
    expect((await sheet.share("moistureWet")).value).toBeCloseTo(13.99 / 40.2, 9);
    expect(await errors()).toEqual([]);
  });

  it("names the row of a bare number pasted for a time, of a time out of order and of twelve hours between", async () => {
    await opened({ kind: "drying" });
    await dryPlum();
    await sheet.round(6, 9.3, 51.21);
    expect(await sheet.check("times")).toEqual([
      "? doubt",
      "? B17 is no clock time. Type hours 0 to 23, a colon, minutes 00 to 59: 9:30, not 9.30 or 900.",
    ]);
    await sheet.round(6, "10:45", null);
    expect((await sheet.check("times"))[1]).toMatch(/^\? B17 comes 23 h 45 min after the round before; planned 30 min\./);
    await sheet.round(6, "23:00", null);
    expect((await sheet.check("times"))[1]).toMatch(/^\? B17 comes 12 h 0 min after the round before/);
    expect((await sheet.head()).slice(1, 3)).toEqual([
      expect.stringMatching(/^\? In doubt: 34\.8/),
      expect.stringMatching(/^\? 1 of 10 checks: B17 comes 12 h/),
    ]);
    await sheet.round(6, "11:30", null);
    expect(await sheet.check("times")).toEqual(["✓ in order", ""]);
  });

  it("keeps whole days between a bare round 1 on the run's date and a later round with its own", async () => {
    await opened({ kind: "drying" });
    await sheet.type(sheet.sheet.setup.date, 46_347);
    await sheet.round(1, "9:00", null);
    await sheet.round(2, 46_350 + 9.5 / 24, null);
    const minutes = await sheet.read(cell(13, sheet.sheet.columns.elapsed));
    expect(minutes.value).toBe(3 * 1440 + 30);
  });

  it("withholds the answer where char and ash were swapped, and marks the lines they stand in", async () => {
    await opened({ replicates: 2 });
    for (const sample of [1, 2]) {
      await sheet.vessel(25, sample);
      for (const [index, grams] of [65.2, 51.22, 51.21].entries()) await sheet.round(index + 1, `${9 + index}:00`, grams, sample);
    }
    await sheet.fire("charring", 1, 32.54, {}, 1);
    await sheet.fire("charring", 2, 32.53, {}, 1);
    await sheet.fire("charring", 1, 25.41, {}, 2);
    await sheet.fire("charring", 2, 25.4, {}, 2);
    await sheet.fire("ashing", 1, 25.4, {}, 1);
    await sheet.fire("ashing", 1, 32.53, {}, 2);
    expect((await sheet.head()).slice(1, 3)).toEqual([
      "▲ Answer withheld: two weights contradict each other. Put right what the next line names.",
      expect.stringMatching(/^▲ \d of 17 checks: Sample 2: ash, D34, is above char, D27\. Swapped\? Weigh both again, cold\.$/),
    ]);
    expect([(await sheet.share("volatile", 1)).shown, (await sheet.share("volatile", 2)).shown, await sheet.together("volatile")]).toEqual([
      "71.27%",
      "withheld",
      "none: a weight contradicts",
    ]);
  });

  it("names a calculated cell that was typed over", async () => {
    await opened({ kind: "drying" });
    await dryPlum();
    await sheet.type(sheet.sheet.drying.lost(14, 1), 3.2);
    expect(await sheet.check("typedOver")).toEqual([
      "? doubt",
      "? F14 was typed over: its formula is gone. Undo, or press Mend formulas in the task pane.",
    ]);
  });

  it("names a cell that shows an error, and goes on with the others", async () => {
    await opened({ kind: "drying" });
    await dryPlum();
    await sheet.type(sheet.sheet.drying.box(17, 1), "=1/0");
    expect(await sheet.check("rows")).toEqual(["? doubt", "? C17 shows an error. Type the weight again, in grams."]);
    expect((await sheet.head())[2]).toMatch(/C17 shows an error/);
  });

  it("shows the function's own message where the criterion cannot serve", async () => {
    await opened({ kind: "drying" });
    await dryPlum();
    await sheet.type(sheet.sheet.settings.criterion, "of last");
    await sheet.type(sheet.sheet.settings.limit, 0.1);
    expect((await sheet.read(sheet.sheet.drying.steady(1))).message).toMatch(/^limit: 0\.1 /);
    expect((await sheet.check("dryness"))[1]).toBe(
      `? ${placeOf(sheet.sheet.settings.limit).replaceAll("$", "")} is over 4 %, so no sample is judged. Percent typed? Type 0.1 % as 0.001, or choose readability.`,
    );
  });

  it("says how to go on where its table is full", async () => {
    await opened({ kind: "drying", weighIns: 3 });
    await sheet.vessel(25);
    for (const [index, grams] of [65.2, 51.22, 51.3].entries()) await sheet.round(index + 1, `${9 + index}:00`, grams);
    expect((await sheet.head())[0]).toBe("► Full, not dry: add a round (task pane), or insert a copy of row 14 below it");
  });
});

describe("readWeighings(reading)", () => {
  it("gives the minutes and grams of every sample's rounds so far, and not those planned", async () => {
    await opened({ replicates: 2 });
    const reading = () => sheet.workbook.readUsed(sheet.name);
    expect(readWeighings(await reading())).toEqual([
      { name: "Sample 1", points: [] },
      { name: "Sample 2", points: [] },
    ]);
    await dryPlum();
    const [first, second] = readWeighings(await reading());
    expect(first?.points.map(({ minutes }) => minutes)).toEqual([0, 30, 60, 90, 120]);
    expect(first?.points.at(-1)?.grams).toBeCloseTo(26.21, 9);
    expect(second?.points).toEqual([]);
  });

  it("takes the masses corrected by pan zeros", async () => {
    await opened({ panZeros: true, temperatures: true });
    await dryPlum();
    const strip = sheet.sheet.rows.drying.strip?.first ?? 0;
    await sheet.type(stripCell(strip, "before"), 0.1);
    await sheet.type(stripCell(strip, "after"), 0.1);
    const [first] = readWeighings(await sheet.workbook.readUsed(sheet.name));
    expect([first?.points[0]?.grams, first?.points[4]?.grams]).toEqual([expect.closeTo(40.1, 9), expect.closeTo(26.21, 9)]);
  });

  it("finds nothing on a sheet without drying tables", () => {
    expect(readWeighings({ sheet: "Other", range: "", rows: [] })).toEqual([]);
  });
});

describe("readWeighings(reading) of a run under way", () => {
  it("gives the band of the next weighing and the end foretold, as grams of sample, and neither before there is one", async () => {
    const sheet = await openRunSheet({ kind: "drying", weighIns: 8, intervalMinutes: 30, readability: 0.0001, vessel: "tin", replicates: 1 });
    await sheet.vessel(25);
    await sheet.type(sheet.sheet.settings.criterion, "of last");
    await sheet.type(sheet.sheet.settings.limit, 0.001);
    const read = async () => readWeighings(await sheet.workbook.readUsed(sheet.name))[0];
    await sheet.round(1, 0.375, 35);
    expect([(await read())?.band, (await read())?.foretold]).toEqual([undefined, undefined]);
    // Half of the water left each round: it ends at 8.4 g, four rounds on.
    for (const [index, grams] of [34.2, 33.8, 33.6, 33.5].entries()) await sheet.round(index + 2, 0.375 + (30 * (index + 1)) / 1440, grams);
    const { band, foretold } = (await read()) ?? {};
    const close = (...points: readonly (readonly [number, number])[]) =>
      points.map(([minutes, grams]) => ({ minutes, grams: expect.closeTo(grams, 3) as number }));
    expect(band).toEqual([close([120, 8.4915], [150, 8.4915]), close([120, 8.5085], [150, 8.5085])]);
    expect(foretold).toEqual(close([120, 8.5], [240, 8.4]));
    sheet.close();
  });
});
