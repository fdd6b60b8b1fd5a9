import { everyFunction } from "../functions/catalogue";
import { callCellFunction } from "./callCellFunction";
import { CellProblem, type Answer } from "./CellProblem";

/** Ties every function of the catalogue to its id in the host's registry. The entry of functions.js. */
for (const definition of everyFunction) {
  CustomFunctions.associate(definition.name, (...raw: unknown[]) => {
    const answer = callCellFunction(definition, raw);
    if (Array.isArray(answer)) return answer.map((row) => row.map(hosted));
    if (answer instanceof CellProblem) throw hosted(answer);
    return answer;
  });
}

// The host drops the text of every error but #VALUE! and #N/A. Its type names the codes as an enum, which takes no plain string:
// the cast says that our codes are the strings of that enum, which tests/cells/register.test.ts holds through the library itself.
const hosted = (answer: Answer): unknown =>
  answer instanceof CellProblem ? new CustomFunctions.Error(answer.code as CustomFunctions.ErrorCode, answer.message) : answer;
