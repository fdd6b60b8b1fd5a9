// Through the local workbook's engine, as the pane does it. The run is invented: plum prunings of a community orchard.
import { WeighIn, type Outcome } from "../../../../src/pane/runSheet/weighIn/WeighIn";
import { cell } from "../../../../src/runsheet/expressions/Expression";
import { placeOf } from "../../../../src/runsheet/expressions/formulaText";
import type { RunSheetOptions } from "../../../../src/runsheet/options/RunSheetOptions";
import { openRunSheet, type OpenRunSheet } from "../../../runsheet/openRunSheet";

// Each reading is calculated by the engine.
jest.setTimeout(120_000);

const usual: RunSheetOptions = { kind: "charring", weighIns: 5, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: 1 };
const at = (hours: number, minutes: number): Date => new Date(2026, 10, 21, hours, minutes, 12);

let run: OpenRunSheet;
let weighIn: WeighIn;
afterEach(() => run.close());

async function opened(options: Partial<RunSheetOptions> = {}): Promise<void> {
  run = await openRunSheet({ ...usual, ...options });
  weighIn = new WeighIn(run.workbook);
  await weighIn.look(run.name);
}

const next = (): string => (weighIn.next === undefined ? "" : `${weighIn.next.name} ${placeOf(weighIn.next.at)}`);
const enter = (typed: string, now = at(9, 0), time = "", allTheSame = false): Promise<Outcome> => weighIn.enter(typed, time, now, allTheSame);
const held = async (place: string) => (await run.workbook.read(run.name, place)).rows[0]?.[0]?.value;

describe("WeighIn", () => {
  it("takes a whole run of drying and charring, the clock stamped, and says what was lost and whether it is steady", async () => {
    await opened();
    expect(next()).toBe("empty vessel C11");
    expect(await enter("25.00")).toEqual({ told: "Empty vessel: 25.00 g, in C11." });
    expect(next()).toBe("round 1: moist C12");
    expect(await enter("65,20", at(9, 0))).toEqual({
      told: "Round 1: moist: 65.20 g at 9:00, in C12. The sheet says: all in; into the oven; not dry yet.",
    });
    expect(weighIn.due(at(9, 10))).toBe(at(9, 30).getTime() - 12_000);
    expect(await enter("55.31", at(9, 31))).toEqual({
      told: "Vessel + sample, round 2: 55.31 g at 9:31, in C13. Lost 9.89 g. The sheet says: still losing 9.89 g; not dry yet.",
    });
    await enter("51.21", at(10, 1));
    expect(await enter("51.21", at(10, 30), "10:32")).toEqual({
      told: "Vessel + sample, round 4: 51.21 g at 10:32, in C15. Lost 0.00 g. The sheet says: no loss that counts; ✓ dry since round 4.",
    });
    expect([await held("B13"), await held("B15")]).toEqual([(9 * 60 + 31) / 1440, (10 * 60 + 32) / 1440]);
    expect(weighIn.due(at(10, 40))).toBeUndefined();
    expect(next()).toBe("lit, firing 1 B19");
    // Asked for as soon as a kiln is hotter than any of the list stands; without it the answer is in doubt.
    await run.type(run.sheet.settings.material, "mild steel");
    expect(await enter("", at(11, 5))).toEqual({ told: "Lit, firing 1: 11:05, in B19." });
    expect(next()).toBe("set to, firing 1 C19");
    await enter("450");
    weighIn.pass();
    expect(next()).toBe("held, firing 1 E19");
    await enter("60");
    expect(await enter("12:20", at(14, 0))).toEqual({ told: "Vent quiet, firing 1: 12:20, in F19." });
    await enter("", at(14, 3));
    expect(next()).toBe("vessel + char, after firing 1 C23");
    expect(await enter("32.9", at(14, 5))).toEqual({
      told: "Vessel + char, after firing 1: 32.90 g, in C23. Lost 18.31 g. The sheet says: lost 18.31 g: fire again; not shown finished.",
    });
    for (const firing of [2, 3]) {
      while (weighIn.next?.isOptional === true) weighIn.pass();
      expect(next()).toBe(`vessel + char, after firing ${firing} C${22 + firing}`);
      await enter("32.53", at(15, firing));
    }
    expect(next()).toBe("empty vessel again C28");
    await enter("25");
    expect([next(), weighIn.rest]).toEqual(["", "Run complete: all weighings are in"]);
    // u of 0.00408 g; the vessel weighed twice: 2 u sqrt(2 (1 + 0.28729^2)) / 26.21 = 0.046 %.
    expect((await run.head())[1]).toBe("71.271 % ± 0.046 % (95 %) of the dry sample left as vapour; 28.729 % stayed. 1 sample.");
  });

  it("asks for the samples side by side, and for zeros and temperatures in turn", async () => {
    await opened({ kind: "drying", replicates: 2, panZeros: true, temperatures: true });
    const asked: string[] = [];
    for (const typed of ["0", "25", "26", "0.01", "0", "65", "66", "21", "22", "0.02", "0.01", "60"]) {
      asked.push(placeOf(weighIn.next?.at ?? cell(1, 0)));
      expect(await enter(typed, at(9, 5 * asked.length))).toHaveProperty("told");
    }
    const strip = run.sheet.rows.drying.strip;
    const [vesselRow = 0, first = 0] = [strip?.vessel, strip?.first];
    expect(asked).toEqual([`B${vesselRow}`, "C11", "D11", `C${vesselRow}`, `B${first}`, "C12", "D12", `D${first}`, `E${first}`, `C${first}`, `B${first + 1}`, "C13"]); // prettier-ignore
  });

  it("leaves a second vessel out where there is none, and goes on with one sample", async () => {
    await opened({ replicates: 2 });
    await enter("25");
    weighIn.pass();
    expect(next()).toBe("round 1: moist, sample 1 C12");
    await enter("65.2");
    expect(next()).toBe("vessel + sample, round 2, sample 1 C13");
  });

  it("takes minutes since round 1, and asks for them where this window does not know when that was", async () => {
    await opened({ kind: "drying", timing: "minutes" });
    await enter("tared");
    await enter("40.2", at(9, 0));
    expect(weighIn.due(at(9, 10))).toBe(at(9, 30).getTime());
    await enter("30.31", at(9, 32));
    expect([await held("B12"), await held("B13"), await held("C11")]).toEqual([0, 32, "tared"]);
    const another = new WeighIn(run.workbook);
    await another.look(run.name);
    expect(await another.enter("26", "", at(10, 5), false)).toEqual({
      refused: "Type the minutes since round 1: when that was is not known in this window.",
      of: "time",
    });
    expect(await another.enter("26", "65", at(10, 5), false)).toHaveProperty("told");
  });

  it("refuses what the sheet refuses, in its words, and writes nothing", async () => {
    await opened();
    const vessel =
      "Type the weight in grams as a plain number, such as 41.86, or the word tared. The decimal mark is the one your spreadsheet is set to: 212.4 in some, 212,4 in others.";
    const refused: readonly (readonly [string, string])[] = [
      ["", "Empty vessel: nothing here. Type what the balance shows."],
      ["heavy", vessel],
      ["-3", vessel],
      ["0", vessel],
      ["25 g", `Leave out the unit, "g". ${vessel}`],
      ["25000mg", `Leave out the unit, "mg". ${vessel}`],
      ["1,440", '"1,440" can be read in two ways. Type 1440 or 1.440.'],
    ];
    for (const [typed, why] of refused) expect([typed, await enter(typed)]).toEqual([typed, { refused: why, of: "reading" }]);
    await enter("25");
    const mass =
      "Type the weight in grams as a plain number, 0.01 or more, without a unit. The decimal mark is the one your spreadsheet is set to: 212.4 in some, 212,4 in others.";
    for (const typed of ["tared", "0", "2000000"]) expect([typed, await enter(typed)]).toEqual([typed, { refused: mass, of: "reading" }]);
    for (const [time, why] of [
      ["9.30", '"9.30" is a bare number, no clock time. Type 9:30 if you mean that.'],
      ["900", '"900" is a bare number, no clock time. Type 9:00 if you mean that.'],
      ["9:3", '"9:3" has one figure for the minutes. Type two: 9:03 or 9:30.'],
      ["24:10", '"24:10" is no clock time: hours go from 0 to 23. Type hours 0 to 23, a colon, minutes 00 to 59: 9:30.'],
      ["9:75", '"9:75" is no clock time: minutes go from 00 to 59. Type hours 0 to 23, a colon, minutes 00 to 59: 9:30.'],
      ["31 Feb 9:30", '"31 Feb 9:30" names no day that there is. Type it so: 21 Nov 9:30.'],
    ] as const)
      expect([time, await enter("65.2", at(9, 0), time)]).toEqual([time, { refused: `${why} Left blank, it is now.`, of: "time" }]);
    expect([await held("C12"), await held("B12"), next()]).toEqual([null, null, "round 1: moist C12"]);
    await enter("65.2", at(9, 0), "9:30");
    expect(await held("B12")).toBe(570 / 1440);
  });

  it("refuses a bare number for a clock box of a firing", async () => {
    await opened();
    for (const [index, grams] of ["25", "65.2", "51.21", "51.21"].entries()) await enter(grams, at(9 + index, 0));
    expect(next()).toBe("lit, firing 1 B19");
    expect(await enter("9.30")).toEqual({ refused: '"9.30" is a bare number, no clock time. Type 9:30 if you mean that.', of: "reading" });
    expect(await enter("24:00")).toEqual({
      refused: '"24:00" is no clock time: hours go from 0 to 23. Type midnight as 0:00, with a date as 0:01.',
      of: "reading",
    });
    expect(await held("B19")).toBe(null);
  });

  it("questions in the sheet's own words what it would only check, and enters it all the same", async () => {
    await opened();
    await enter("25");
    const doubt = { doubt: "Before it is entered: ▲ Sample 1: C12 is not above the empty vessel, C11. Typed without it, or swapped? Weigh again." };
    expect(await enter("20.5")).toEqual(doubt);
    expect(await held("C12")).toBe(null);
    await enter("65.2", at(9, 0));
    expect(await enter("70", at(9, 30))).toEqual({
      doubt: "Before it is entered: ? C13 is heavier than the weight before: damp taken up, a draught, or a slip in either. Weigh again, cold.",
    });
    expect(await enter("60", at(8, 30))).toEqual({
      doubt: "Before it is entered: ? B13 comes 23 h 30 min after the round before; planned 30 min. Look at both; if right, type its date too.",
    });
    expect(await enter("70", at(9, 30), "", true)).toHaveProperty("told");
    expect(await held("C13")).toBe(70);
  });

  it("asks before it writes kilograms or milligrams, with nothing to hold them against and beside other weights", async () => {
    await opened();
    expect(await enter("0.04186")).toEqual({
      doubt: "Before it is entered: 0.04186 g has more figures than this balance shows, 0.01 g: kilograms typed? Type grams.",
    });
    expect(await enter("41860")).toEqual({
      doubt: "Before it is entered: 41860 g is too much for a balance that shows 0.01 g: milligrams typed? Type grams.",
    });
    await enter("41.86");
    const apart = (one: string, other: string) => ({
      doubt: `Before it is entered: ▲ Sample 1: ${one} and ${other} cannot both be grams. Kilograms or milligrams in one, or swapped? Type grams.`,
    });
    expect(await enter("0.07214", at(9, 0))).toEqual(apart("C12", "C11"));
    await enter("72.14", at(9, 0));
    expect(await enter("0.06592", at(9, 30))).toEqual(apart("C13", "C11"));
    expect(await enter("65920", at(9, 30))).toEqual(apart("C12", "C13"));
    expect([await held("C13"), next()]).toEqual([null, "vessel + sample, round 2 C13"]);
    expect(await enter("65.92", at(9, 30))).toHaveProperty("told");
  });

  it("takes the times that can be read in one way, and refuses a clock time where minutes are counted", async () => {
    await opened({ kind: "drying" });
    await enter("25");
    await enter("65.2", at(9, 0), "9:30 AM");
    await enter("60", at(10, 0), "10h05");
    expect([await held("B12"), await held("B13")]).toEqual([570 / 1440, 605 / 1440]);
    expect(await enter("58", at(10, 30), "0930")).toEqual({
      refused: '"0930" is a bare number, no clock time. Type 9:30 if you mean that. Left blank, it is now.',
      of: "time",
    });
    run.close();
    await opened({ kind: "drying", timing: "minutes" });
    await enter("25");
    await enter("65.2", at(9, 0));
    expect(await enter("60", at(9, 30), "9:30")).toEqual({
      refused: '"9:30" is a clock time, and this sheet counts minutes. Type the minutes since round 1, such as 30.',
      of: "time",
    });
    expect(await enter("60", at(9, 30), "0.395833333333333")).toEqual({
      refused: "Type minutes since round 1 as a number, such as 30; a clock time such as 9:30 is none on this sheet.",
      of: "time",
    });
    expect(await held("C13")).toBeNull();
  });

  it("takes the last entry back as long as it stands, time and all, to be corrected", async () => {
    await opened();
    expect(weighIn.canTakeBack).toBe(false);
    await enter("25");
    await enter("65.2", at(9, 0));
    expect(await weighIn.takeBack()).toEqual({ told: "Round 1: moist, C12: taken back. Correct it and press Enter.", reading: "65.2", time: "9:00" });
    expect([await held("C12"), await held("B12"), next()]).toEqual([null, null, "round 1: moist C12"]);
    await enter("65.02", at(9, 1), "9:00");
    await run.type(cell(12, 2), 65.1);
    await expect(weighIn.takeBack()).rejects.toThrow("Cell C12 holds something else by now, so it was left as it is. Look at it in the sheet.");
    expect([await held("C12"), await held("B12")]).toEqual([65.1, 0.375]);
  });

  it("takes a weighing back to its own box, though boxes before it were left blank, and boxes left blank are asked for again", async () => {
    await opened();
    for (const [index, grams] of ["25", "65.2", "51.21", "51.21"].entries()) await enter(grams, at(9, 30 * index));
    await enter("", at(11, 0));
    expect(next()).toBe("set to, firing 1 C19");
    await enter("450");
    const [straight] = weighIn.next?.skips ?? [];
    if (straight !== undefined) weighIn.skip(straight);
    expect(next()).toBe("vessel + char, after firing 1 C23");
    await enter("39.2", at(14, 0));
    expect(await weighIn.takeBack()).toMatchObject({
      told: "Vessel + char, after firing 1, C23: taken back. Correct it and press Enter.",
      reading: "39.2",
    });
    expect(next()).toBe("vessel + char, after firing 1 C23");
    expect(await weighIn.takeBack()).toEqual({ told: "At the sample, firing 1, D19: not left blank after all.", reading: "", time: "" });
    expect([next(), await held("C19")]).toEqual(["at the sample, firing 1 D19", 450]);
    expect(await weighIn.takeBack()).toMatchObject({ told: "Set to, firing 1, C19: taken back. Correct it and press Enter.", reading: "450" });
    expect(await weighIn.takeBack()).toMatchObject({ told: "Lit, firing 1, B19: taken back. Correct it and press Enter.", reading: "11:00" });
    expect(weighIn.caution).toBe("Vapours are toxic and flammable: outdoors or ducted hood, CO alarm, vent never blocked.");
  });

  it("hands nothing on to another box where one before it was emptied by hand", async () => {
    await opened();
    await enter("25");
    await enter("65.2", at(9, 0));
    await run.type(cell(11, 2), null);
    expect(await weighIn.takeBack()).toEqual({
      told: "Round 1: moist, C12: taken back. Another box before it is blank, and comes first.",
      reading: "",
      time: "",
    });
    expect([next(), weighIn.caution, await held("B12")]).toEqual(["empty vessel C11", "", null]);
  });

  it("never writes over a box that was filled meanwhile", async () => {
    await opened();
    await run.vessel(24.9);
    await expect(enter("25")).rejects.toThrow("Cell C11 is not blank, and nothing is ever written over. Select a blank cell.");
    expect(await held("C11")).toBe(24.9);
    expect(await held("B12")).toBe(null);
  });
});
