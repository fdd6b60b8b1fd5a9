import { cellsOf } from "../../../../src/explanation/runSheet/RunCells";
import { clockOf } from "../../../../src/pane/runSheet/weighIn/countdown";
import { clockNow, datedNow, dayText, readClock, readDay } from "../../../../src/pane/runSheet/weighIn/readClock";
import { dueAt, openedFrom, stampNow, stampOfFire, typedStamp } from "../../../../src/pane/runSheet/weighIn/stamp";
import { plainBalance } from "../../../runsheet/balance/plainBalance";
import { plainRun } from "../../../runsheet/plainRun";

const NOW = new Date(2026, 10, 21, 10, 42, 30);
// A spreadsheet's day of 2026-11-21: 46,347 days after 1899-12-30.
const DAY = 46_347;
const MINUTES_PER_DAY = 1440;
const clock = (hours: number, minutes: number): number => (hours * 60 + minutes) / MINUTES_PER_DAY;

test.each<[string, number | undefined]>([
  ["9:30", clock(9, 30)],
  ["09:05", clock(9, 5)],
  ["0:00", 0],
  ["21 Nov 9:30", DAY + clock(9, 30)],
  ["21 November 2026 9:30", DAY + clock(9, 30)],
  ["2026-11-21 23:59", DAY + clock(23, 59)],
  ["9:30am", clock(9, 30)],
  ["21 Nov 9.30 pm", DAY + clock(21, 30)],
  ["2026-11-21 9h30", DAY + clock(9, 30)],
  ["24:00", undefined],
  ["0930", undefined],
  ["21 Nov", undefined],
  ["9:60", undefined],
  ["9.30", undefined],
  ["930", undefined],
  ["31 Feb 9:30", undefined],
  ["21 Plu 9:30", undefined],
  ["", undefined],
])("readClock(%j) is %j days", (text, days) =>
  expect(readClock(text, NOW)).toEqual(days === undefined ? { refused: expect.any(String) as string } : { days }),
);

test("readClock() says what is wrong with a day or a time", () => {
  const why = (text: string): unknown => readClock(text, NOW);
  expect(why("31 Feb 9:30")).toEqual({ refused: '"31 Feb 9:30" names no day that there is. Type it so: 21 Nov 9:30.' });
  expect(why("21 Nov 25:10")).toEqual({
    refused: '"25:10" is no clock time: hours go from 0 to 23. Type hours 0 to 23, a colon, minutes 00 to 59: 9:30.',
  });
});

test("clockNow() is this minute, datedNow() the same with its day", () => {
  expect([clockNow(NOW), datedNow(NOW)]).toEqual([clock(10, 42), DAY + clock(10, 42)]);
});

test.each([[0, "00:00"], [59, "00:59"], [1747, "29:07"], [3599, "59:59"], [3900, "1:05:00"]] as const)("clockOf(%d) is %s", (seconds, text) => expect(clockOf(seconds)).toBe(text)); // prettier-ignore

describe("the time beside a reading", () => {
  const cells = (options: Parameters<typeof plainRun>[0], typed: readonly (readonly [row: number, days: number])[], day?: number) => {
    const run = plainRun({ kind: "drying", weighIns: 4, ...options });
    for (const [row, days] of typed) run.type({ kind: "cell", row: run.sheet.rows.drying.first + row, column: 1, fixed: "nothing" }, days);
    if (day !== undefined) run.type(run.sheet.setup.date, day);
    return cellsOf(run.sheet, (row, column) => run.value({ kind: "cell", row, column, fixed: "nothing" }));
  };
  const row = (of: ReturnType<typeof cells>, number: number): number => of.sheet.rows.drying.first + number;

  test("is the bare clock, and dated where round 1 is or the sheet's date is another day", () => {
    const bare = cells({}, [[0, clock(9, 0)]]);
    expect(stampNow(bare, row(bare, 1), NOW, undefined)).toBe(clock(10, 42));
    const dated = cells({}, [[0, DAY + clock(9, 0)]]);
    expect(stampNow(dated, row(dated, 1), NOW, undefined)).toBe(DAY + clock(10, 42));
    const later = cells({}, [[0, clock(9, 0)]], DAY - 1);
    expect([stampNow(later, row(later, 1), NOW, undefined), stampNow(later, row(later, 0), NOW, undefined)]).toEqual([
      DAY + clock(10, 42),
      clock(10, 42),
    ]);
    const sameDay = cells({}, [[0, clock(9, 0)]], DAY);
    expect(stampNow(sameDay, row(sameDay, 1), NOW, undefined)).toBe(clock(10, 42));
  });

  test("tells when the next round is due: planned minutes after the last, past midnight too, and of a clock ahead of this one", () => {
    const minute = new Date(2026, 10, 21, 10, 42).getTime();
    const due = (last: number, now = NOW): number => ((dueAt(cells({}, [[0, last]]), now, undefined) ?? NaN) - minute) / 60_000;
    expect([due(clock(10, 30)), due(clock(10, 42)), due(clock(10, 50)), due(clock(9, 0))]).toEqual([18, 30, 38, -72]);
    expect(due(clock(23, 50), new Date(2026, 10, 22, 0, 5))).toBe(24 * 60 + 20 - (10 * 60 + 42));
    expect(due(DAY + clock(10, 30))).toBe(18);
    expect(dueAt(cells({}, []), NOW, undefined)).toBeUndefined();
    expect(
      dueAt(
        cells(
          {},
          [0, 1, 2, 3].map((one) => [one, clock(9, one)]),
        ),
        NOW,
        undefined,
      ),
    ).toBeUndefined();
  });

  test("of a run in minutes counts from where this window knows that it began", () => {
    const begun = NOW.getTime() - 34 * 60_000;
    const inMinutes = cells({ timing: "minutes" }, [[0, 0]]);
    expect([stampNow(inMinutes, row(inMinutes, 1), NOW, begun), stampNow(inMinutes, row(inMinutes, 1), NOW, undefined)]).toEqual([34, undefined]);
    expect(dueAt(inMinutes, NOW, begun)).toBe(begun + 30 * 60_000);
  });
});

test("a vessel that cools closed is opened from its minutes after the vent went quiet, until it was opened or weighed", () => {
  const run = plainRun({ kind: "charring" });
  const { settings, charring } = run.sheet;
  const fire = charring?.fire(charring.rows.fire.first);
  if (fire === undefined || charring === undefined) throw new Error("a run that is charred");
  const opened = (): number | undefined => {
    const at = openedFrom(
      cellsOf(run.sheet, (row, column) => run.value({ kind: "cell", row, column, fixed: "nothing" })),
      NOW,
    );
    return at === undefined ? undefined : (at - new Date(2026, 10, 21, 10, 42).getTime()) / 60_000;
  };
  run.type(settings.closed, 60);
  expect(opened()).toBeUndefined();
  run.type(fire.quiet, clock(10, 30));
  expect(opened()).toBe(48);
  run.type(fire.opened, clock(10, 40));
  expect(opened()).toBeUndefined();
  run.type(fire.opened, null);
  run.type(charring.box(charring.rows.first, 1), 30);
  expect(opened()).toBeUndefined();
});

test("a round of a balance check is stamped with its day, and with its time where another is of the same day", () => {
  const balance = plainBalance();
  const cells = cellsOf(balance.sheet, (row, column) => balance.value({ kind: "cell", row, column, fixed: "nothing" }));
  const { first } = balance.sheet.rows.rounds;
  expect(stampNow(cells, first, NOW, undefined)).toBe(DAY);
  balance.type(balance.sheet.round(first).date, DAY);
  expect(stampNow(cells, first + 1, NOW, undefined)).toBe(DAY + clock(10, 42));
  expect([typedStamp(cells, "20 Nov", NOW), typedStamp(cells, "10:42", NOW)]).toEqual([
    DAY - 1,
    { refused: "Type the day as 21 Nov 2026 or 2026-11-21. Left blank, it is today." },
  ]);
});

test("a day is read with a time or without, and never a bare time", () => {
  expect([readDay("2026-11-21", NOW), readDay("21 Nov 2026 10:42", NOW), readDay("9:30", NOW), readDay("21.11.", NOW)]).toEqual([
    DAY,
    DAY + clock(10, 42),
    undefined,
    undefined,
  ]);
  expect([dayText(DAY), dayText(DAY + clock(10, 42))]).toEqual(["2026-11-21", "2026-11-21 10:42"]);
});

test("a firing over midnight is stamped with dates once it is lit on another day than round 1, and otherwise without, all of a row alike", () => {
  const run = plainRun({ kind: "charring" });
  const { charring, setup } = run.sheet;
  const fire = charring?.fire(charring.rows.fire.first);
  if (fire === undefined) throw new Error("a run that is charred");
  const of = cellsOf(run.sheet, (row, column) => run.value({ kind: "cell", row, column, fixed: "nothing" }));
  const evening = new Date(2026, 10, 21, 23, 30);
  const [night, later] = [new Date(2026, 10, 22, 0, 20), new Date(2026, 10, 22, 1, 40)];
  const stamp = (box: "lit" | "quiet" | "opened", at: Date): number => stampOfFire(of, fire[box], at);
  // Without a date of the run.
  expect([stamp("lit", evening), stamp("quiet", night), stamp("opened", later)]).toEqual([clock(23, 30), clock(0, 20), clock(1, 40)]);
  run.type(setup.date, DAY);
  expect(stamp("lit", evening)).toBe(clock(23, 30));
  run.type(fire.lit, clock(23, 30));
  expect(stamp("quiet", night)).toBe(clock(0, 20));
  run.type(fire.quiet, clock(0, 20));
  expect(stamp("opened", later)).toBe(clock(1, 40));
  run.type(fire.opened, clock(1, 40));
  expect(run.check("opened")[0]).toBe("✓ in order");
  run.type(fire.opened, null);
  run.type(fire.quiet, null);
  run.type(fire.lit, null);
  expect(stamp("lit", night)).toBe(DAY + 1 + clock(0, 20));
  run.type(fire.lit, stamp("lit", night));
  expect(stamp("opened", later)).toBe(DAY + 1 + clock(1, 40));
});
