import { parseFormula } from "../../../../src/chemistry/parseFormula";

// Organic chemistry texts, from memory: methyl, ethyl, butyl, phenyl and benzyl.
test.each([
  ["Me", "CH3"],
  ["Et", "C2H5"],
  ["Bu", "C4H9"],
  ["Ph", "C6H5"],
  ["Bn", "C7H7"],
])("parseFormula refuses the group %s and asks for %s", (group, formula) => {
  const message = `formula: no element "${group}" at character 2 of "O${group}2". Write the group out, such as ${formula}.`;
  expect(() => parseFormula(`O${group}2`)).toThrow(new Error(message));
});

// The Unicode Standard: by its name, the letter that the look-alike is not.
const LOOK_ALIKES: Readonly<Record<string, readonly (readonly [codePoint: number, latin: string])[]>> = {
  Cyrillic: [
    [0x0410, "A"],
    [0x0412, "B"],
    [0x0421, "C"],
    [0x041d, "H"],
    [0x041e, "O"],
    [0x0420, "P"],
    [0x0405, "S"],
    [0x0425, "X"],
    [0x0430, "a"],
    [0x0435, "e"],
    [0x043e, "o"],
    [0x0455, "s"],
  ],
  Greek: [
    [0x0391, "A"],
    [0x0392, "B"],
    [0x0397, "H"],
    [0x039d, "N"],
    [0x039f, "O"],
    [0x03a1, "P"],
    [0x03a7, "X"],
    [0x03b1, "a"],
    [0x03bf, "o"],
    [0x03c7, "x"],
  ],
  "full-width": [
    [0xff21, "A"],
    [0xff3a, "Z"],
    [0xff41, "a"],
    [0xff5a, "z"],
  ],
};

test.each(Object.entries(LOOK_ALIKES).flatMap(([script, letters]) => letters.map(([codePoint, latin]) => ({ script, codePoint, latin }))))(
  "parseFormula tells a $script letter that looks like $latin from it",
  ({ script, codePoint, latin }) => {
    const letter = String.fromCodePoint(codePoint);
    const message = `formula: "${letter}" at character 3 of "Na${letter}" is a ${script} letter that looks like ${latin}. Retype it as ${latin}.`;
    expect(() => parseFormula(`Na${letter}`)).toThrow(new Error(message));
  },
);

test.each([
  ["CR2O3", "R", 2, true],
  ["MGO", "M", 1, true],
  ["OH2Oh", "Oh", 4, true],
  ["CQ2O3", "Q", 2, false],
  ["JCl", "J", 1, false],
] as const)("parseFormula of %s asks to check %s, and the capitals where other capitals would make an element", (text, letters, place, capitals) => {
  const hint = capitals ? " Capitals matter: Co is cobalt, CO carbon monoxide." : "";
  const message = `formula: no element "${letters}" at character ${place} of "${text}". Check the symbol.${hint}`;
  expect(() => parseFormula(text)).toThrow(new Error(message));
});
