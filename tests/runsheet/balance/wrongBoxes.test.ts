// What stands in a box of a balance check that wants a number and is none that can be is named by a check. The history is invented.
import { CellProblem } from "../../../src/cells/CellProblem";
import { balanceBlocks } from "../../../src/runsheet/blocks/balance/planBalanceSheet";
import { cell } from "../../../src/runsheet/expressions/Expression";
import { placeOf } from "../../../src/runsheet/expressions/formulaText";
import { CLOCK } from "../../../src/runsheet/sheet/Columns";
import { boxWords } from "../../../src/runsheet/words/BoxWords";
import { plainBalance } from "./plainBalance";

const run = plainBalance();
const { sheet } = run;
run.type(sheet.setup.value, 200);
run.type(sheet.setup.known, 0.01);
run.rounds([200.01, 200, 200.02, 200.01, 200, 200.01, 200.01], [0, 0, 0, 0.01]);
run.corners({ centre: 70, frontLeft: 70.01, frontRight: 70, backLeft: 70, backRight: 70.01, centreAgain: 70 });

const OTHER_RULES: readonly string[] = [boxWords.calculated.title, boxWords.words.title, boxWords.goesOn.title];
const boxes = balanceBlocks(sheet).entryRules.flatMap(({ over, allow, promptTitle }) => {
  if ((allow.kind !== "number" && allow.kind !== "condition") || OTHER_RULES.includes(promptTitle)) return [];
  const isAnyNumber = allow.kind === "number" && allow.atLeast < 0;
  return (over.kind === "cell" ? [over] : [over.from, over.to]).map((at) => [`${placeOf(at)}: ${promptTitle}`, at, isAnyNumber] as const);
});

test("there are boxes of each block", () => {
  expect(boxes.length).toBeGreaterThan(8);
});

test.each(boxes)("%s", (title, at, isAnyNumber) => {
  const before = run.value(at);
  const missed = (["12 g", new CellProblem("#N/A", "typed"), ...(isAnyNumber ? [] : [-3])] as const).flatMap((content) => {
    run.type(at, content);
    const name = new RegExp(`\\b${placeOf(at).replaceAll("$", "")}\\b`);
    const told = sheet.rows.checks.lines.map(({ row }) => [run.value(cell(row, CLOCK)), String(run.value(cell(row, CLOCK + 1)))] as const);
    const isNamed = told.some(([verdict, finding]) => /^[▲?]/.test(String(verdict)) && name.test(finding));
    const shown = run.head().filter((line) => line instanceof CellProblem);
    return isNamed && shown.length === 0 ? [] : [{ content, head: run.head(), told: told.filter(([, finding]) => finding !== "") }];
  });
  run.type(at, before);
  expect({ title, missed }).toEqual({ title, missed: [] });
});
