import { storedFormula } from "../../../src/xlsx/formulas/storedFormula";
import { newFileOf } from "../../../src/xlsx/planned/addPlanned";
import { parse, tokenize, tokenTypes, type Token } from "@borgar/fx";
import { everyFunction } from "../../../src/functions/catalogue";
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { SAMPLE_KINDS, type RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { findCalls } from "../../../src/sharing/findCalls";
import { cellArea, covers, type CellArea } from "../../../src/workbook/cellArea";
import { checkSheetPlan } from "../../../src/workbook/checkSheetPlan";
import { pixelsOf } from "../../../src/workbook/columnPixels";
import { isInKey } from "../../../src/workbook/seriesLooks";
import type { PlannedCell, SheetPlan } from "../../../src/workbook/SheetPlan";
import { leavesArgumentOut } from "../../leavesArgumentOut";

const usual: RunSheetOptions = { kind: "ashing", weighIns: 8, intervalMinutes: 30, readability: 0.01, vessel: "lidded steel tin", replicates: 2 };
const every: RunSheetOptions[] = SAMPLE_KINDS.flatMap((kind) =>
  [1, 2, 3, 4, 5, 6].flatMap((replicates) =>
    (replicates === 1 || replicates === 6 ? [3, 8, 60] : [8]).map((weighIns) => ({ ...usual, kind, replicates, weighIns })),
  ),
);
const extras: RunSheetOptions[] = [
  ...[{ panZeros: true }, { temperatures: true }, { panZeros: true, temperatures: true }].flatMap((extra) => [
    ...SAMPLE_KINDS.map((kind) => ({ ...usual, ...extra, kind })),
    { ...usual, ...extra, replicates: 1 },
    { ...usual, ...extra, replicates: 6, weighIns: 60 },
  ]),
  { ...usual, charFirings: 1, ashFirings: 1 },
  { ...usual, charFirings: 4, ashFirings: 4, replicates: 6, panZeros: true },
  { ...usual, degrees: "F", timing: "minutes", temperatures: true, samplesAre: "different" },
  { ...usual, readability: 0.0000001 * 10 },
  ...[3, 10, 60].map((weighIns): RunSheetOptions => ({ ...usual, kind: "balance", replicates: 1, weighIns })),
  { ...usual, kind: "liquids", receivers: 4 },
  { ...usual, kind: "salt", formula: "CaMg(CO3)2", residue: "CaO + MgO", degrees: "F" },
  { ...usual, kind: "staged", stages: 2, degrees: "F" },
  { ...usual, kind: "staged", stages: 12, replicates: 6, panZeros: true },
];
const title = (options: RunSheetOptions): string => JSON.stringify(options).replace(/"kind":|"vessel":"[^"]*",|"intervalMinutes":30,|[{}"]/g, "");

test("the longest formula of the largest sheets leaves room for what is added to it", () => {
  const largest = { ...usual, weighIns: 60, replicates: 6, readability: 0.001, panZeros: true, temperatures: true, samplesAre: "different" } as const;
  const counts = { charFirings: 4, ashFirings: 4, receivers: 4, stages: 12 };
  const lengths = SAMPLE_KINDS.flatMap((kind) => buildRunSheet({ ...largest, ...counts, kind }).cells.map(({ formula = "" }) => formula.length));
  expect(Math.max(...lengths)).toBeLessThan(8100);
});

// Where single cells are asked for, ISFORMULA stands often, and in a file its name is longer.
test.each([
  ["ashing", 8, 6],
  ["ashing", 24, 6],
  ["charring", 24, 3],
  ["charring", 30, 6],
  ["salt", 30, 6],
] as const)("no formula of %s, %i rounds, %i samples passes 8,192 characters as a file stores it", async (kind, weighIns, replicates) => {
  const salt = kind === "salt" ? { formula: "CuSO4.5H2O", residue: "CuSO4" } : {};
  const plan = buildRunSheet({ ...usual, ...salt, kind, weighIns, replicates, panZeros: true });
  expect(Math.max(...plan.cells.map(({ formula = "" }) => storedFormula(formula).length))).toBeLessThanOrEqual(8192);
  await expect(newFileOf([plan], { calculateOnOpening: true })).resolves.toBeInstanceOf(Uint8Array);
});

/** Built-in functions that Excel 2016, LibreOffice 7.4 and the local workbook's engine all have. */
const BUILT_IN = [
  ...[
    "IF",
    "AND",
    "OR",
    "ISNUMBER",
    "ISTEXT",
    "ISERROR",
    "ERROR.TYPE",
    "ISBLANK",
    "ISFORMULA",
    "IFERROR",
    "INDEX",
    "MATCH",
    "COUNT",
    "COUNTA",
    "COUNTIF",
    "COUNTIFS",
  ],
  ...[
    "SUM",
    "SUMPRODUCT",
    "MAX",
    "MIN",
    "MOD",
    "ROUND",
    "ROUNDUP",
    "INT",
    "ABS",
    "SQRT",
    "LOG10",
    "AVERAGE",
    "MEDIAN",
    "LARGE",
    "NA",
    "SMALL",
    "STDEV",
    "TINV",
  ],
  ...["N", "ROW", "ROWS", "COLUMN", "CHAR", "HOUR", "MINUTE", "FIXED", "LEFT", "MID", "RIGHT", "FIND", "LEN", "SUBSTITUTE"],
];

/** A function not in the list, a dynamic-array operator, or a number literal with a decimal point or exponent. */
const isOutOfBounds = ({ type, value }: Token): boolean =>
  (type === tokenTypes.FUNCTION && !value.startsWith("RETORT.") && !BUILT_IN.includes(value)) ||
  (type === tokenTypes.OPERATOR && (value === "#" || value === "@")) ||
  (type === tokenTypes.NUMBER && !/^\d+$/.test(value));

const formulaCells = (plan: SheetPlan): (PlannedCell & { formula: string })[] =>
  plan.cells.filter((cell): cell is PlannedCell & { formula: string } => cell.formula !== undefined);
const cellWith = (plan: SheetPlan, content: string): string | undefined => plan.cells.find((cell) => cell.content === content)?.cell;
const isWithin = (area: CellArea, cell: string): boolean => {
  const at = cellArea(cell);
  return at !== undefined && covers(area, at.row, at.column);
};
const rowOf = (cell: string): number => Number(cell.replace(/\D/g, ""));
const printed = (plan: SheetPlan): CellArea => cellArea(plan.print?.area ?? "") ?? { row: 0, column: 0, rows: 0, columns: 0 };
const BOXES = ["runBox", "runBoxStart", "runBoxMore", "runBoxEnd"];
const isBox = ({ style }: PlannedCell): boolean => BOXES.includes(style ?? "");

describe.each([...every, ...extras].map((options) => [title(options), options] as const))("buildRunSheet(%s)", (_, options) => {
  const plan = buildRunSheet(options);

  it("gives a plan that a workbook can take", () => {
    expect(() => checkSheetPlan(plan)).not.toThrow();
  });

  it("leaves no row blank between two blocks, but where the curves stand", () => {
    const rows = new Set(plan.cells.filter(({ cell }) => isWithin(printed(plan), cell)).map(({ cell }) => rowOf(cell)));
    const curves = cellArea(plan.charts?.[0]?.over ?? "");
    const blank = Array.from({ length: printed(plan).rows }, (_row, index) => index + 1).filter((row) => !rows.has(row));
    expect(blank).toEqual(Array.from({ length: curves?.rows ?? 0 }, (_row, index) => (curves?.row ?? 0) + 1 + index));
  });

  it("writes no cell twice", () => {
    const cells = plan.cells.map(({ cell }) => cell);
    expect(cells.filter((cell, index) => cells.indexOf(cell) !== index)).toEqual([]);
  });

  it("writes cell formulas and conditions that parse, of functions that exist everywhere, without dynamic-array references", () => {
    const conditions = plan.entryRules.flatMap(({ range, allow }) => (allow.kind === "condition" ? [{ cell: range, formula: allow.condition }] : []));
    const looks = (plan.emphasis ?? []).map(({ range, condition }) => ({ cell: range, formula: condition }));
    const faulty = [...formulaCells(plan), ...conditions, ...looks].flatMap(({ cell, formula }) => {
      const tokens = tokenize(formula);
      parse(tokens);
      return tokens.filter((token) => isOutOfBounds(token)).map(({ value }) => [cell, value]);
    });
    expect(conditions.length).toBeGreaterThan(3);
    expect(faulty).toEqual([]);
  });

  it("writes cell formulas that a cell can hold: up to 8192 characters (Excel specifications and limits)", () => {
    expect(formulaCells(plan).filter(({ formula }) => formula.length > 8192)).toEqual([]);
  });

  it("nests calls no deeper than 64 (Excel specifications and limits)", () => {
    const depthOf = (formula: string): number => {
      let [depth, deepest] = [0, 0];
      for (const { type, value } of tokenize(formula)) {
        if (type !== tokenTypes.OPERATOR) continue;
        if (value === "(") deepest = Math.max(deepest, ++depth);
        if (value === ")") depth--;
      }
      return deepest;
    };
    expect(depthOf("=IF((1),A1,SUM(B1))")).toBe(2);
    expect(formulaCells(plan).filter(({ formula }) => depthOf(formula) > 64)).toEqual([]);
  });

  it("calls Retort functions that exist, with as many arguments as they take", () => {
    const calls = formulaCells(plan).flatMap(({ formula }) => findCalls(formula));
    const faulty = calls.filter(({ name, argumentTexts }) => {
      const inputs = Object.values(everyFunction.find((definition) => definition.name === name)?.inputs ?? {});
      const leftOut = inputs.filter((_input, index) => (argumentTexts[index] ?? "") === "");
      return inputs.length === 0 || argumentTexts.length > inputs.length || leftOut.some(({ optional }) => !optional);
    });
    // A balance check is all plain arithmetic.
    expect(calls.length > 0).toBe(options.kind !== "balance");
    expect(faulty).toEqual([]);
  });

  it("refers to no cell that stands for nothing: a box, a calculated cell, or the row of a total that belongs to its table", () => {
    const filled = new Map(plan.cells.map((cell) => [cell.cell, cell]));
    const ranges = new Set(
      formulaCells(plan).flatMap(({ formula }) =>
        tokenize(formula)
          .filter(({ type }) => type === tokenTypes.REF_RANGE)
          .map(({ value }) => value.replaceAll("$", "")),
      ),
    );
    const says = (cell: string): boolean => {
      const own = filled.get(cell);
      return own !== undefined && (isBox(own) || own.formula !== undefined || own.content !== undefined);
    };
    // A lone cell holds something; a range begins with something.
    const empty = [...ranges].filter((range) => !says(range.split(":")[0] ?? ""));
    const totals = plan.cells
      .filter(({ content }) =>
        ["Dry sample, g", "Char, g", "Ash, g", "Left at the end, g", "Before heating, g", "Stayed after heating, g", "All rounds, g"].includes(
          String(content),
        ),
      )
      .map(({ cell }) => rowOf(cell));
    const headings = plan.cells.filter(({ style }) => style === "runBand" || style?.startsWith("runLightBand")).map(({ cell }) => rowOf(cell));
    expect(
      empty.filter((range) => !totals.includes(rowOf(range.split(":")[0] ?? "")) && !headings.includes(rowOf(range.split(":")[0] ?? ""))),
    ).toEqual([]);
  });

  it("rules every box, and refuses whatever is typed over each formula, on paper and in the workings", () => {
    const areas = plan.entryRules.map((rule) => ({ ...rule, area: cellArea(rule.range) }));
    const rulesOf = (cell: string) => areas.filter(({ area }) => area !== undefined && isWithin(area, cell));
    const onPaper = plan.cells.filter(({ cell }) => isWithin(printed(plan), cell));
    expect(onPaper.filter((cell) => isBox(cell) && rulesOf(cell.cell).length !== 1)).toEqual([]);
    const refused = (cell: string): boolean => {
      const [rule, ...others] = rulesOf(cell);
      const [first = ""] = rule?.range.split(":") ?? [];
      return others.length === 0 && rule?.allow.kind === "condition" && rule.allow.condition === `=ISFORMULA(${first})`;
    };
    const formulas = plan.cells.filter(({ formula }) => formula !== undefined);
    expect(formulas.length).toBeGreaterThan(30);
    expect(formulas.filter(({ cell }) => !refused(cell))).toEqual([]);
    const ruledCells = areas.reduce((sum, { area }) => sum + (area?.rows ?? 0) * (area?.columns ?? 0), 0);
    const ofWords = areas.filter(({ allow, range }) => allow.kind === "condition" && allow.condition === `=ISTEXT(${range.split(":")[0] ?? ""})`);
    const words = ofWords.reduce((sum, { area }) => sum + (area?.rows ?? 0) * (area?.columns ?? 0), 0);
    expect(ruledCells).toBe(onPaper.filter(isBox).length + formulas.length + words);
  });

  it("refuses a number over every heading and label, and beside them in the rows of headings and totals", () => {
    const rules = plan.entryRules.filter(
      ({ allow, range }) => allow.kind === "condition" && allow.condition === `=ISTEXT(${range.split(":")[0] ?? ""})`,
    );
    const isRuled = (cell: string): boolean =>
      rules.some(({ range }) => {
        const area = cellArea(range);
        return area !== undefined && isWithin(area, cell);
      });
    const words = plan.cells.filter(({ cell, content }) => typeof content === "string" && isWithin(printed(plan), cell));
    expect(words.filter((one) => !isBox(one) && !isRuled(one.cell)).map(({ cell }) => cell)).toEqual([]);
    expect(plan.cells.filter((one) => isBox(one) && isRuled(one.cell))).toEqual([]);
    const total = plan.cells.find(({ style }) => style === "runTotal");
    // The boxes' columns in the row of a total hold nothing, and are read with the boxes above.
    expect(isRuled(`C${rowOf(total?.cell ?? "")}`)).toBe(true);
  });

  it("prompts at every box with its unit or what it wants, and stays quiet elsewhere", () => {
    const silent = plan.entryRules.filter(({ prompt }) => prompt === "");
    expect([...new Set(silent.map(({ refusal }) => refusal))].sort()).toEqual([
      "No number goes here: it would be taken for a weighing. Type it into a box. Esc gives the words back.",
      "Nothing to type here. Boxes stand left of the heavy line. Esc gives the formula back.",
      "This box begins further left: type in its first cell.",
    ]);
  });

  it("begins at the first empty vessel, or at the value of the check weight", () => {
    if (options.kind === "balance") expect(plan.startAt).toBe(cellWith(plan, "Check weight, g")?.replace("A", "B"));
    else expect(plan.startAt).toBe(`C${rowOf(cellWith(plan, "Empty vessel, g") ?? "")}`);
  });

  it("keeps hand and sheet apart: beside the boxes of a weighing nothing calculated, right of the heavy line no box", () => {
    const slots = Math.max(3, options.replicates);
    const rows = plan.cells
      .filter(({ content }) => /^(Round \d|After firing|After stage|Tube|Trap|Receiver|Empty vessel)/.test(String(content)))
      .map(({ cell }) => rowOf(cell));
    const strips = plan.cells
      .filter(({ style, content }) => style === "runLightBandWrapped" && content === "balance and room")
      .map(({ cell }) => rowOf(cell));
    const tables = rows.filter((row) => !strips.some((strip) => row > strip && row <= strip + options.weighIns + 1));
    const inTables = plan.cells.filter(({ cell }) => tables.includes(rowOf(cell)));
    const column = ({ cell }: PlannedCell): number => cellArea(cell)?.column ?? -1;
    expect(inTables.length).toBeGreaterThan(0);
    expect(inTables.filter((cell) => column(cell) < 2 + slots && cell.formula !== undefined)).toEqual([]);
    expect(inTables.filter((cell) => column(cell) >= 2 + slots && isBox(cell))).toEqual([]);
  });

  const limits = ["mean - 2 s", "mean", "mean + 2 s"];
  it("draws one series a sample, straight from its boxes and the minutes beside them, with its band and the end foretold", () => {
    if (options.kind === "balance") {
      expect(plan.charts?.map(({ series }) => series.map(({ name }) => name))).toEqual([["reading", ...limits, "(axes)"]]);
      const [reading] = plan.charts?.[0]?.series ?? [];
      expect([cellArea(reading?.x ?? "")?.rows, cellArea(reading?.y ?? "")?.rows]).toEqual([options.weighIns + 1, options.weighIns + 1]);
      return;
    }
    const every = (name: (sample: number) => string): string[] => Array.from({ length: options.replicates }, (__, index) => name(index + 1));
    const [drying, firing] = plan.charts ?? [];
    const named = (draws: "limit" | "foretold" | undefined): string[] =>
      (drying?.series ?? []).filter((series) => series.draws === draws).map(({ name }) => name);
    const withUpper = (lower: readonly string[]): string[] => lower.flatMap((name) => [name, `${name}: upper edge`]);
    expect(named(undefined)).toEqual(every((sample) => `Sample ${sample}`));
    expect(named("limit")).toEqual(withUpper(every((sample) => (sample === 1 ? "dry if the next falls in here" : `dry, sample ${sample}`))));
    expect(named("foretold")).toEqual(every((sample) => (sample === 1 ? "end foretold by the curve" : `end foretold, sample ${sample}`)));
    const sizes = { measured: options.weighIns + 1, limit: 2, foretold: 2, frame: 1 };
    for (const { x, y, draws = "measured" } of drying?.series ?? []) {
      // The row of the total, empty there, belongs to what is weighed, so that rows put in above it do.
      expect([cellArea(x)?.rows, cellArea(y)?.rows]).toEqual([sizes[draws], sizes[draws]]);
    }
    const firings = options.kind === "drying" ? undefined : options.kind === "ashing" ? 2 * options.replicates : options.replicates;
    const fired = (firing?.series ?? []).filter(({ draws }) => draws === undefined);
    expect(fired.length).toBe(firings ?? 0);
    // The band of the firings under way; stages, drawn against temperature, have none.
    const banded = ["charring", "liquids", "salt", "ashing"].includes(options.kind);
    const finished = (sample: number): string => (sample === 1 ? "finished if the next falls in here" : `finished, sample ${sample}`);
    const band = (firing?.series ?? []).filter(({ draws }) => draws === "limit");
    expect(band.map(({ name }) => name)).toEqual(banded ? withUpper(every(finished)) : []);
    for (const { x, y } of band) expect([cellArea(x)?.rows, cellArea(y)?.rows]).toEqual([sizes.limit, sizes.limit]);
    // What belongs to one sample looks alike. Bands span the axes of a blank sheet, and of stages a frame that is not seen.
    for (const { series } of plan.charts ?? []) {
      expect(series.filter(({ draws }) => draws === "frame")).toHaveLength(series.some(({ draws }) => draws === "limit") ? 0 : 1);
      // The key names a band once, by its lower edge, and lines of one kind for the first sample alone.
      const inKey = series.filter(isInKey).map(({ draws }) => draws ?? "weighed");
      expect(inKey.filter((draws) => draws !== "weighed").sort()).toEqual([...new Set(series.flatMap(({ draws }) => (draws === undefined || draws === "frame" ? [] : [draws])))].sort()); // prettier-ignore
      for (const { name, look, draws } of series) if (draws === undefined) expect(name).toMatch(new RegExp(`^Sample ${(look ?? 0) + 1}\\b`));
    }
    if (options.kind === "staged") {
      // Stages begin with the dry sample, and the row of the total belongs to them.
      const stages = (options.stages ?? 4) + 2;
      for (const { x, y } of fired) expect([cellArea(x)?.rows, cellArea(y)?.rows]).toEqual([stages, stages]);
    }
    const overs = (plan.charts ?? []).map(({ over }) => cellArea(over));
    for (const over of overs) {
      expect(over).toBeDefined();
      expect(plan.cells.filter(({ cell }) => over !== undefined && isWithin(over, cell))).toEqual([]);
    }
    const [left, right] = overs;
    if (right !== undefined)
      expect([left?.row, left?.rows, (left?.column ?? 0) + (left?.columns ?? 0)]).toEqual([right.row, right.rows, right.column]);
  });

  it("keeps every working right of what is printed, each row of them labelled", () => {
    const { columns } = printed(plan);
    const right = plan.cells.filter(({ cell }) => (cellArea(cell)?.column ?? 0) >= columns);
    expect(right.filter(({ style }) => style !== "runWorking" && style !== "runWorkingHeading")).toEqual([]);
    const tables = new Set(
      plan.cells.filter(({ content }) => /^(Round|After firing|After stage)/.test(String(content))).map(({ cell }) => rowOf(cell)),
    );
    const labelled = new Set(right.filter(({ content }) => content !== undefined).map(({ cell }) => rowOf(cell)));
    expect(right.filter(({ cell, formula }) => formula !== undefined && !labelled.has(rowOf(cell)) && !tables.has(rowOf(cell)))).toEqual([]);
  });

  it("prints every text whole: none wider than the cells it may run over", () => {
    const columns = plan.columnWidths.map(pixelsOf);
    const area = printed(plan);
    // Widths of a character, measured for the fonts at hand: 6.0 pixels at 10 points, 6.6 bold; on average, with room to spare.
    const cut = plan.cells.filter(({ cell, content, style }) => {
      const at = cellArea(cell);
      if (typeof content !== "string" || at === undefined || !isWithin(area, cell) || style?.endsWith("Wrapped")) return false;
      const isFilled = (column: number): boolean =>
        plan.cells.some(
          (other) =>
            (other.content ?? other.formula) !== undefined && cellArea(other.cell)?.row === at.row && cellArea(other.cell)?.column === column,
        );
      let room = 0;
      for (let column = at.column; column < area.columns && (column === at.column || !isFilled(column)); column++) room += columns[column] ?? 0;
      return content.length * (style === "runLabel" || style === "runBeside" || style === "runHelp" || style === "runCaution" ? 5.6 : 6.2) > room;
    });
    expect(cut.map(({ cell, content }) => [cell, content])).toEqual([]);
  });

  it("never says that anything is safe", () => {
    const words = [
      ...plan.cells.map(({ content }) => content),
      ...plan.entryRules.flatMap(({ prompt, refusal, promptTitle }) => [prompt, refusal, promptTitle]),
    ];
    expect(words.filter((text) => /safe/i.test(String(text)))).toEqual([]);
  });
});

describe("buildRunSheet(options)", () => {
  it("leaves no argument out between commas, whatever the options", () => {
    const kinds = SAMPLE_KINDS.flatMap((kind) => [1, 2, 3, 4, 5, 6].map((replicates) => ({ ...usual, kind, replicates, weighIns: 3 })));
    const plans = kinds.flatMap((options) =>
      [true, false].flatMap((panZeros) => [true, false].map((temperatures) => buildRunSheet({ ...options, panZeros, temperatures }))),
    );
    const formulas = plans.flatMap(formulaCells).map(({ formula }) => formula);
    expect(plans).toHaveLength(144);
    expect(new Set(formulas.flatMap(findCalls).map(({ name }) => name))).toContain("CONSTANTWEIGHT.STEPS");
    expect(formulas.filter(leavesArgumentOut)).toEqual([]);
  });

  const beside = (plan: SheetPlan, label: string): PlannedCell | undefined =>
    plan.cells.find(({ cell }) => cell === cellWith(plan, label)?.replace("A", "B"));

  it("prefills what the options say and leaves the rest to be filled in", () => {
    const plan = buildRunSheet({ ...usual, ovenCelsius: 120, samplesAre: "different" });
    expect(["Vessel", "Balance step, g", "Rounds apart, min", "Oven, °C", "Samples, which are"].map((label) => beside(plan, label)?.content)).toEqual(
      ["lidded steel tin", 0.01, 30, 120, "different"],
    );
    expect(["Date", "Material", "Repeatability, g", "Notes"].map((label) => beside(plan, label)?.content)).toEqual(Array(4).fill(undefined));
  });

  it("has degrees Fahrenheit throughout where asked: 105 °C are 221 °F, and 1800 °C 3272 °F", () => {
    const plan = buildRunSheet({ ...usual, degrees: "F", ovenCelsius: 105, temperatures: true });
    expect(beside(plan, "Oven, °F")?.content).toBe(221);
    expect(plan.entryRules.find(({ promptTitle }) => promptTitle === "Set to")?.allow).toEqual({ kind: "number", atLeast: 68, atMost: 3272 });
    expect(plan.cells.filter(({ content }) => /°C/.test(String(content)) && !/memory|°F \(925 °C\)|ISO|ITS/.test(String(content)))).toEqual([]);
    // Tin melts at 231.9 °C; 230 °C are 446 °F.
    expect(beside(plan, "tinned steel")?.content).toBe(446);
  });

  it("says the unit of every box: in its label, its heading or its prompt", () => {
    const { cells } = buildRunSheet({ ...usual, replicates: 3, panZeros: true, temperatures: true });
    const labels = cells.filter(({ style, cell }) => style === "runLabel" && cell.startsWith("A")).map(({ content }) => String(content));
    const unitless = labels.filter((label) => !/, (g|min|%|95 %|°C)$|^\d+ {2}|moist, g$/.test(label));
    expect([...new Set(unitless)]).toEqual([
      ...["Date", "Material", "Samples, which are", "Firing 1", "Firing 2", "Firing 3", "Notes"],
      ...["Water, to dry sample", "Stayed as char, of dry", "Char without its ash", "Ash, of dry"],
      ...["Criterion", "Limit", "Vessel", "Vessel made of", "Method's own s", "Formula instead"],
    ]);
  });

  it("says of a refused weight that the decimal mark is the spreadsheet's own", () => {
    const { entryRules } = buildRunSheet(usual);
    const refusals = ["Round 1: moist", "Vessel + sample", "Vessel + char", "Vessel + ash"].map(
      (wanted) => entryRules.find(({ promptTitle }) => promptTitle === wanted)?.refusal,
    );
    expect(new Set(refusals)).toEqual(
      new Set([
        "Type the weight in grams as a plain number, 0.01 or more, without a unit. The decimal mark is the one your spreadsheet is set to: 212.4 in some, 212,4 in others.",
      ]),
    );
  });

  it("calls a vessel without a name a vessel", () => {
    expect(cellWith(buildRunSheet({ ...usual, vessel: "  " }), "vessel")).toBeDefined();
  });

  it("keeps a short sheet short: no pan zeros and no temperatures unless asked for", () => {
    const words = buildRunSheet(usual).cells.map(({ content }) => String(content ?? ""));
    expect(words.filter((text) => /zero|Room|Cold enough/.test(text))).toEqual([]);
  });

  const bandsOf = ({ cells }: SheetPlan): unknown[] =>
    cells
      .filter(({ style, cell, content }) => style?.includes("Band") && cell.startsWith("A") && content !== undefined)
      .sort((one, other) => rowOf(one.cell) - rowOf(other.cell))
      .map(({ content }) => content);

  it("follows the order of the work, then results, checks, settings, open fire, curves and vessels", () => {
    const plan = buildRunSheet(usual);
    expect(bandsOf(plan)).toEqual([
      ...[
        "SET UP",
        "1 DRYING",
        "2 CHARRING: the fire",
        "2 weighed when cold",
        "3 ASHING: the fire",
        "3 weighed when cold",
        "CAUTIONS",
        "4 AT THE END",
      ],
      ...["RESULTS (shares)", "CHECKS", "SETTINGS", "OPEN FIRE", "CURVES", "VESSELS"],
    ]);
  });

  it.each([
    ["drying", ["SET UP", "1 DRYING", "2 AT THE END", "CAUTIONS", "RESULTS (shares)", "CHECKS", "SETTINGS", "CURVES", "VESSELS"]],
    [
      "charring",
      ["SET UP", "1 DRYING", "2 CHARRING: the fire", "2 weighed when cold", "3 AT THE END", "CAUTIONS", "RESULTS (shares)", "CHECKS", "SETTINGS", "OPEN FIRE", "CURVES", "VESSELS"], // prettier-ignore
    ],
  ] as const)("of %s has these blocks and no others", (kind, names) => {
    expect(bandsOf(buildRunSheet({ ...usual, kind, weighIns: 6 }))).toEqual(names);
  });

  it.each([
    [
      "liquids",
      ["SET UP", "1 DRYING", "2 CHARRING: the fire", "2 weighed when cold", "CAUTIONS", "3 CATCHING, empty", "3 after the fire", "4 AT THE END", "RESULTS (shares)", "CHECKS", "SETTINGS", "CURVES", "VESSELS"], // prettier-ignore
    ],
    [
      "staged",
      ["SET UP", "1 DRYING", "2 STAGES: the fire", "2 weighed when cold", "3 AT THE END", "CAUTIONS", "RESULTS (shares)", "CHECKS", "SETTINGS", "CURVES", "VESSELS"], // prettier-ignore
    ],
    ["balance", ["SET UP", "1 ROUNDS", "2 CORNERS", "3 NOTES", "CAUTIONS", "WHAT IT FINDS (g)", "CHECKS", "CURVES"]],
  ] as const)("of %s has these", (kind, names) => {
    expect(bandsOf(buildRunSheet({ ...usual, kind, replicates: 1, weighIns: 6 }))).toEqual(names);
  });

  it("has as many firings as asked for", () => {
    const count = (label: string, options: Partial<RunSheetOptions>): number =>
      buildRunSheet({ ...usual, ...options }).cells.filter(({ content }) => String(content).startsWith(label)).length;
    expect([count("Firing", {}), count("After firing", {})]).toEqual([5, 5]);
    expect([count("Firing", { charFirings: 1, ashFirings: 4 }), count("After firing", { charFirings: 4, ashFirings: 1 })]).toEqual([5, 5]);
  });

  it("offers vessel materials that each stand a stated temperature for a stated reason, listed at the foot of the sheet", () => {
    const plan = buildRunSheet(usual);
    const box = plan.entryRules.find(({ promptTitle }) => promptTitle === "Vessel made of");
    const names = box?.allow.kind === "words" ? box.allow.words : [];
    expect(names.length).toBeGreaterThan(5);
    // The last is for a vessel of none of them, which nothing is held against.
    expect(names.at(-1)).toBe("none of these");
    for (const name of names.slice(0, -1)) {
      const row = rowOf(cellWith(plan, name) ?? "");
      const [stands, source] = ["B", "C"].map((column) => plan.cells.find(({ cell }) => cell === `${column}${row}`)?.content);
      expect(stands).toEqual(expect.any(Number));
      expect(String(source)).toMatch(/from memory|ISO|ITS|SSINA/i);
    }
  });

  it.each([
    [0.01, "0.00"],
    [0.005, "0.000"],
    [0.0001, "0.0000"],
    [1, "0"],
    [0.2, "0.0"],
  ])("shows masses of a balance that reads to %s g as %s", (readability, format) => {
    const plan = buildRunSheet({ ...usual, readability });
    const vessel = cellWith(plan, "Empty vessel, g")?.replace("A", "C");
    expect(plan.cells.find(({ cell }) => cell === vessel)?.format).toBe(format);
  });

  it("prints the cautions for charring on every sheet that goes beyond drying, and none of them on a drying sheet", () => {
    const said = (kind: RunSheetOptions["kind"]): string =>
      buildRunSheet({ ...usual, kind })
        .cells.filter(({ style }) => style === "runCaution")
        .map(({ content }) => content ?? "")
        .join(" ");
    for (const words of [
      "toxic and flammable",
      "outdoors or under a ducted hood",
      "carbon monoxide alarm",
      "never block its vent",
      "cool closed",
      "chlorinated",
      "peroxides",
    ]) {
      expect(said("charring")).toContain(words);
      expect(said("ashing")).toContain(words);
      expect(said("drying")).not.toContain(words);
    }
    for (const kind of SAMPLE_KINDS)
      expect(said(kind)).toContain("Local codes, fire rules and the makers' instructions come first. If in doubt, ask a qualified person.");
  });

  it.each([
    [{ readability: 0 }, "readability: 0 g is not between 0.000001 and 100 g. Give a number in between."],
    [{ readability: Number.NaN }, "readability: nothing is not between 0.000001 and 100 g. Give a number in between."],
    [{ weighIns: 2.5 }, "weigh-ins: 2.5 is not a whole number. Give one such as 3."],
    [{ weighIns: 7.5 }, "weigh-ins: 7.5 is not a whole number. Give one such as 8."],
    [{ weighIns: 61.5 }, "weigh-ins: 61.5 is not a whole number. Give one such as 60."],
    [{ weighIns: Number.NaN }, "weigh-ins: nothing is not between 3 and 60. Give a number in between."],
    [{ weighIns: 61 }, "weigh-ins: 61 is not between 3 and 60. Give a number in between."],
    [{ replicates: 7 }, "replicates: 7 is not between 1 and 6. Give a number in between."],
    [{ replicates: 0 }, "replicates: 0 is not between 1 and 6. Give a number in between."],
    [{ charFirings: 5 }, "char firings: 5 is not between 1 and 4. Give a number in between."],
    [{ ashFirings: 0 }, "ash firings: 0 is not between 1 and 4. Give a number in between."],
    [{ ashFirings: 1.5 }, "ash firings: 1.5 is not a whole number. Give one such as 2."],
    [{ receivers: 5 }, "receivers: 5 is not between 1 and 4. Give a number in between."],
    [{ kind: "liquids", receivers: 1.5 }, "receivers: 1.5 is not a whole number. Give one such as 2."],
    [{ kind: "staged", stages: 1 }, "stages: 1 is not between 2 and 12. Give a number in between."],
    [{ kind: "salt", formula: "C".repeat(31) }, "formula: a formula of 31 characters is longer than the 30 that fit on the sheet. Shorten it."],
    [{ kind: "staged", stages: 13 }, "stages: 13 is not between 2 and 12. Give a number in between."],
    [{ kind: "balance", replicates: 2 }, "replicates: 2 samples, but a balance check has one check weight a sheet. Give 1."],
    [{ samplesAre: "alike" }, 'samples: "alike" is not one of "repeats", "different".'],
    [{ degrees: "K" }, 'degrees: "K" is not one of "C", "F".'],
    [{ timing: "hours" }, 'timing: "hours" is not one of "clock", "minutes".'],
    [{ intervalMinutes: -30 }, "interval: -30 min is not between 1 and 1440 min. Give a number in between."],
    [{ ovenCelsius: 900 }, "oven temperature: 900 °C is not between 20 and 300 °C. Give a number in between."],
    [{ kind: "frying" }, 'kind of run: "frying" is not one of "drying", "charring", "ashing", "liquids", "staged", "salt", "balance".'],
  ] as const)("refuses %j", (wrong, message) => {
    expect(() => buildRunSheet({ ...usual, ...wrong } as RunSheetOptions)).toThrow(expect.objectContaining({ name: "InputProblem", message }));
  });

  it("refuses a vessel name too long for its box", () => {
    const message = "vessel: a name of 61 characters is longer than the 60 that fit on the sheet. Shorten it.";
    expect(() => buildRunSheet({ ...usual, vessel: "x".repeat(61) })).toThrow(expect.objectContaining({ name: "InputProblem", message }));
  });

  // Version 0.2 had 285 formula cells for three samples, six rounds, char and ash; 250 without ash. Since then a sheet watches whether its
  // formulas were typed over, row by row how samples agree, and the limit line of its firings: 5 and 15 cells more.
  it.each([
    ["drying", 3, 6, 178],
    ["charring", 3, 6, 255],
    ["ashing", 3, 6, 300],
    ["charring", 3, 8, 286],
    ["ashing", 6, 8, 591],
    // The further kinds have none to be held against: as they were made.
    ["liquids", 1, 6, 190],
    ["liquids", 3, 6, 360],
    ["staged", 3, 6, 320],
    ["balance", 1, 6, 110],
  ] as const)(
    "of %s with %s samples and %s rounds has fewer formula cells than %s, about those of version 0.2 where it had the kind",
    (kind, replicates, weighIns, before) => {
      expect(formulaCells(buildRunSheet({ ...usual, kind, replicates, weighIns })).length).toBeLessThan(before);
    },
  );
});
