import { catalogue } from "../../functions/catalogue";
import type { CellFunction } from "../../functions/cellFunction";
import type { Workbook } from "../../workbook/Workbook";
import { element } from "../element";
import { functionDetail } from "./functionDetail";
import { searchFunctions } from "./searchFunctions";
import type { Tab } from "../tabs";

/** Finds a function by what it does, explains it, and puts it into the selected cell. */
export function functionsTab(workbook: Workbook): Tab {
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

  const open = (definition: CellFunction, opener: HTMLElement): void => {
    const detail = functionDetail(workbook, definition, () => {
      panel.replaceChildren(finder);
      opener.focus();
    });
    panel.replaceChildren(detail.page);
    detail.heading.focus();
  };

  const item = (definition: CellFunction): HTMLElement => {
    const opener = element(
      "button",
      { type: "button", class: "function-item" },
      element("strong", {}, definition.name),
      element("span", {}, definition.summary),
    );
    opener.addEventListener("click", () => open(definition, opener));
    return element("li", {}, opener);
  };

  const show = (): void => {
    const query = search.value.trim();
    if (query === "") {
      count.textContent = "";
      list.replaceChildren(...catalogue.flatMap(({ heading, functions }) => [element("h3", {}, heading), element("ul", {}, ...functions.map(item))]));
      return;
    }
    const found = searchFunctions(catalogue, query);
    count.textContent = countText(found.length, query);
    list.replaceChildren(element("ul", {}, ...found.map(item)));
  };

  search.addEventListener("input", show);
  show();
  return { id: "functions", label: "Functions", panel };
}

function countText(count: number, query: string): string {
  if (count === 0) return `No function answers to "${query}". Try a word such as moisture, ash or oxygen, or clear the box to see all.`;
  return count === 1 ? "One function." : `${count} functions, best match first.`;
}
