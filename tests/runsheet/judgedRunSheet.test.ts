// The runs here are invented: prunings from a community orchard, dried in its oven and charred in its kiln.
import { readWeighings } from "../../src/runsheet/reading/readWeighings";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { openRunSheet, type OpenRunSheet } from "./openRunSheet";

// Typing and calculating weighing by weighing takes a while on a busy machine.
jest.setTimeout(60_000);

const usual: RunSheetOptions = { kind: "ashing", weighIns: 8, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 1 };

let sheet: OpenRunSheet;
const opened = async (options: Partial<RunSheetOptions> = {}): Promise<void> => void (sheet = await openRunSheet({ ...usual, ...options }));
afterEach(() => sheet.close());

const beside = async (label: string, sample?: number) => (await sheet.beside(label, sample)).shown;
const below = async (label: string, heading?: string) => (await sheet.below(label, heading)).shown;
const errors = async () => (await sheet.calculated()).filter(({ error }) => error !== "").map(({ cell, error, message }) => [cell, error, message]);
const checks = async (...labels: string[]) => Promise.all(labels.map((label) => beside(label)));

async function weighIns(grams: readonly number[], sample = 1): Promise<void> {
  for (const [index, weight] of grams.entries())
    await sheet.weighIn(index + 1, `${9 + Math.floor(index / 2)}:${index % 2 ? "30" : "00"}`, weight, sample);
}

/** Plum prunings, one tin: vessel 25.00 g, moist 65.20 g, dry 51.21 g. */
async function dryPlum(): Promise<void> {
  await sheet.fillIn("Empty vessel (g)", 25);
  await weighIns([65.2, 55.31, 52.1, 51.22, 51.21]);
}

describe("The uncertainty beside each result", () => {
  it("comes with the result, both rounded to the same place", async () => {
    await opened();
    await dryPlum();
    // One weighing: zero and load rounded to 0.01 g, u = sqrt(2 / 12) * 0.01 = 0.0040825 g.
    // w = 0.34801: u / 40.20 * sqrt(0.65199^2 + 1 + 0.34801^2) = 0.00012628. Dry basis: times (1 + 0.53377)^2 = 2.35244: 0.00029707
    expect([await below("Moisture, wet basis"), await below("Moisture, dry basis")]).toEqual(["34.801 % ± 0.013 %", "53.377 % ± 0.030 %"]);
    expect(await below("Char yield of dry sample")).toBe("");
    await sheet.fillIn("Vessel + char (g)", 32.53);
    // w = 18.68 / 26.21 = 0.712705: u / 26.21 * sqrt(0.287295^2 + 1 + 0.712705^2) = 0.00019644
    expect([await below("Volatile fraction of dry sample"), await below("Char yield of dry sample")]).toEqual([
      "71.271 % ± 0.020 %",
      "28.729 % ± 0.020 %",
    ]);
    await sheet.fillIn("Vessel + ash (g)", 25.4);
    // Ash-free: 7.13 of 25.81 g, w = 0.72375: u / 25.81 * 1.26496 = 0.00020009. Ash: 0.40 / 26.21, w = 0.98474: u / 26.21 * 1.40355 = 0.00021862
    expect([await below("Char yield, ash-free"), await below("Ash of dry sample")]).toEqual(["27.625 % ± 0.020 %", "1.526 % ± 0.022 %"]);
    expect(await errors()).toEqual([]);
  });

  it("grows with the repeatability of the balance, once that is known, and waits for the readability", async () => {
    await opened({ kind: "drying" });
    await dryPlum();
    await sheet.fillIn("Balance repeatability (g)", 0.02);
    // sqrt(0.02^2 + 0.01^2 / 6) = 0.0204124 g, / 40.20 * 1.243464 = 0.00063140
    expect((await sheet.beside("One weighing, ± (g), k = 1")).value).toBeCloseTo(0.0204124, 7);
    expect(await below("Moisture, wet basis")).toBe("34.801 % ± 0.063 %");
    await sheet.fillIn("Balance readability (g)", "");
    expect([await beside("One weighing, ± (g), k = 1"), await below("Moisture, wet basis")]).toEqual(["", ""]);
    expect(await errors()).toEqual([]);
  });

  it("is that of a mean, s / sqrt(n), once two samples are finished", async () => {
    await opened({ kind: "drying", replicates: 2 });
    await dryPlum();
    expect(await below("Moisture, wet basis", "Mean")).toBe("");
    await sheet.fillIn("Empty vessel (g)", 24.8, 2);
    await weighIns([60.1, 50.02, 47.7, 47.68], 2);
    // 0.34801 and 12.42 / 35.30 = 0.35184: mean 0.349926, s = 0.00383 / sqrt 2 = 0.002710, s / sqrt 2 = 0.001916
    expect(await below("Moisture, wet basis", "Mean")).toBe("34.99 % ± 0.19 %");
    expect(await errors()).toEqual([]);
  });

  it("says nothing of a mean where both samples agree to the last digit", async () => {
    await opened({ kind: "drying", replicates: 2 });
    await dryPlum();
    await sheet.fillIn("Empty vessel (g)", 25, 2);
    await weighIns([65.2, 55.31, 52.1, 51.22, 51.21], 2);
    expect(await below("Moisture, wet basis", "Mean")).toBe("");
    expect(await errors()).toEqual([]);
  });

  it("is left out for a sample that the balance cannot weigh, and the check says so", async () => {
    await opened({ kind: "charring" });
    await sheet.fillIn("Empty vessel (g)", 25);
    await weighIns([30, 25.04, 25.03]);
    await sheet.fillIn("Vessel + char (g)", 25.01);
    // w = 0.994: 0.0040825 / 5 * sqrt(0.006^2 + 1 + 0.994^2) = 0.0011513; 0.0040825 g is more than a tenth of 0.03 g dry
    expect([await below("Moisture, wet basis"), await below("Char yield of dry sample")]).toEqual(["99.40 % ± 0.12 %", ""]);
    // 0.03 g dry; w = 2 / 3: 2 * 0.0040825 * sqrt(1 / 9 + 1 + 4 / 9) / 0.005 = 2.0367 g
    expect(await beside("Balance fine enough")).toBe("too coarse for the wanted uncertainty: weigh out 2.1 g or more of dry sample");
    expect(await errors()).toEqual([]);
  });
});

describe("The verdict on replicates", () => {
  it("waits for two results and for the method's own s, then weighs their range against the critical range", async () => {
    await opened({ kind: "drying", replicates: 3 });
    await dryPlum();
    const row = async () => {
      const heading = Number((await sheet.cellOf("Replicates")).slice(1));
      const cells = await sheet.workbook.read(sheet.name, `B${heading + 2}:F${heading + 2}`);
      return cells.rows[0]?.map(({ shown }) => shown);
    };
    const known = async (s: number) => {
      const heading = await sheet.cellOf("Replicates");
      await sheet.type(`D${Number(heading.slice(1)) + 2}`, s);
    };
    expect(await row()).toEqual(["1", "", "", "", ""]);
    await sheet.fillIn("Empty vessel (g)", 24.8, 2);
    await weighIns([60.1, 50.02, 47.7, 47.68], 2);
    // 0.351841 - 0.348010 = 0.003831
    expect(await row()).toEqual(["2", "0.38%", "", "", ""]);
    await known(0.002);
    // Critical range of two: 2.772 * 0.002 = 0.005544
    expect(await row()).toEqual(["2", "0.38%", "0.20%", "0.55%", "agree: within the critical range; report the mean"]);
    await known(0.001);
    expect((await row())?.slice(3)).toEqual(["0.28%", "too far apart: look for a cause, take more results, or report the median and say so"]);
    expect(await errors()).toEqual([]);
  });
});

describe("Pan zeros", () => {
  const table = async (number: number) =>
    Promise.all(
      ["Sample, drift-corrected (g)", "Change since last (g)", "Steady yet"].map(async (heading) => (await sheet.inTable(number, heading)).shown),
    );

  it("correct a weighing by their middle where both are typed, 0 among them, and leave it as read where one is blank", async () => {
    await opened({ panZeros: true });
    await sheet.fillIn("Empty vessel (g)", 25);
    await weighIns([65.2, 55.31]);
    expect(await table(1)).toEqual(["40.200", "", "first"]);
    await sheet.enter(1, "Pan zero before (g)", 0);
    expect(await table(1)).toEqual(["40.200", "", "first"]);
    expect(await beside("Pan zeros")).toBe("one of the two zeros is missing: that weighing is not corrected");
    await sheet.enter(1, "Pan zero after (g)", 0.03);
    // 65.20 - (0.00 + 0.03) / 2 - 25.00; then 55.31 - 25.00 = 30.31 less 40.185
    expect(await table(1)).toEqual(["40.185", "", "first"]);
    expect(await table(2)).toEqual(["30.310", "-9.875", "not yet"]);
    expect(await beside("Pan zeros")).toBe("in order");
    await sheet.fillIn("Pan zero before vessel (g)", -0.01);
    await sheet.fillIn("Pan zero after vessel (g)", -0.03);
    // vessel 25.00 + 0.02
    expect(await beside("Empty vessel, drift-corrected (g)")).toBe("25.020");
    expect(await table(2)).toEqual(["30.290", "-9.875", "not yet"]);
    expect(await errors()).toEqual([]);
  });

  it("carry through to every result", async () => {
    await opened({ panZeros: true });
    await dryPlum();
    for (const number of [1, 5]) {
      await sheet.enter(number, "Pan zero before (g)", number === 1 ? 0.1 : 0);
      await sheet.enter(number, "Pan zero after (g)", number === 1 ? 0.1 : 0);
    }
    // moist 65.10, dry 51.21, vessel 25.00: 13.89 / 40.10
    expect((await sheet.result("Moisture, wet basis")).value).toBeCloseTo(0.346384, 6);
    await sheet.fillIn("Vessel + char (g)", 32.53);
    await sheet.fillIn("Pan zero before char (g)", 0.02);
    await sheet.fillIn("Pan zero after char (g)", 0.04);
    // char 32.50 - 25.00 = 7.50 of 26.21 g
    expect((await sheet.result("Char yield of dry sample")).value).toBeCloseTo(0.28615, 5);
    await sheet.fillIn("Vessel + ash (g)", 25.4);
    await sheet.fillIn("Pan zero before ash (g)", -0.02);
    await sheet.fillIn("Pan zero after ash (g)", 0);
    // ash 0.41 of 26.21 g
    expect((await sheet.result("Ash of dry sample")).value).toBeCloseTo(0.015643, 6);
    expect(await errors()).toEqual([]);
  });

  it("leave the drying tables readable, with the corrected masses", async () => {
    await opened({ panZeros: true, temperatures: true, replicates: 2 });
    await dryPlum();
    await sheet.enter(1, "Pan zero before (g)", 0.1);
    await sheet.enter(1, "Pan zero after (g)", 0.1);
    const [first, second] = readWeighings(await sheet.workbook.readUsed(sheet.name));
    expect([first?.name, second?.name]).toEqual(["Sample 1", "Sample 2"]);
    expect(first?.points.map(({ minutes }) => minutes)).toEqual([0, 30, 60, 90, 120]);
    expect([first?.points[0]?.grams, first?.points[4]?.grams]).toEqual([expect.closeTo(40.1, 9), expect.closeTo(26.21, 9)]);
    expect(second?.points).toEqual([]);
  });
});

describe("The warm-weighing flag", () => {
  const flag = async (number: number) => (await sheet.inTable(number, "Cold enough")).shown;

  it("goes up once the published error comes near what the balance shows, and changes no mass", async () => {
    await opened({ temperatures: true });
    await dryPlum();
    await sheet.enter(1, "Room (°C)", 20);
    expect([await flag(1), await beside("Cold when weighed")]).toEqual(["", ""]);
    // A tenth of a step, 1 mg, is 5.3 °C at 0.19 mg per °C.
    await sheet.enter(1, "Sample when weighed (°C)", 25);
    expect([await flag(1), await beside("Cold when weighed")]).toEqual(["yes", "in order"]);
    await sheet.enter(5, "Room (°C)", 20);
    await sheet.enter(5, "Sample when weighed (°C)", 50);
    expect(await flag(5)).toBe("too warm: reads light");
    // 30 * 0.19 mg
    expect(await beside("Cold when weighed")).toBe(
      "weigh-in 5 was 30 °C above the room and reads light: this vessel by an unknown amount; the published case, a 17 g porcelain crucible, by up to 5.7 mg",
    );
    expect((await sheet.inTable(5, "Sample (g)")).shown).toBe("26.21");
    await sheet.enter(5, "Sample when weighed (°C)", 4);
    expect([await flag(5), await beside("Cold when weighed")]).toEqual([
      "colder than the room",
      "weighed colder than the room: it reads heavy, and damp settles on it",
    ]);
    expect(await errors()).toEqual([]);
  });

  it("stays down on a balance too coarse to show it", async () => {
    await opened({ temperatures: true, readability: 0.1 });
    await sheet.enter(1, "Room (°C)", 20);
    await sheet.enter(1, "Sample when weighed (°C)", 50);
    expect(await flag(1)).toBe("yes");
  });
});

describe("The prediction under a weigh-in table", () => {
  it("stays empty until weighings can carry it, counts down, and is gone once the sample is steady", async () => {
    await opened({ kind: "drying", weighIns: 12 });
    await sheet.fillIn("Empty vessel (g)", 25);
    // 45 + 15 * 0.4^n g: further changes 0.2304, 0.0922, 0.0369, 0.0147 g, the fourth within two display steps.
    const curve = [60, 51, 47.4, 45.96, 45.38, 45.15, 45.06, 45.02, 45.01];
    await weighIns(curve.slice(0, 2));
    expect(await beside("Still to dry (a prediction)")).toBe("");
    await weighIns(curve.slice(0, 5));
    expect(await beside("Still to dry (a prediction)")).toBe("about 4 more weighings by the curve: a prediction, never the dry weight");
    expect([await beside("Vessel + dry sample (g)"), (await sheet.result("Moisture, wet basis")).shown]).toEqual(["", ""]);
    await weighIns(curve.slice(0, 8));
    expect(await beside("Still to dry (a prediction)")).toBe("about 1 more weighing by the curve: a prediction, never the dry weight");
    await weighIns(curve);
    expect(await beside("Still to dry (a prediction)")).toBe("");
    expect(await beside("Vessel + dry sample (g)")).toBe("45.01");
    expect(await errors()).toEqual([]);
  });
});

describe("The checks of a run", () => {
  const every = ["Vessel and sample", "Order of weights", "Gain while drying", "Steady", "Balance fine enough", "Typical range"];

  it("are each in order as soon as they can be judged, and empty until then", async () => {
    await opened({ ovenCelsius: 105 });
    const all = [...every, "Vessel and temperature", "Closure against open burning"];
    expect(await checks(...all)).toEqual(["", "", "", "", "", "", "", ""]);
    await sheet.fillIn("Empty vessel (g)", 25);
    await weighIns([65.2, 55.31]);
    expect(await checks(...all)).toEqual(["in order", "", "in order", "not steady yet", "in order", "", "", ""]);
    await dryPlum();
    await sheet.fillIn("Vessel material", "stainless steel 18/8");
    expect(await checks(...all)).toEqual([...every.map(() => "in order"), "in order", ""]);
    await sheet.fillIn("Vessel + char (g)", 32.53);
    await sheet.fillIn("Vessel + ash (g)", 25.4);
    await sheet.fillIn("Kiln set (°C)", 500);
    await sheet.fillIn("Formula of what burns", "C6H10O5");
    expect(await checks(...all)).toEqual(all.map(() => "in order"));
    expect(await errors()).toEqual([]);
  });

  it("name a missing vessel, and weights that barely stand above it", async () => {
    await opened({ kind: "drying" });
    await weighIns([65.2]);
    expect(await checks("Vessel and sample")).toEqual(["empty vessel not weighed"]);
    await sheet.fillIn("Empty vessel (g)", 65.2);
    expect(await checks("Vessel and sample")).toEqual(["moist weighing not above the empty vessel: typed without the vessel, or cells swapped"]);
    await sheet.fillIn("Empty vessel (g)", 64.9);
    expect(await checks("Vessel and sample")).toEqual(["moist weighing barely above the empty vessel: wrong vessel, or cells swapped"]);
  });

  it("name weights out of order", async () => {
    await opened();
    await dryPlum();
    await sheet.fillIn("Vessel + char (g)", 53);
    expect(await checks("Order of weights")).toEqual(["char above the dry sample"]);
    await sheet.fillIn("Vessel + char (g)", 24);
    expect(await checks("Order of weights")).toEqual(["char below the empty vessel"]);
    await sheet.fillIn("Vessel + char (g)", 32.53);
    await sheet.fillIn("Vessel + ash (g)", 33);
    expect(await checks("Order of weights")).toEqual(["ash above char"]);
    await sheet.fillIn("Vessel + ash (g)", 24.9);
    expect(await checks("Order of weights")).toEqual(["ash below the empty vessel"]);
  });

  it("name the weigh-in that gained, beyond what two readings explain, and a char made too early", async () => {
    await opened();
    await dryPlum();
    await sheet.weighIn(6, "11:30", 51.22);
    // 2 * sqrt 2 * 0.0040825 = 0.0115 g: one step is nothing
    expect(await checks("Gain while drying")).toEqual(["in order"]);
    await sheet.weighIn(6, "11:30", 51.3);
    expect(await checks("Gain while drying", "Steady")).toEqual([
      "weigh-in 6 is heavier than the one before: damp taken up, a draught, or swapped cells",
      "not shown steady: gain",
    ]);
    await sheet.fillIn("Vessel + char (g)", 32.53);
    expect(await checks("Steady")).toEqual(["charred before it was shown steady"]);
  });

  it("give the sample that would do where the balance is too coarse for the claim", async () => {
    await opened({ kind: "charring" });
    await sheet.fillIn("Empty vessel (g)", 25);
    await weighIns([27]);
    // Loss not known yet: 2 * 0.0040825 * sqrt 2 / 0.005 = 2.3094 g
    expect(await checks("Balance fine enough")).toEqual(["too coarse for the wanted uncertainty: weigh out 2.4 g or more of moist sample"]);
    await weighIns([27, 26, 26]);
    // w = 0.5: 2 * 0.0040825 * sqrt 1.5 / 0.005 = 2.0000 g, met by 2 g to the digit
    await sheet.fillIn("Wanted uncertainty (k = 2)", 0.006);
    expect(await checks("Balance fine enough")).toEqual(["in order"]);
    await sheet.fillIn("Vessel + char (g)", 25.3);
    // 1 g dry, w = 0.7: 2 * 0.0040825 * sqrt(0.3^2 + 1 + 0.7^2) / 0.006 = 1.7105 g
    expect(await checks("Balance fine enough")).toEqual(["too coarse for the wanted uncertainty: weigh out 1.8 g or more of dry sample"]);
    await sheet.fillIn("Wanted uncertainty (k = 2)", "");
    expect(await checks("Balance fine enough")).toEqual([""]);
    expect(await errors()).toEqual([]);
  });

  it("point out a share that the literature does not report, with the full sentence and its source at the side", async () => {
    await opened({ kind: "drying" });
    await sheet.fillIn("Empty vessel (g)", 25);
    await weighIns([65, 32.01, 32]);
    expect(await checks("Typical range")).toEqual(["outside: moisture of 0.825, wet basis, is above the 0 to 0.7 of untreated plant matter"]);
    const full = (await sheet.calculated()).map(({ shown }) => shown).filter((text) => text.startsWith("outside") && text.includes("no source"));
    expect(full).toHaveLength(1);
  });

  it("hold the vessel against oven, kiln and furnace, also beside the kiln's own box", async () => {
    await opened({ ovenCelsius: 120 });
    await sheet.fillIn("Vessel material", "soda-lime glass");
    expect(await checks("Vessel and temperature")).toEqual([
      "set to 120 °C, above the 110 °C that soda-lime glass stands: change vessel or programme",
    ]);
    await sheet.fillIn("Vessel material", "tinned steel");
    expect(await checks("Vessel and temperature")).toEqual(["in order"]);
    const caution = async (label: string) =>
      (await sheet.workbook.read(sheet.name, (await sheet.cellOf(label)).replace("B", "C"))).rows[0]?.[0]?.shown;
    await sheet.fillIn("Kiln set (°C)", 230);
    expect(await caution("Kiln set (°C)")).toBe("");
    await sheet.fillIn("Kiln set (°C)", 450);
    expect(await caution("Kiln set (°C)")).toBe("Caution: above the 230 °C that tinned steel stands");
    expect(await checks("Vessel and temperature")).toEqual(["set to 450 °C, above the 230 °C that tinned steel stands: change vessel or programme"]);
    await sheet.fillIn("Ashing furnace set (°C)", 550);
    expect(await caution("Ashing furnace set (°C)")).toBe("Caution: above the 230 °C that tinned steel stands");
    await sheet.fillIn("Vessel material", "");
    expect([await caution("Kiln set (°C)"), ...(await checks("Vessel and temperature"))]).toEqual(["", ""]);
    expect(await errors()).toEqual([]);
  });

  it("tell when an analysis leaves much of the sample unexplained", async () => {
    await opened({ kind: "charring" });
    await dryPlum();
    await sheet.fillIn("Vessel + char (g)", 32.53);
    await sheet.fillIn("Carbon (fraction of dry)", 0.44);
    await sheet.fillIn("Hydrogen (fraction of dry)", 0.06);
    await sheet.fillIn("Oxygen (fraction of dry)", 0.44);
    // 1 - 0.44 - 0.06 - 0.44
    expect(await checks("Closure against open burning")).toEqual(["analysis and ash leave 6 % of the dry sample unexplained"]);
    await sheet.fillIn("Oxygen (fraction of dry)", 0.48);
    expect(await checks("Closure against open burning")).toEqual(["in order"]);
    await sheet.fillIn("Oxygen (fraction of dry)", 0.34);
    expect(await checks("Closure against open burning")).toEqual(["fractions and ash add up to 84 % so far: the comparison waits for 90 %"]);
    await sheet.fillIn("Oxygen (fraction of dry)", 0.48);
    await sheet.fillIn("Formula of what burns", "C6H10O5");
    expect(await checks("Closure against open burning")).toEqual(["see the comparison with open burning"]);
  });

  it("say which sample to look at, the first in full", async () => {
    await opened({ kind: "drying", replicates: 3 });
    await dryPlum();
    await weighIns([60.1], 2);
    expect(await checks("Vessel and sample")).toEqual(["Sample 2: empty vessel not weighed"]);
    await weighIns([60.1], 3);
    expect(await checks("Vessel and sample")).toEqual(["Sample 2: empty vessel not weighed; also sample 3"]);
    await sheet.fillIn("Empty vessel (g)", 24.8, 2);
    await sheet.fillIn("Empty vessel (g)", 24.8, 3);
    expect(await checks("Vessel and sample")).toEqual(["in order"]);
    expect(await errors()).toEqual([]);
  });
});
