// What is not known accuses nothing: a step or a repeatability that cannot be used leaves no limit to judge by. The runs are invented.
import { CellProblem } from "../../../src/cells/CellProblem";
import { plainRun, type PlainRun } from "../plainRun";

type Setting = "readability" | "repeatability";
const UNUSABLE = ["0.01 g", "fine", -0.01, true] as const;
const CASES = (["readability", "repeatability"] as const).flatMap((setting) => UNUSABLE.map((content) => [setting, content] as const));

/** Weights that a display step or two explain: the vessel 0.02 g lighter, the char 0.01 g heavier, the trap 0.02 g lighter. */
function ordinary(setting?: Setting, content?: (typeof UNUSABLE)[number]): PlainRun {
  const run = plainRun({ kind: "liquids" });
  run.vessel(25);
  run.weigh([65.2, 51.22, 51.23]);
  run.fire("charring", [32.53, 32.54]);
  run.caught([
    [55.2, 55.41],
    [80.11, 80.09],
    [120.5, 130.25],
  ]);
  const { end, settings } = run.sheet;
  if (end) run.type(end.vessel(1), 24.98);
  if (setting !== undefined && content !== undefined) run.type(settings[setting], content);
  return run;
}

const ACCUSING = ["vesselAgain", "gain", "order", "air", "caught", "ledger", "vessel"] as const;

test("of weights that the step explains none is accused", () => {
  const run = ordinary();
  for (const check of ACCUSING) expect([check, run.check(check)[1]]).toEqual([check, ""]);
});

test.each(CASES)("nor with %s %p, which is named", (setting, content) => {
  const run = ordinary(setting, content);
  for (const check of ACCUSING) expect([check, run.check(check)[1]]).toEqual([check, ""]);
  const { row } = run.sheet.settings[setting];
  expect(run.head()[2]).toMatch(new RegExp(`^\\? .*B${row} holds no number`));
});

test.each(CASES)("and with %s %p the slip of a gram in the char still contradicts where no limit is needed", (setting, content) => {
  const run = ordinary(setting, content);
  run.fire("charring", [0.03254]);
  expect(run.check("order")[1]).toContain("cannot both be grams");
  expect(run.head()[1] instanceof CellProblem).toBe(false);
});
