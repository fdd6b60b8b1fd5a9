// Each check of a run sheet on plain values, finding by finding and at its boundary, without a spreadsheet. The runs are invented.
import { CellProblem } from "../../../src/cells/CellProblem";
import { findingOf } from "../../../src/runsheet/checks/Check";
import { CHECKS } from "../../../src/runsheet/checks/everyCheck";
import { LEAST_CHAR_PERCENT } from "../../../src/runsheet/checks/firing/airCheck";
import { BANDS } from "../../../src/runsheet/checks/rangeCheck";
import { cell, is } from "../../../src/runsheet/expressions/Expression";
import { stripCell } from "../../../src/runsheet/formulas/strip";
import { SAMPLE_KINDS, type RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { CLOCK } from "../../../src/runsheet/sheet/Columns";
import type { CheckName } from "../../../src/runsheet/sheet/layout";
import { plantMatter } from "../../../src/sense/typicalBands";
import { clock, plainRun, type PlainRun } from "../plainRun";
import type { Plain } from "../../../src/explanation/runSheet/Plain";
import { workOut } from "../../../src/explanation/runSheet/workOut";

const PLUM = [65.2, 55.31, 52.1, 51.22, 51.21];

type Fill = (run: PlainRun) => void;
const plum: Fill = (run) => {
  run.vessel(25);
  run.weigh(PLUM);
};
const charred: Fill = (run) => {
  plum(run);
  run.fire("charring", [32.9, 32.54, 32.53]);
};
const ashed: Fill = (run) => {
  charred(run);
  run.fire("ashing", [25.41, 25.4]);
};
const weighed =
  (vessel: Plain, ...grams: Plain[]): Fill =>
  (run) => {
    run.vessel(vessel);
    run.weigh(grams);
  };
const clocks =
  (...times: Plain[]): Fill =>
  (run) =>
    times.forEach((time, index) => run.type(cell(run.sheet.rows.drying.first + index, CLOCK), time));
const all =
  (...fills: Fill[]): Fill =>
  (run) =>
    fills.forEach((fill) => fill(run));
const fired =
  (
    firing: number,
    noted: Partial<Record<"lit" | "set" | "measured" | "held" | "quiet" | "opened" | "seen", Plain>>,
    phase: "charring" | "ashing" = "charring",
  ): Fill =>
  (run) => {
    const table = run.sheet[phase];
    if (table === undefined) throw new Error(`no ${phase}`);
    const row = table.fire(table.rows.fire.first + firing - 1);
    for (const [column, content] of Object.entries(noted)) run.type(row[column as keyof typeof row], content);
  };
const setting =
  (name: keyof PlainRun["sheet"]["settings"], content: Plain): Fill =>
  (run) =>
    run.type(run.sheet.settings[name], content);
const again =
  (...grams: Plain[]): Fill =>
  (run) =>
    grams.forEach((mass, index) => run.sheet.end && run.type(run.sheet.end.vessel(index + 1), mass));
const analysis =
  (given: Readonly<Record<string, Plain>>): Fill =>
  (run) => {
    const { composition } = run.sheet;
    for (const [name, content] of Object.entries(given)) if (composition) run.type(composition[name as "carbon"], content);
  };
/** Three tins whose shares left as vapour are given, by char weighed on 20 g dry. */
const tins =
  (...left: number[]): Fill =>
  (run) =>
    left.forEach((share, index) => {
      run.vessel(40, index + 1);
      run.weigh([70, 60, 60], index + 1);
      run.fire("charring", [60 - 20 * share, 60 - 20 * share], index + 1);
    });
const onDay =
  (date: number): Fill =>
  (run) =>
    run.type(run.sheet.setup.date, date);
const box = (run: PlainRun, round: number, sample = 1) => run.sheet.drying.box(run.sheet.rows.drying.first + round - 1, sample);

test("a check is silent until it can judge, then says the first thing it finds, and nothing where all is in order", () => {
  const check = (silent: boolean, ...holds: boolean[]): Plain =>
    workOut(
      findingOf({
        silentWhile: is(1, "=", silent ? 1 : 0),
        steps: holds.map((hold, index) => ({ when: is(1, "=", hold ? 1 : 0), says: `step ${index + 1}` })),
      }),
      () => null,
    );
  expect([check(true, true), check(false, false, true, true), check(false, false, false)]).toEqual(["", "step 2", ""]);
});

test("every check that a sheet has a line for looks at something there", () => {
  for (const kind of SAMPLE_KINDS)
    for (const panZeros of [false, true])
      for (const temperatures of [false, true])
        for (const replicates of [1, 2]) {
          const { sheet } = plainRun({ kind, panZeros, temperatures, replicates });
          const isCharring = kind !== "drying" && kind !== "staged" && kind !== "salt";
          expect(sheet.rows.checks.lines.map(({ check }) => check)).toEqual([
            ...(kind === "drying" ? ["vessel"] : ["vessel", "vesselAgain"]),
            ...["times", "rows", "gain", "order", "dryness"],
            ...(kind === "drying" ? [] : ["opened"]),
            ...(isCharring ? ["air", "charDone"] : []),
            ...(kind === "ashing" ? ["ashDone"] : []),
            ...(kind === "salt" ? ["heatDone", "theory"] : []),
            ...(kind === "staged" ? ["rising", "stageHeld"] : []),
            ...(kind === "liquids" ? ["caught", "ledger"] : []),
            ...(replicates > 1 ? ["agree"] : []),
            ...(kind === "staged" || kind === "salt" ? ["fine", "material"] : ["fine", "range", "material"]),
            ...(kind === "charring" || kind === "ashing" ? ["analysis"] : []),
            ...(panZeros ? ["zeros"] : []),
            ...(temperatures ? ["warmth"] : []),
            "typedOver",
          ]);
          expect(sheet.rows.checks.lines.filter(({ check }) => CHECKS[check](sheet) === undefined)).toEqual([]);
        }
});

test("the bands of shares, in percent, are those of TYPICALRANGE for untreated plant matter", () => {
  const { moisture, ash } = plantMatter.bands;
  expect(BANDS.map(({ atLeast, atMost }) => [atLeast, atMost])).toEqual(
    [moisture, plantMatter.bands["char yield"], ash].map((band) => band.map((end) => end * 100)),
  );
  expect(LEAST_CHAR_PERCENT).toBe(plantMatter.bands["char yield"][0] * 100);
});

const NOT_YET = "· not yet";
const FINE = "✓ in order";

type Row = readonly [title: string, fill: Fill, says: string, options?: Partial<RunSheetOptions>];
const nothing: Fill = () => undefined;

/** Checks that only a run with liquids caught, of staged heating or of a salt has: checksOfKinds.test.ts, saltByHand.test.ts. */
type OfKinds = "caught" | "ledger" | "rising" | "stageHeld" | "heatDone" | "theory";

/** What each check says: a verdict where nothing is wrong, else its finding. */
const FINDINGS: Readonly<Record<Exclude<CheckName, OfKinds>, readonly Row[]>> = {
  vessel: [
    ["nothing", nothing, NOT_YET],
    ["the vessel alone", (run) => run.vessel(25), NOT_YET],
    ["a weight without its vessel", (run) => run.weigh([65.2]), "? Sample 1: empty vessel not weighed, C11. Weigh it, or type tared."],
    ["a tared balance", weighed("tared", 40.2), FINE],
    ["text for a vessel", weighed("about 25", 40.2), "? Sample 1: empty vessel not weighed, C11. Weigh it, or type tared."],
    [
      "moist as heavy as the vessel",
      weighed(25, 25),
      "▲ Sample 1: C12 is not above the empty vessel, C11. Typed without it, or swapped? Weigh again.",
    ],
    ...[-65.2, -0.01].map((moist): Row => [
      `a moist weight of ${moist}`,
      weighed(25, moist, 51.22),
      "▲ Sample 1: C12 is below 0, which no weight is. A dash typed before it? Type grams.",
    ]),
    [
      "a dash before a later weight",
      weighed(25, 65.2, -51.22),
      "▲ Sample 1: C13 is below 0, which no weight is. A dash typed before it? Type grams.",
    ],
    [
      "a dash before a char, on a tared balance",
      all(weighed("tared", 40.2, 26.22, 26.21), (run) => run.fire("charring", [-7.54])),
      "▲ Sample 1: C26 is below 0, which no weight is. A dash typed before it? Type grams.",
    ],
    ["0 on a tared balance", weighed("tared", 40.2, 26.22, 26.21), FINE],
    ["moist below the vessel", weighed(25, 24.9), "▲ Sample 1: C12 is not above the empty vessel, C11. Typed without it, or swapped? Weigh again."],
    // 0.25 g in 25 g: one part in a hundred
    ["moist just enough above it", weighed(25, 25.25), FINE],
    ["moist barely above it", weighed(25, 25.249), "? Sample 1: C12 is barely above the empty vessel, C11. Another vessel, or swapped? Weigh again."],
    [
      "the second sample without its vessel",
      (run) => {
        plum(run);
        run.weigh([60.1], 2);
      },
      "? Sample 2: empty vessel not weighed, D11. Weigh it, or type tared.",
      { replicates: 3 },
    ],
  ],
  times: [
    ["nothing", nothing, NOT_YET],
    ["rounds as planned", plum, FINE],
    ["past midnight", clocks(clock(23, 10), clock(23, 40), clock(0, 10), clock(0, 40)), FINE],
    ["a bare number pasted, 9.30", clocks(9.3), "? B12 is no clock time. Type hours 0 to 23, a colon, minutes 00 to 59: 9:30, not 9.30 or 900."],
    ["900", clocks(clock(8, 30), 900), "? B13 is no clock time. Type hours 0 to 23, a colon, minutes 00 to 59: 9:30, not 9.30 or 900."],
    ["25.00", clocks(clock(8, 30), 25), "? B13 is no clock time. Type hours 0 to 23, a colon, minutes 00 to 59: 9:30, not 9.30 or 900."],
    ["text", clocks(clock(8, 30), "half past"), "? B13 is no clock time. Type hours 0 to 23, a colon, minutes 00 to 59: 9:30, not 9.30 or 900."],
    [
      "a bare number in the fire table",
      all(plum, fired(2, { opened: 16.05 })),
      "? G23 is no clock time. Type hours 0 to 23, a colon, minutes 00 to 59: 9:30, not 9.30 or 900.",
    ],
    ["no time for round 1", clocks(null, clock(9, 30)), "? B12 is blank: without the time of round 1 no time counts. Type it: 9:30."],
    // 0.30 of a day is 7:12
    ["0.30 for 0:30", clocks(clock(23, 30), clock(0), 0.3), "? B14 reads 7:12. If 0.30 was typed, type 0:30 with a colon."],
    ["0.90 in round 1", clocks(0.9, clock(1, 0)), "? B12 reads 21:36. If 0.90 was typed, type the time with a colon."],
    ["0.59 in round 1", clocks(0.59, clock(1, 0)), "? B12 reads 14:09. If 0.59 was typed, type 0:59 with a colon."],
    ["0.60 in round 1", clocks(0.6, clock(1, 0)), "? B12 reads 14:24. If 0.60 was typed, type the time with a colon."],
    ["0.30 in round 1", clocks(0.3, clock(1, 0)), "? B12 reads 7:12. If 0.30 was typed, type 0:30 with a colon."],
    ["7:12 as planned", clocks(clock(6, 42), clock(7, 12), clock(7, 42)), FINE],
    ["noon, a quarter", clocks(clock(9), 0.5), FINE],
    [
      "a clock that runs backward",
      clocks(clock(9), clock(9, 30), clock(9, 10)),
      "? B14 comes 23 h 40 min after the round before; planned 30 min. Look at both; if right, type its date too.",
    ],
    [
      "the same time twice",
      clocks(clock(9), clock(9, 30), clock(9, 30)),
      "? B14 is not after the round before. Put it right; a day or more later, type the date too: 21 Nov 9:30.",
    ],
    [
      "twelve hours between",
      clocks(clock(9), clock(21)),
      "? B13 comes 12 h 0 min after the round before; planned 30 min. Look at both; if right, type its date too.",
    ],
    // four intervals and an hour: 180 min
    ["three hours", clocks(clock(9), clock(12)), FINE],
    [
      "a minute more",
      clocks(clock(9), clock(12, 1)),
      "? B13 comes 3 h 1 min after the round before; planned 30 min. Look at both; if right, type its date too.",
    ],
    ["twelve hours with dates", clocks(46_347 + clock(9), 46_347 + clock(21)), FINE],
    [
      "days between with dates",
      clocks(46_347 + clock(9), 46_350 + clock(9)),
      "? B13 comes 72 h after the round before, planned 30 min. Check their dates; if right, weigh once more.",
    ],
    ["days between, and a round as planned after them", clocks(46_347 + clock(9), 46_350 + clock(9), 46_350 + clock(9, 30)), FINE],
    // 4 intervals and a day: 26 h
    ["a day and two hours", clocks(46_347 + clock(9), 46_348 + clock(11)), FINE],
    [
      "9-10 in round 1, which is a date",
      clocks(46_275, clock(9, 20)),
      "? B12 is a date without a time, such as 9-10 or 9/30 becomes. Type the time with a colon: 9:30.",
    ],
    ["9/30 later", clocks(clock(9), 46_295), "? B13 is a date without a time, such as 9-10 or 9/30 becomes. Type the time with a colon: 9:30."],
    ["dates alone all the way", clocks(46_275, 46_295, 46_296), "? B14 is a date without a time, such as 9-10 or 9/30 becomes."],
    ["two months between", clocks(46_347 + clock(9), 46_410 + clock(9)), "? B13 lies more than a month after the round before. Look at its date."],
    [
      "a date before the round before",
      clocks(46_347 + clock(9), 46_346 + clock(9)),
      "? B13 is not after the round before. Put it right; a day or more later, type the date too: 21 Nov 9:30.",
    ],
    [
      "a date where round 1 has none",
      clocks(clock(9), 46_347 + clock(9, 30)),
      "? B13 has a date and round 1 has none. Type the date of round 1 in B7, or in B12 too.",
    ],
    ["the same with the run's date given", all((run) => run.type(run.sheet.setup.date, 46_347), clocks(clock(9), 46_347 + clock(9, 30))), FINE],
    ["minutes that rise", clocks(0, 30, 60), FINE, { timing: "minutes" }],
    [
      "seconds for minutes",
      clocks(0, 1800, 3600),
      "? B14 comes 1800 min after the round before; planned 30 min. Seconds typed? If right, weigh once more.",
      { timing: "minutes" },
    ],
    // Four times 30 min and an hour: 180 min.
    ["a pause of three hours", clocks(0, 30, 210), FINE, { timing: "minutes" }],
    [
      "one minute more",
      clocks(0, 30, 211),
      "? B14 comes 181 min after the round before; planned 30 min. Seconds typed? If right, weigh once more.",
      { timing: "minutes" },
    ],
    ["a night, then a round as planned", clocks(0, 30, 900, 930), FINE, { timing: "minutes" }],
    ...[9_824, 36_525].map((date): Row => [
      `the date of a day before 2000, ${date}`,
      all(plum, onDay(date)),
      "? B7 lies before the year 2000: a slip in the year? Type the day of the run, such as 21 Nov 2026.",
    ]),
    ["the first day of 2000", all(plum, onDay(36_526)), FINE],
    ["round 1 dated as the run", all(plum, onDay(46_352), clocks(46_352 + clock(9), 46_352 + clock(9, 30), 46_352 + clock(10))), FINE],
    ...[46_346, 46_353, 59_000].map((date): Row => [
      `round 1 of another day than the run, ${date}`,
      all(weighed(25, 65.2), onDay(date), clocks(46_352 + clock(9))),
      "? B7 and B12 give two days for round 1, and that in B12 counts. Put the wrong one right.",
    ]),
    ["minutes, and a firing over midnight", all(clocks(0, 30, 60), fired(1, { lit: clock(23, 50), opened: clock(2) })), FINE, { timing: "minutes" }],
    [
      "minutes, and a bare number for the clock of a firing",
      all(clocks(0, 30, 60), fired(2, { opened: 9.3 })),
      "? G23 is no clock time. Type hours 0 to 23, a colon, minutes 00 to 59: 9:30, not 9.30 or 900.",
      { timing: "minutes" },
    ],
    [
      "clock times where minutes are counted",
      clocks(clock(9, 30), clock(10)),
      "? B13 is a clock time, and this sheet counts minutes. Type minutes since round 1, such as 30.",
      { timing: "minutes" },
    ],
    [
      "one clock time among minutes",
      clocks(0, 30, clock(10, 31)),
      "? B14 is a clock time, and this sheet counts minutes. Type minutes since round 1, such as 30.",
      { timing: "minutes" },
    ],
    [
      "noon and half past where minutes are counted",
      clocks(clock(12), clock(12, 30)),
      "? B13 is a clock time, and this sheet counts minutes. Type minutes since round 1, such as 30.",
      { timing: "minutes" },
    ],
    [
      "a clock time with its date among minutes",
      clocks(0, 46_347 + clock(9, 31)),
      "? B13 is a clock time, and this sheet counts minutes. Type minutes since round 1, such as 30.",
      { timing: "minutes" },
    ],
    ["minutes that fall", clocks(0, 30, 20), "? B14 is not after the round before. Type minutes since round 1.", { timing: "minutes" }],
  ],
  rows: [
    ["nothing", nothing, NOT_YET],
    ["rounds in order", plum, FINE],
    [
      "a weight left out",
      all(plum, (run) => run.type(box(run, 3), null)),
      "? C14 is empty above a filled row. Type its weight, or clear what stands below it.",
    ],
    ["a weight as text", all(plum, (run) => run.type(box(run, 5), "51,21")), "? C16 is text, not a weight. Type grams as a plain number."],
    ["an error", all(plum, (run) => run.type(box(run, 2), new CellProblem("#DIV/0!", ""))), "? C13 shows an error. Type the weight again, in grams."],
    [
      "no time beside a weight",
      all(plum, clocks(clock(9), clock(9, 30), clock(10), null)),
      "? B15 is blank beside a weight. Type the time of that round: 9:30.",
    ],
    [
      "no minutes beside a weight",
      all(plum, clocks(0, 30, 60, null)),
      "? B15 is blank beside a weight. Type the minutes of that round since round 1.",
      { timing: "minutes" },
    ],
    [
      "a firing left out",
      all(plum, (run) => run.fire("charring", [32.9, null, 32.53])),
      "? C27 is empty above a filled row. Type its weight, or clear what stands below it.",
    ],
    [
      "the second sample's weight left out",
      (run) => {
        plum(run);
        run.vessel(25, 2);
        run.weigh([65.2, null, 52.1], 2);
      },
      "? D13 is empty above a filled row. Type its weight, or clear what stands below it.",
      { replicates: 2 },
    ],
  ],
  gain: [
    ["one round", weighed(25, 60), NOT_YET],
    ["losses", plum, FINE],
    // By rounding alone two steps of 0.01 g mean nothing, since zero and load may each stand on a border.
    ["one display step", weighed(25, 60, 50, 50.01), FINE],
    ["two", weighed(25, 60, 50, 50.02), FINE],
    [
      "three",
      weighed(25, 60, 50, 50.03),
      "? C14 is heavier than the weight before: damp taken up, a draught, or a slip in either. Weigh again, cold.",
    ],
    // With s = 0.01: u^2 = 0.0001 + 0.0001 / 6, less d^2 / 12 is 0.00010833: 2 sqrt 2 * 0.0104083 + 0.01 = 0.039439
    ["what a scattering balance explains", all(weighed(25, 60, 50, 50.03), setting("repeatability", 0.01)), FINE],
    [
      "a step more",
      all(weighed(25, 60, 50, 50.04), setting("repeatability", 0.01)),
      "? C14 is heavier than the weight before: damp taken up, a draught, or a slip in either. Weigh again, cold.",
    ],
    [
      "two samples exchanged in one round",
      (run) => {
        run.vessel(25);
        run.vessel(24, 2);
        run.weigh([65.2, 51.3, 47.82, 51.21]);
        run.weigh([60.1, 47.9, 51.21, 47.82], 2);
      },
      "? C14 and D14 look crosswise: exchanged, they follow the row above. Swapped here or there? Weigh again.",
      { replicates: 3 },
    ],
    [
      "two samples, of which one has a text among its weights",
      (run) => {
        run.vessel(25);
        run.vessel(24, 2);
        run.weigh([65.2, 51.3, 51.21]);
        run.weigh([60.1, 47.9, "47.82 g"], 2);
      },
      "· Not told whether samples stand crosswise: beside text, or a row put in by hand till the pane adds a round.",
      { replicates: 2 },
    ],
    [
      "two samples, where a row was put in by hand and the search gives that it cannot look",
      (run) => {
        run.vessel(25);
        run.vessel(24, 2);
        run.weigh([65.2, 51.3, 51.21]);
        run.weigh([60.1, 47.9, 47.82], 2);
        run.type(run.sheet.working.crosswise, -1);
      },
      "· Not told whether samples stand crosswise",
      { replicates: 2 },
    ],
    [
      "one that gained, and no other",
      (run) => {
        run.vessel(25);
        run.vessel(24, 2);
        run.weigh([65.2, 51.3, 51.21]);
        run.weigh([60.1, 47.9, 51.21], 2);
      },
      "? D14 is heavier than the weight before",
      { replicates: 2 },
    ],
    [
      "two samples exchanged after a firing",
      (run) => {
        for (const [index, add] of [0, 9].entries()) {
          run.vessel(25, index + 1);
          run.weigh([65.2 + add, 51.21 + add, 51.21 + add], index + 1);
        }
        run.fire("charring", [33, 35.1, 32.9]);
        run.fire("charring", [35.2, 32.9, 35.1], 2);
      },
      "? C27 and D27 look crosswise",
      { replicates: 2 },
    ],
    [
      "an ash that gained",
      all(charred, (run) => run.fire("ashing", [25.4, 25.5])),
      "? C35 is heavier than the weight before: damp taken up, a draught, or a slip in either. Weigh again, cold.",
    ],
  ],
  order: [
    ["not yet dry", weighed(25, 65.2, 55.31), NOT_YET],
    ["ash, char and dry in order", ashed, FINE],
    ["dry as heavy as moist", weighed(25, 65.2, 65.2), FINE, { kind: "drying" }],
    // Steady at 65.30 after 65.20: more than 0.02 g above moist
    ["dry above moist", weighed(25, 65.2, 65.3, 65.3), "▲ Sample 1: dry, C14, is above moist, C12. Swapped? Weigh again, cold.", { kind: "drying" }],
    [
      "a round below the vessel",
      weighed(25, 65.2, 55.3, 5.12),
      "▲ Sample 1: C14 is not above the empty vessel, C11. Weigh both again, cold.",
      { kind: "drying" },
    ],
    [
      "char above dry",
      all(plum, (run) => run.fire("charring", [53])),
      "▲ Sample 1: char, C26, is above the dry sample, C16. Swapped? Weigh again, cold.",
    ],
    ["char a step above dry", all(plum, (run) => run.fire("charring", [51.22])), FINE],
    [
      "char below the vessel",
      all(plum, (run) => run.fire("charring", [30, 24])),
      "▲ Sample 1: char, C27, is below the empty vessel, C11. Weigh both again, cold.",
    ],
    ["ash above char", all(charred, (run) => run.fire("ashing", [33])), "▲ Sample 1: ash, C34, is above char, C28. Swapped? Weigh both again, cold."],
    [
      "ash below the vessel",
      all(charred, (run) => run.fire("ashing", [24.9])),
      "▲ Sample 1: ash, C34, is below the empty vessel, C11. Weigh both again, cold.",
    ],
    [
      "two samples",
      (run) => {
        for (const sample of [1, 2]) {
          run.vessel(25, sample);
          run.weigh(PLUM, sample);
          run.fire("charring", [53], sample);
        }
      },
      "▲ Sample 1: char, C26, is above the dry sample, C16. Swapped? Weigh again, cold. Also sample 2.",
      { replicates: 2 },
    ],
  ],
  dryness: [
    ["nothing", nothing, NOT_YET],
    ["still losing", weighed(25, 65.2, 55.31), NOT_YET],
    // 0.2 % of 40.20 g moist is 0.0804 g: 8 display steps, and 9 are more
    ["a limit of 8 display steps", all(plum, setting("limit", 8)), FINE],
    [
      "of 9, while still drying too",
      all(weighed(25, 65.2, 55.31), setting("limit", 9)),
      "? B82 lets pass more than 0.2 % of the moist sample, or than is wanted; no ± holds it. Take 2 display steps.",
    ],
    ["of 50", all(plum, setting("limit", 50)), "? B82 lets pass more than 0.2 % of the moist sample"],
    ["8, with 0.1 % wanted", all(plum, setting("limit", 8), setting("wanted", 0.001)), "? B82 lets pass more than"],
    ["0.5 g, absolute", all(plum, setting("criterion", "absolute"), setting("limit", 0.5)), "? B82 lets pass more than"],
    ["0.1 % of the last, EN 322", all(plum, setting("criterion", "of last"), setting("limit", 0.001)), FINE],
    ["1 % of the last", all(plum, setting("criterion", "of last"), setting("limit", 0.01)), "? B82 lets pass more than"],
    ["0.2 % of the total loss, ISO 18134-1", all(plum, setting("criterion", "of total loss"), setting("limit", 0.002)), FINE],

    ["dry", plum, FINE],
    [
      "charred before",
      all(weighed(25, 65.2, 55.31), (run) => run.fire("charring", [30])),
      "? Sample 1: charred, row 26, before it was shown dry. A slip in C13 or above? If not, no share follows.",
    ],
    // With its vessel four weights in tens of the step, once in 10,000 by chance; without it five, once in 100,000.
    ["three and the vessel in tens", weighed(25.1, 65.2, 55.3, 52.1), "? All weights are whole 0.1 g; B77 says the balance shows more."],
    ["two and the vessel", weighed(25.1, 65.2, 55.3), NOT_YET],
    ["two of which the last is weighed again", weighed(25.1, 65.2, 52.1, 52.1, 52.1), FINE],
    ["four, the vessel with all its figures", weighed(25.13, 65.2, 55.3, 52.1, 51.2), NOT_YET],
    ["five", weighed(25.13, 65.2, 55.3, 52.1, 51.2, 51.1), "? All weights are whole 0.1 g;"],
    ["one among them with all its figures", weighed(25.1, 65.2, 55.3, 52.13, 51.2, 51.1), NOT_YET],
    ["a step as coarse as they are", all(weighed(25.1, 65.2, 55.3, 52.1), setting("readability", 0.1)), NOT_YET],
    // What was weighed out on a tared balance may be round on purpose.
    ["five on a tared balance", weighed("tared", 40, 30.3, 27.1, 26.2, 26.1), NOT_YET],
    ["six of them", weighed("tared", 40, 30.3, 27.1, 26.2, 26.1, 25.8), "? All weights are whole 0.1 g;"],
    ["five in fives", weighed(25.13, 65.25, 55.35, 52.1, 51.2, 51.15), NOT_YET],
    [
      "seven in fives",
      weighed(25.13, 65.25, 55.35, 52.1, 51.2, 51.15, 51.05, 50.95),
      "? All weights are whole 0.05 g; B77 says the balance shows more. Set the true step, or type every figure.",
    ],
    ["char too", all(weighed(25.13, 65.2, 52.1, 52.1), (run) => run.fire("charring", [32.9, 32.5, 32.3])), "? All weights are whole 0.1 g;"],
    ["a blank limit", all(plum, setting("limit", null)), "? A setting is blank, rows 77 to 82: step, rounds apart, criterion or limit. Type it."],
    [
      "a blank criterion",
      all(plum, setting("criterion", null)),
      "? A setting is blank, rows 77 to 82: step, rounds apart, criterion or limit. Type it.",
    ],
    [
      "a balance too coarse for the limit",
      all(plum, setting("criterion", "of last"), setting("limit", 0.0001)),
      "? The balance is too coarse for the limit in B82. Allow two display steps, or take more sample.",
    ],
    [
      "a limit typed as percent",
      all(plum, setting("criterion", "of last"), setting("limit", 0.1)),
      "? B82 is over 4 %, so no sample is judged. Percent typed? Type 0.1 % as 0.001, or choose readability.",
    ],
    ["the same an hour", all(plum, setting("criterion", "per hour"), setting("limit", 0.1)), "? B82 is over 4 %, so no sample is judged."],
    ["4 % itself is judged", all(plum, setting("criterion", "of total loss"), setting("limit", 0.04)), "? B82 lets pass more than 0.2 %"],
    // 4 % of 40.20 g is 1.608 g: 160 steps of 0.01 g, and 161 are more.
    [
      "161 display steps",
      all(plum, setting("limit", 161)),
      "? B82 lets pass over 4 % of a sample, so none is judged. Take 2 display steps, or more sample.",
    ],
    ["160 of them", all(plum, setting("limit", 160)), "? B82 lets pass more than 0.2 % of the moist sample"],
    [
      "2 g, absolute, while still drying",
      all(weighed(25, 65.2, 55.31), setting("criterion", "absolute"), setting("limit", 2)),
      "? B82 lets pass over 4 % of a sample, so none is judged.",
    ],
    [
      "one display step",
      all(plum, setting("limit", 1)),
      "? B82 is less than 2 display steps, which rounding alone makes up: no sample is judged. Type 2 or more.",
    ],
  ],
  opened: [
    ["nothing", plum, NOT_YET],
    ["an hour closed", fired(1, { lit: clock(13, 20), quiet: clock(14, 25), opened: clock(15, 25) }), FINE],
    [
      "a minute less",
      fired(1, { quiet: clock(14, 25), opened: clock(15, 24) }),
      "? G22: opened 59 min after the vent fell quiet, sooner than 60 min. Char may have burnt: yield reads low.",
    ],
    ["over midnight", fired(2, { lit: clock(22), quiet: clock(23, 30), opened: clock(0, 40) }), FINE],
    [
      "opened before it was quiet",
      fired(1, { lit: clock(13), quiet: clock(15), opened: clock(14) }),
      "? Row 22: lit, quiet and opened are not in order. Put the times right; days later, type dates too.",
    ],
    [
      "a fire lit before the last round",
      all(plum, fired(1, { lit: clock(8) })),
      "? Row 22: lit before the work above was over. Put the times right; on a later day, add the date.",
    ],
    ["the same with its date", all(plum, fired(1, { lit: 46_348 + clock(8) })), "· Not told of row 22"],
    [
      "a date before that of the rounds",
      all((run) => run.type(run.sheet.setup.date, 46_347), plum, fired(1, { lit: 46_347 + clock(8) })),
      "? Row 22: lit before the work above was over.",
    ],
    [
      "firing 2 lit before firing 1 was opened",
      all(plum, fired(1, { lit: clock(12), opened: clock(15) }), fired(2, { lit: clock(14) })),
      "? Row 23: lit before the firing above was over. Put the times right; on a later day, add the date.",
    ],
    ["lit at once when opened", all(plum, fired(1, { lit: clock(12), opened: clock(15) }), fired(2, { lit: clock(15) })), "· Not told of row 23"],
    [
      "opened past midnight, lit in the morning",
      all(plum, fired(1, { lit: clock(22), quiet: clock(23), opened: clock(0, 40) }), fired(2, { lit: clock(9) })),
      "· Not told of row 23",
    ],
    [
      "ashing lit before the char was opened",
      all(plum, fired(1, { lit: clock(12), opened: clock(15) }), fired(1, { lit: clock(14) }, "ashing")),
      "? Row 31: lit before the work above was over.",
    ],
    [
      "held 6000 min between lit at 11:30 and opened at 15:00",
      all(plum, fired(1, { lit: clock(11, 30), opened: clock(15), held: 6000 })),
      "? Row 22: held longer than from lit to opened. Put one of the three right, or type dates too.",
    ],
    [
      "held as long as that, by its dates",
      all(plum, fired(1, { lit: 46_348 + clock(11), opened: 46_353 + clock(15), held: 6000 })),
      "· Not told of row 22",
    ],
    [
      "minutes, and firings crosswise",
      all(clocks(0, 30), fired(1, { lit: clock(12), opened: clock(15) }), fired(2, { lit: clock(14) })),
      "? Row 23: lit before the firing above was over.",
      { timing: "minutes" },
    ],
    ["a date alone in the fire table", all(plum, fired(1, { lit: 46_295 })), "? Row 22: a date without a time, such as 9-10 or 9/30 becomes."],
    [
      "a date alone in the fire table of a sheet in minutes",
      all(clocks(0, 30, 60), fired(1, { opened: 46_295 })),
      "? Row 22: a date without a time, such as 9-10 or 9/30 becomes.",
      { timing: "minutes" },
    ],
    // What was not seen has no verdict.
    [
      "no time of quiet",
      fired(1, { opened: clock(15) }),
      "· Not told of row 22: without the times of quiet and opened nobody knows whether it was cold. Type them.",
    ],
    [
      "one of three firings timed",
      all(charred, fired(1, { lit: clock(13, 20), quiet: clock(14, 25), opened: clock(15, 25) })),
      "· Not told of row 24: without the times of quiet and opened nobody knows whether it was cold. Type them.",
    ],
    [
      "a blank least time",
      all(setting("closed", null), fired(1, { quiet: clock(14), opened: clock(15) })),
      "· B86 is blank: type how many minutes closed are enough, as 60.",
    ],
    [
      "another least time",
      all(setting("closed", 120), fired(3, { quiet: clock(14), opened: clock(15, 30) })),
      "? G24: opened 90 min after the vent fell quiet, sooner than 120 min. Char may have burnt: yield reads low.",
    ],
    ["dates that lie days apart", fired(1, { quiet: 46_347 + clock(14), opened: 46_348 + clock(14, 10) }), FINE],
  ],
  charDone: [
    ["nothing", plum, NOT_YET],
    ["one firing", all(plum, (run) => run.fire("charring", [32.9])), NOT_YET],
    ["steady", charred, FINE],
    [
      "a full table that still loses",
      all(plum, (run) => run.fire("charring", [33.4, 32.9, 32.53])),
      "? Charring is not shown finished: fire again and weigh, till two weighings agree within the limit.",
    ],
    [
      "ashed after one firing",
      all(plum, (run) => {
        run.fire("charring", [32.9]);
        run.fire("ashing", [25.41]);
      }),
      "? Sample 1: charring not shown finished. A slip in C26 or before? If not, what stayed may read high.",
    ],
    [
      "vessel weighed again after one firing",
      all(plum, (run) => run.fire("charring", [32.9]), again(25)),
      "? Sample 1: charring not shown finished. A slip in C26 or before? If not, what stayed may read high.",
    ],
    [
      "one planned firing",
      all(plum, (run) => run.fire("charring", [32.9])),
      "? Charring is not shown finished: fire again and weigh, till two weighings agree within the limit.",
      { charFirings: 1 },
    ],
    ["not dry before", all(weighed(25, 65.2, 55.31), (run) => run.fire("charring", [30, 30])), NOT_YET],
    [
      "a limit per hour without the minutes held",
      all(charred, setting("criterion", "per hour"), setting("limit", 0.04), (run) => {
        const { charring } = run.sheet;
        if (charring) run.type(charring.fire(charring.rows.fire.first).held, null);
      }),
      "? Charring cannot be judged: minutes held are missing.",
    ],
  ],
  ashDone: [
    ["nothing", charred, NOT_YET],
    ["steady", ashed, FINE],
    [
      "a full table that still loses",
      all(charred, (run) => run.fire("ashing", [26, 25.4])),
      "? Ashing is not shown finished: fire again and weigh, till two weighings agree within the limit.",
    ],
  ],
  air: [
    ["nothing", plum, NOT_YET],
    ["steady char", charred, FINE],
    [
      "a gain between firings",
      all(plum, (run) => run.fire("charring", [32.5, 32.6])),
      "? C27 is heavier than the weight before: air or damp got in, or a slip. Weigh or fire again, closed.",
    ],
    [
      "white edges",
      all(charred, fired(1, { seen: "white edges on top" })),
      "? White edges seen, row 22 or near it: air got in and char burnt. The yield reads low.",
    ],
    ["no white edges", all(charred, fired(1, { seen: "no white edges" })), FINE],
    // 2.60 g of 26.21 g dry: 9.92 %
    [
      "hardly any char",
      all(plum, (run) => run.fire("charring", [27.6, 27.6])),
      "? Char of 9.9 % is less than untreated plants leave: air got in, or a slip. Look for white edges.",
    ],
    // 2.63 g: 10.03 %
    ["just enough", all(plum, (run) => run.fire("charring", [27.63, 27.63])), FINE],
  ],
  vesselAgain: [
    ["not weighed", charred, NOT_YET],
    ["unchanged", all(charred, again(25.01)), FINE],
    ["scale", all(charred, again(25.05)), FINE],
    // 1 in 200 of 26.21 g dry: 0.13105 g
    ["as much as scale may be", all(charred, again(25.13)), FINE],
    ["more", all(charred, again(25.14)), "? Sample 1: C48 is 0.14 g heavier than C11: more than scale, or char left inside. Brush out, weigh again."],
    [
      "52 display steps",
      all(charred, again(25.52)),
      "? Sample 1: C48 is 0.52 g heavier than C11: more than scale, or char left inside. Brush out, weigh again.",
    ],
    // 1 in 10 of 26.21 g dry: 2.621 g
    [
      "as much as char left inside may be",
      all(charred, again(27.62)),
      "? Sample 1: C48 is 2.62 g heavier than C11: more than scale, or char left inside. Brush out, weigh again.",
    ],
    [
      "more, as with the lid left off before",
      all(charred, again(27.63)),
      "? Sample 1: C48 is 2.63 g heavier than C11: a slip in one, a lid left off, another vessel? Weigh it again.",
    ],
    ["lighter", all(charred, again(24.9)), "? Sample 1: C48 is 0.10 g lighter than C11: a slip in one, another vessel, scale lost. Weigh it again."],
    [
      "one of three not weighed again",
      all(tins(0.7, 0.7, 0.7), again(40.02, null, 40.01)),
      "? Sample 2: D31 is blank and others are not: scale is taken off those alone. Weigh it, or clear the others.",
      { replicates: 3, kind: "charring" },
    ],
    ["one of three, of different materials", all(tins(0.7, 0.7, 0.7), again(40.02, null, 40.01)), FINE, { replicates: 3, samplesAre: "different" }],
    ["all three", all(tins(0.7, 0.7, 0.7), again(40.02, 40, 40.01)), FINE, { replicates: 3 }],
    ["two of two, the third never begun", all(tins(0.7, 0.7), again(40.02, 40.01)), FINE, { replicates: 3 }],
    ["scale on a tared balance", all(weighed("tared", 40.2, 26.21, 26.21), again(0.05)), FINE],
  ],
  agree: [
    ["one sample finished", tins(0.7), NOT_YET, { replicates: 3 }],
    ["three alike", tins(0.7, 0.701, 0.702), FINE, { replicates: 3 }],
    // mean 0.7, s = 0.01, 4.303 * 0.01 / sqrt 3 = 0.02484 above 0.01; weighing 2 * 0.0040825 / 20 * sqrt(1 + 0.29^2 + 0.71^2) = 0.00051449
    ["three apart", tins(0.69, 0.7, 0.71), "? Range 2.0 %, 38.9 times a weighing ±: no one answer. Find out why, or take more.", { replicates: 3 }],
    [
      "one of three apart, as once in three such runs",
      tins(0.713, 0.716, 0.681),
      "? Range 3.5 %, 67.9 times a weighing ±: no one answer. Find out why, or take more.",
      { replicates: 3 },
    ],
    // r10 = 0.032 / 0.033 = 0.970 is not above the critical 0.970, 0.0325 / 0.0335 = 0.9701 is.
    [
      "one of three farther apart than the critical ratio",
      tins(0.713, 0.714, 0.6805),
      "? Range 3.4 %, 65.0 times a weighing ±; sample 3 apart at 95 %: no one answer. Find out why, or take more.",
      { replicates: 3 },
    ],
    // s = 0.00141, 12.706 * 0.00141 / sqrt 2 = 0.0127
    [
      "two, a little apart",
      tins(0.7, 0.702),
      "? Together ± 1.3 %, more than wanted: range 0.2 %, 3.9 times a weighing ±. Take more.",
      { replicates: 2 },
    ],
    // Three times the weighing ± of 0.051 % is 0.154 %.
    ["three a little apart with nothing wanted", all(tins(0.7, 0.7005, 0.701), setting("wanted", null)), FINE, { replicates: 3 }],
    ...([null, "one percent", 1, 5, 0, -0.01] as const).map((wanted): Row => [
      `three apart with ${String(wanted)} wanted`,
      all(tins(0.69, 0.7, 0.71), setting("wanted", wanted)),
      "? Range 2.0 %, 38.9 times a weighing ±. Find out why, or type in B80 how close is close enough.",
      { replicates: 3 },
    ]),
    ["three apart by less than the widest ± that can be wanted", all(tins(0.69, 0.7, 0.71), setting("wanted", 0.1)), FINE, { replicates: 3 }],
    ...["same", "repeat", "Repeats ", " "].map((word): Row => [
      `a word that is not in the list: "${word}"`,
      all(tins(0.7, 0.7005), (run) => run.type(run.sheet.setup.samplesAre, word)),
      "? B9 holds neither repeats nor different, so nothing is averaged. Choose one from its list.",
      { replicates: 2 },
    ]),
    [
      "a vessel in doubt, whose gain sets its sample apart",
      all(tins(0.7, 0.7005, 0.701), again(43, 40, 40)),
      "· Waits for the vessel at the end: its gain is in every ±, and is to be put right first.",
      { replicates: 3 },
    ],
    ["a vessel in doubt of samples that agree", all(tins(0.7, 0.7005, 0.701), again(40.11, 40.11, 40.11)), FINE, { replicates: 3 }],
    ...[0.65, 0.3].map((third): Row => [
      `one of three fired once, ${third} left so far`,
      all(tins(0.7, 0.7005), (run) => {
        run.vessel(40, 3);
        run.weigh([70, 60, 60], 3);
        run.fire("charring", [60 - 20 * third], 3);
      }),
      "· Waits for sample 3, not shown finished as 2 others are. Fire it again and weigh.",
      { replicates: 3 },
    ]),
    // r10 = 0.0149 / 0.0206 = 0.723 above the critical 0.628; s = 0.0074, 2.571 * 0.0074 / sqrt 6 = 0.0078 within the wanted 0.01
    [
      "one of six apart, together within what is wanted",
      tins(0.7146, 0.7203, 0.7175, 0.719, 0.716, 0.6997),
      "? Sample 6 stands apart from the others at 95 %, as one run in 20 has by chance. Look for a slip.",
      { replicates: 6 },
    ],
    // (0.7146 - 0.7065) / (0.7203 - 0.7065) = 0.587
    ["one of six farther, not apart by that ratio", tins(0.7146, 0.7203, 0.7175, 0.719, 0.716, 0.7065), FINE, { replicates: 6 }],
    ["one of six apart by what weighing explains", tins(0.7, 0.7001, 0.7002, 0.7003, 0.7004, 0.7014), FINE, { replicates: 6 }],
    ["two alike", tins(0.7, 0.7005), FINE, { replicates: 2 }],
    ["different materials", tins(0.6, 0.7, 0.8), NOT_YET, { replicates: 3, samplesAre: "different" }],
    [
      "nothing said of them",
      all(tins(0.7, 0.7005), (run) => run.type(run.sheet.setup.samplesAre, null)),
      "? Say in B9 whether the samples are repeats or different.",
      { replicates: 2 },
    ],
    // The critical range of three at s = 0.001 is 3.314 * 0.001 = 0.33 % (REPLICATES)
    [
      "beyond the method's own scatter",
      all(tins(0.7, 0.702, 0.704), setting("methodScatter", 0.001)),
      "? Samples differ by 0.4 %; the method's own scatter allows 0.3 %. Look for a cause.",
      { replicates: 3 },
    ],
    ["within it", all(tins(0.7, 0.702, 0.703), setting("methodScatter", 0.001)), FINE, { replicates: 3 }],
  ],
  fine: [
    [
      "a ± that a vessel in doubt makes wide",
      all(charred, again(27.63)),
      "· Waits for the vessel at the end: its gain is in every ±, and is to be put right first.",
    ],
    ...([1, 5, 0.5, 0.101] as const).map((wanted): Row => [
      `${String(wanted)} wanted`,
      setting("wanted", wanted),
      "? B79 is no wanted ±, which is a share up to 10 %. For one percent type 1% or 0.01; or leave it blank.",
    ]),
    ...(["one percent", 0, -0.01] as const).map((wanted): Row => [
      `${String(wanted)} wanted`,
      setting("wanted", wanted),
      "? B79 holds no number above 0. Type a fraction up to 0.1, such as 0.01 or 1%.",
    ]),
    ["nothing", nothing, NOT_YET],
    ["nothing wanted", all(weighed(25, 27), setting("wanted", null)), NOT_YET],
    // 2 u sqrt 2 / U = 2 * 0.0040825 * 1.414214 / 0.01 = 1.1547 g
    ["too little for the balance", weighed(25, 26.15), "? Sample 1: too little for this balance and the wanted ±: weigh out 1.2 g or more."],
    ["just enough", weighed(25, 26.16), FINE],
    // 1 g dry of which 0.5 left: 2 * 0.0040825 * sqrt 1.5 = 0.0100
    [
      "a share known too little",
      all(weighed(25, 30, 25.8, 25.8), (run) => run.fire("charring", [25.4, 25.4])),
      "? Weighing alone gives ± 1.25 %, more than wanted: take more sample, or a finer balance.",
    ],
    ["a share known well", charred, FINE],
  ],
  range: [
    ["not yet", weighed(25, 65.2), NOT_YET],
    ["usual shares", ashed, FINE],
    // 33.00 of 40.00 g
    ["much water", weighed(25, 65, 32, 32), "? Sample 1: water of 82.5 % is outside the 0 to 70 % of untreated plants (common practice). A slip?"],
    ["no water at all", weighed(25, 65, 65), FINE, { kind: "drying" }],
    [
      "hardly charred",
      all(plum, (run) => run.fire("charring", [40, 40])),
      "? Sample 1: char of 57.2 % is outside the 10 to 45 % of untreated plants (common practice). A slip?",
    ],
    [
      "no ash at all",
      all(charred, (run) => run.fire("ashing", [25, 25])),
      "? Sample 1: ash of 0.0 % is outside the 0.1 to 25 % of untreated plants (common practice). A slip?",
    ],
  ],
  material: [
    ["no material", setting("oven", 105), NOT_YET],
    ["no temperature", setting("material", "tinned steel"), NOT_YET],
    ["at its limit", all(setting("material", "tinned steel"), fired(1, { set: 230 })), FINE],
    [
      "above it",
      all(setting("material", "tinned steel"), setting("oven", 231)),
      "? B83: 231 °C is above the 230 °C that tinned steel stands. Change vessel or programme.",
    ],
    [
      "a kiln above it",
      all(setting("material", "tinned steel"), setting("oven", 105), fired(2, { set: 450 })),
      "? C23: 450 °C is above the 230 °C that tinned steel stands. Change vessel or programme.",
    ],
    [
      "hotter at the sample than set",
      all(setting("material", "mild steel"), fired(1, { set: 450, measured: 460 })),
      "? D22: 460 °C is above the 450 °C that mild steel stands. Change vessel or programme.",
    ],
    [
      "a furnace above it",
      all(setting("material", "mild steel"), fired(1, { set: 550 }, "ashing")),
      "? C31: 550 °C is above the 450 °C that mild steel stands. Change vessel or programme.",
    ],
    [
      "a material of one's own",
      all(setting("material", "unobtainium"), setting("oven", 105)),
      "? B85 is not in the list at the foot of the sheet. Choose from the list.",
    ],
    ["the last of the list", all(setting("material", "graphite"), fired(1, { set: 400 })), FINE],
    ["a firing measured 100 °C off what was set", all(setting("material", "graphite"), fired(1, { set: 400, measured: 300 })), FINE],
    [
      "measured further off, whatever the vessel is made of",
      fired(2, { set: 500, measured: 399 }),
      "? D23 is far from what was set. Measured elsewhere, or a slip? Look at both.",
    ],
    [
      "hotter than set by more, of the ash too",
      fired(1, { set: 550, measured: 651 }, "ashing"),
      "? D31 is far from what was set. Measured elsewhere, or a slip? Look at both.",
    ],
    [
      "near what was set, nothing known of the vessel",
      fired(1, { set: 500, measured: 480 }),
      "? B85 is blank: choose what vessel and lid are made of, which 500 °C is held against, or none of these.",
    ],
    ["set, and not measured", fired(1, { set: 1500 }), "? B85 is blank: choose what vessel and lid are made of, which 1500 °C is held against"],
    ["none of these", all(setting("material", "none of these"), fired(1, { set: 500 })), NOT_YET],
    [
      "charring at 20 °C",
      all(setting("material", "graphite"), fired(1, { set: 20 })),
      "? C22: 20 °C is too cold to char, below 200 °C (common practice). A slip, or the other degrees?",
    ],
    [
      "ashing at 390 °C",
      all(setting("material", "graphite"), fired(2, { measured: 390 }, "ashing")),
      "? D32: 390 °C is too cold to ash, below 400 °C",
    ],
    ["an oven at 151 °C", setting("oven", 151), "? B83: 151 °C is no drying oven, 30 to 150 °C (common practice). A slip, or the other degrees?"],
    ["an oven at 150 °C, nothing known of the vessel", setting("oven", 150), "? B85 is blank"],
    ["an oven at 105 °F", setting("oven", 80), "? B83: 80 °F is no drying oven, 86 to 302 °F", { degrees: "F" }],
    ["180 °F off what was set", all(setting("material", "graphite"), fired(1, { set: 700, measured: 520 })), FINE, { degrees: "F" }],
    [
      "181 °F off what was set",
      fired(1, { set: 900, measured: 719 }),
      "? D22 is far from what was set. Measured elsewhere, or a slip? Look at both.",
      { degrees: "F" },
    ],
    // 230 °C are 446 °F
    [
      "in Fahrenheit",
      all(setting("material", "tinned steel"), setting("oven", 447)),
      "? B83: 447 °F is above the 446 °F that tinned steel stands. Change vessel or programme.",
      { degrees: "F" },
    ],
  ],
  analysis: [
    ["nothing", charred, NOT_YET],
    ["an analysis that explains the sample", all(ashed, analysis({ carbon: 48.6, hydrogen: 6, oxygen: 42.8 })), FINE],
    ["a formula", all(ashed, analysis({ formula: "C6H10O5" })), FINE],
    ["both", all(ashed, analysis({ formula: "C6H10O5", carbon: 48 })), "? B94: a formula and an analysis are both given. Clear one of the two."],
    ["a formula with a slip", all(ashed, analysis({ formula: "C6H1xO5" })), "? formula: "],
    [
      "fractions for percent",
      all(ashed, analysis({ carbon: 0.486, hydrogen: 0.06 })),
      "? B88 on: typed as fractions? Type percent, such as 48.6 for 0.486.",
    ],
    // 50 + 39.9 and 0.40 of 26.21 g ash, 1.5 %
    [
      "too little",
      all(ashed, analysis({ carbon: 48, hydrogen: 6, oxygen: 30 })),
      "? The analysis adds up to 85.5 % with the ash: the comparison waits for 90 %.",
    ],
    [
      "some missing",
      all(ashed, analysis({ carbon: 46, hydrogen: 6, oxygen: 40 })),
      "? The analysis leaves 7 % of the dry sample unexplained. Look for what is missing.",
    ],
    ["3 % missing, which is usual", all(ashed, analysis({ carbon: 47.5, hydrogen: 6, oxygen: 42 })), FINE],
    [
      "above the whole",
      all(ashed, analysis({ carbon: 50, hydrogen: 6, oxygen: 48 })),
      "? The analysis adds up to 105.5 % with the ash, more than there is. Look for a slip.",
    ],
    [
      "above the whole before anything is dry",
      analysis({ carbon: 60, hydrogen: 6, oxygen: 40 }),
      "? The analysis adds up to 106 % with the ash, more than there is. Look for a slip.",
    ],
  ],
  zeros: [
    ["none", plum, NOT_YET, { panZeros: true }],
    [
      "one of two",
      (run) => run.type(stripCell(run.sheet.rows.drying.strip?.first ?? 0, "before"), 0),
      "? Row 23: one of the two zeros is missing, so that row is not corrected. Type it, or clear the other.",
      { panZeros: true },
    ],
    [
      "both",
      (run) => {
        for (const name of ["before", "after"] as const) run.type(stripCell(run.sheet.rows.drying.strip?.first ?? 0, name), 0);
      },
      FINE,
      { panZeros: true },
    ],
    [
      "one of the vessel's",
      (run) => run.type(stripCell(run.sheet.rows.drying.strip?.vessel ?? 0, "after"), 0),
      "? Row 22: one of the two zeros is missing, so that row is not corrected. Type it, or clear the other.",
      { panZeros: true },
    ],
    [
      "one of the second firing's",
      (run) => run.type(stripCell((run.sheet.rows.charring?.strip?.first ?? 0) + 1, "after"), 0),
      "? Row 52: one of the two zeros is missing, so that row is not corrected. Type it, or clear the other.",
      { panZeros: true },
    ],
  ],
  warmth: [
    ["nothing", plum, NOT_YET, { temperatures: true }],
    // A tenth of 0.01 g is 1 mg: 0.00019 g/°C * 5.2632 °C
    ["cold enough", warm([20, 25.26]), FINE, { temperatures: true }],
    [
      "too warm",
      warm([20, 25.27]),
      "? Row 22: 5 °C above the room reads light; a 17 g crucible by up to 1 mg (published case). Cool first.",
      { temperatures: true },
    ],
    // 30 * 0.19 mg
    [
      "the warmest",
      warm([20, 26], [20, 50]),
      "? Row 23: 30 °C above the room reads light; a 17 g crucible by up to 5.7 mg (published case). Cool first.",
      { temperatures: true },
    ],
    [
      "colder than the room",
      warm([20, 14.73]),
      "? Row 22: weighed colder than the room reads heavy, and damp settles on it. Let it come to the room.",
      { temperatures: true },
    ],
    ["a little colder", warm([20, 14.74]), FINE, { temperatures: true }],
    // 5.27 °C are 9.486 °F
    [
      "Fahrenheit",
      warm([68, 77.49]),
      "? Row 22: 9 °F above the room reads light; a 17 g crucible by up to 1 mg (published case). Cool first.",
      { temperatures: true, degrees: "F" },
    ],
  ],
  typedOver: [
    ["nothing", nothing, FINE],
    [
      "a loss typed over",
      (run) => run.type(run.sheet.drying.lost(15, 1), 2),
      "? F15 was typed over: its formula is gone. Undo, or press Mend formulas in the task pane.",
    ],
    [
      "a share typed over",
      (run) => run.type(run.sheet.share("volatile", 1), 0.7),
      "▲ C54 was typed over: its formula is gone. Undo, or press Mend formulas in the task pane.",
    ],
    [
      "a verdict typed over",
      (run) => run.type(run.sheet.drying.verdict(14), "dry"),
      "? I14 was typed over: its formula is gone. Undo, or press Mend formulas in the task pane.",
    ],
    ["a box is no calculated cell", plum, FINE],
  ],
};

function warm(...readings: readonly (readonly [room: number, sample: number])[]): Fill {
  return (run) =>
    readings.forEach(([room, sample], index) => {
      const row = (run.sheet.rows.drying.strip?.first ?? 0) + index;
      run.type(stripCell(row, "room"), room);
      run.type(stripCell(row, "warmth"), sample);
    });
}

describe.each(Object.entries(FINDINGS))("The check %s", (name, rows) => {
  // As many as four parts a row, which the types of it.each take for an array of any of them.
  it.each(rows.map((row) => [row[0], row] as const))("on %s", (_title, [, fill, says, options = {}]) => {
    const run = plainRun(options);
    fill(run);
    const [verdict, finding] = run.check(name as CheckName);
    const isQuiet = says === NOT_YET || says === FINE;
    expect([verdict, finding]).toEqual(
      isQuiet ? [says, ""] : [says.startsWith("▲") ? "▲ wrong" : says.startsWith("·") ? NOT_YET : "? doubt", expect.stringContaining(says)],
    );
    if (!isQuiet) expect(String(finding).length).toBeLessThanOrEqual(108);
  });
});
