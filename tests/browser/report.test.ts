// Reports printed by a browser: pages, the smallest text, and what an accessibility checker finds.
import { readFileSync } from "node:fs";
import type { Browser } from "playwright-core";
import { reportHtml } from "../../src/report/reportHtml";
import { EXTRAS, reported } from "../report/reported";
import { openBrowser } from "./openBrowser";

jest.setTimeout(120_000);

// CSS pixels are 1/96 inch, points 1/72.
const POINTS = 0.75;
const SMALLEST = 8;

let browser: Browser;
beforeAll(async () => void (browser = await openBrowser()));
afterAll(() => browser.close());

test.each([
  ["blank ashing", 2],
  ["ashing of one", 2],
  ["ashing of three", 2],
  ["ashing of 1 with zeros and temperatures", 2],
  ["ashing of 2 with zeros and temperatures", 2],
  ["ashing of 3 with zeros and temperatures", 2],
  ["ashing of two, char and ash swapped, times backward", 2],
  ["run with liquids caught, gas by difference", 2],
  ["run of staged heating, three samples", 2],
  ["run of a salt, two samples", 2],
  ["contradicting", 2],
  ["balance check", 2],
])("the report of a run (%s) prints on at most %i pages of either size, nothing below 8 points, and has no fault of access", async (name, most) => {
  const html = reportHtml((await reported[name]?.()) ?? { sheet: "", range: "", rows: [] }, EXTRAS);
  const page = await browser.newPage({ bypassCSP: true, viewport: { width: 800, height: 1000 } });
  await page.setContent(html);
  for (const format of ["A4", "Letter"]) {
    const pdf = (await page.pdf({ format, preferCSSPageSize: true })).toString("latin1");
    const pages = [...pdf.matchAll(/\/Type\s*\/Page\b/g)].length;
    expect(pages).toBeGreaterThan(0);
    expect(pages).toBeLessThanOrEqual(most);
  }
  const sizes = await page.evaluate(() =>
    [...document.querySelectorAll("body *")]
      .filter(({ childNodes }) => [...childNodes].some(({ nodeType, textContent }) => nodeType === Node.TEXT_NODE && textContent?.trim() !== ""))
      .map((one) => {
        const size = Number.parseFloat(getComputedStyle(one).fontSize);
        const drawing = one.closest("svg");
        return drawing === null ? size : (size * drawing.getBoundingClientRect().width) / drawing.viewBox.baseVal.width;
      }),
  );
  expect(sizes.length).toBeGreaterThan(30);
  expect(Math.min(...sizes) * POINTS).toBeGreaterThanOrEqual(SMALLEST - 0.01);
  await page.addScriptTag({ content: readFileSync(require.resolve("axe-core/axe.min.js"), "utf8") });
  const violations = await page.evaluate(async () => {
    const { violations: found } = await (window as unknown as { axe: { run(): Promise<{ violations: { id: string }[] }> } }).axe.run();
    return found.map(({ id }) => id);
  });
  expect(violations).toEqual([]);
  await page.close();
});
