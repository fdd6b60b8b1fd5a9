import { everyFunction } from "../../../src/functions/catalogue";
import { sourcesOf } from "../../../src/sharing/plain/change/precedents";
import { callsOurs } from "../../../src/sharing/plain/writing/named";
import { formulaTree, type FormulaTree } from "../../../src/sharing/plain/formula/formulaTree";
import { NO_VARIABLES } from "../../../src/sharing/plain/writing/Scope";
import { plainSheets, type PlainSheets } from "../../../src/sharing/plain/plainSheets";
import type { CellReading } from "../../../src/workbook/Workbook";

// Excel takes 64 levels of functions within one another (Excel specifications and limits).
const LEVELS = 60;

const cell = (at: string, value: number, formula = ""): CellReading => ({
  ...{ cell: at, formula, value, shown: String(value), error: "", message: "", spill: "" },
});

const plainOf = (formula: string, options = {}): PlainSheets =>
  plainSheets(
    { sheets: [{ sheet: "Run", range: "A1:D1", rows: [[cell("A1", 0.9), cell("B1", 0.8), cell("C1", 0.7), cell("D1", 0.4, formula)]] }] },
    { date: "2027-01-15", ...options },
  );

const nested = (levels: number, around: (inner: string) => string, start = "A1"): string =>
  `=${Array.from({ length: levels }).reduce<string>((inner) => around(inner), start)}`;

/** How often forms were written meanwhile; given up, as a failure, above what is allowed. */
function formsWritten(most: number, work: () => void): number {
  let count = 0;
  const counted =
    (form: Form): Form =>
    (...given) => {
      if (++count > most) throw new Error(`More than ${most} forms were written`);
      return form(...given);
    };
  const restore = everyFunction.flatMap((one) => {
    const forms = one as unknown as Partial<Record<"inCells" | "inManyCells", Form>>;
    return (["inCells", "inManyCells"] as const).flatMap((name) => {
      const form = forms[name];
      if (form === undefined) return [];
      forms[name] = counted(form);
      return [() => void (forms[name] = form)];
    });
  });
  try {
    work();
  } finally {
    for (const one of restore) one();
  }
  return count;
}

type Form = (...given: readonly unknown[]) => unknown;

const NESTS: Readonly<Record<string, (inner: string) => string>> = {
  "in its one argument": (inner) => `RETORT.AIRLEFT(${inner})`,
  "in the last of several": (inner) => `RETORT.MOISTURE.WET(A1,B1,${inner})`,
  "behind IF and arithmetic": (inner) => `IF(A1>1,2,RETORT.AIRLEFT(1+${inner}))`,
  "in a built-in function": (inner) => `SUM(RETORT.AIRLEFT(${inner}),1)`,
  "as a comparison": (inner) => `RETORT.AIRLEFT(RETORT.AIRLEFT(${inner})>1)`,
  "behind @": (inner) => `@RETORT.AIRLEFT(${inner})`,
  "of two functions": (inner) => `RETORT.MOISTURE.WET(A1,B1,RETORT.AIRLEFT(${inner}))`,
  "in a variable used twice": (inner) => `LET(x,${inner},RETORT.AIRLEFT(x+x))`,
  "in a LAMBDA called on the spot": (inner) => `LAMBDA(x,RETORT.AIRLEFT(x+x))(${inner})`,
  "of a table": (inner) => `INDEX(RETORT.PROXIMATE(A1,B1,C1,${inner},A1),2,2)`,
};

describe.each([{ newerFunctions: false }, { newerFunctions: true }])("calls within calls, $newerFunctions", (options) => {
  it.each(Object.entries(NESTS))("%s are each written a few times, however deep", (_, around) => {
    let found: PlainSheets | undefined;
    const count = formsWritten(16 * LEVELS, () => (found = plainOf(nested(LEVELS, around), options)));
    expect(count).toBeGreaterThan(0);
    // A heading and a form for each level, of a table the heading, its two columns and the argument: little that no cell asks for.
    const cells = found?.workings?.cells.length ?? 0;
    expect(cells).toBeLessThanOrEqual((around("").includes("PROXIMATE") ? 20 : 4) * LEVELS);
    expect(found?.cells[0]?.kind).toBe("plain");
  });
});

it.each(everyFunction.filter(({ inCells, inManyCells }) => inCells !== undefined || inManyCells !== undefined).map(({ name }) => name))(
  "%s within itself is written a few times in each of its arguments, however deep",
  (name) => {
    const inputs = Object.entries(everyFunction.find((one) => one.name === name)?.inputs ?? {});
    const levels = 24;
    inputs.forEach((_, at) => {
      const around = (inner: string): string => `RETORT.${name}(${inputs.map((__, index) => (index === at ? inner : "A1")).join(",")})`;
      let found: PlainSheets | undefined;
      formsWritten(16 * levels, () => (found = plainOf(nested(levels, around))));
      expect(found?.cells).toHaveLength(1);
    });
  },
);

it("what no cell holds is fixed in words", () => {
  const [over] = plainOf(nested(LEVELS, (inner) => `RETORT.AIRLEFT(${inner})`, "ROW()")).cells;
  expect(over).toMatchObject({ kind: "fixed", why: "tooLong" });
  const [twice] = plainOf(nested(40, (inner) => `LET(x,${inner},x+x)`, "RETORT.AIRLEFT(A1)")).cells;
  expect(twice).toMatchObject({ kind: "fixed", why: "tooLong" });
});

it("alike arguments have one cell, but each RAND() is drawn by itself", () => {
  const contents = (formula: string): string[] => plainOf(formula).workings?.cells.map(({ content }) => content) ?? [];
  expect(contents("=RETORT.AIRLEFT(RETORT.AIRLEFT(A1))/RETORT.AIRLEFT(RETORT.AIRLEFT(A1))")).toHaveLength(2);
  expect(contents("=RETORT.AIRLEFT(RAND())-RETORT.AIRLEFT(RAND())").filter((one) => one === "=RAND()")).toHaveLength(2);
});

describe("names of names", () => {
  const LONGEST = 40;
  const asking = (): { readonly nameOf: (name: string) => string | undefined; readonly times: () => number } => {
    let times = 0;
    const nameOf = (name: string): string | undefined => {
      if (++times > 10 * LONGEST) throw new Error("Names are looked into again and again");
      const level = Number(/^Level_(\d+)$/i.exec(name)?.[1] ?? NaN);
      return level === 0 ? "=Run!$A$1" : level > 0 ? `=Level_${level - 1}+Level_${level - 1}` : undefined;
    };
    return { nameOf, times: () => times };
  };
  const around = (nameOf: (name: string) => string | undefined) => ({
    ...{ sheet: "Run", cell: "D1", area: "D1", nameOf, tableOf: () => undefined, spillOf: () => undefined },
  });

  it("are each followed once to their cells", () => {
    const { nameOf } = asking();
    const { precedents, isUnseen } = sourcesOf(`=Level_${LONGEST}`, around(nameOf), ["Run"]);
    expect(isUnseen).toBe(false);
    expect(precedents).toEqual([{ sheet: "Run", area: { row: 0, column: 0, rows: 1, columns: 1 } }]);
  });

  it("are each asked once whether they call a function of ours", () => {
    const { nameOf } = asking();
    const tree = formulaTree(`=Level_${LONGEST}`) as FormulaTree;
    const scope = { tree, place: around(nameOf), options: {}, variables: NO_VARIABLES, isSingle: false, isOnEach: true, isQualified: false };
    expect(callsOurs(scope)).toBe(false);
  });

  it("of one name on two sheets are two", () => {
    const nameOf = (_: string, sheet: string): string => (sheet === "Two" ? "=Two!$B$2" : "=Two!Rate+Run!$A$1");
    const { precedents } = sourcesOf("=Rate", around(nameOf as (name: string) => string), ["Run", "Two"]);
    expect(precedents.map(({ sheet }) => sheet).sort()).toEqual(["Run", "Two"]);
  });
});
