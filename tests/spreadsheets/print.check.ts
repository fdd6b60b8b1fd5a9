// Run sheets on paper, measured in what LibreOffice prints: every kind, A4 and Letter, blank and filled in.
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { readRunSheet } from "../../src/runsheet/reading/readRunSheet";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { cautionLine, cautions } from "../../src/runsheet/words/cautions";
import { saveXlsx } from "../../src/workbench/xlsx/saveXlsx";
import type { SheetPlan } from "../../src/workbook/SheetPlan";
import { newFileOf } from "../../src/xlsx/planned/addPlanned";
import type { PrintedPage } from "../pdf/readPdf";
import { filledRuns } from "./filledRuns";
import { paperFaults } from "../pdf/paperFaults";
import { onPaper, PAPERS, printed, type Paper } from "./printed";

jest.setTimeout(260_000);

const usual: RunSheetOptions = { kind: "ashing", weighIns: 8, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 3 };
const longest: Partial<RunSheetOptions> = { charFirings: 4, ashFirings: 4, replicates: 3 };

/** Blank sheets, and on how many pages each goes. */
const BLANK: Readonly<Record<string, readonly [options: Partial<RunSheetOptions>, pages: number]>> = {
  "a drying run": [{ kind: "drying" }, 2],
  "a drying run of one sample": [{ kind: "drying", replicates: 1 }, 2],
  "a charring run": [{ kind: "charring" }, 2],
  "a charring run of one sample, one firing": [{ kind: "charring", replicates: 1, charFirings: 1 }, 2],
  "a charring run, four firings": [{ kind: "charring", weighIns: 6, ...longest }, 2],
  // What is left of two pages below the bench and its cautions does not hold results, checks, settings, open fire and curves.
  "an ashing run": [{ kind: "ashing" }, 3],
  "an ashing run of one sample, one firing": [{ kind: "ashing", replicates: 1, weighIns: 6, charFirings: 1, ashFirings: 1 }, 2],
  "an ashing run, four firings": [{ kind: "ashing", ...longest }, 3],
  "a run with liquids caught": [{ kind: "liquids" }, 3],
  "a run with liquids caught, four receivers, four firings": [{ kind: "liquids", receivers: 4, ...longest }, 3],
  "a staged run": [{ kind: "staged" }, 2],
  "a staged run of twelve stages": [{ kind: "staged", stages: 12 }, 4],
  "a salt": [{ kind: "salt" }, 2],
  "a salt, four firings": [{ kind: "salt", ...longest }, 2],
  "a balance check": [{ kind: "balance", replicates: 1 }, 2],
  "an ashing run of six samples": [{ kind: "ashing", replicates: 6 }, 4],
  "a drying run of four samples on a fine balance": [{ kind: "drying", replicates: 4, readability: 0.0001 }, 2],
  "a charring run of five samples on a balance to 1 µg": [{ kind: "charring", replicates: 5, readability: 0.000001 }, 4],
  // The widest there are.
  "a charring run of six samples on a balance to 10 µg": [{ kind: "charring", replicates: 6, readability: 0.00001 }, 4],
  "an ashing run of six samples with zeros on a balance to 1 µg": [{ kind: "ashing", replicates: 6, readability: 0.000001, panZeros: true }, 6],
  // One round, one firing more than fits on two pages: the break stands between phases.
  "a charring run, twelve rounds, four firings": [{ kind: "charring", weighIns: 12, charFirings: 4 }, 3],
};

const sheets = new Map<string, { readonly plan: SheetPlan; readonly file: Uint8Array }>();
let pages: ReadonlyMap<string, readonly PrintedPage[]>;
const SMALL = "a drying run at 70 %";

/** Sheets that rows were added to until their cautions stand on a later page. */
const GROWN: Readonly<Record<RunSheetOptions["kind"], Partial<RunSheetOptions>>> = {
  drying: { weighIns: 40, cautionsAfter: "end" },
  charring: { weighIns: 24, charFirings: 4, cautionsAfter: "end" },
  ashing: { weighIns: 12, charFirings: 4, ashFirings: 4, cautionsAfter: "ashing" },
  liquids: { weighIns: 12, receivers: 4, charFirings: 4, cautionsAfter: "caught" },
  staged: { weighIns: 12, stages: 12, cautionsAfter: "stages" },
  salt: { weighIns: 30, charFirings: 4, cautionsAfter: "heating" },
  balance: { replicates: 1, weighIns: 30, cautionsAfter: "notes" },
};
const grownKinds = Object.keys(GROWN) as RunSheetOptions["kind"][];
const grown = (kind: RunSheetOptions["kind"]): string => `a ${kind} sheet that grew`;
const papers = Object.keys(PAPERS) as Paper[];

beforeAll(async () => {
  for (const [name, [options]] of Object.entries(BLANK)) await addBlank(name, buildRunSheet({ ...usual, ...options }));
  const plan = buildRunSheet({ ...usual, kind: "drying" });
  await addBlank(SMALL, { ...plan, ...(plan.print && { print: { ...plan.print, scale: 70 } }) });
  for (const kind of grownKinds) await addBlank(grown(kind), buildRunSheet({ ...usual, kind, ...GROWN[kind] }));
  for (const [name, fill] of Object.entries(filledRuns)) {
    const { engine, workbook, name: sheet, close } = await fill();
    for (const other of engine.book.getSheets()) if (other.getSheetName() !== sheet) engine.book.deleteSheet(other);
    const read = readRunSheet(await workbook.readUsed(sheet));
    if (read.is !== "whole" && read.is !== "balance") throw new Error(`${name} is ${read.is}`);
    sheets.set(name, { plan: buildRunSheet(read.sheet.options), file: await saveXlsx(engine) });
    close();
  }
  const files = new Map<string, Uint8Array>();
  for (const [name, { file }] of sheets) for (const paper of papersOf(name)) files.set(`${name}, ${paper}`, await onPaper(file, paper));
  pages = await printed(files);
});

// The shorter of the two is enough for a sheet whose blocks are those of others.
const papersOf = (name: string): readonly Paper[] => (grownKinds.some((kind) => grown(kind) === name) ? ["Letter"] : papers);

const addBlank = async (name: string, plan: SheetPlan): Promise<void> =>
  void sheets.set(name, { plan, file: await newFileOf([plan], { calculateOnOpening: true }) });

const pagesOf = (name: string, paper: Paper): readonly PrintedPage[] => pages.get(`${name}, ${paper}`) ?? [];
const faultsOf = (name: string, paper: Paper): string[] => {
  const sheet = sheets.get(name);
  return sheet === undefined ? ["no such sheet"] : paperFaults(sheet.plan, pagesOf(name, paper));
};

describe.each(papers)("On %s", (paper) => {
  test.each(Object.entries(BLANK).map(([name, [, count]]) => [name, count] as const))(
    "%s, blank, is to be filled in by hand on %i pages",
    (name, count) => {
      expect(faultsOf(name, paper)).toEqual([]);
      expect(pagesOf(name, paper)).toHaveLength(count);
    },
  );

  // How long anything will be held is not known: numbers beside the axes, such as those of firings not yet made, would be read as minutes.
  test.each(["a charring run", "an ashing run", "a run with liquids caught", "a salt"])("%s, blank, has a firing chart without numbers", (name) => {
    const page = pagesOf(name, paper).find(({ texts }) => texts.some(({ text }) => text === "Firing"));
    const title = page?.texts.find(({ text }) => text === "Firing");
    const below = page?.texts.find(({ text }) => text.startsWith("minutes held so far"));
    if (page === undefined || title === undefined || below === undefined) throw new Error("no firing chart");
    const [from, to] = [Math.min(title.top, below.top), Math.max(title.bottom, below.bottom)];
    // The drying chart has the left half.
    const within = page.texts.filter(({ top, bottom, left }) => top >= from && bottom <= to && left > page.width / 2);
    expect(within.length).toBeGreaterThan(2);
    expect(within.filter(({ text }) => /^[-\d.]+$/.test(text)).map(({ text }) => text)).toEqual([]);
  });

  test.each(Object.keys(filledRuns))("a %s is whole and readable", (name) => {
    expect(faultsOf(name, paper)).toEqual([]);
  });

  test("what is printed too small is found", () => {
    const faults = faultsOf(SMALL, paper);
    expect(faults).toContainEqual(expect.stringMatching(/is 7\.0\d points$/));
    expect(faults).toContainEqual(expect.stringMatching(/^page 1: a box is 5\.1\d mm high$/));
  });
});

test.each(grownKinds)("a %s sheet that grew until its cautions stand on page two tells the least of them at the top of every page", (kind) => {
  const printedPages = pagesOf(grown(kind), "Letter");
  for (const { texts } of printedPages) {
    const line = texts.find(({ text }) => text.startsWith("CAUTIONS stand on a later page"));
    expect(line?.text).toBe(cautionLine[kind]);
    expect(line?.size).toBeGreaterThanOrEqual(8);
  }
  // All else is as on any other sheet: heads on every page, breaks between phases, nothing cut. A table higher than a page runs on.
  const isTooHigh = (fault: string): boolean => kind === "drying" && /begins with "(Round|Dry sample)/.test(fault);
  expect(faultsOf(grown(kind), "Letter").filter((fault) => !fault.startsWith("not on page one: ") && !isTooHigh(fault))).toEqual([]);
  const others = printedPages.slice(1).flatMap(({ texts }) => texts.map(({ text }) => text));
  expect(others).toContain(cautions[kind][0]);
});
