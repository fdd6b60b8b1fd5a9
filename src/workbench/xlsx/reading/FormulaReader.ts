import { tokenize, tokenTypes } from "@borgar/fx";
import { formulaTooNested, textOfFileTooLong } from "../../../problems/files/fileProblems";
import { cellArea } from "../../../workbook/cellArea";
import { slideFormula } from "../../../workbook/slideFormula";
import { WorkbookProblem } from "../../../workbook/Workbook";
import type { Attributes } from "../../../xlsx/parts/readXml";
import { typedFormula } from "../../../xlsx/formulas/storedFormula";
import type { Findings } from "./Findings";
import type { Table } from "../../../xlsx/parts/tablePart";
import { isTooNested, MOST_NESTED, MOST_OPERATORS } from "../../../workbook/grid/typing/nesting";
import { isNotCalculated, type EngineKnows } from "./notCalculated";
import { withoutTables, type Place } from "./tableParts";

// Excel specifications and limits, "Length of formula contents".
const LONGEST_FORMULA = 8192;

export interface FormulaSurroundings {
  /** The workbook's defined names in capitals. */
  readonly names: ReadonlySet<string>;
  readonly tables: readonly Table[];
  readonly engine: EngineKnows;
  readonly findings: Findings;
  /** Cells that are known to come out otherwise here; left out for none. */
  readonly isKept?: ((at: Place) => boolean) | undefined;
}

/** Reads the cell formulas of one sheet, filled-down ones included, each from the first cell of its group. */
export class FormulaReader {
  private readonly groups = new Map<string, { text: string; row: number; column: number }>();

  /** The formula that was last read and kept as a value, as typed; "" for one that has no text of its own, undefined where none was kept. */
  kept: string | undefined;

  constructor(private readonly around: FormulaSurroundings) {}

  /**
   * The formula as typed, or undefined where the cell keeps the value that stands beside it.
   * @param text as it stands in the file, without "="
   */
  formula(text: string, attributes: Attributes, at: Place): string | undefined {
    this.kept = undefined;
    if (text.length > LONGEST_FORMULA) throw new WorkbookProblem(textOfFileTooLong("cell formula", text.length, LONGEST_FORMULA));
    if (isTooNested(text)) throw new WorkbookProblem(formulaTooNested(MOST_NESTED, MOST_OPERATORS));
    if (attributes.t === "dataTable") return this.keptAsValue("dataTable", at);
    const own = attributes.t === "shared" ? this.ofGroup(text, attributes.si ?? "", at) : text;
    if (own === undefined) return this.keptAsValue("orphan", at);
    if (own === "") return undefined;
    const typed = typedFormula(own);
    if (readsOtherWorkbook(typed)) return this.keptAsValue("outside", at, typed);
    if (this.around.isKept?.(at) === true || isNotCalculated(typed, at.sheet, this.around.engine))
      return this.keptAsValue("notCalculated", at, typed);
    return withoutTables(typed, at, this.around.tables) ?? this.keptAsValue("structured", at, typed);
  }

  private ofGroup(text: string, group: string, at: Place): string | undefined {
    // The first of a group has the text; another cell of it may have one of its own, which then counts for it alone.
    if (text !== "") {
      if (!this.groups.has(group)) this.groups.set(group, { text, row: at.row, column: at.column });
      return text;
    }
    const first = this.groups.get(group);
    return first && slideFormula(first.text, { rows: at.row - first.row, columns: at.column - first.column }, this.around.names);
  }

  private keptAsValue(why: string, { sheet }: Place, formula = ""): undefined {
    this.kept = formula;
    this.around.findings.add(why, sheet);
  }
}

/** True where a reference or name of another workbook stands in it: [1]Sheet1!A1, '[runs.xlsx]Sheet1'!A1. */
const readsOtherWorkbook = (formula: string): boolean =>
  formula.includes("[") &&
  tokenize(formula).some(({ type, value }) => (type === tokenTypes.REF_STRUCT ? value.includes("!") : isReference(type) && value.includes("[")));

const isReference = (type: string): boolean =>
  type === tokenTypes.REF_RANGE || type === tokenTypes.REF_BEAM || type === tokenTypes.REF_NAMED || type === tokenTypes.CONTEXT;

/** The area that an array formula fills, where it is more than a cell. */
export function arrayArea({ t, ref = "" }: Attributes): ReturnType<typeof cellArea> {
  const area = t === "array" ? cellArea(ref) : undefined;
  return area !== undefined && area.rows * area.columns > 1 ? area : undefined;
}
