// Rounds left out or too soon, degrees of the other scale, and a sample that is lost, as they come about at the bench. The runs are invented.
import { cell } from "../../../src/runsheet/expressions/Expression";
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { CLOCK } from "../../../src/runsheet/sheet/Columns";
import type { Plain } from "../../../src/explanation/runSheet/Plain";
import { clock, plainRun, type PlainRun } from "../plainRun";

const FINE = "✓ in order";
const NOT_YET = "· not yet";

/** Rounds with their times, null for one that is left out. */
function rounds(options: Partial<RunSheetOptions>, times: readonly Plain[], grams: readonly Plain[]): PlainRun {
  const run = plainRun({ kind: "charring", intervalMinutes: 20, ...options });
  run.vessel(25);
  const { first } = run.sheet.rows.drying;
  for (const [index, time] of times.entries()) run.type(cell(first + index, CLOCK), time);
  for (const [index, weight] of grams.entries()) run.type(run.sheet.drying.box(first + index, 1), weight);
  return run;
}

describe("A row that is left out", () => {
  test.each<readonly [string, Plain, Plain]>([
    ["as planned", clock(9, 20), clock(9, 40)],
    ["less than was planned for both together", clock(9, 20), clock(9, 30)],
    ["later than planned", clock(9, 20), clock(10, 20)],
  ])("is told itself, and no time of another row, %s", (_, second, fourth) => {
    const run = rounds({}, [clock(9), second, null, fourth], [65.2, 55.31, null, 52.1]);
    expect(run.check("times")).toEqual([FINE, ""]);
    expect(run.check("rows")).toEqual(["? doubt", "? C14 is empty above a filled row. Type its weight, or clear what stands below it."]);
    expect(String(run.head()[2])).toMatch(/C14 is empty above a filled row/);
  });

  test("moves no later round to another day", () => {
    const run = rounds({}, [clock(9), clock(9, 20), null, clock(9, 30), clock(9, 50)], [65.2, 55.31, null, 52.1, 51.2]);
    const { first } = run.sheet.rows.drying;
    const elapsed = [0, 1, 2, 3, 4].map((round) => run.value(cell(first + round, run.sheet.columns.elapsed)));
    expect(elapsed).toEqual([0, 20, 40, 30, 50]);
  });

  test("of minutes is told itself too", () => {
    const run = rounds({ timing: "minutes" }, [0, 20, null, 30], [65.2, 55.31, null, 52.1]);
    expect(run.check("times")).toEqual([FINE, ""]);
  });
});

describe("Rounds sooner than planned", () => {
  const grams = [65.2, 55.31, 52.1, 52.1];
  test.each<readonly [string, Partial<RunSheetOptions>, readonly Plain[], string]>([
    ["1 min apart", {}, [clock(9), clock(9, 1), clock(9, 2), clock(9, 3)], "B15 comes 1 min after the round before; planned 20 min."],
    ["the last one 9 min after", {}, [clock(9), clock(9, 20), clock(9, 40), clock(9, 49)], "B15 comes 9 min after the round before; planned 20 min."],
    ["1 min apart, by minutes", { timing: "minutes" }, [0, 1, 2, 3], "B15 comes 1 min after the round before; planned 20 min."],
  ])("%s are questioned", (_, options, times, says) => {
    expect(rounds(options, times, grams).check("times")).toEqual(["? doubt", `? ${says} Too soon to tell: if right, weigh once more later.`]);
  });

  test.each<readonly [string, readonly Plain[]]>([
    ["half of what was planned", [clock(9), clock(9, 20), clock(9, 40), clock(9, 50)]],
    ["one that is followed by a later one", [clock(9), clock(9, 20), clock(9, 22), clock(9, 42)]],
  ])("%s: is not", (_, times) => {
    expect(rounds({}, times, grams).check("times")).toEqual([FINE, ""]);
  });

  test("a loss since the round before is told with its minutes, where that is not what is judged", () => {
    const run = rounds({}, [clock(9), clock(9, 15), clock(9, 30), clock(9, 45)], [65.2, 52.14, 52.12, 52.11]);
    expect(run.value(run.sheet.drying.verdict(run.sheet.rows.drying.first + 3))).toBe("lost 0.01 g in 15 min: go on");
  });

  test.each([900, 5])("a first round at minute %d is questioned", (minute) => {
    const run = rounds({ timing: "minutes" }, [minute, minute + 20, minute + 40], [65.2, 55.31, 52.1]);
    expect(run.check("times")).toEqual(["? doubt", "? B12 is round 1, and not 0. Type 0 there, and below it minutes since round 1, no clock times."]);
  });
});

describe("Degrees", () => {
  const fired = (options: Partial<RunSheetOptions>, ...set: readonly number[]): PlainRun => {
    const run = plainRun({ kind: "charring", ...options });
    run.type(run.sheet.settings.material, "none of these");
    const { charring } = run.sheet;
    for (const [index, degrees] of set.entries()) if (charring) run.type(charring.fire(charring.rows.fire.first + index).set, degrees);
    return run;
  };

  test.each([
    ["F", 105, "? doubt", /^\? B\d+: 105 °F is 41 °C\. If 105 °C is meant, type 221; if 41 °C is, type 104 or 108\.$/],
    ["F", 103, "? doubt", /^\? B\d+: 103 °F is 39 °C\. If 103 °C is meant, type 217; if 39 °C is, type 104 or 108\.$/],
    ["F", 104, NOT_YET, /^$/],
    ["F", 221, NOT_YET, /^$/],
    ["C", 105, NOT_YET, /^$/],
  ] as const)("of an oven in °%s: %d", (degrees, typed, verdict, says) => {
    const run = fired({ degrees }, degrees === "F" ? 896 : 480);
    run.type(run.sheet.settings.oven, typed);
    expect(run.check("material")).toEqual([verdict, expect.stringMatching(says)]);
  });

  test.each([
    ["F", [480, 896], true],
    ["F", [896, 480], true],
    ["C", [480, 896], true],
    ["C", [480, 900, 900], true],
    ["C", [450, 480, 500], false],
    ["F", [842, 896, 932], false],
    ["C", [480, 950], false],
  ] as const)("of firings in °%s: %p", (degrees, set, isQuestioned) => {
    const says = `? Row 23 and the row above have one heat in °C and in °F. This sheet wants °${degrees} in both: type the one anew.`;
    expect(fired({ degrees }, ...set).check("material")).toEqual(isQuestioned ? ["? doubt", says] : [NOT_YET, ""]);
  });

  test("set and measured that agree are in order, whether or not a material is named", () => {
    const run = plainRun({ kind: "charring" });
    const at = run.sheet.charring?.fire(run.sheet.charring.rows.fire.first);
    if (at === undefined) throw new Error("no charring");
    run.type(at.set, 105);
    expect(run.check("material")[0]).toBe("? doubt");
    run.type(at.set, 220);
    run.type(run.sheet.settings.material, "none of these");
    run.type(at.measured, 215);
    expect(run.check("material")).toEqual([FINE, ""]);
  });
});

describe("A sample that is lost", () => {
  test.each([2, 3, 6])("of %d is named, and clearing its boxes completes the run", (replicates) => {
    const run = plainRun({ kind: "ashing", replicates, charFirings: 2, ashFirings: 2, weighIns: 5 });
    for (const sample of run.sheet.samples) {
      run.vessel(25, sample);
      run.weigh([65.2, 51.21, 51.21], sample);
      if (sample === replicates) continue;
      run.fire("charring", [32.53, 32.53], sample);
      run.fire("ashing", [25.4, 25.4], sample);
    }
    expect(run.head()[0]).toBe(`► Next: weigh sample ${replicates} too; if it is lost, clear all its boxes`);
    run.vessel(null, replicates);
    run.weigh([null, null, null], replicates);
    expect(run.head()[0]).toMatch(/^► Next: weigh the empty vessels again/);
  });
});
