import { parse, tokenize, tokenTypes, type Token } from "@borgar/fx";
import { everyFunction } from "../../src/functions/catalogue";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { RUN_KINDS, type RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { findCalls } from "../../src/sharing/findCalls";
import { leavesArgumentOut } from "../leavesArgumentOut";
import { cellArea, covers, type CellArea } from "../../src/workbook/cellArea";
import { checkSheetPlan } from "../../src/workbook/checkSheetPlan";
import type { PlannedCell, SheetPlan } from "../../src/workbook/SheetPlan";

const usual: RunSheetOptions = { kind: "ashing", weighIns: 8, intervalMinutes: 30, readability: 0.01, vessel: "lidded steel tin", replicates: 2 };
const every: RunSheetOptions[] = RUN_KINDS.flatMap((kind) =>
  [1, 2, 3, 4, 5, 6].flatMap((replicates) =>
    (replicates === 1 || replicates === 6 ? [3, 8, 60] : [8]).map((weighIns) => ({ ...usual, kind, replicates, weighIns })),
  ),
);
const extras = [{ panZeros: true }, { temperatures: true }, { panZeros: true, temperatures: true }].flatMap((extra) => [
  ...RUN_KINDS.map((kind) => ({ ...usual, ...extra, kind })),
  { ...usual, ...extra, replicates: 1 },
  { ...usual, ...extra, replicates: 6, weighIns: 60 },
]);
const title = ({ kind, replicates, weighIns, panZeros, temperatures }: RunSheetOptions): string =>
  `${kind}, ${replicates} samples, ${weighIns} weigh-ins${panZeros ? ", pan zeros" : ""}${temperatures ? ", temperatures" : ""}`;

/** Built-in functions that Excel 2019, LibreOffice 7.4 and the local workbook's engine all have. */
const BUILT_IN = [
  ...["IF", "AND", "OR", "ISNUMBER", "ISTEXT", "ISERROR", "IFERROR", "INDEX", "MATCH", "COUNT", "COUNTA", "COUNTIF", "SUMPRODUCT"],
  ...["SUM", "MAX", "MIN", "MOD", "ROUND", "ROUNDUP", "INT", "ABS", "SQRT", "LOG10", "AVERAGE", "STDEV", "FIXED", "LEFT", "FIND"],
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

describe.each([...every, ...extras].map((options) => [title(options), options] as const))("buildRunSheet(%s)", (_, options) => {
  const plan = buildRunSheet(options);

  it("gives a plan that a workbook can take", () => {
    expect(() => checkSheetPlan(plan)).not.toThrow();
  });

  it("leaves at most one row blank between two blocks", () => {
    const rows = [...new Set(plan.cells.map(({ cell }) => rowOf(cell)))].sort((one, other) => one - other);
    expect(rows[0]).toBe(1);
    expect(rows.filter((row, index) => row - (rows[index - 1] ?? 0) > 2)).toEqual([]);
  });

  it("writes no cell twice", () => {
    const cells = plan.cells.map(({ cell }) => cell);
    expect(cells.filter((cell, index) => cells.indexOf(cell) !== index)).toEqual([]);
  });

  it("writes cell formulas that parse, of functions that exist everywhere, without dynamic-array references", () => {
    const faulty = formulaCells(plan).flatMap(({ cell, formula }) => {
      const tokens = tokenize(formula);
      parse(tokens);
      return tokens.filter((token) => isOutOfBounds(token)).map(({ value }) => [cell, value]);
    });
    expect(faulty).toEqual([]);
  });

  it("writes cell formulas that a cell can hold: up to 8192 characters (Excel specifications and limits)", () => {
    expect(formulaCells(plan).filter(({ formula }) => formula.length > 8192)).toEqual([]);
  });

  it("calls Retort functions that exist, with as many arguments as they take", () => {
    const calls = formulaCells(plan).flatMap(({ formula }) => findCalls(formula));
    const faulty = calls.filter(({ name, argumentTexts }) => {
      const inputs = Object.values(everyFunction.find((definition) => definition.name === name)?.inputs ?? {});
      const leftOut = inputs.filter((_input, index) => (argumentTexts[index] ?? "") === "");
      return inputs.length === 0 || argumentTexts.length > inputs.length || leftOut.some(({ optional }) => !optional);
    });
    expect(calls.length).toBeGreaterThan(0);
    expect(faulty).toEqual([]);
  });

  it("refers to no cell that stands for nothing: each is a box or calculated", () => {
    const filled = new Map(plan.cells.map((cell) => [cell.cell, cell]));
    const corners = new Set(
      formulaCells(plan).flatMap(({ formula }) =>
        tokenize(formula)
          .filter(({ type }) => type === tokenTypes.REF_RANGE)
          .flatMap(({ value }) => value.replaceAll("$", "").split(":")),
      ),
    );
    const standsForSomething = (corner: string): boolean => {
      const cell = filled.get(corner);
      const isInMaterials = cell?.style === "note" && cell.content !== undefined;
      return cell?.style === "input" || cell?.formula !== undefined || typeof cell?.content === "number" || isInMaterials;
    };
    expect([...corners].filter((corner) => !standsForSomething(corner))).toEqual([]);
  });

  it("puts every entry rule on boxes only, and a rule on every box but the notes and the legend", () => {
    const notes = cellWith(plan, "Notes")?.replace(/\d+/, "") ?? "";
    const boxes = plan.cells.filter(({ cell, style }) => style === "input" && cell.replace(/\d+/, "") !== notes && cell !== "A3");
    const areas = plan.entryRules.map(({ range }) => cellArea(range));
    const isRuled = (cell: string): boolean => areas.some((area) => area !== undefined && isWithin(area, cell));
    expect(boxes.filter(({ cell }) => !isRuled(cell))).toEqual([]);
    const ruledCells = areas.reduce((sum, area) => sum + (area?.rows ?? 0) * (area?.columns ?? 0), 0);
    expect(ruledCells).toBe(boxes.length);
  });

  it("asks for the inputs in the order of the work, top to bottom", () => {
    const rows = plan.entryRules.map(({ range }) => rowOf(range.split(":")[0] as string));
    expect(rows).toEqual([...rows].sort((one, other) => one - other));
    expect(plan.startAt).toBe(plan.entryRules[0]?.range);
  });

  it("draws one series a sample, over the weigh-ins and nothing else", () => {
    expect(plan.chart?.series.map(({ name }) => name)).toEqual(Array.from({ length: options.replicates }, (__, index) => `Sample ${index + 1}`));
    for (const { x, y } of plan.chart?.series ?? []) {
      expect([cellArea(x)?.rows, cellArea(y)?.rows]).toEqual([options.weighIns, options.weighIns]);
    }
    const over = cellArea(plan.chart?.over ?? "");
    expect(over).toBeDefined();
    expect(plan.cells.filter(({ cell }) => over !== undefined && isWithin(over, cell))).toEqual([]);
  });

  it("says above every column right of the printed ones what it is for, in the style of a note", () => {
    const wide = cellArea(plan.cells.filter(({ style }) => style === "caution").at(-1)?.cell ?? "")?.column ?? Infinity;
    const isRight = ({ cell }: PlannedCell): boolean => (cellArea(cell)?.column ?? 0) > wide;
    const texts = plan.cells.filter((cell) => isRight(cell) && cell.content !== undefined);
    const headings = texts.filter(({ content }) => String(content).startsWith("Working: "));
    expect(headings.map(({ content, style }) => [content, style])).toEqual([
      ["Working: for results and checks", "note"],
      ...Array.from({ length: options.replicates }, () => ["Working: for chart and table", "note"]),
    ]);
    expect(headings.map(({ cell }) => cellArea(cell)?.column)).toEqual(headings.map(() => wide + 1));
    // Text that runs on beyond the last column makes the printed page wider.
    const room = plan.columnWidths.slice(wide + 1).reduce((sum, width) => sum + width, 0);
    expect(Math.max(...headings.map(({ content }) => String(content).length))).toBeLessThanOrEqual(room);
    expect([...new Set(texts.filter((cell) => !headings.includes(cell)).map(({ style }) => style))]).toEqual(["noteHeading"]);
  });

  it("is wide enough for its labels, its criterion and its verdicts", () => {
    const width = (cell: string): number => plan.columnWidths[cellArea(cell)?.column ?? -1] ?? 0;
    const cut = plan.cells.filter(
      ({ cell, content, style }) => style === "label" && cell.startsWith("A") && (String(content).length * 8) / 7 > width(cell),
    );
    expect(cut).toEqual([]);
    expect(width("B1")).toBeGreaterThanOrEqual(16);
    // A label of a column heading wraps, but only between words.
    const split = plan.cells.filter(
      ({ cell, content, style }) =>
        (style === "columnHeading" || style === "noteHeading") &&
        String(content)
          .split(" ")
          .some((word) => word.length > width(cell)),
    );
    expect(split).toEqual([]);
    const steady = cellWith(plan, "Steady yet") ?? "";
    expect(width(steady)).toBeGreaterThanOrEqual("weight is not a number".length);
    const cold = cellWith(plan, "Cold enough");
    expect(cold === undefined || width(cold) >= "too warm: reads light".length).toBe(true);
    for (let sample = 1; sample <= options.replicates; sample++)
      expect(width(cellWith(plan, `Working, sample ${sample}`) ?? "")).toBeGreaterThanOrEqual("Working,".length);
    expect(width("B1")).toBeGreaterThanOrEqual("34.8012 % ± 0.0010 %".length);
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
    const kinds = RUN_KINDS.flatMap((kind) => [1, 2, 3, 4, 5, 6].map((replicates) => ({ ...usual, kind, replicates, weighIns: 3 })));
    const plans = kinds.flatMap((options) =>
      [true, false].flatMap((panZeros) => [true, false].map((temperatures) => buildRunSheet({ ...options, panZeros, temperatures }))),
    );
    const formulas = plans.flatMap(formulaCells).map(({ formula }) => formula);
    expect(plans).toHaveLength(72);
    expect(new Set(formulas.flatMap(findCalls).map(({ name }) => name))).toContain("READING.U");
    expect(formulas.filter(leavesArgumentOut)).toEqual([]);
  });

  it("prefills what the options say and leaves the rest to be filled in", () => {
    const plan = buildRunSheet({ ...usual, ovenCelsius: 120 });
    const beside = (label: string): unknown => plan.cells.find(({ cell }) => cell === cellWith(plan, label)?.replace("A", "B"))?.content;
    expect(beside("Vessel")).toBe("lidded steel tin");
    expect(beside("Balance readability (g)")).toBe(0.01);
    expect(beside("Planned interval (min)")).toBe(30);
    expect(beside("Oven temperature (°C)")).toBe(120);
    expect(["Date", "Operator", "Sample"].map(beside)).toEqual([undefined, undefined, undefined]);
  });

  it("says of a refused weight that the decimal mark is the spreadsheet's own", () => {
    const { entryRules } = buildRunSheet(usual);
    const refusals = ["Empty vessel", "Vessel + sample"].map((wanted) => entryRules.find(({ promptTitle }) => promptTitle === wanted)?.refusal);
    expect(refusals).toEqual(
      refusals.map(
        () =>
          "Type the weight in grams as a plain number, 0.01 or more, without a unit. The decimal mark is the one your spreadsheet is set to: 212.4 in some, 212,4 in others.",
      ),
    );
  });

  it("prompts for the sample's temperature with the published figure as the case it was measured on", () => {
    const { entryRules } = buildRunSheet({ ...usual, temperatures: true });
    expect(entryRules.find(({ promptTitle }) => promptTitle === "Sample when weighed")?.prompt).toBe(
      "In degrees Celsius, held near the vessel. A warm vessel reads light; by how much, yours alone can tell. Published case: a 17 g porcelain crucible, up to 0.19 mg a degree (Blade, Anal. Chem.). Only flagged.",
    );
  });

  it("calls a vessel without a name a vessel", () => {
    expect(cellWith(buildRunSheet({ ...usual, vessel: "  " }), "vessel")).toBeDefined();
  });

  const headingsOf = (plan: SheetPlan): unknown[] => {
    const row = rowOf(cellWith(plan, "Weigh-in") ?? "");
    return plan.cells.filter(({ cell, style }) => rowOf(cell) === row && style === "columnHeading").map(({ content }) => content);
  };

  it("has every extra column in the order of the work once it is asked for", () => {
    expect(headingsOf(buildRunSheet({ ...usual, panZeros: true, temperatures: true })).slice(0, 13)).toEqual([
      "Weigh-in",
      "Clock",
      "Elapsed (min)",
      "Pan zero before (g)",
      "Vessel + sample (g)",
      "Pan zero after (g)",
      "Room (°C)",
      "Sample when weighed (°C)",
      "Sample, drift-corrected (g)",
      "Change since last (g)",
      "Steady yet",
      "Cold enough",
      "Notes",
    ]);
  });

  it("keeps a short sheet short: no pan zeros and no temperatures unless asked for", () => {
    const words = buildRunSheet(usual).cells.map(({ content }) => String(content ?? ""));
    expect(words.filter((text) => /zero|drift|Room|Cold enough|when weighed/.test(text))).toEqual([]);
  });

  it("has the results above the checks and the samples, and states the coverage factor in their heading", () => {
    const plan = buildRunSheet(usual);
    const rows = ["Results, each with its ± standard uncertainty (k = 1)", "Checks", "Replicates", "Weigh-in", "Vessel materials"].map((text) =>
      rowOf(cellWith(plan, text) ?? "0"),
    );
    expect(rows[0]).toBeGreaterThan(0);
    expect(rows).toEqual([...rows].sort((one, other) => one - other));
    expect((rows[1] ?? 0) - (rows[0] ?? 0)).toBeLessThanOrEqual(16);
  });

  it("offers vessel materials that each stand a stated temperature for a stated reason, listed at the foot of the sheet", () => {
    const plan = buildRunSheet(usual);
    const box = plan.entryRules.find(({ promptTitle }) => promptTitle === "Vessel material");
    const names = box?.allow.kind === "words" ? box.allow.words : [];
    expect(names.length).toBeGreaterThan(5);
    for (const name of names) {
      const row = rowOf(cellWith(plan, name) ?? "");
      const [stands, source] = ["B", "C"].map((column) => plan.cells.find(({ cell }) => cell === `${column}${row}`)?.content);
      expect(stands).toEqual(expect.any(Number));
      expect(String(source)).toMatch(/from memory|ISO|ITS|SSINA/i);
    }
  });

  it("has the weigh-in table's own column names in their order", () => {
    expect(headingsOf(buildRunSheet(usual)).slice(0, 8)).toEqual([
      "Weigh-in",
      "Clock",
      "Elapsed (min)",
      "Vessel + sample (g)",
      "Sample (g)",
      "Change since last (g)",
      "Steady yet",
      "Notes",
    ]);
  });

  it.each([
    [0.01, "0.00"],
    [0.005, "0.000"],
    [0.0001, "0.0000"],
    [1, "0"],
    [0.2, "0.0"],
  ])("shows masses of a balance that reads to %s g as %s", (readability, format) => {
    const plan = buildRunSheet({ ...usual, readability });
    const vessel = cellWith(plan, "Empty vessel (g)")?.replace("A", "B");
    expect(plan.cells.find(({ cell }) => cell === vessel)?.format).toBe(format);
  });

  it("prints the cautions for charring on every sheet that goes beyond drying, and none of them on a drying sheet", () => {
    const said = (kind: RunSheetOptions["kind"]): string =>
      buildRunSheet({ ...usual, kind })
        .cells.filter(({ style }) => style === "caution")
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
    for (const kind of RUN_KINDS)
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
    [{ intervalMinutes: -30 }, "interval: -30 min is not between 1 and 1440 min. Give a number in between."],
    [{ ovenCelsius: 900 }, "oven temperature: 900 °C is not between 20 and 300 °C. Give a number in between."],
    [{ kind: "frying" }, 'kind of run: "frying" is not one of "drying", "charring", "ashing".'],
  ] as const)("refuses %j", (wrong, message) => {
    expect(() => buildRunSheet({ ...usual, ...wrong } as RunSheetOptions)).toThrow(expect.objectContaining({ name: "InputProblem", message }));
  });

  it("refuses a vessel name too long for its box", () => {
    const message = "vessel: a name of 61 characters is longer than the 60 that fit on the sheet. Shorten it.";
    expect(() => buildRunSheet({ ...usual, vessel: "x".repeat(61) })).toThrow(expect.objectContaining({ name: "InputProblem", message }));
  });
});
