import type { Family } from "../functions/catalogue";
import { criteriaTable } from "./criteriaTable";
import { functionPageFile } from "./functionPage";
import { guides } from "./guides";
import { code, escaped, page, table } from "./markup";
import { signature } from "./signature";

/** The contents page: every function by family, and the guides. */
export const indexPage = (catalogue: readonly Family[]): string =>
  page(
    "Reference",
    [
      `<h1>Retort reference</h1>`,
      `<p>Cell functions for people who dry, char and burn weighed samples. Type <code>=RETORT.</code> in a cell and pick one.</p>`,
      ...guides.map(({ heading, paragraphs }) => `<h2>${escaped(heading)}</h2>\n${paragraphs.map((text) => `<p>${escaped(text)}</p>`).join("\n")}`),
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
