import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem, type Answer } from "../../src/cells/CellProblem";
import { everyFunction } from "../../src/functions/catalogue";
import type { CellFunction } from "../../src/functions/cellFunction";
import { literalArguments } from "./call";

/** What the readers of shares call them; a share takes a fraction and never a bare percentage. */
const SHARES: readonly string[] = [
  "a fraction",
  "a mass fraction",
  "a moisture content",
  "an ash content",
  "a share of the air needed",
  "a significance level",
];

/** Shares that have no input of their own kind: an answer in words, and limits whose criterion says what they are. */
const ALSO: readonly string[] = ["TYPICALRANGE value", "CONSTANTWEIGHT limit", "CONSTANTWEIGHT.STEPS limit", "DRYING.END limit"];

const shares = everyFunction.flatMap((definition) =>
  Object.entries(definition.inputs).flatMap(([input, { called }], index) =>
    SHARES.includes(called) || ALSO.includes(`${definition.name} ${input}`)
      ? [{ definition, input, index, title: `${definition.name}(${input})` }]
      : [],
  ),
);

/** What is taken for a share though it is above 1, or is refused though it is below, with the reason. */
const OTHERWISE: Readonly<Record<string, string>> = {
  "MOISTURE.CONVERT(moisture) 1.2 on the dry basis": "wet wood; more than a gram of water per g dry is ordinary",
  "MOISTURE.CONVERT(moisture) 12 on the dry basis": "fruit, sludge or peat; This cell says how wet that is and how to type 12 %",
  "BURN.PRODUCTS(excessAir) 1.2": "open fires draw in a few times the air they need",
};

const CALLS: Readonly<Record<string, string>> = {
  "SAMPLE.MINIMUM(expectedLoss)": "=RETORT.SAMPLE.MINIMUM(0.01, 0.005, 0.3)",
  "CONSTANTWEIGHT(limit)": "=RETORT.CONSTANTWEIGHT({10; 9.2; 8.95; 8.9; 8.893})",
  "CONSTANTWEIGHT.STEPS(limit)": "=RETORT.CONSTANTWEIGHT.STEPS({10; 9.2; 8.95; 8.9; 8.893})",
};

interface Share {
  readonly definition: CellFunction;
  readonly input: string;
  readonly index: number;
  readonly title: string;
}

function answered({ definition, index, title }: Share, given: unknown, basis?: "wet" | "dry"): Answer | Answer[][] {
  const example = literalArguments(CALLS[title] ?? (definition.examples[0]?.cell as string));
  const raw = Object.keys(definition.inputs).map((_, place) => (place === index ? given : (example[place] ?? null)));
  if (basis !== undefined) raw[1] = basis;
  const answer = callCellFunction(definition, raw);
  return Array.isArray(answer) && answer.length === 1 && answer[0]?.length === 1 ? (answer[0][0] as Answer) : answer;
}

const refusalOf = (share: Share, given: unknown, basis?: "wet" | "dry"): string => {
  const answer = answered(share, given, basis);
  if (answer instanceof CellProblem) return answer.message;
  return typeof answer === "string" && answer.startsWith(`${share.input}: `) ? answer : "";
};

test("there are shares in every family that has any", () => {
  expect(shares.length).toBeGreaterThan(30);
  expect(shares.filter(({ title }) => ALSO.includes(title.replace("(", " ").replace(")", ""))).length).toBe(ALSO.length);
});

const bases = ({ title }: Share): readonly ("wet" | "dry" | undefined)[] => (title === "MOISTURE.CONVERT(moisture)" ? ["wet", "dry"] : [undefined]);

describe.each(shares.map((share) => [share.title, share] as const))("%s", (title, share) => {
  test.each([1.2, 12, 99.9])("a bare %d is refused as a percentage with how to type it, or is known to be a share", (typed) => {
    for (const basis of bases(share)) {
      const known = OTHERWISE[`${title} ${typed}${basis === "dry" ? " on the dry basis" : ""}`];
      const refusal = refusalOf(share, typed, basis);
      if (known !== undefined) expect(refusal).toBe("");
      else {
        expect(refusal).toMatch(new RegExp(`^${share.input}: ${typed}\\b`));
        expect(refusal).toMatch(/(Type|Give|type) .*\d/);
      }
    }
  });

  test("a percentage as text is refused as text", () => {
    for (const text of ["12%", "12 %", " 12%"])
      expect(refusalOf(share, text)).toMatch(new RegExp(`^${share.input}: "${text}" is (text, )?not a (number|fraction)`));
  });
});

test("what is known to be a share above 1 is answered", () => {
  expect(Object.values(OTHERWISE).every((reason) => reason.length > 20)).toBe(true);
});
