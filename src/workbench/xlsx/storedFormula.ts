import { tokenize, tokenTypes, type Token } from "@borgar/fx";
import { NAMESPACE } from "../../functions/catalogue";
import { catalogueName } from "../../sharing/catalogueName";
import { NEWER_FUNCTIONS, WORKSHEET_FUNCTIONS } from "./newerFunctions";

const NEWER = "_xlfn.";
const NEWER_ON_WORKSHEETS = "_xlfn._xlws.";
const OWN_VARIABLE = "_xlpm.";

/** A cell formula as a workbook file holds it: no "=", functions of add-ins and newer functions under their stored names. */
export function storedFormula(cellFormula: string): string {
  const tokens = tokenize(cellFormula, { mergeRefs: false });
  const variables = variablesIn(tokens);
  return tokens.map((token) => stored(token, variables)).join("").replace(/^=/, ""); // prettier-ignore
}

/** The cell formula as typed, from the form a workbook file holds. */
export function typedFormula(inFile: string): string {
  const tokens = tokenize(`=${inFile}`, { mergeRefs: false });
  return tokens.map(typed).join("");
}

function stored({ type, value }: Token, variables: ReadonlySet<string>): string {
  if (type === tokenTypes.REF_NAMED && variables.has(value.toUpperCase())) return `${OWN_VARIABLE}${value}`;
  if (type !== tokenTypes.FUNCTION) return value;
  const name = value.toUpperCase();
  const ours = catalogueName(value);
  if (ours !== undefined) return `_xldudf_${NAMESPACE}_${ours.replaceAll(".", "_")}`;
  if (WORKSHEET_FUNCTIONS.has(name)) return `${NEWER_ON_WORKSHEETS}${name}`;
  return NEWER_FUNCTIONS.has(name) ? `${NEWER}${name}` : value;
}

function typed({ type, value }: Token): string {
  if (type === tokenTypes.REF_NAMED) return value.replace(/^_xlpm\./i, "");
  if (type !== tokenTypes.FUNCTION) return value;
  const ours = catalogueName(value);
  return ours === undefined ? value.replace(/^_xlfn\.(_xlws\.)?/i, "") : `${NAMESPACE}.${ours}`;
}

/** The names that LET and LAMBDA give to their own variables, in capitals: single names between a bracket or comma and a comma. */
function variablesIn(tokens: readonly Token[]): ReadonlySet<string> {
  const found = new Set<string>();
  const solid = tokens.filter(({ type }) => type !== tokenTypes.WHITESPACE && type !== tokenTypes.NEWLINE);
  const open: string[] = [];
  solid.forEach(({ type, value }, index) => {
    const previous = solid[index - 1];
    if (value === "(" || value === "{") open.push(previous?.type === tokenTypes.FUNCTION ? previous.value.toUpperCase() : "");
    if (value === ")" || value === "}") open.pop();
    const isAlone = (previous?.value === "(" || previous?.value === ",") && solid[index + 1]?.value === ",";
    const declares = ["LET", "LAMBDA"].includes(open.at(-1) ?? "");
    if (type === tokenTypes.REF_NAMED && isAlone && declares) found.add(value.toUpperCase());
  });
  return found;
}
