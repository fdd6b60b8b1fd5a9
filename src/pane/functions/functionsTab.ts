import { catalogue } from "../../functions/catalogue";
import type { CellFunction } from "../../functions/cellFunction";
import type { Workbook } from "../../workbook/Workbook";
import { element } from "../element";
import { guideLines } from "../guides/guideLines";
import { guidesFor } from "../guides/guidesFor";
import { guideWords } from "../guides/guideWords";
import { functionDetail } from "./functionDetail";
import type { NamedInSearch } from "./exampleWith";
import { searchFunctions, type Finding } from "./search/searchFunctions";
import { searchWords } from "./searchWords";
import type { Degrees } from "../runSheet/degreesTyped";
import type { Tab } from "../tabs";

const NOTHING_NAMED: NamedInSearch = { substances: [], elements: [] };

/**
 * Finds a function by what it does, explains it, and puts it into the selected cell.
 * @param degrees those that the Run sheet form is set to, for the run sheets of guides
 */
export function functionsTab(workbook: Workbook, degrees: () => Degrees): Tab {
  const search = element("input", { type: "search", id: "function-search", autocomplete: "off", spellcheck: "false" });
  const count = element("p", { role: "status", class: "hint" });
  const list = element("div", { class: "function-list" });
  const finder = element(
    "div",
    {},
    element("h2", {}, "Find a function"),
    element("label", { for: search.id }, "What should it work out?"),
    search,
    count,
    list,
  );
  const panel = element("div", {}, finder);

  const open = (definition: CellFunction, named: NamedInSearch, opener: HTMLElement): void => {
    const detail = functionDetail(workbook, definition, named, () => {
      panel.replaceChildren(finder);
      opener.focus();
    });
    panel.replaceChildren(detail.page);
    detail.heading.focus();
  };

  const item = ({ definition, phrase }: Finding, named: NamedInSearch): HTMLElement => {
    const opener = element(
      "button",
      { type: "button", class: "function-item" },
      element("strong", {}, definition.name),
      element("span", {}, definition.summary),
      ...(phrase === undefined ? [] : [element("span", { class: "found-by" }, searchWords.foundBy(phrase, named))]),
    );
    opener.addEventListener("click", () => open(definition, named, opener));
    return element("li", {}, opener);
  };

  const show = (): void => {
    const query = search.value.trim();
    if (query === "") {
      count.textContent = "";
      list.replaceChildren(
        ...catalogue.flatMap(({ heading, functions }) => [
          element("h3", {}, heading),
          element("ul", {}, ...functions.map((definition) => item({ definition }, NOTHING_NAMED))),
        ]),
      );
      return;
    }
    const findings = searchFunctions(catalogue, query);
    count.textContent = searchWords.outcome(findings, query);
    const guides = guidesFor(query, findings);
    const items = findings.found.map((finding) => item(finding, findings));
    // The first function stays the first stop; its guide comes before the others, which a newcomer may not read.
    const [first, others] = guides.length === 0 ? [items, []] : [items.slice(0, 1), items.slice(1)];
    list.replaceChildren(
      ...(first.length === 0 ? [] : [element("ul", {}, ...first)]),
      ...(guides.length === 0 ? [] : [element("p", { class: "hint" }, guideWords.answers), guideLines(workbook, guides, degrees)]),
      ...(others.length === 0 ? [] : [element("ul", {}, ...others)]),
    );
  };

  search.addEventListener("input", show);
  show();
  return { id: "functions", label: "Functions", panel };
}
