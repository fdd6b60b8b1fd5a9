import { parseFormula } from "../../../src/chemistry/parseFormula";
import { InputProblem } from "../../../src/problems/InputProblem";

const problemOf = (text: string): string | undefined => {
  try {
    parseFormula(text);
    return undefined;
  } catch (problem) {
    return problem instanceof InputProblem ? problem.message : String(problem);
  }
};

const nested = (depth: number): string => `${"(".repeat(depth)}NaCl${")".repeat(depth)}`;

// Bounds of sense, chosen in the program; what is held here is that each lies where its message says, to the last unit.
test.each([
  ["the largest count", "C10000000", "C10000001", '"10000001" at character 2 of "C10000001" is more than 10000000. Check the count.'],
  [
    "the largest count of a bracket",
    "(C)10000000",
    "(C)10000001",
    '"10000001" at character 4 of "(C)10000001" is more than 10000000. Check the count.',
  ],
  ["the smallest count", "C0.000001", "C0.0000009", '"0.0000009" at character 2 of "C0.0000009" is less than 0.000001. Check the count.'],
  ["the largest total", "(C2)5000000", "(C2)5000001", '"(C2)5000001" multiplies out to 10000002 C. Check the counts.'],
  ["the smallest total", "(C0.001)0.001", "(C0.001)0.0009", '"(C0.001)0.0009" multiplies out to 9e-7 C. Check the counts.'],
  [
    "the deepest bracket",
    nested(20),
    nested(21),
    '"(" at character 21 of "(((((((((((((((((((((NaCl)))))))))))))))))))))" is more than 20 brackets deep.',
  ],
  [
    "the longest text",
    `${"C".repeat(999)}H`,
    `${"C".repeat(1000)}H`,
    "the text is 1001 characters long. A formula has at most 1000. Check the cell.",
  ],
  ["the largest charge", "(WO3)9^99-", "(WO3)9^100-", '"^100-" at character 7 of "(WO3)9^100-" is no charge an ion carries.'],
  ["the largest charge after its sign", "Fe^+9", "Fe^+10", '"^+10" at character 3 of "Fe^+10" is no charge an ion carries.'],
])("parseFormula takes %s, %s, and refuses one step more", (_bound, within, beyond, message) => {
  expect(problemOf(within)).toBeUndefined();
  expect(problemOf(beyond)).toContain(nested(21) === beyond ? "is more than 20 brackets deep" : message);
});

// Carbon binds four hydrogens (CH4), and an ion or salt may add two.
test.each([
  ["C2H10", undefined],
  ["CNH10", undefined],
  ["CH10", '"H10" at character 2 of "CH10" holds the digit 0.'],
  ["C4H20", '"H20" at character 3 of "C4H20" holds the digit 0.'],
  ["C5H20", undefined],
  ["C55H101N", undefined],
  ["Si101O", undefined],
])("parseFormula of %s, four hydrogens an atom and two over, finds %s", (text, message) => {
  if (message === undefined) expect(problemOf(text)).toBeUndefined();
  else expect(problemOf(text)).toContain(message);
});

// The Unicode Standard: U+2080 to U+2089 and U+FF10 to U+FF19 are the digits 0 to 9 in order; the superscripts are scattered.
const SUPERSCRIPTS = ["\u2070", "\u00b9", "\u00b2", "\u00b3", "\u2074", "\u2075", "\u2076", "\u2077", "\u2078", "\u2079"];

test.each([0, 1, 2, 3, 4, 5, 6, 7, 8, 9])("parseFormula reads the digit %d in every form that a count or a charge has", (digit) => {
  const forms = [String(digit), String.fromCodePoint(0x2080 + digit), String.fromCodePoint(0xff10 + digit)];
  const one = [String(1), String.fromCodePoint(0x2081), String.fromCodePoint(0xff11)];
  forms.forEach((form, index) => expect(parseFormula(`Si${one[index]}${form}O`).atoms.get("Si")).toBe(10 + digit));
  expect(parseFormula(`Fe\u00b9${SUPERSCRIPTS[digit]}\u207a`).charge).toBe(10 + digit);
  expect(parseFormula(`Fe^1${digit}-`).charge).toBe(-10 - digit);
});

test.each([
  ["+", 1],
  ["\u207a", 1],
  ["\uff0b", 1],
  ["-", -1],
  ["\u2212", -1],
  ["\u2013", -1],
  ["\u2010", -1],
  ["\u2011", -1],
  ["\u207b", -1],
  ["\uff0d", -1],
  ["\ufe63", -1],
])("parseFormula reads %s as the sign of a charge of %d", (sign, charge) => {
  expect(parseFormula(`Na${sign}`).charge).toBe(charge);
  expect(parseFormula(`Fe^3${sign}`).charge).toBe(3 * charge);
  expect(parseFormula(`Fe${sign.repeat(2)}`).charge).toBe(2 * charge);
});

test.each([
  ["(", ")"],
  ["[", "]"],
  ["{", "}"],
  ["\u208d", "\u208e"],
  ["\uff08", "\uff09"],
])("parseFormula pairs %s with %s and with no other", (opening, closing) => {
  expect(Object.fromEntries(parseFormula(`Ca${opening}OH${closing}2`).atoms)).toEqual({ Ca: 1, O: 2, H: 2 });
  for (const other of [")", "]", "}", "\u208e", "\uff09"].filter((bracket) => bracket !== closing)) {
    expect(problemOf(`Ca${opening}OH${other}2`)).toBe(
      `formula: "${other}" at character 6 of "Ca${opening}OH${other}2" does not close "${opening}". Use brackets in pairs: ( ), [ ], { }.`,
    );
  }
});
