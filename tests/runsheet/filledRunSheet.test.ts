// The runs here are invented: prunings from a community orchard, dried in its oven and charred in its kiln.
import { readWeighings } from "../../src/runsheet/reading/readWeighings";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { openRunSheet, type OpenRunSheet } from "./openRunSheet";

const usual: RunSheetOptions = { kind: "ashing", weighIns: 8, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 1 };

let sheet: OpenRunSheet;
const opened = async (options: Partial<RunSheetOptions> = {}): Promise<void> => void (sheet = await openRunSheet({ ...usual, ...options }));
afterEach(() => sheet.close());

const shown = async (label: string, heading?: string) => (await sheet.result(label, heading)).shown;
const value = async (label: string, heading?: string) => (await sheet.result(label, heading)).value;
const row = async (number: number, sample = 1) =>
  Promise.all(
    ["Elapsed (min)", "Sample (g)", "Change since last (g)", "Steady yet"].map(
      async (heading) => (await sheet.inTable(number, heading, sample)).shown,
    ),
  );
const errors = async () => (await sheet.calculated()).filter(({ error }) => error !== "").map(({ cell, error, message }) => [cell, error, message]);

/** Plum prunings, one tin: vessel 25.00 g, moist 65.20 g, dry 51.21 g. */
async function dryPlum(): Promise<void> {
  await sheet.fillIn("Empty vessel (g)", 25);
  await sheet.weighIn(1, "9:00", 65.2);
  await sheet.weighIn(2, "9:30", 55.31);
  await sheet.weighIn(3, "10:00", 52.1);
  await sheet.weighIn(4, "10:30", 51.22);
  await sheet.weighIn(5, "11:00", 51.21);
}

describe("A run sheet filled in weighing by weighing", () => {
  it("follows the sample row by row and tells when it is steady", async () => {
    await opened();
    await sheet.fillIn("Empty vessel (g)", 25);
    await sheet.weighIn(1, "9:00", null);
    expect(await row(1)).toEqual(["0", "", "", ""]);
    await sheet.weighIn(1, null, 65.2);
    expect(await row(1)).toEqual(["0", "40.20", "", "first"]);
    expect(await shown("Steady since weigh-in")).toBe("not yet");

    await sheet.weighIn(2, "9:30", 55.31);
    expect(await row(2)).toEqual(["30", "30.31", "-9.89", "not yet"]);
    await sheet.weighIn(3, "10:00", 52.1);
    expect(await row(3)).toEqual(["60", "27.10", "-3.21", "not yet"]);
    await sheet.weighIn(4, "10:30", 51.22);
    expect(await row(4)).toEqual(["90", "26.22", "-0.88", "not yet"]);
    expect(await shown("Moisture, wet basis")).toBe("");

    await sheet.weighIn(5, "11:00", 51.21);
    expect(await row(5)).toEqual(["120", "26.21", "-0.01", "steady"]);
    expect(await value("Steady since weigh-in")).toBe(5);
    expect(await row(6)).toEqual(["", "", "", ""]);
    expect(await errors()).toEqual([]);
  });

  it("gives moisture as reckoned by hand", async () => {
    await opened({ kind: "drying" });
    await dryPlum();
    // (65.20 - 51.21) / (65.20 - 25.00) = 13.99 / 40.20; 13.99 / (51.21 - 25.00) = 13.99 / 26.21
    expect(await value("Moisture, wet basis")).toBeCloseTo(0.34801, 5);
    expect(await value("Moisture, dry basis")).toBeCloseTo(0.53377, 5);
    expect([await shown("Moisture, wet basis"), await shown("Moisture, dry basis")]).toEqual(["34.8%", "53.4%"]);
  });

  it("gives volatile fraction, char yield and ash as reckoned by hand, each as soon as it is weighed", async () => {
    await opened();
    await dryPlum();
    expect(await shown("Char yield of dry sample")).toBe("");
    await sheet.fillIn("Vessel + char (g)", 32.53);
    // char 32.53 - 25.00 = 7.53 of 26.21 g dry; volatile (51.21 - 32.53) / 26.21 = 18.68 / 26.21
    expect(await value("Char yield of dry sample")).toBeCloseTo(0.287295, 6);
    expect(await value("Volatile fraction of dry sample")).toBeCloseTo(0.712705, 6);
    expect([await shown("Char yield, ash-free"), await shown("Ash of dry sample")]).toEqual(["", ""]);
    await sheet.fillIn("Vessel + ash (g)", 25.4);
    // ash 0.40 g: (32.53 - 25.40) / (51.21 - 25.40) = 7.13 / 25.81; 0.40 / 26.21
    expect(await value("Char yield, ash-free")).toBeCloseTo(0.27625, 5);
    expect(await value("Ash of dry sample")).toBeCloseTo(0.01526, 5);
    expect(await errors()).toEqual([]);
  });

  it("sets closed charring against open burning once a composition is given, and both sides close", async () => {
    await opened();
    await dryPlum();
    await sheet.fillIn("Vessel + char (g)", 32.53);
    await sheet.fillIn("Vessel + ash (g)", 25.4);
    expect(await shown("Open: oxygen taken up (g)")).toBe("");
    await sheet.fillIn("Formula of what burns", "C6H10O5");
    // 25.81 g burn. Cellulose takes up 6 * 31.998 / 162.141 = 1.18408 g oxygen per g: 30.56 g; air 30.561 / 0.2314.
    expect(await shown("Closed: char left (g)")).toBe("7.53");
    expect(await shown("Closed: left as vapour (g)")).toBe("18.68");
    expect(await shown("Open: oxygen taken up (g)")).toBe("30.56");
    expect(await shown("Open: air that brings it (g)")).toBe("132.07");
    expect(await shown("Open: ash left (g)")).toBe("0.40");
    // CO2 6 * 44.009 / 162.141 * 25.81 = 42.03 g and H2O 5 * 18.015 / 162.141 * 25.81 = 14.34 g
    expect(await shown("Open: gases leaving (g)")).toBe("56.37");
    // in 26.21 + 30.56, out 0.40 + 56.37
    expect([await shown("Open: sample and oxygen, in (g)"), await shown("Open: all together, out (g)")]).toEqual(["56.77", "56.77"]);
    expect(await errors()).toEqual([]);
  });

  it("takes an ultimate analysis in place of the formula, and waits for carbon and hydrogen both", async () => {
    await opened({ kind: "charring" });
    await dryPlum();
    await sheet.fillIn("Vessel + char (g)", 32.53);
    await sheet.fillIn("Carbon (fraction of dry)", 0.488);
    expect(await shown("Open: oxygen taken up (g)")).toBe("");
    expect(await errors()).toEqual([]);
    await sheet.fillIn("Hydrogen (fraction of dry)", 0.061);
    expect(await shown("Open: oxygen taken up (g)")).toBe("");
    expect(await errors()).toEqual([]);
    await sheet.fillIn("Oxygen (fraction of dry)", 0.441);
    // 2.66406 * 0.488 + 7.93601 * 0.061 - 0.441 = 1.34316 g per g dry, of 26.21 g; 1 - 0.488 - 0.061 - 0.441 = 0.010 not analysed
    expect(await shown("Dry sample (g)")).toBe("26.21");
    expect(await shown("Open: oxygen taken up (g)")).toBe("35.20");
    expect(await shown("Open: not in the analysis (g)")).toBe("0.26");
    expect(await errors()).toEqual([]);
  });

  it("keeps samples apart and gives mean and standard deviation once two are finished", async () => {
    await opened({ kind: "drying", replicates: 3 });
    await dryPlum();
    expect(await shown("Moisture, wet basis", "Mean")).toBe("");
    await sheet.fillIn("Empty vessel (g)", 24.8, 2);
    for (const [index, grams] of [60.1, 50.02, 47.7, 47.68].entries())
      await sheet.weighIn(index + 1, `9:${["05", "35"][index % 2]}`.replace("9", String(9 + Math.floor(index / 2))), grams, 2);
    expect(await row(4, 2)).toEqual(["90", "22.88", "-0.02", "steady"]);
    // (60.10 - 47.68) / (60.10 - 24.80) = 12.42 / 35.30 = 0.35184; mean with 0.34801; deviation 0.00383 / sqrt 2
    expect(await value("Moisture, wet basis", "Sample 2")).toBeCloseTo(0.35184, 5);
    expect(await value("Moisture, wet basis", "Mean")).toBeCloseTo(0.34993, 5);
    expect(await value("Moisture, wet basis", "Standard deviation")).toBeCloseTo(0.00271, 5);
    expect(await shown("Moisture, wet basis", "Sample 3")).toBe("");
    expect(await errors()).toEqual([]);
  });
});

describe("A run sheet's clock", () => {
  beforeEach(() => opened({ kind: "drying" }));
  const elapsed = async (clocks: readonly (string | number)[]) => {
    for (const [index, clock] of clocks.entries()) await sheet.weighIn(index + 1, clock, null);
    return Promise.all(clocks.map(async (_, index) => (await sheet.inTable(index + 1, "Elapsed (min)")).value));
  };

  it("runs on past midnight, as often as needed", async () => {
    expect(await elapsed(["23:10", "23:40", "0:10", "0:40", "18:40", "6:40"])).toEqual([0, 30, 60, 90, 1170, 1890]);
  });

  it("takes dates with times, also with days between", async () => {
    // 46000 is a date in 2025; .9 is 21:36, .925 is 22:12
    expect(await elapsed([46000.9, 46000.925, 46003.025])).toEqual([0, 36, 3060]);
  });

  it("starts at midnight as at any other time", async () => {
    expect(await elapsed(["0:00", "0:30"])).toEqual([0, 30]);
  });

  it("skips a weigh-in whose clock is missing without losing the later ones", async () => {
    await sheet.weighIn(1, "9:00", null);
    await sheet.weighIn(3, "10:00", null);
    expect([(await row(2))[0], (await row(3))[0]]).toEqual(["", "60"]);
  });
});

describe("A run sheet that is not yet in order", () => {
  it("waits for the vessel, whatever else is filled in", async () => {
    await opened();
    await sheet.weighIn(1, "9:00", 65.2);
    await sheet.weighIn(2, "9:30", 55.31);
    await sheet.fillIn("Vessel + char (g)", 32.53);
    await sheet.fillIn("Vessel + ash (g)", 25.4);
    expect(await row(2)).toEqual(["30", "", "", ""]);
    expect(await shown("Char yield of dry sample")).toBe("");
    expect(await errors()).toEqual([]);
  });

  it("gives no yield before the sample is dry", async () => {
    await opened();
    await sheet.fillIn("Empty vessel (g)", 25);
    await sheet.weighIn(1, "9:00", 65.2);
    await sheet.weighIn(2, "9:30", 55.31);
    await sheet.fillIn("Vessel + char (g)", 32.53);
    expect([await shown("Steady since weigh-in"), await shown("Char yield of dry sample")]).toEqual(["not yet", ""]);
  });

  it("names a row that was left out", async () => {
    await opened({ kind: "drying" });
    await dryPlum();
    await sheet.weighIn(7, "12:00", 51.2);
    expect(await row(7)).toEqual(["180", "26.20", "", "a row is missing"]);
    expect([await shown("Steady since weigh-in"), await shown("Moisture, wet basis")]).toEqual(["", ""]);
    expect(await errors()).toEqual([]);
  });

  it("says when a weight or a clock was pasted as text", async () => {
    await opened({ kind: "drying" });
    await dryPlum();
    await sheet.weighIn(6, "11:30", "'51,20");
    expect(await row(6)).toEqual(["150", "", "", "weight is not a number"]);
    expect([await shown("Steady since weigh-in"), await shown("Moisture, wet basis")]).toEqual(["weight is not a number", ""]);
    await sheet.weighIn(6, "half past", 51.2);
    expect(await row(6)).toEqual(["", "26.20", "-0.01", "clock is not a time"]);
    expect([await shown("Steady since weigh-in"), await shown("Moisture, wet basis")]).toEqual(["clock is not a time", ""]);
    expect(await errors()).toEqual([]);
  });

  it("shows the function's own message for a weighing below the vessel", async () => {
    await opened({ kind: "drying" });
    await dryPlum();
    await sheet.weighIn(6, "11:30", 5.12);
    expect(await sheet.inTable(6, "Steady yet")).toMatchObject({
      error: "#VALUE!",
      message: expect.stringMatching(/^weights: row 6 holds 5\.12 g, not more than vessel, 25 g\. /),
    });
    expect(await shown("Moisture, wet basis")).toBe("");
  });

  it("says when the limit is missing", async () => {
    await opened({ kind: "drying" });
    await dryPlum();
    await sheet.fillIn("Drying limit", "");
    expect(await row(5)).toEqual(["120", "26.21", "-0.01", "run details missing"]);
    expect([await shown("Steady since weigh-in"), await shown("Moisture, wet basis")]).toEqual(["run details missing", ""]);
    expect(await errors()).toEqual([]);
  });

  it("says when the balance is too coarse for the limit, and gives no moisture", async () => {
    await opened({ kind: "drying", readability: 0.1 });
    await sheet.fillIn("Drying criterion", "of last");
    await sheet.fillIn("Drying limit", 0.001);
    await dryPlum();
    expect((await row(5))[3]).toBe("balance too coarse");
    expect([await shown("Steady since weigh-in"), await shown("Moisture, wet basis")]).toEqual(["balance too coarse", ""]);
    expect(await errors()).toEqual([]);
  });

  it("does not take a gain for a steady weight", async () => {
    await opened({ kind: "drying" });
    await dryPlum();
    await sheet.weighIn(6, "11:30", 51.3);
    expect(await row(6)).toEqual(["150", "26.30", "0.09", "gain"]);
    expect([await shown("Steady since weigh-in"), await shown("Moisture, wet basis")]).toEqual(["gain", ""]);
  });

  it("compares only weighings at least the planned interval apart", async () => {
    await opened({ kind: "drying" });
    await sheet.fillIn("Empty vessel (g)", 25);
    for (const [index, grams] of [65.2, 65.19, 65.19, 65.18].entries()) await sheet.weighIn(index + 1, `9:${index}0`, grams);
    expect([(await row(2))[3], (await row(3))[3], (await row(4))[3]]).toEqual(["too soon to tell", "too soon to tell", "steady"]);
  });

  it("shows the function's own message for weighings in the wrong order", async () => {
    await opened();
    await dryPlum();
    await sheet.fillIn("Vessel + char (g)", 53);
    expect(await sheet.result("Char yield of dry sample")).toMatchObject({
      error: "#VALUE!",
      message: "char: 53 g is more than dry, 51.21 g. Check for swapped cells or regained moisture.",
    });
    await sheet.fillIn("Vessel + char (g)", 32.53);
    await sheet.fillIn("Vessel + ash (g)", 33);
    expect(await shown("Ash of dry sample")).toBe("check the ash weighing");
    expect(await sheet.result("Char yield, ash-free")).toMatchObject({
      error: "#VALUE!",
      message: "ash: 33 g is more than char, 32.53 g. Check for swapped cells or regained moisture.",
    });
  });
});

describe("readWeighings(reading)", () => {
  it("gives the minutes and grams of every sample's weigh-ins so far", async () => {
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

  it("finds nothing on a sheet without drying tables", () => {
    expect(readWeighings({ sheet: "Other", range: "", rows: [] })).toEqual([]);
  });
});
