import { catalogue, everyFunction } from "../../../src/functions/catalogue";
import { everyPhrase } from "../../../src/pane/functions/phrases/everyPhrase";
import { searchFunctions } from "../../../src/pane/functions/search/searchFunctions";

test("every function has at least three everyday phrases, and no phrase is for a function that is not there", () => {
  expect(Object.keys(everyPhrase).sort()).toEqual(everyFunction.map(({ name }) => name).sort());
  for (const [name, { en }] of Object.entries(everyPhrase)) expect([name, en.length >= 3]).toEqual([name, true]);
});

const words = Object.entries(everyPhrase).flatMap(([name, { de, fr, es }]) =>
  [...(de ?? []), ...(fr ?? []), ...(es ?? [])].map((word) => [word, name] as const),
);

test.each(words)("the trade word %s finds %s among the first three", (word, name) => {
  const found = searchFunctions(catalogue, word).found.slice(0, 3);
  expect(found.map(({ definition }) => definition.name)).toContain(name);
});

test.each([
  ["moisure", "moisture"],
  ["standard devation", "deviation"],
  ["wieght", "weight"],
])("mends %s and says so", (query, readAs) => {
  expect(searchFunctions(catalogue, query).mended.map((each) => each.readAs)).toEqual([readAs]);
});
