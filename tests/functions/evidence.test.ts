import path from "node:path";
import { everyFunction } from "../../src/functions/catalogue";
import { everyPublished } from "../published/everyPublished";
import { published } from "../published/Published";
import { nameIn } from "./call";
import { EVIDENCE_FOLDER, evidenceFiles, evidenceIn, type FunctionEvidence } from "./evidenceFiles";
import { everyLaw } from "./laws/everyLaw";
import { law } from "./laws/Law";
import { missingEvidence, NEEDED, type Evidence } from "./missingEvidence";
import { everyRefusal } from "./refusals/everyRefusal";
import type { Refusal } from "./refusals/Refusal";

const evidence: Evidence = { published: everyPublished, laws: everyLaw, refusals: everyRefusal };

test("every function has an outside value, a law and its refusals", () => {
  expect(missingEvidence(everyFunction, evidence)).toEqual([]);
});

test("all evidence is about functions that exist", () => {
  const names = new Set(everyFunction.map(({ name }) => name));
  expect(everyLaw.flatMap(({ functions }) => functions).filter((name) => !names.has(name))).toEqual([]);
});

/** A function as it comes without a thought: a quotient. */
const naive = { name: "NAIVE" };
const value = published("worked by hand", "1 over 2", [["=RETORT.NAIVE(1, 2)", "0.5"]]);
const itsLaw = law("NAIVE")("is what it is", () => undefined);
const blank: Refusal = ["=RETORT.NAIVE(, 2)", "#VALUE! a: nothing here (blank or 0). Give grams."];
const text: Refusal = ['=RETORT.NAIVE("one", 2)', '#VALUE! a: "one" is not a weighing. Give grams.'];
const slip: Refusal = ["=RETORT.NAIVE(2, 1)", "#VALUE! b: 1 g is less than a, 2 g. Check for swapped cells.", "swapped cells"];
const whole: Evidence = { published: value, laws: [itsLaw], refusals: [blank, text, slip] };

test("a naive function added to the catalogue is told of for each kind of evidence", () => {
  expect(missingEvidence([naive], evidence)).toEqual(Object.values(NEEDED).map((lack) => `NAIVE lacks ${lack}`));
  expect(missingEvidence([naive], whole)).toEqual([]);
});

test.each<[what: keyof typeof NEEDED, without: string, evidence: Evidence]>([
  ["value", "a value", { ...whole, published: [] }],
  ["value", "any but a remembered value", { ...whole, published: published("from memory", "a book once read", [["=RETORT.NAIVE(1, 2)", "0.5"]]) }],
  ["value", "any but a rule of thumb", { ...whole, published: published("common practice", "no source", [["=RETORT.NAIVE(1, 2)", "0.5"]]) }],
  ["law", "a law", { ...whole, laws: [] }],
  ["law", "a law of its own", { ...whole, laws: [law("MOLARMASS")("is another's", () => undefined)] }],
  ["blank", "the refusal of a blank", { ...whole, refusals: [text, slip] }],
  ["kind", "the refusal of text", { ...whole, refusals: [blank, slip] }],
  ["slip", "the refusal of a slip", { ...whole, refusals: [blank, text, ["=RETORT.NAIVE(2, 1)", slip[1]]] }],
])("it lacks its %s if it comes without %s", (what, _without, given) => {
  expect(missingEvidence([naive], given)).toEqual([`NAIVE lacks ${NEEDED[what]}`]);
});

test("the evidence files are among all the evidence, and each is about its function", () => {
  for (const { name, published: rows, laws, refusals } of evidenceFiles) {
    expect([...rows.map(({ cell }) => nameIn(cell)), ...refusals.map(([cell]) => nameIn(cell))].filter((other) => other !== name)).toEqual([]);
    expect(laws.filter(({ functions }) => !functions.includes(name))).toEqual([]);
    expect(everyPublished).toEqual(expect.arrayContaining(rows));
    expect(everyLaw).toEqual(expect.arrayContaining(laws));
    expect(everyRefusal).toEqual(expect.arrayContaining(refusals));
  }
});

describe("a function whose only evidence is a file of its own", () => {
  const files = evidenceIn(path.join(EVIDENCE_FOLDER, "made"));
  const together = (held: readonly FunctionEvidence[]): Evidence => ({
    published: held.flatMap((one) => one.published),
    laws: held.flatMap((one) => one.laws),
    refusals: held.flatMap((one) => one.refusals),
  });

  test("lacks nothing", () => {
    expect(files.map(({ name }) => name)).toEqual(["NAIVE"]);
    expect(missingEvidence([naive], together(files))).toEqual([]);
  });

  test.each<[what: keyof typeof NEEDED, spoil: (file: FunctionEvidence) => FunctionEvidence]>([
    ["value", (file) => ({ ...file, published: [] })],
    ["law", (file) => ({ ...file, laws: [] })],
    ["blank", (file) => ({ ...file, refusals: file.refusals.slice(1) })],
    ["kind", (file) => ({ ...file, refusals: file.refusals.filter((_, index) => index !== 1) })],
    ["slip", (file) => ({ ...file, refusals: file.refusals.slice(0, 2) })],
  ])("lacks its %s if the file comes without", (what, spoil) => {
    expect(missingEvidence([naive], together(files.map(spoil)))).toEqual([`NAIVE lacks ${NEEDED[what]}`]);
  });
});
