import { everyFunction } from "../functions/catalogue";
import { callCellFunction } from "./callCellFunction";
import { CellProblem, type Answer } from "./CellProblem";

/** Ties every function of the catalogue to its id in the host's registry. The entry of functions.js. */
for (const definition of everyFunction) {
  CustomFunctions.associate(definition.name, (...raw: unknown[]) => {
    const answer = callCellFunction(definition, raw);
    const only = onlyAnswer(answer);
    if (only instanceof CellProblem) throw hosted(only);
    return Array.isArray(answer) ? answer.map((row) => row.map(hosted)) : answer;
  });
}

// A problem that is the whole answer is thrown: inside an array, be it of one cell, some desktop builds show it as a bare #VALUE!
// (office-js, issue 2174). In a spill it stays in its row, so that the other rows keep their answers.
const onlyAnswer = (answer: Answer | Answer[][]): Answer | undefined => {
  if (!Array.isArray(answer)) return answer;
  return answer.length === 1 && answer[0]?.length === 1 ? answer[0][0] : undefined;
};

// The host drops the text of every error but #VALUE! and #N/A. Its type names the codes as an enum, which takes no plain string:
// the cast says that our codes are the strings of that enum, which tests/cells/register.test.ts holds through the library itself.
const hosted = (answer: Answer): unknown =>
  answer instanceof CellProblem ? new CustomFunctions.Error(answer.code as CustomFunctions.ErrorCode, answer.message) : answer;
