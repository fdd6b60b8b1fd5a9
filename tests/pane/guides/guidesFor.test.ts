import { catalogue, everyFunction } from "../../../src/functions/catalogue";
import { everyGuide } from "../../../src/help/guides/everyGuide";
import { functionsOf } from "../../../src/help/guides/Guide";
import { searchFunctions } from "../../../src/pane/functions/search/searchFunctions";
import { guidesFor } from "../../../src/pane/guides/guidesFor";

const titlesFor = (query: string): string[] => guidesFor(query, searchFunctions(catalogue, query)).map(({ title }) => title);

test.each(everyGuide.map(({ title }) => [title]))("who types the title %s is shown that guide", (title) => {
  expect(titlesFor(title)).toContain(title);
});

test.each(everyGuide.flatMap((guide) => functionsOf(guide).map((name) => [name, guide.title] as const)))(
  "who looks for %s is shown %s",
  (name, title) => {
    expect(everyFunction.map((one) => one.name)).toContain(name);
    expect(titlesFor(name)).toEqual([title]);
  },
);

test.each([["shrinkage of clay"], ["zeppelin"], ["does my balance drift"], ["carbon and oxygen balance"]])("no guide answers %s", (query) => {
  expect(titlesFor(query)).toEqual([]);
});
