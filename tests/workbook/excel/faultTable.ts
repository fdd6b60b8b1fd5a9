import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { shareAsValues } from "../../../src/sharing/shareAsValues";
import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import type { ExcelHost } from "../../host/ExcelHost";
import { OTHER_KIND, type Fault } from "../../host/Faults";
import type { SheetState } from "../../host/SheetState";

/** The kinds of failure that every request of every operation meets. */
export const KINDS = [
  "GeneralException",
  "ItemAlreadyExists",
  "AccessDenied",
  "InvalidOperationInCellEditMode",
  "ServiceNotAvailable",
  "UndoNotSupported",
  OTHER_KIND,
] as const;

interface Operation {
  readonly title: string;
  /** The name that a sheet of somebody else's takes meanwhile, where that is the danger. */
  readonly rivalName?: string;
  /** The cell of "Mine" into which somebody types meanwhile, where that is the danger. */
  readonly rivalCell?: string;
  /** @returns names of the sheets made */
  run(workbook: ExcelWorkbook): Promise<readonly string[]>;
  /** What is wrong with what a finished operation left, "" for nothing. */
  wrong(host: ExcelHost, made: readonly string[]): string;
}

const whole = buildRunSheet({ kind: "charring", weighIns: 3, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: 1 });
// Some of everything that is written to a sheet: the requests are the same, and so is what can fail, at a fraction of the time.
const plan = { ...whole, cells: whole.cells.filter((_, index) => index % 8 === 0), entryRules: whole.entryRules.slice(0, 3) };
const FORMULA = "=RETORT.MOLARMASS(A1)";

export const OPERATIONS: readonly Operation[] = [
  {
    title: "insert a run sheet",
    rivalName: plan.name,
    run: async (workbook) => [await workbook.addSheet(plan)],
    wrong(host, [name = ""]) {
      const sheet = host.book.sheet(name);
      const filled = plan.cells.filter(({ content, formula }) => (content ?? formula) !== undefined).length;
      if (sheet.cells.size !== filled) return `${sheet.cells.size} of ${filled} cells`;
      return sheet.charts.length === 1 && sheet.charts[0]?.over !== undefined && sheet.names.size === 0 ? "" : "no chart, or a mark left";
    },
  },
  {
    title: "share a sheet",
    rivalName: "Mine values",
    async run(workbook) {
      const { copy, record } = await shareAsValues(workbook, "Mine", "2026-03-14");
      return [copy, record];
    },
    wrong(host, [copy = "", record = ""]) {
      const [shared, recorded] = [host.book.sheet(copy), host.book.sheet(record)];
      if (isLive(shared)) return "a formula stayed";
      if (shared.value(1, 1) !== 0.7 || shared.value(0, 0) !== 25) return "a value is missing";
      return recorded.cells.size > 0 && shared.names.size + recorded.names.size === 0 ? "" : "no record, or a mark left";
    },
  },
  {
    title: "put a formula into a cell",
    rivalCell: "D4",
    async run(workbook) {
      await workbook.writeFormula({ sheet: "Mine", cell: "D4" }, FORMULA);
      return [];
    },
    wrong: (host) => (host.book.sheet("Mine").formula(3, 3) === FORMULA ? "" : "no formula"),
  },
];

/** One operation that met one fault, and what came of it. */
export interface FaultCase {
  readonly operation: string;
  readonly fault: Fault;
  /** True where somebody else takes the name, or types into the cell, just before the fault. */
  readonly rival: boolean;
  readonly outcome: "finished" | "nothing left" | "left and said so";
  /** Each of these breaks a promise. */
  readonly broken: readonly string[];
}

/** Every operation with every fault at each of its requests. */
export async function faultCases(host: ExcelHost): Promise<readonly FaultCase[]> {
  const cases: FaultCase[] = [];
  for (const operation of OPERATIONS) {
    for (let after = 0; after < (await requestsOf(host, operation)); after++) {
      for (const code of KINDS)
        for (const answerLost of [false, true])
          for (const forGood of [false, true])
            for (const rival of [false, true]) cases.push(await faultCase(host, operation, { code, after, answerLost, forGood }, rival));
    }
  }
  return cases;
}

async function requestsOf(host: ExcelHost, operation: Operation): Promise<number> {
  open(host);
  let requests = 0;
  host.meanwhile = (before) => (requests = before + 1);
  await operation.run(new ExcelWorkbook());
  return requests;
}

/** A workbook with a sheet of the user's. */
function open(host: ExcelHost): void {
  host.newBook();
  host.calculate = (formula) => (formula.startsWith("=RETORT.VOLATILEFRACTION") ? 0.7 : "");
  host.book.rename(host.book.sheet("Sheet1"), "Mine");
  host.type("Mine", "A1", 25);
  host.type("Mine", "A2", "plum");
  host.type("Mine", "B2", "=RETORT.VOLATILEFRACTION(A1,35,28)");
}

async function faultCase(host: ExcelHost, operation: Operation, fault: Fault, rival: boolean): Promise<FaultCase> {
  open(host);
  const theirs = new Map<string, string>(host.book.sheets.map((sheet) => [sheet.id, contentsOf(sheet, operation)]));
  const broken = new Set<string>();
  const typed = { value: "" };
  host.meanwhile = (before) => {
    if (liveValues(host, theirs)) broken.add("a copy named values was live");
    if (!rival || before !== fault.after) return;
    if (operation.rivalName !== undefined && host.book.find(operation.rivalName) === undefined) {
      const sheet = host.book.add(operation.rivalName);
      sheet.write(0, 0, "somebody else's");
      theirs.set(sheet.id, contentsOf(sheet, operation));
    }
    if (operation.rivalCell !== undefined && host.book.sheet("Mine").value(3, 3) === null)
      host.type("Mine", operation.rivalCell, (typed.value = "typed"));
  };
  host.faults.plan(fault);
  const workbook = new ExcelWorkbook();
  const ended = await operation.run(workbook).then(
    (made) => ({ made, said: "" }),
    (thrown: Error) => ({ made: undefined, said: thrown.message }),
  );
  await host.quiet();
  host.meanwhile = () => undefined;
  host.faults.none();
  if (liveValues(host, theirs)) broken.add("a copy named values was live");
  const { made, said } = ended;
  const left = made === undefined ? leftSheets(host, theirs) : [];
  if (made !== undefined && operation.wrong(host, made) !== "" && typed.value === "") broken.add("said to be finished and was not");
  if (left.some(({ name }) => !said.includes(`"${name}"`))) broken.add("something was left unmentioned");
  if (typed.value !== "" && host.book.sheet("Mine").value(3, 3) !== typed.value && !said.includes("undo brings it back"))
    broken.add("a typed value was lost");
  await removeWhatIsOffered(host, workbook, theirs, broken);
  for (const [id, contents] of theirs) {
    const sheet = host.book.sheets.find((one) => one.id === id);
    if (sheet === undefined) broken.add("somebody's sheet was removed");
    else if (contentsOf(sheet, operation) !== contents) broken.add("somebody's cell was changed");
  }
  const halfWritten = made === undefined && operation.rivalCell !== undefined && host.book.sheet("Mine").formula(3, 3) !== undefined;
  if (halfWritten && !said.includes("D4")) broken.add("something was left unmentioned");
  const outcome = made !== undefined ? "finished" : left.length > 0 || halfWritten ? "left and said so" : "nothing left";
  return { operation: operation.title, fault, rival, outcome, broken: [...broken] };
}

/** The workbook answers again: what is offered for removal is ours, and goes. */
async function removeWhatIsOffered(
  host: ExcelHost,
  workbook: ExcelWorkbook,
  theirs: ReadonlyMap<string, string>,
  broken: Set<string>,
): Promise<void> {
  for (const offered of await workbook.unfinishedSheets()) {
    if (theirs.has(offered.id)) broken.add("somebody's sheet was offered for removal");
    await workbook.removeUnfinished(offered, true);
    if (host.book.sheets.some(({ id }) => id === offered.id)) broken.add("what was offered for removal stayed");
  }
}

/** What a sheet of the user's must keep; the cell to be written is looked at apart. */
const contentsOf = (sheet: SheetState, { rivalCell }: Operation): string =>
  JSON.stringify([sheet.name, [...sheet.cells].filter(([cell]) => cell !== rivalCell)]);

const leftSheets = (host: ExcelHost, theirs: ReadonlyMap<string, string>): SheetState[] => host.book.sheets.filter(({ id }) => !theirs.has(id));

const isLive = (sheet: SheetState): boolean => [...sheet.cells.values()].some(({ formula }) => formula !== undefined);

const liveValues = (host: ExcelHost, theirs: ReadonlyMap<string, string>): boolean =>
  leftSheets(host, theirs).some((sheet) => sheet.name.includes("values") && isLive(sheet));

/** The counts, as a table in Markdown. */
export function faultTable(cases: readonly FaultCase[]): string {
  const columns = ["finished", "nothing left", "left and said so"] as const;
  const row = (title: string, some: readonly FaultCase[]): string =>
    `| ${[title, some.length, ...columns.map((outcome) => some.filter((one) => one.outcome === outcome && one.broken.length === 0).length), some.filter(({ broken }) => broken.length > 0).length].join(" | ")} |`;
  const byOperation = OPERATIONS.flatMap(({ title }) =>
    ["host answers again", "host is gone"].map((state, gone) =>
      row(
        `${title}; ${state}`,
        cases.filter(({ operation, fault }) => operation === title && Number(fault.forGood) === gone),
      ),
    ),
  );
  return [
    "| operation; afterwards | faults | finished all the same | nothing left | left, and said so | promise broken |",
    "| --- | --: | --: | --: | --: | --: |",
    ...byOperation,
    row("all", cases),
  ].join("\n");
}

/** How often each promise was broken. */
export function brokenPromises(cases: readonly FaultCase[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const promise of cases.flatMap(({ broken }) => broken)) counts[promise] = (counts[promise] ?? 0) + 1;
  return counts;
}
