import { drying } from "../../src/functions/drying";
import { residue } from "../../src/functions/residue";
import { callLiteral } from "./call";

const examples = [...drying, ...residue].flatMap((definition) => definition.examples);

test.each(examples)("the example $cell gives $gives", ({ cell, gives }) => {
  const answer = callLiteral(cell);
  if (typeof gives === "number") expect(answer).toBeCloseTo(gives, 12);
  else expect(answer).toEqual(gives);
});
