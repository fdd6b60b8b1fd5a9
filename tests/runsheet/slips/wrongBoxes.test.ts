// Whatever stands in a box that wants a number and is none that can be is named by a check, on every kind of run. The runs are invented.
import { CellProblem } from "../../../src/cells/CellProblem";
import { everyBlock } from "../../../src/runsheet/buildRunSheet";
import type { BoxRule } from "../../../src/runsheet/blocks/Block";
import { cell, type Cell } from "../../../src/runsheet/expressions/Expression";
import { placeOf } from "../../../src/runsheet/expressions/formulaText";
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { stripCell } from "../../../src/runsheet/formulas/strip";
import { CLOCK } from "../../../src/runsheet/sheet/Columns";
import type { CheckName } from "../../../src/runsheet/sheet/layout";
import { boxWords } from "../../../src/runsheet/words/BoxWords";
import type { Plain } from "../../../src/explanation/runSheet/Plain";
import { clock, plainRun, type PlainRun } from "../plainRun";

const ERROR = new CellProblem("#VALUE!", "typed");

/** A finished run of each kind, every sample a little other. */
function filled(options: Partial<RunSheetOptions>): PlainRun {
  const run = plainRun({ weighIns: 6, charFirings: 3, ashFirings: 3, ...options });
  const { sheet } = run;
  for (const sample of sheet.samples) {
    const more = (grams: number): number => Number((grams + sample / 100).toFixed(2));
    run.vessel(25, sample);
    run.weigh([65.2, 55.31, 52.1, 51.22, 51.21].map(more), sample);
    if (sheet.charring) run.fire("charring", [32.9, 32.54, 32.53].map(more), sample);
    if (sheet.ashing) run.fire("ashing", [25.41, 25.4].map(more), sample);
    if (sheet.stages) run.fire("stages", [48.1, 45.2].map(more), sample);
    if (sheet.heating) run.fire("heating", [45.1, 44.2, 44.2].map(more), sample);
    if (sheet.caught) run.caught([[50, 50.3], [80, 81.2], [120, 128.9]], sample); // prettier-ignore
    if (sheet.end) run.type(sheet.end.vessel(sample), 25);
  }
  for (const [index, table] of sheet.fired.entries()) {
    const at = table.fire(table.rows.fire.first);
    const lit = 12 + 5 * index;
    for (const [box, content] of [
      [at.lit, clock(lit)],
      [at.set, 500],
      [at.measured, 490],
      [at.quiet, clock(lit + 2)],
      [at.opened, clock(lit + 4)],
    ] as const)
      run.type(box, content);
  }
  if (options.timing === "minutes") for (const round of [0, 1, 2, 3, 4]) run.type(cell(sheet.rows.drying.first + round, CLOCK), 30 * round);
  run.type(sheet.setup.date, 46_347);
  run.type(sheet.settings.material, "sintered alumina");
  return run;
}

const OTHER_RULES: readonly string[] = [boxWords.calculated.title, boxWords.words.title, boxWords.goesOn.title];
/** Rules of boxes that want a number, a time, a day, or a weight. */
const wantsNumber = ({ allow, promptTitle }: BoxRule): boolean =>
  (allow.kind === "number" || allow.kind === "condition") && !OTHER_RULES.includes(promptTitle);

/** The first and the last box of a rule. */
const boxesOf = ({ over }: BoxRule): readonly Cell[] => (over.kind === "cell" ? [over] : [over.from, over.to]);

const KINDS: readonly Partial<RunSheetOptions>[] = [
  { kind: "drying", replicates: 5 },
  { kind: "charring", replicates: 3 },
  { kind: "ashing", replicates: 1 },
  { kind: "ashing", replicates: 6 },
  { kind: "liquids", replicates: 2 },
  { kind: "staged", replicates: 4 },
  { kind: "salt", replicates: 2 },
  { kind: "charring", replicates: 2, timing: "minutes" },
  { kind: "drying", replicates: 1, timing: "minutes", panZeros: true, temperatures: true },
  { kind: "ashing", replicates: 3, panZeros: true, temperatures: true, degrees: "F" },
  { kind: "charring", replicates: 2, plan: { moistGrams: 40, wantedUncertainty: 0.01 } },
];

describe.each(KINDS.map((options) => [JSON.stringify(options), options] as const))("%s", (_, options) => {
  const run = filled(options);
  const { sheet } = run;
  const rules = everyBlock(sheet).entryRules.filter(wantsNumber);
  const told = (): readonly (readonly [Plain, string])[] =>
    sheet.rows.checks.lines.map(({ row }) => [run.value(cell(row, CLOCK)), String(run.value(cell(row, CLOCK + 1)))] as const);

  test("as filled nothing is told of a box that holds no number", () => {
    expect(told().filter(([, finding]) => / holds no | is text|shows an error/.test(finding))).toEqual([]);
  });

  test.each(rules.flatMap((rule) => boxesOf(rule).map((at) => [`${placeOf(at)}: ${rule.promptTitle}`, at, rule] as const)))(
    "%s",
    (title, at, { allow }) => {
      const before = run.value(at);
      const isAnyNumber = allow.kind === "number" && allow.atLeast < 0;
      const missed = (["12 g", ERROR, ...(isAnyNumber ? [] : [-3])] as const).flatMap((content) => {
        run.type(at, content);
        const name = new RegExp(`\\b${placeOf(at).replaceAll("$", "")}\\b`);
        const isNamed = told().some(([verdict, finding]) => /^[▲?]/.test(String(verdict)) && name.test(finding) && !/This cell/.test(finding));
        const shown = run.head().filter((line) => line instanceof CellProblem);
        return isNamed && shown.length === 0 ? [] : [{ content, head: run.head(), told: told().filter(([, finding]) => finding !== "") }];
      });
      run.type(at, before);
      expect({ title, missed }).toEqual({ title, missed: [] });
    },
  );
});

describe("Of a box that holds no number it is said what to type", () => {
  const sheets = {
    ashing: filled({ kind: "ashing", replicates: 2, panZeros: true, temperatures: true }),
    liquids: filled({ kind: "liquids", replicates: 1 }),
  };
  const { settings, charring, end, setup, drying, columns, rows, composition } = sheets.ashing.sheet;
  const fire = charring?.fire(charring.rows.fire.first);
  const strip = rows.drying.strip?.first ?? 0;
  const caught = sheets.liquids.sheet.caught;
  const cases: readonly (readonly [run: keyof typeof sheets, at: Cell | undefined, content: Plain, check: CheckName, says: string])[] = [
    ["ashing", settings.readability, "0.01 g", "dryness", "holds no number above 0. Type the display step in grams as a number, such as 0.01."],
    ["ashing", settings.readability, 0, "dryness", "holds no number above 0. Type the display step in grams as a number, such as 0.01."],
    ["ashing", settings.interval, "20 min", "dryness", "holds no number above 0. Type minutes as a number from 1 to 1440."],
    [
      ...(["ashing", settings.limit, "2 steps", "dryness"] as const),
      "holds no number of 0 or more. Type the limit as a number in the unit of the criterion: 2 display steps, or 0.001 for 0.1 %.",
    ],
    ["ashing", settings.criterion, "steps", "dryness", "is none of the criteria. Choose one from its list, such as readability."],
    ["ashing", settings.criterion, ERROR, "dryness", "is none of the criteria. Choose one from its list, such as readability."],
    ["ashing", settings.closed, "1 h", "opened", "holds no number of 0 or more. Type minutes as a number from 0 to 14400."],
    ["ashing", fire?.held, -30, "opened", "holds no number of 0 or more. Type minutes as a plain number, such as 30."],
    ["ashing", fire?.set, "480 C", "material", "holds no number of 0 or more. Type degrees as a plain number, such as 480."],
    ["ashing", settings.oven, "105 C", "material", "holds no number of 0 or more. Type degrees Celsius as a number from 20 to 300."],
    ["ashing", settings.wanted, "1 percent", "fine", "holds no number above 0. Type a fraction up to 0.1, such as 0.01 or 1%."],
    [
      ...(["ashing", settings.repeatability, "0.01 g", "fine"] as const),
      "holds no number of 0 or more. Type the standard deviation in grams as a number, such as 0.01, or leave the box blank.",
    ],
    [
      ...(["ashing", settings.methodScatter, "small", "agree"] as const),
      "holds no number of 0 or more. Type a fraction such as 0.003 or 0.3%, or leave the box blank.",
    ],
    ["ashing", end?.vessel(1), "tared", "rows", "is text, not a weight. Type grams as a plain number."],
    ["ashing", drying.box(rows.drying.first, 1), -65.2, "rows", "holds no number of 0 or more. Type grams as a plain number."],
    ["ashing", columns.box(rows.drying.vessel, 2), "25 g", "rows", "holds no number of 0 or more. Type grams as a plain number, or the word tared."],
    ["ashing", columns.box(rows.drying.vessel, 2), -25, "rows", "holds no number of 0 or more. Type grams as a plain number, or the word tared."],
    ["ashing", setup.date, "21 Nov", "times", "holds no number of 0 or more. Type the date alone, such as 21 Nov 2026."],
    [
      "ashing",
      composition?.carbon,
      "48 %",
      "analysis",
      "holds no number of 0 or more. Type percent of the dry sample as a plain number, such as 48.6.",
    ],
    ["ashing", stripCell(strip, "before"), "none", "zeros", "holds no number. Type what the empty pan shows, in grams, such as 0 or -0.01."],
    ["ashing", stripCell(strip, "room"), "20 C", "warmth", "holds no number. Type degrees as a plain number, such as 21."],
    ["liquids", caught?.before(0, 1), -50, "caught", "holds no number of 0 or more. Type it as a plain number, in grams or percent."],
  ];

  it.each(cases)("%s, %#: %p %p", (name, at, content, check, says) => {
    const run = sheets[name];
    if (at === undefined) throw new Error("no such box");
    const before = run.value(at);
    run.type(at, content);
    const told = run.check(check);
    run.type(at, before);
    expect(told).toEqual(["? doubt", `? ${placeOf(at).replaceAll("$", "")} ${says}`]);
  });

  it("gives no answer where the repeatability is no number", () => {
    sheets.ashing.type(settings.repeatability, "0.01 g");
    sheets.ashing.type(setup.samplesAre, "repeats");
    const { 1: answer, 3: covers } = sheets.ashing.head();
    sheets.ashing.type(settings.repeatability, null);
    const [step, scatter] = [settings.readability, settings.repeatability].map((at) => placeOf(at).replaceAll("$", ""));
    expect(answer).toBe(
      `No answer: nothing has a ± without the balance's step in ${step}, and its repeatability in ${scatter} as a number or left blank.`,
    );
    expect(covers).toMatch(/^The ± will cover/);
  });
});
