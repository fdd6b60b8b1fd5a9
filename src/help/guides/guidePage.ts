import { code, escaped, page } from "../markup";
import type { Guide, GuideSheet, Step } from "./Guide";

export const guideFile = ({ file }: Guide): string => `${file}.html`;

/** The page of a guide: cautions first, then each step with its arithmetic and its cell formula. */
export const guidePage = (guide: Guide): string =>
  page(
    guide.title,
    [
      `<p><a href="index.html">All functions</a></p>`,
      `<h1>${escaped(guide.title)}</h1>`,
      `<p>${escaped(guide.scene)}</p>`,
      ...guide.cautions.map((caution) => `<p class="caution"><strong>Caution.</strong> ${escaped(caution)}</p>`),
      `<h2>Step by step</h2>`,
      `<ol>\n${guide.steps.map(step).join("\n")}\n</ol>`,
      `<h2>The sheet for it</h2>`,
      `<p>${escaped(sheetWords(guide.sheet))}</p>`,
    ].join("\n"),
  );

const step = ({ text, byHand, cell, gives, row }: Step): string =>
  `<li>${[
    escaped(text),
    ...(byHand === undefined ? [] : [`By hand: ${escaped(byHand)}.`]),
    ...(cell === undefined ? [] : [`${code(cell)} gives ${escaped(`${row === undefined ? "" : `beside “${row}” `}${gives ?? ""}`)}.`]),
  ].join("<br>")}</li>`;

/** What a box of the Run sheet tab is called, of those that a guide fills in. */
const BOXES: readonly (readonly [name: keyof GuideSheet["typed"], box: string])[] = [
  ["formula", "Formula"],
  ["residue", "What stays"],
  ["ovenCelsius", "Oven (°C)"],
  ["vessel", "Vessel"],
];

function sheetWords({ label, typed }: GuideSheet): string {
  const entries = BOXES.flatMap(([name, box]) => (typed[name] === undefined ? [] : [`${box} “${typed[name]}”`]));
  const form = `choose the kind “${label}”${entries.length === 0 ? "" : `, type ${entries.join(", ")}`}, and press Insert blank run sheet`;
  return `In the pane, open Run sheet and Worked guides, and press Insert its sheet beside this guide. The same by hand: ${form}.`;
}
