// Times as they are noted at the bench, in order and not, for every kind of sheet that has a place for them. The runs are invented.
import { cell, type Cell } from "../../../src/runsheet/expressions/Expression";
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import type { RunKind, RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { CLOCK } from "../../../src/runsheet/sheet/Columns";
import type { CheckName } from "../../../src/runsheet/sheet/layout";
import { runSheet, type RunSheet } from "../../../src/runsheet/sheet/RunSheet";
import { clock } from "../plainRun";

/** What is typed into a blank sheet, and what one check finds then. */
export interface TypedSlip {
  readonly title: string;
  readonly options: RunSheetOptions;
  readonly typed: readonly (readonly [Cell, number])[];
  readonly check: CheckName;
  /** How the finding begins; "" where the check has nothing to say against the times. */
  readonly says: string;
}

const USUAL = { weighIns: 6, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 1 } as const;
const sheetOf = (options: RunSheetOptions): RunSheet => runSheet(checkOptions(options));

// 21 November 2026.
const DAY = 46_347;
/** A time with its date, so many days after the first. */
const dated = (hours: number, minutes = 0, days = 0): number => DAY + days + clock(hours, minutes);

type Noted = readonly [lit: number | undefined, quiet: number | undefined, opened: number | undefined];
/** What cannot be, whatever day the times without a date are of. */
const NOT_IN_ORDER: Readonly<Record<string, Noted>> = {
  "no dates, quiet after opened": [clock(13), clock(15), clock(14)],
  "no dates, quiet before lit, and so a day after it": [clock(13), clock(12), clock(14)],
  "dates, quiet an hour before lit": [dated(13), dated(12), dated(15)],
  "dates, quiet two days before lit": [dated(13), dated(13, 0, -2), dated(15)],
  "dates, opened before quiet": [dated(13), dated(15), dated(14)],
  "dates, all but lit before lit": [dated(13), dated(12), dated(12, 30)],
  "opened without its date, quiet before lit": [dated(13), dated(12), clock(15)],
  "lit without its date, opened before quiet": [clock(13), dated(15), dated(14)],
  "lit with its date alone, quiet before it and so after opened": [dated(14), clock(13), clock(15)],
  "quiet without its date, not between the other two": [dated(9), clock(13), dated(12)],
  "quiet without its date, and opened before lit": [dated(9), clock(9, 30), dated(8)],
  "no quiet, opened before lit by their dates": [dated(9), undefined, dated(8)],
  "not opened, quiet before lit by their dates": [dated(9), dated(8), undefined],
  "never lit, opened before quiet by their dates": [undefined, dated(9), dated(8)],
};
const IN_ORDER: Readonly<Record<string, Noted>> = {
  "no dates": [clock(13), clock(14), clock(15, 30)],
  "no dates, over midnight after quiet": [clock(22), clock(23, 30), clock(0, 40)],
  "no dates, over midnight before quiet": [clock(23), clock(0, 30), clock(2)],
  "no dates, opened the next morning": [clock(14), clock(17), clock(8)],
  "dates, days apart": [dated(13), dated(18), dated(9, 0, 2)],
  "dates, over midnight": [dated(22), dated(23, 30), dated(0, 40, 1)],
  "lit with its date alone, over midnight": [dated(22), clock(23, 30), clock(1)],
  "lit with its date alone, all within one minute": [dated(9, 30), clock(9, 30), clock(10, 30)],
  "opened with its date alone, over midnight": [clock(22), clock(23, 30), dated(1, 0, 1)],
  "quiet with its date alone, over midnight": [clock(22), dated(0, 30, 1), clock(2)],
  "opened without its date, over midnight": [dated(22), dated(23, 30), clock(1)],
  "opened without its date, the next morning": [dated(14), dated(17), clock(8)],
  "lit without its date, over midnight": [clock(22), dated(0, 30, 1), dated(2, 0, 1)],
  "quiet without its date, over midnight": [dated(22), clock(0, 30), dated(2, 0, 1)],
  "quiet without its date, within days": [dated(22), clock(21), dated(1, 0, 2)],
  "quiet without its date, the minute it was lit": [dated(9, 30), clock(9, 30), dated(11)],
  "lit and opened alone, over midnight": [clock(22), undefined, clock(1)],
};
/** Minutes apart by the clock, days apart perhaps. */
const ONE_UNDATED: Readonly<Record<string, Noted>> = {
  "opened with its date alone, the next day at nearly the same time": [clock(12), clock(14), dated(14, 20, 1)],
  "opened without its date, soon after quiet by the clock": [dated(12), dated(14), clock(14, 20)],
};

const FIRES: readonly (readonly [RunKind, "charring" | "ashing" | "stages" | "heating"])[] = [
  ["charring", "charring"],
  ["ashing", "charring"],
  ["ashing", "ashing"],
  ["liquids", "charring"],
  ["staged", "stages"],
  ["salt", "heating"],
];

function firing(
  kind: RunKind,
  phase: (typeof FIRES)[number][1],
  number: number,
  title: string,
  noted: Noted,
  says: (row: number) => string,
): TypedSlip {
  const options = { ...USUAL, kind };
  const table = sheetOf(options)[phase];
  if (table === undefined) throw new Error(`${kind} has no ${phase}`);
  const { lit, quiet, opened } = table.fire(table.rows.fire.first + number - 1);
  const typed = [lit, quiet, opened].flatMap((at, index) => {
    const time = noted[index];
    return time === undefined ? [] : [[at, time] as const];
  });
  return { title: `${kind}, firing ${number} of ${phase}: ${title}`, options, typed, check: "opened", says: says(lit.row) };
}

const ofFires = FIRES.flatMap(([kind, phase]): TypedSlip[] => {
  const all = (of: Readonly<Record<string, Noted>>, number: number, says: (row: number) => string): TypedSlip[] =>
    Object.entries(of).map(([title, noted]) => firing(kind, phase, number, title, noted, says));
  const asked = (row: number): string => `? Row ${row}: of quiet and opened one has a date. Type both dates: the time closed may be hours or days.`;
  return [
    ...all(NOT_IN_ORDER, 2, (row) => `? Row ${row}: lit, quiet and opened are not in order. Put the times right; days later, type dates too.`),
    ...all(IN_ORDER, 1, () => ""),
    // Ash is burnt in the open: how long it stayed closed is not asked.
    ...all(ONE_UNDATED, 2, phase === "ashing" ? () => "" : asked),
  ];
});

/** Rounds at these times, one below the other. */
function rounds(title: string, times: readonly number[], says: string, timing: "clock" | "minutes" = "clock"): TypedSlip {
  const options = { ...USUAL, kind: "drying", timing } as const;
  const { first } = sheetOf(options).rows.drying;
  return { title: `rounds: ${title}`, options, typed: times.map((time, index) => [cell(first + index, CLOCK), time]), check: "times", says };
}

const ofRounds = [
  rounds("in order, over midnight", [clock(23), clock(23, 30), clock(0)], ""),
  rounds("20 min apart over midnight", [clock(23, 50), clock(0, 10), clock(0, 30)], ""),
  rounds("over midnight, the first with its date", [dated(23, 50), clock(0, 10), clock(0, 40)], ""),
  rounds("over midnight, all with dates", [dated(23, 50), dated(0, 10, 1), dated(0, 40, 1)], ""),
  rounds("over midnight, the date of the day before left", [dated(23, 50), dated(0, 10)], "? B13 is not after the round before."),
  rounds("at one time", [clock(9), clock(9, 30), clock(9, 30)], "? B14 is not after the round before."),
  rounds("far off", [clock(9), clock(9, 30), clock(18)], "? B14 comes 8 h 30 min after the round before; planned 30 min."),
  rounds("0.30 for 0:30", [clock(0), 0.3], "? B13 reads 7:12. If 0.30 was typed, type 0:30 with a colon."),
  rounds("a date below a bare round 1", [clock(9), dated(9, 30)], "? B13 has a date and round 1 has none."),
  rounds("more than a month later", [dated(9), dated(9, 0, 60)], "? B13 lies more than a month after the round before."),
  rounds("days later, and none after it", [dated(9), dated(9, 0, 5)], "? B13 comes 120 h after the round before, planned 30 min."),
  rounds("the second of three, days later", [dated(9), dated(9, 0, 5), dated(9, 30, 5)], ""),
  rounds("no time in the first", [], ""),
  rounds("minutes in order", [0, 30, 60], "", "minutes"),
  rounds("the same minute", [0, 30, 30], "? B14 is not after the round before. Type minutes since round 1.", "minutes"),
];

/** Rounds, and below them firings, of one run of a kind with fires. */
function whole(kind: RunKind, phase: (typeof FIRES)[number][1], title: string, times: readonly number[], fires: readonly Noted[], says: string) {
  const options = { ...USUAL, kind };
  const table = sheetOf(options)[phase];
  if (table === undefined) throw new Error(`${kind} has no ${phase}`);
  const { first } = sheetOf(options).rows.drying;
  const { first: fired } = table.rows.fire;
  const typed = fires.flatMap((noted, index) => {
    const { lit, quiet, opened } = table.fire(fired + index);
    return [lit, quiet, opened].flatMap((at, place) => (noted[place] === undefined ? [] : [[at, noted[place]] as const]));
  });
  const rounds = times.map((time, index) => [cell(first + index, CLOCK), time] as const);
  const told = says === "" ? "" : `? Row ${fired + Number(says)}: lit before the `;
  return { title: `${kind}, a whole run: ${title}`, options, typed: [...rounds, ...typed], check: "opened", says: told } as const;
}

const EVENING = [clock(22, 50), clock(23, 20), clock(23, 50)];
const OVER = [clock(23, 50), clock(0, 20), clock(0, 50)];
const OF_DAY = [clock(9), clock(9, 30), clock(10)];
const AT_NIGHT: Noted = [clock(23, 30), clock(0, 20), clock(1, 40)];
const EARLY: Noted = [clock(0, 10), clock(1), clock(2, 30)];
const bare: readonly (readonly [title: string, rounds: readonly number[], fires: readonly Noted[], says: string])[] = [
  ["dried by day, fired over midnight, and again after it", OF_DAY, [AT_NIGHT, [clock(2), clock(2, 50), clock(4)]], ""],
  ["lit soon after midnight, the last round before it", EVENING, [EARLY], ""],
  ["rounds over midnight, lit after them", OVER, [[clock(1, 10), clock(2), clock(3, 10)], AT_NIGHT], ""],
  ["opened before midnight, lit again after it", OF_DAY, [[clock(20), clock(21), clock(23, 50)], EARLY], ""],
  ["not opened, quiet before midnight, lit again after it", OF_DAY, [[clock(20), clock(23, 50), undefined], EARLY], ""],
  ["dated rounds, bare fires over midnight", [dated(22, 50), dated(23, 20), dated(23, 50)], [AT_NIGHT, [clock(2), clock(2, 50), clock(4)]], ""],
  ["lit nearly half a day after the last round, past midnight", [clock(21), clock(21, 30), clock(22)], [[clock(9, 50), clock(11), clock(13)]], ""],
  // Farther than half a day onward is nearer backward.
  ["lit an hour before the last round", OF_DAY, [[clock(9), clock(11), clock(13)]], "0"],
  ["lit an hour before the last round, that past midnight", OVER, [[clock(23, 50), clock(0, 40), clock(2)]], ""],
  [
    "lit again an hour before it was opened",
    OF_DAY,
    [
      [clock(12), clock(13), clock(15)],
      [clock(14), clock(16), clock(18)],
    ],
    "1",
  ],
  [
    "lit again before it was opened, by dates",
    OF_DAY,
    [
      [dated(22), dated(23), dated(1, 0, 1)],
      [dated(23, 30), dated(23, 50), dated(2, 0, 1)],
    ],
    "1",
  ],
];
const wholeRuns = FIRES.filter(([, phase]) => phase !== "ashing").flatMap(([kind, phase]) =>
  bare.map(([title, times, fires, says]): TypedSlip => whole(kind, phase, title, times, fires, says)),
);

export const timeSlips: readonly TypedSlip[] = [...ofFires, ...ofRounds, ...wholeRuns];
// Tables of every other kind are asked by the same formulas.
const EACH_TABLE: readonly RunKind[] = ["drying", "ashing"];
/** For spreadsheets, which take their time. */
export const slipsOfEachTable = timeSlips.filter(({ options }) => EACH_TABLE.includes(options.kind));
/** Rows that tell nothing against the times may still say what was not seen. */
export const isAsSaid = (finding: unknown, says: string): boolean =>
  says === "" ? finding === "" || finding === null || finding === undefined || String(finding).startsWith("· ") : String(finding).startsWith(says);
