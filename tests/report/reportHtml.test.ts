// Reports of run sheets filled in the local workbook, held against what those sheets show.
import { XMLValidator } from "fast-xml-parser";
import { reportHtml } from "../../src/report/reportHtml";
import { materialWords } from "../../src/runsheet/words/materialWords";
import type { CellReading, RangeReading } from "../../src/workbook/Workbook";
import { EXTRAS, reported } from "./reported";
import { reading } from "../sharing/MemoryWorkbook";

jest.setTimeout(120_000);

const made = new Map<string, RangeReading>();
beforeAll(async () => {
  for (const [name, read] of Object.entries(reported)) made.set(name, await read());
});
const readingOf = (name: string): RangeReading => made.get(name) ?? { sheet: "", range: "", rows: [] };
const report = (name: string): string => reportHtml(readingOf(name), EXTRAS);
const withCells = (reading: RangeReading, change: (one: CellReading) => Partial<CellReading>): RangeReading => ({
  ...reading,
  rows: reading.rows.map((row) => row.map((one) => ({ ...one, ...change(one) }))),
});
/** The text of a report as a reader sees it. */
const textOf = (html: string): string =>
  html
    .replace(/<style>[^]*?<\/style>/, "")
    .replace(/<[^>]*>/g, "|")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&");

describe.each(Object.keys(reported))("The report of a run: %s", (name) => {
  it("is well-formed HTML that names its language, fetches nothing and runs nothing", () => {
    const html = report(name);
    // Every tag closed, every attribute quoted once: as XML but for the tags that HTML never closes.
    const closed = html.slice("<!DOCTYPE html>".length).replace(/<(meta [^>]*)>/g, "<$1/>");
    expect(XMLValidator.validate(closed)).toBe(true);
    expect(html).toMatch(/^<!DOCTYPE html>\n<html lang="en">/);
    expect(html).toContain("default-src &#39;none&#39;");
    expect(html).not.toMatch(/<script|<link|<img|<iframe|\bon\w+=|\bsrc=|\bhref=|url\(|@import/i);
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("prints the answer, the checks and what the ± covers as the sheet shows them", () => {
    const text = textOf(report(name));
    const lines = readingOf(name)
      .rows.slice(1, 5)
      .map((row) => row[0]?.shown ?? "");
    expect(lines.filter((line) => line !== "").length).toBeGreaterThan(2);
    for (const line of lines) expect(text).toContain(line);
  });
});

test("every filled box and every result of a finished run stands in its report as shown", () => {
  const text = textOf(report("ashing of six"));
  const { rows } = readingOf("ashing of six");
  const materials = rows.findIndex((row) => row[0]?.value === materialWords.heading);
  // The printed columns of six samples are A to O; what follows are workings, and the list of what materials stand is the sheet's alone.
  const shown = rows.slice(0, materials).flatMap((row) => row.slice(1, 15)).filter(({ value }) => typeof value === "number"); // prettier-ignore
  expect(shown.length).toBeGreaterThan(150);
  expect(
    shown.filter((one) => !text.includes(`|${one.shown}|`) && !text.includes(`|${one.shown}; `)).map(({ cell, shown: one }) => [cell, one]),
  ).toEqual([]);
});

test("what is blank, under way, finished and a history says so", () => {
  expect(textOf(report("blank ashing"))).toContain("|Blank: nothing has been weighed on this sheet yet.|");
  expect(textOf(report("blank ashing"))).toContain("|No curve: it needs two weighings with their times.|");
  expect(textOf(report("drying under way"))).toMatch(/\|Unfinished when this report was made\. Next: round 5[^|]*\.\|/);
  expect(textOf(report("ashing of one"))).toContain("|Run complete: all weighings are in.|");
  expect(textOf(report("balance check"))).toContain("|A history that goes on: it stands as it was when this report was made.|");
});

test("a withheld answer stays withheld, and failed checks stand out by mark, word and weight", () => {
  const html = report("contradicting");
  expect(html).toContain('<p class="failed">▲ Answer withheld: two weights contradict each other. Put right what the next line names.</p>');
  expect(html).toContain("<td>withheld</td>");
  expect(html).toMatch(/<th scope="row">6 +Order of weights<\/th><td class="failed verdict">▲ wrong<\/td><td>▲ Sample 2: char, /);
  expect(html).not.toMatch(/left as vapour; /);
  // Its own third line is a heading: what is wrong is named where the report says that the run is unfinished.
  expect(html).not.toContain("third line");
  expect(textOf(html)).toMatch(/\|Unfinished when this report was made\. First put right: Sample 2: char, [^|]*[^.]\.\|/);
});

test("typed text is printed letter by letter and turns nothing around", () => {
  const evil = '</title><script>alert("1")</script>&amp;\u202E\u0007';
  const html = reportHtml(
    withCells(readingOf("ashing of one"), ({ value }) => (value === "plum prunings" || value === "tin 1" ? { value: evil, shown: evil } : {})),
    EXTRAS,
  );
  expect(html).not.toContain("<script");
  expect(html.split("&lt;/title&gt;&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt;&amp;amp;\uFFFD\uFFFD").length).toBeGreaterThan(3);
});

test("a sheet whose head shows errors has no answer, and says which cell", () => {
  const html = reportHtml(
    withCells(readingOf("ashing of one"), ({ cell }) => (cell === "A2" ? { value: "#NAME?", error: "#NAME?", shown: "#NAME?" } : {})),
    EXTRAS,
  );
  expect(textOf(html)).toContain("▲ A2 on this sheet shows an error where its answer should stand: nothing here is an answer.");
  expect(textOf(html)).not.toContain("left as vapour; ");
});

test("a reading that tells values but not what is shown gives the same report", () => {
  const bare = withCells(readingOf("ashing of one"), () => ({ shown: "" }));
  // A clock typed as 9:00 is shown as it was typed; the sheet's own format has two digits.
  expect(reportHtml(bare, EXTRAS).replace(/>0(\d:\d\d)</g, ">$1<")).toBe(report("ashing of one"));
});

test("a sheet of calculations lists cell, formula, value, unit and source, errors among them", () => {
  const row = [
    reading("A1", { value: "Lime <kiln>", shown: "Lime <kiln>" }),
    reading("B1", { formula: '=RETORT.MOLARMASS("CaCO3")', value: 100.086, shown: "100.09" }),
    reading("C1", { formula: '=2*RETORT.MOLARMASS("Xx")', value: "#VALUE!", shown: "#VALUE!", error: "#VALUE!" }),
    reading("D1", { formula: "=1+1", value: 2, shown: "2" }),
  ];
  const html = reportHtml({ sheet: "Class", range: "A1:D1", rows: [row] }, EXTRAS);
  const [b1, c1] = [/<tr><th scope="row">B1.*?<\/tr>/.exec(html)?.[0], /<tr><th scope="row">C1.*?<\/tr>/.exec(html)?.[0]];
  expect(textOf(b1 ?? "")).toMatch(/\|B1\|\|Lime <kiln>\|\|\|=RETORT\.MOLARMASS\("CaCO3"\)\|\|\|100\.09\|\|g\/mol\|/);
  expect(c1).toContain('<td class="failed">#VALUE!</td><td></td>');
  expect(textOf(html)).toContain("▲ One of them shows an error and has no value.");
  expect(textOf(html)).toContain("One cell with built-in functions only is not listed.");
  expect(textOf(html)).toContain("RETORT.MOLARMASS|: ");
});

test("any other sheet is refused in words", () => {
  const other = { sheet: "Notes", range: "A1:A1", rows: [[reading("A1", { formula: "=1+1", value: 2, shown: "2" })]] };
  expect(() => reportHtml(other, EXTRAS)).toThrow(
    'sheet: "Notes" is no run sheet, and no cell on it calls a Retort function. Show the sheet with the run or the calculations, then make its report.',
  );
});
