import { all, franc, letters, parse, punctuations } from "../../src/workbench/grid/engineStandIns";

// Classes as The Unicode Standard 15 has them (Scripts.txt, Blocks.txt): letters by script, punctuation by block.
test.each([
  ["漢", "letter"],
  ["々", "letter"],
  ["ひ", "letter"],
  ["カ", "letter"],
  ["한", "letter"],
  ["ㄅ", "letter"],
  ["。", "punctuation"],
  ["「", "punctuation"],
  ["・", "punctuation"],
  ["！", "punctuation"],
  ["㎎", "punctuation"],
  ["︰", "punctuation"],
  ["K", "neither"],
  ["é", "neither"],
  ["Ω", "neither"],
  ["°", "neither"],
  [".", "neither"],
  ["”", "neither"],
])("%s is a %s", (character, kind) => {
  const isIn = [letters, punctuations, all].map((charset) => charset().toRegExp().test(character));
  expect(isIn).toEqual([kind === "letter", kind === "punctuation", kind !== "neither"]);
});

test("a text holds such characters wherever they stand", () => {
  expect(all().toRegExp().test("char yield 炭")).toBe(true);
  expect(all().toRegExp().test("char yield, wet basis")).toBe(false);
});

test("no language is guessed, and no font file is taken for one", () => {
  expect(franc()).toBe("und");
  expect(parse).toThrow("this page has no font files to read");
});
