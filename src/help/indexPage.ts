import { dryingCriteria, type DryingCriterion } from "../drying/constantWeight/dryingCriteria";
import type { Family } from "../functions/catalogue";
import { functionPageFile, signature } from "./functionPage";
import { everyGuide } from "./guides/everyGuide";
import { guideFile } from "./guides/guidePage";
import { INSTALLING_FILE, INSTALLING_HEADING } from "./installing/installingPage";
import { code, escaped, page, table } from "./markup";
import { readFirst } from "./readFirst";

/** The contents page: every function by family, and the guides. */
export const indexPage = (catalogue: readonly Family[]): string =>
  page(
    "Reference",
    [
      `<h1>Retort reference</h1>`,
      `<p>Cell functions for people who dry, char and burn weighed samples. Type <code>=RETORT.</code> in a cell and pick one.</p>`,
      `<p><a href="${INSTALLING_FILE}">${escaped(INSTALLING_HEADING)}</a>: for yourself, for a school or a lab, or as its host; and first aid.</p>`,
      `<h2>Worked guides</h2>`,
      `<ul>\n${everyGuide.map((guide) => `<li><a href="${guideFile(guide)}">${escaped(guide.title)}</a></li>`).join("\n")}\n</ul>`,
      ...readFirst.map(
        ({ heading, paragraphs }) => `<h2>${escaped(heading)}</h2>\n${paragraphs.map((text) => `<p>${escaped(text)}</p>`).join("\n")}`,
      ),
      criteriaTable(),
      ...catalogue.map(
        ({ heading, functions }) =>
          `<h2>${escaped(heading)}</h2>\n${table(
            ["Function", "What it does"],
            functions.map((definition) => [
              `<a href="${functionPageFile(definition.name)}">${code(signature(definition))}</a>`,
              escaped(definition.summary),
            ]),
          )}`,
      ),
    ].join("\n"),
  );

/** What standards and pharmacopoeias call constant weight, as the arguments of CONSTANTWEIGHT would be typed. */
const criteriaTable = (): string =>
  [
    `<h2>When a sample counts as dry</h2>`,
    `<p>Standards disagree, and one series of weighings can pass some and fail others: name your criterion on the sheet. Limits are compared on the sample alone, without the vessel.</p>`,
    table(
      ["Standard", "Sample", "Temperature", "At least between weighings", "limit", "criterion", "How far to rely on this row"],
      dryingCriteria.map(row),
    ),
  ].join("\n");

const row = ({ standard, sample, oven, intervalMinutes, limit, criterion, mark }: DryingCriterion): string[] =>
  [standard, sample, oven, intervalMinutes === undefined ? "" : `${intervalMinutes} min`, String(limit), criterion, mark].map(escaped);
