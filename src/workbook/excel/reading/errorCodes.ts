// The errors an Excel cell can show ("Excel.ErrorCellValueType" and "How to correct a # error").
const ERROR_CODES: ReadonlySet<string> = new Set([
  "#NULL!",
  "#DIV/0!",
  "#VALUE!",
  "#REF!",
  "#NAME?",
  "#NUM!",
  "#N/A",
  "#GETTING_DATA",
  "#SPILL!",
  "#CALC!",
  "#FIELD!",
  "#BLOCKED!",
  "#CONNECT!",
  "#BUSY!",
  "#UNKNOWN!",
  "#EXTERNAL!",
  "#TIMEOUT!",
  "#PYTHON!",
]);

export const isErrorCode = (text: unknown): text is string => typeof text === "string" && ERROR_CODES.has(text);
