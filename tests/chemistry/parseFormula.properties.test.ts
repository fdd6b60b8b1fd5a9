import fc from "fast-check";
import { molarMass } from "../../src/chemistry/molarMass";
import { parseFormula } from "../../src/chemistry/parseFormula";
import { printFormula } from "./printFormula";
import { standardAtomicWeights } from "../../src/chemistry/standardAtomicWeights";
import { InputProblem } from "../../src/problems/InputProblem";

const RUNS = { numRuns: 3000 };
const symbols = standardAtomicWeights.filter(({ standard }) => standard !== "").map(({ symbol }) => symbol);

const symbol = fc.oneof(fc.constantFrom(...symbols), fc.constantFrom("D", "T", "[13C]", "[18O]", "C", "H", "N", "O", "S", "I", "U"));
const count = fc.oneof(
  fc.constant(""),
  fc.integer({ min: 2, max: 999 }).map(String),
  fc.integer({ min: 1, max: 9999 }).map((thousandths) => String(thousandths / 1000)),
);
// Each symbol in a bracket of its own is never taken for a slip of the hand, so that any of them can stand side by side.
const plain = fc.array(fc.tuple(symbol, count), { minLength: 1, maxLength: 6 }).map((units) => units.map(([name, n]) => `(${name})${n}`).join(""));
const written = fc.oneof(
  plain,
  fc.tuple(plain, plain, fc.integer({ min: 1, max: 20 })).map(([first, second, n]) => `${first}[${second}]${n}`),
  fc.tuple(plain, plain, fc.constantFrom("½", "1½", "2", "0.5", "10")).map(([first, second, n]) => `${first}·${n}${second}`),
  fc.tuple(plain, fc.constantFrom("^2-", "^+", "^-3", " 3+", "²⁺")).map(([first, charge]) => first + charge),
);

const close = (a: number, b: number): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(a), Math.abs(b)));
const massOf = (text: string): number => molarMass(parseFormula(text));

test("parseFormula reads what printFormula prints as the same atoms and charge", () => {
  fc.assert(
    fc.property(written, (text) => {
      const read = parseFormula(text);
      const again = parseFormula(printFormula(read));
      expect(again.charge).toBe(read.charge);
      expect(Object.fromEntries(again.atoms)).toEqual(Object.fromEntries(read.atoms));
    }),
    RUNS,
  );
});

test("the molar mass of two formulas written in one is the sum of theirs", () => {
  fc.assert(
    fc.property(plain, plain, (first, second) => {
      close(massOf(first + second), massOf(first) + massOf(second));
      close(massOf(`${first}·${second}`), massOf(first) + massOf(second));
    }),
    RUNS,
  );
});

test("the molar mass of a bracket times n is n times that of what it holds, in any kind of bracket and as a leading amount", () => {
  fc.assert(
    fc.property(plain, fc.integer({ min: 2, max: 500 }), (text, n) => {
      for (const bracketed of [`(${text})${n}`, `[${text}]${n}`, `{${text}}${n}`, `${n}${text}`]) close(massOf(bracketed), n * massOf(text));
    }),
    RUNS,
  );
});

const near = fc.array(
  fc.constantFrom(
    ..."CHONaClFeSIUDTxn0123456789()[]{}.,·*^+-−²⁺₂½ \u00a0\n%/=СО😀".split(/(?=[\s\S])/u),
    "H2O",
    "(aq)",
    "(s)",
    "·5H2O",
    "[13C]",
    "^2-",
  ),
  { maxLength: 14 },
);
const anything = fc.oneof(
  near.map((pieces) => pieces.join("")),
  fc.string({ unit: "binary", maxLength: 30 }),
  fc.string({ unit: "grapheme", maxLength: 30 }),
);

/** What is wrong with how parseFormula takes a text, or undefined. Compared by hand: a matcher for each of so many texts takes longer than reading them. */
function flawIn(text: string): string | undefined {
  try {
    const { atoms } = parseFormula(text);
    if (atoms.size === 0) return "no atoms";
    for (const [symbol, n] of atoms) if (!(n > 0 && Number.isFinite(n))) return `${n} of ${symbol}`;
    return undefined;
  } catch (problem) {
    if (!(problem instanceof InputProblem)) throw problem;
    if (!/^formula: .+\.$/su.test(problem.message)) return `the message "${problem.message}"`;
    const place = / at character (\d+) of /.exec(problem.message)?.[1];
    const lies = place === undefined || (Number(place) >= 1 && Number(place) <= Array.from(text).length);
    return lies ? undefined : `character ${place} is outside of the text`;
  }
}

test("whatever the text, parseFormula reads atoms or throws an InputProblem whose places lie in the text, counted in characters from 1", () => {
  fc.assert(
    fc.property(anything, (text) => {
      const flaw = flawIn(text);
      if (flaw !== undefined) throw new Error(flaw);
    }),
    { numRuns: 60_000 },
  );
});
