import { catalogue, everyFunction } from "../../src/functions/catalogue";
import { functionPage, functionPageFile } from "../../src/help/functionPage";
import { everyGuide } from "../../src/help/guides/everyGuide";
import { guideFile, guidePage } from "../../src/help/guides/guidePage";
import { indexPage } from "../../src/help/indexPage";
import { INSTALLING_FILE, installingPage } from "../../src/help/installing/installingPage";

const index = indexPage(catalogue);
const written = everyFunction.map(functionPage);

test("the contents page links to the page of every function, to the guides, and to no page that does not exist", () => {
  const linked = [...index.matchAll(/href="([^"]+\.html)"/g)].map(([, file]) => file).sort();
  expect(linked).toEqual([INSTALLING_FILE, ...everyGuide.map(guideFile), ...everyFunction.map(({ name }) => functionPageFile(name))].sort());
});

test.each(everyFunction.map((definition) => [definition.name, definition] as const))(
  "the page of %s shows its inputs, examples, source and caution",
  (_name, definition) => {
    const page = functionPage(definition);
    for (const [name, input] of Object.entries(definition.inputs)) {
      expect(page).toContain(`<code>${name}</code>`);
      expect(page).toContain(input.about.replaceAll("&", "&amp;").replaceAll('"', "&quot;").replaceAll("<", "&lt;").replaceAll(">", "&gt;"));
    }
    expect(page.match(/Typed in a cell/g)).toHaveLength(1);
    expect(page).toContain("<h2>Source</h2>");
    expect(page.includes("Caution.")).toBe(definition.caution !== undefined);
  },
);

const pages: [name: string, page: string][] = [
  ["index", index],
  [INSTALLING_FILE, installingPage()],
  ...everyGuide.map((guide): [string, string] => [guideFile(guide), guidePage(guide)]),
  ...everyFunction.map(({ name }, at): [string, string] => [name, written[at] ?? ""]),
];

test.each(pages)("the page %s loads nothing but its own style sheet and icon", (_name, page) => {
  expect(page).toContain("default-src 'none'");
  expect([...page.matchAll(/(?:src|href)="(https?:[^"]*|\/\/[^"]*)"/g)]).toEqual([]);
  expect(page).not.toContain("<script");
});
