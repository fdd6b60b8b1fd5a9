import { elementNames } from "../../../src/chemistry/elementNames";
import { catalogue } from "../../../src/functions/catalogue";
import { isRightlySpelled } from "../../../src/pane/functions/search/everydayWords";
import { searchFunctions } from "../../../src/pane/functions/search/searchFunctions";
import { nearestWords } from "../../../src/pane/functions/search/typingErrors";

const readAs = (query: string): readonly string[] => searchFunctions(catalogue, query).mended.map((each) => each.readAs);

test.each([
  ["claes", "clase", "two letters the wrong way round"],
  ["vnet", "vent", "the first two the wrong way round"],
  ["vlue", "value", "one left out"],
  ["glas", "glass", "one of two alike left out"],
  ["vennt", "vent", "one doubled"],
  ["ventt", "vent", "the last one doubled"],
  ["vvent", "vent", "the first one doubled"],
])("%s is a slip of %s: %s", (typed, known) => {
  expect(nearestWords(typed, [known])).toEqual([known]);
});

test.each([
  ["bent", "vent", "another letter at the start"],
  ["went", "west", "another letter within"],
  ["event", "vent", "one put in that is not double"],
  ["venti", "vent", "one put in at the end"],
  ["rate", "crate", "the first letter left out"],
  ["tenv", "vent", "letters the wrong way round that are no neighbours"],
])("%s, of four or five letters, is no slip of %s: %s", (typed, known) => {
  expect(nearestWords(typed, [known])).toEqual([]);
});

test.each([
  ["vassel", "vessel"],
  ["pessel", "vessel"],
  ["vesseln", "vessel"],
])("in %s, of six letters or more, any one error is mended: %s", (typed, known) => {
  expect(nearestWords(typed, [known])).toEqual([known]);
});

test("two errors are mended from eight letters on", () => {
  expect([nearestWords("walking", ["warning"]), nearestWords("tempratur", ["temperature"])]).toEqual([[], ["temperature"]]);
});

test("no name of an element is read as another word, and a question for its share is answered", () => {
  const right = new Set(["MASSFRACTION", "ATOMS"]);
  const wrong = [...elementNames().values()].filter((element) => {
    const { found, mended, elements } = searchFunctions(catalogue, `how much ${element} is in gypsum`);
    return mended.length > 0 || elements.length !== 1 || !right.has(found[0]?.definition.name ?? "");
  });
  expect(wrong).toEqual([]);
});

test.each(["teacup of rye", "saucer", "potter", "kettles", "hemp", "slates", "brushwood", "peaches", "juniper", "lessons", "butter", "customers"])(
  "%s is spelled as it should be and read as nothing else",
  (words) => {
    expect(words.split(" ").some(isRightlySpelled)).toBe(true);
    expect(readAs(words)).toEqual([]);
    expect(readAs(`how much ash in ${words}`)).toEqual([]);
  },
);

test("a rightly spelled word is no slip of a substance's name", () => {
  // One letter from lignin, and two from a name of soda.
  expect(searchFunctions(catalogue, "ash content of lignite").substances).toEqual([]);
});

describe("words of other languages", () => {
  test.each([
    ["rendemant charbon", "rendement"],
    ["cenisas de madera", "cenizas"],
    ["Aschegehallt der Probe", "aschegehalt"],
    ["rendemant", "rendement"],
  ])("%s is mended to %s", (query, word) => {
    expect(readAs(query)).toEqual([word]);
  });

  test.each(["what is the rendemant of my kiln", "cenisas after burning", "weight of aschegehallt"])(
    "but nothing in %s, which is in English, is read as a word of another language",
    (query) => {
      expect(readAs(query)).toEqual([]);
    },
  );
});
