// node src/tooling/drawIcons.mjs: draws the icons of the manifest from their SVG sources, in a headless browser.
import { readFileSync, writeFileSync } from "node:fs";
import chromium from "@sparticuz/chromium";
import { chromium as browsers } from "playwright-core";

const FOLDER = new URL("../assets/", import.meta.url);
const SIZES = [16, 32, 64, 80];

const browser = await browsers.launch({
  executablePath: process.env.RETORT_BROWSER ?? (await chromium.executablePath()),
  args: ["--no-sandbox", "--disable-gpu"],
});
const page = await browser.newPage();
for (const size of SIZES) {
  await page.setViewportSize({ width: size, height: size });
  const svg = readFileSync(new URL(size === 16 ? "icon-16.svg" : "icon.svg", FOLDER), "utf8");
  await page.setContent(`<style>body{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${svg}`);
  writeFileSync(new URL(`icon-${size}.png`, FOLDER), await page.screenshot({ omitBackground: true }));
}
await browser.close();
