import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem, type Answer } from "../../src/cells/CellProblem";
import { functionsMetadata } from "../../src/cells/metadata";
import { everyFunction } from "../../src/functions/catalogue";
import { takesRanges, type CellFunction } from "../../src/functions/cellFunction";
import { functionPage } from "../../src/help/functionPage";
import { escaped } from "../../src/help/markup";
import { TARED } from "../../src/inputs/kinds/weighings";
import { blankCells, type BlankCellRule } from "./blankCells";
import { functionNamed, literalArguments } from "./call";

/** How a blank cell, or nothing at all, is handed over by one host or another. */
const BLANKS: readonly unknown[] = [undefined, null, "", "   ", [[null]], [[""]], [["  "]], [[undefined]]];
const ZEROS: readonly unknown[] = [0, [[0]], -0];

/** What the reference page says of each rule. */
const ON_THE_PAGE: Readonly<Record<BlankCellRule, string>> = {
  missing: "Blank or 0 is refused as missing.",
  "0 is 0": "0 is 0. So is a blank cell where the spreadsheet hands it over as 0, which most do; where it does not, it is refused as missing.",
  "0 is 0, alone it is an empty row":
    "0 is 0. So is a blank cell where the spreadsheet hands it over as 0, which most do; where it does not, it is refused as missing.",
  "left out": "Blank or 0 is the same as left out.",
  "0 is 0, else left out":
    "0 is 0. So is a blank cell where the spreadsheet hands it over as 0, which most do; where it does not, it is the same as left out.",
  "0 is refused": 'A 0, and a blank cell handed over as 0, is refused: weigh it, type "tared", or leave the argument out.',
  "in words": "A blank cell is answered in words, and so is a 0 where 0 cannot be.",
  "column of weighings": "Blanks at the end are readings not yet made; one in between is refused with its row. A 0 is a blank.",
  "column of times":
    "Blanks at the end are readings not yet made; one in between is refused with its row. 0 is a time in the first row; below it, a blank.",
  "column of times, blank as left out":
    "Blanks at the end are readings not yet made; one in between is refused with its row. 0 is a time in the first row; below it, a blank. All blank or 0 is the same as left out.",
  "column of points":
    "Blanks at the end are readings not yet made; one in between is refused with its row. 0 is 0, and so is a blank cell that the spreadsheet hands over as 0; 0 beside 0 at the end is a blank row.",
  "column of rates": "Blanks at the end are readings not yet made; one in between is refused with its row. A 0 is a blank.",
  "column of names": "Blanks at the end are readings not yet made; one in between is refused with its row. A 0 is a blank.",
  "column of holds": "A blank or a 0 is none.",
  "column of results":
    "Blanks at the end are readings not yet made; one in between is refused with its row. A 0 is refused until zeros says what it is.",
};

/** Calls that are answered, where the first example of a function does not give the input, or cannot do without it. */
const CALLS: Readonly<Record<string, string>> = {
  "VAPOUR.COMPOSITION feedHydrogen": "=RETORT.VAPOUR.COMPOSITION(0.5, 0.06, 0.42, 0.8, 0, 0.12, 0.3)",
  "VAPOUR.COMPOSITION feedOxygen": "=RETORT.VAPOUR.COMPOSITION(0.5, 0.06, 0.42, 0.8, 0.04, 0, 0.3)",
  "BURN.COMPARE formula": "=RETORT.BURN.COMPARE(25, 35, 28, 25.125, , 0.5, 0.06, 0.42)",
  "BURN.COMPARE carbon": '=RETORT.BURN.COMPARE(25, 35, 28, 25.125, "C6H10O5")',
  "ZERODRIFT timeBefore": "=RETORT.ZERODRIFT(31.5, 0.002, 0.006, 0, 2, 5)",
  "BASIS.CONVERT moistureReceived": '=RETORT.BASIS.CONVERT(0.45, "dry", "ash-free", , , 0.1)',
  "BASIS.CONVERT ash": '=RETORT.BASIS.CONVERT(0.45, "as received", "dry", 0.1)',
  "DRYINGHEAT vesselMass": '=RETORT.DRYINGHEAT(6, 4, 20, 105, "")',
  "HEATINGVALUE.HIGHER oxygen": "=RETORT.HEATINGVALUE.HIGHER(0.9, 0.04, 0, 0.01, 0.01, 0.04)",
  "SEVERITY minutes": "=RETORT.SEVERITY(450, 30, 100, 10)",
  "SEVERITY from": "=RETORT.SEVERITY(450, 30, 100, 10)",
  "SCHEDULE.TIME rates": '=RETORT.SCHEDULE.TIME({20; 105; 600; 700}, {5; 3; 2}, {120; 60; 10}, "per minute")',
  "CONSTANTWEIGHT times": "=RETORT.CONSTANTWEIGHT({10; 9.2; 8.95; 8.9; 8.893}, , , {0; 20; 40; 60; 80})",
  "CONSTANTWEIGHT.STEPS limit": "=RETORT.CONSTANTWEIGHT.STEPS({10; 9.2; 8.95; 8.9; 8.893}, 0.002)",
  "CONSTANTWEIGHT.STEPS times": "=RETORT.CONSTANTWEIGHT.STEPS({10; 9.2; 8.95; 8.9; 8.893}, , , {0; 20; 40; 60; 80})",
};

const every = everyFunction.flatMap((definition) =>
  Object.keys(definition.inputs).map((input, index) => ({ definition, input, index, rule: blankCells[definition.name]?.[input] })),
);
const rowsOf = (...rules: readonly BlankCellRule[]): [title: string, row: Row][] =>
  every.filter(({ rule }) => rule !== undefined && rules.includes(rule)).map((row) => [`${row.definition.name}(${row.input})`, row]);

type Row = (typeof every)[number];

/** The arguments of an answered call, this input as given. */
function argumentsWith({ definition, input, index }: Row, given: unknown): unknown[] {
  const cell = CALLS[`${definition.name} ${input}`] ?? (definition.examples[0]?.cell as string);
  const example = literalArguments(cell).map((argument) => (argument === "" ? null : argument));
  return Object.keys(definition.inputs).map((_, place) => (place === index ? given : (example[place] ?? null)));
}

const goodFor = (row: Row): unknown => argumentsWith(row, null).length > 0 && literalOf(row);
const literalOf = ({ definition, input, index }: Row): unknown =>
  literalArguments(CALLS[`${definition.name} ${input}`] ?? (definition.examples[0]?.cell as string))[index] ?? null;

type Answered = Answer | Answer[][];

const single = (answer: Answered): Answered =>
  Array.isArray(answer) && answer.length === 1 && answer[0]?.length === 1 ? (answer[0][0] as Answer) : answer;
const answered = (row: Row, given: unknown): Answered => single(callCellFunction(row.definition, argumentsWith(row, given)));
const sentenceOf = (answer: Answered): string => (answer instanceof CellProblem ? answer.message : typeof answer === "string" ? answer : "");

/** What the second row says when the input is a range of a good value and this one; all else serves both rows. */
function secondRow(row: Row, given: unknown): Answer | undefined {
  const answer = callCellFunction(row.definition, argumentsWith(row, [[goodFor(row)], [given]]));
  return Array.isArray(answer) ? answer[1]?.[0] : answer;
}

/** The same words, and figures that differ by rounding alone; where 0 has words of its own (a closed room never clears), they stand for a figure. */
function expectSameTable(table: readonly (readonly Answer[])[], other: Answered): void {
  expect(Array.isArray(other) && other.map((cells) => cells.length)).toEqual(table.map((cells) => cells.length));
  const pairs = table.flat().map((cell, index) => [cell, (other as Answer[][]).flat()[index]] as const);
  const figures = pairs.filter((pair): pair is readonly [number, number] => pair.every((cell) => typeof cell === "number"));
  expect(figures.length).toBeGreaterThan(0);
  for (const [one, least] of figures) expect(Math.abs(one - least)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(one)));
  for (const [one, least] of pairs) if (typeof one === typeof least && typeof one !== "number") expect(least).toEqual(one);
}

const IN_A_RANGE: readonly unknown[] = [null, "", "  "];
const inRanges = ({ definition }: Row): boolean => takesRanges(definition);

test("every input of every function stands in the table, and nothing else", () => {
  const inTable = Object.entries(blankCells).flatMap(([name, inputs]) => Object.keys(inputs).map((input) => `${name} ${input}`));
  expect(inTable.sort()).toEqual(every.map(({ definition, input }) => `${definition.name} ${input}`).sort());
});

test.each(every.map((row) => [`${row.definition.name}(${row.input})`, row] as const))("the page of %s says its rule", (_title, row) => {
  const inputs = functionPage(row.definition).split("<tbody>")[1] ?? "";
  const line = inputs.split("\n").find((one) => one.includes(`<td><code>${row.input}</code></td>`)) ?? "";
  expect(line.endsWith(`<td>${escaped(ON_THE_PAGE[row.rule as BlankCellRule])}</td></tr>`)).toBe(true);
});

describe("needed, and 0 cannot be meant", () => {
  test.each(rowsOf("missing"))("%s: a blank and a 0 are refused as missing", (_title, row) => {
    for (const given of [...BLANKS, ...ZEROS])
      expect(sentenceOf(answered(row, given))).toMatch(new RegExp(`^${row.input}: nothing here \\(blank or 0\\)\\.`));
    if (inRanges(row)) for (const given of [...IN_A_RANGE, 0]) expect(secondRow(row, given)).toBe("");
  });
});

describe("needed, and 0 is a value", () => {
  test.each(rowsOf("0 is 0", "0 is 0, alone it is an empty row"))("%s: 0 is 0, and what is told from it is refused as missing", (_title, row) => {
    for (const given of BLANKS) expect(sentenceOf(answered(row, given))).toMatch(new RegExp(`^${row.input}: nothing here \\(blank\\)\\.`));
    // AIRDENSITY has no formula that reaches 0 °C and names the temperature.
    const [zero, least] = [answered(row, 0), answered(row, 1e-13)];
    if (typeof zero === "number") expect(zero).toBeCloseTo(least as number, 10);
    // A text, or a table.
    else if (typeof zero === "string") expect(zero).toBe(least);
    else if (Array.isArray(zero)) expectSameTable(zero, least);
    else expect(sentenceOf(zero)).toMatch(new RegExp(`^${row.input}: 0 .*is outside`));
    for (const given of ZEROS) expect(answered(row, given)).toEqual(zero);
    if (!inRanges(row)) return;
    for (const given of IN_A_RANGE) expect(secondRow(row, given)).toBe("");
    expect(secondRow(row, 0)).toEqual(row.rule === "0 is 0" ? zero : "");
  });
});

describe("optional", () => {
  test.each(rowsOf("left out"))("%s: a blank and a 0 are the same as left out", (_title, row) => {
    const leftOut = answered(row, undefined);
    expect(leftOut).not.toBeInstanceOf(CellProblem);
    for (const given of [...BLANKS, ...ZEROS]) expect(answered(row, given)).toEqual(leftOut);
    if (inRanges(row)) for (const given of [...IN_A_RANGE, 0]) expect(secondRow(row, given)).toEqual(leftOut);
  });

  test.each(rowsOf("0 is 0, else left out"))("%s: 0 is 0, and what is told from it is the same as left out", (_title, row) => {
    const leftOut = answered(row, undefined);
    for (const given of BLANKS) expect(answered(row, given)).toEqual(leftOut);
    for (const given of ZEROS) expect(answered(row, given)).toEqual(answered(row, 0));
    expect(answered(row, 0)).not.toBeInstanceOf(CellProblem);
    expect(answered(row, 0)).not.toEqual(leftOut);
  });

  test.each(rowsOf("0 is refused"))("%s: a 0 is refused and says what to type; nothing at all is the same as tared", (_title, row) => {
    const net = answered({ ...row, input: "net" }, undefined);
    expect(net).not.toBeInstanceOf(CellProblem);
    for (const given of BLANKS) expect(answered({ ...row, input: "net" }, given)).toEqual(net);
    expect(answered({ ...row, input: "net" }, TARED)).toEqual(net);
    for (const given of ZEROS)
      expect(sentenceOf(answered(row, given))).toBe(
        'vessel: nothing here (blank or 0). Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
      );
  });
});

describe("in words", () => {
  test.each(rowsOf("in words"))("%s: a blank, and a 0 where 0 cannot be, are answered in words", (_title, row) => {
    for (const given of [...BLANKS, 0, [[0]]]) {
      const answer = answered(row, given);
      if (answer instanceof CellProblem || !(row.input === "value" && (given === 0 || Array.isArray(given)))) {
        expect(typeof answer).toBe("string");
        expect(answer).toMatch(new RegExp(`^${row.input}: `));
      }
    }
    expect(answered({ ...row, index: 1, input: "value" }, 0)).toMatch(/^value: /);
  });
});

// Of two columns that belong together the one of another length may be named.
const PARTNERS = "weights|temperatures|references";

describe("columns", () => {
  const column = (row: Row): unknown[][] => goodFor(row) as unknown[][];
  const blanked = (row: Row, from: number, to: number, blank: unknown): unknown[][] =>
    column(row).map((cell, index) => (index >= from && index < to ? [blank] : cell));

  test.each(rowsOf("column of weighings", "column of times", "column of results", "column of points"))(
    "%s: all blank is missing, a gap is refused",
    (_title, row) => {
      const zeroIsBlank = row.rule === "column of weighings";
      for (const blank of [null, "", "  ", ...(zeroIsBlank ? [0] : [])]) {
        expect(sentenceOf(answered(row, blanked(row, 0, 99, blank)))).toMatch(new RegExp(`^${row.input}: nothing here`));
        expect(sentenceOf(answered(row, blanked(row, 1, 2, blank)))).toMatch(new RegExp(`^${row.input}: row 2 is blank`));
      }
      for (const given of [undefined, null, "", 0]) expect(sentenceOf(answered(row, given))).toMatch(new RegExp(`^(${row.input}|${PARTNERS}): `));
    },
  );

  test.each(rowsOf("column of rates", "column of names"))("%s: all blank is missing, and a gap is refused below the first row", (_title, row) => {
    for (const blank of [null, "", "  ", 0]) {
      expect(sentenceOf(answered(row, blanked(row, 0, 99, blank)))).toMatch(new RegExp(`^${row.input}: nothing here`));
      expect(sentenceOf(answered(row, blanked(row, 1, 2, blank)))).toMatch(new RegExp(`^${row.input}: row 2 is blank`));
    }
  });

  test.each(rowsOf("column of holds"))("%s: a blank and a 0 are none, also all of them", (_title, row) => {
    const none = answered(row, blanked(row, 0, 99, null));
    expect(none).toEqual(expect.any(Number));
    for (const blank of ["", "  ", 0]) {
      expect(answered(row, blanked(row, 0, 99, blank))).toBe(none);
      expect(answered(row, blanked(row, 0, 1, blank))).toBe(answered(row, blanked(row, 0, 1, null)));
    }
    for (const given of [undefined, null, "", 0]) expect(answered(row, given)).toBe(none);
  });

  test.each(rowsOf("column of times, blank as left out"))("%s: all blank or 0 is the same as left out, a gap is refused", (_title, row) => {
    const leftOut = answered(row, undefined);
    expect(leftOut).not.toBeInstanceOf(CellProblem);
    for (const blank of [null, "", "  ", 0]) {
      expect(answered(row, blanked(row, 0, 99, blank))).toEqual(leftOut);
      expect(sentenceOf(answered(row, blanked(row, 1, 2, blank)))).toBe("times: row 2 is blank. Fill the gap or remove the row.");
    }
  });
});

test.each(every.map((row) => [`${row.definition.name}(${row.input})`, row] as const))("%s: FALSE is no blank", (_title, row) => {
  const { input, index, definition } = row;
  if (definition.inputs[input]?.called === "TRUE or FALSE") return expect(answered(row, false)).toEqual(answered(row, undefined));
  const given = definition.inputs[input]?.shape === "column" ? [[false]] : false;
  return expect(sentenceOf(answered({ ...row, index }, given))).toMatch(
    new RegExp(`^${input}: (row 1 holds )?FALSE is not|^${input}: row 1 holds FALSE`),
  );
});

describe("functions.json says it where the line has room", () => {
  interface Metadata {
    readonly functions: readonly { readonly id: string; readonly parameters: readonly { readonly name: string; readonly description: string }[] }[];
  }
  const described = new Map(
    (functionsMetadata(everyFunction, (name) => name) as Metadata).functions.flatMap(({ id, parameters }) =>
      parameters.map(({ name, description }) => [`${id} ${name}`, description]),
    ),
  );
  const lineOf = ({ definition, input }: Pick<Row, "definition" | "input">): string => described.get(`${definition.name} ${input}`) ?? "";

  test.each(rowsOf("left out", "column of times, blank as left out"))("%s: Left out, blank or 0", (_title, row) => {
    expect(lineOf(row)).toMatch(/\. Left out, blank or 0: [^.]+(\.\d+[^.]*)*\.$/);
  });
  test.each(rowsOf("0 is 0, else left out"))("%s: Left out, and 0 counts", (_title, row) =>
    expect(lineOf(row)).toMatch(/\. Left out: .+\. 0 counts\.$/),
  );
  test.each(rowsOf("0 is refused"))("%s: Left out, and 0 is refused", (_title, row) =>
    expect(lineOf(row)).toMatch(/\. Left out: .+; 0 is refused\.$/),
  );
  test.each(rowsOf("0 is 0"))("%s: 0 counts", (_title, row) => {
    const line = lineOf(row);
    expect(line.endsWith(" 0 counts; a blank cell may read as 0.") || line.length > 90).toBe(true);
  });

  test("no description says by hand what a blank does", () => {
    const byHand = every.filter(({ definition, input }) => /left out|blank|\b0 counts/i.test(definition.inputs[input]?.about ?? ""));
    expect(byHand.map(({ definition, input }) => `${definition.name} ${input}`)).toEqual(["TYPICALRANGE value"]);
  });
});

test("a function that is asked for by name is the one in the catalogue", () => {
  for (const name of Object.keys(blankCells)) expect((functionNamed(name) satisfies CellFunction).name).toBe(name);
});
